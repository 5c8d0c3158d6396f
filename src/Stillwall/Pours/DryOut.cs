using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Pours;

/// <summary>One weighing of the drying cast.</summary>
/// <param name="TimeDays">Time since any fixed moment, days.</param>
/// <param name="MassKg">Mass on the scales, kg.</param>
public sealed record WeighIn(double TimeDays, double MassKg);

/// <summary>The exponential that fits the weighings: mass = dry mass + excess · e^(−(t − first)/τ).</summary>
/// <param name="DryMassKg">Mass that it tends to, kg.</param>
/// <param name="ExcessKg">Free water at the first weighing, kg.</param>
/// <param name="TimeConstantDays">Time in which the free water falls to 37 %, days.</param>
/// <param name="FirstDays">Time of the first weighing, days.</param>
/// <param name="ResidualKg">Root mean square of what the fit leaves over, kg; null for three weighings, which leave nothing.</param>
public sealed record DryOutFit(double DryMassKg, double ExcessKg, double TimeConstantDays, double FirstDays, double? ResidualKg)
{
    /// <summary>What the fit leaves open of dry mass, excess and time constant; null for three weighings.</summary>
    internal DryOutCovariance? Covariance { get; init; }

    /// <summary>Half the band in which the dry mass lies with 95 %, kg; null for three weighings, which say nothing of their error.</summary>
    public double? DryMassDoubtKg => Covariance?.Doubt(1, 0, 0);

    /// <summary>Half the band in which the day it is dry enough lies with 95 %, days.</summary>
    /// <param name="drynessRatio">Free water that may be left over the dry mass, 1e-6 to 1.</param>
    /// <returns>Days to either side; null for three weighings, and where it was dry enough at the first one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    /// <remarks>
    /// Model: slopes of <see cref="ReadyDays"/> times the fit's covariance, Student's t for what the weighings leave free. Validity: errors of the
    /// scales alone, alike and independent; the drying goes on as it has.
    /// Source: propagation of uncertainty, JCGM 100:2008 clause 5 (from memory). Accuracy: as the fit is straight near its least; far ahead of the
    /// weighings it is too narrow.
    /// </remarks>
    public double? ReadyDoubtDays(double drynessRatio) =>
        ReadyDays(drynessRatio) > FirstDays
            ? Covariance?.Doubt(-TimeConstantDays / DryMassKg, TimeConstantDays / ExcessKg, Math.Log(ExcessKg / (drynessRatio * DryMassKg)))
            : null;

    /// <summary>When the cast is dry enough to be sealed.</summary>
    /// <param name="drynessRatio">Free water that may be left over the dry mass, 1e-6 to 1.</param>
    /// <returns>Time on the weighings' scale, days; the first weighing where it was dry enough already.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    /// <remarks>
    /// Model: t = first + τ·ln(excess/(ratio × dry mass)). Validity: the drying goes on as it has. Source: arithmetic on the fitted curve.
    /// Accuracy: as the fit; far ahead of the weighings it is a guess.
    /// </remarks>
    public double ReadyDays(double drynessRatio)
    {
        Require.Within(drynessRatio, 1e-6, 1, nameof(drynessRatio));
        return FirstDays + TimeConstantDays * Math.Max(0, Math.Log(ExcessKg / (drynessRatio * DryMassKg)));
    }
}

/// <summary>How the free water leaves.</summary>
public static class DryOut
{
    /// <summary>Water that an open wet face gives to a room, kg/(m²·s): 60 g per m² and hour (from memory).</summary>
    public const double FirstStageKgM2S = 0.060 / Units.Hour;

    private const int Steps = 240;

    /// <summary>Least time in which free water can leave through open faces.</summary>
    /// <param name="freeWaterKg">Free water, kg, 0 or more.</param>
    /// <param name="openAreaM2">Open wet area, m², 0 or more; skins are closed.</param>
    /// <returns>Time, days; null where nothing is open.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: free water/(area × 60 g/(m²·h)), the first stage of drying all the way. Validity: room air, an open face. Source: from memory.
    /// Accuracy: a lower bound; behind closed skins it takes months.
    /// </remarks>
    public static double? FirstStageDays(double freeWaterKg, double openAreaM2)
    {
        Require.NotNegative(freeWaterKg);
        Require.NotNegative(openAreaM2);
        return openAreaM2 > 0 ? freeWaterKg / (openAreaM2 * FirstStageKgM2S) / Units.Day : null;
    }

    /// <summary>Fits an exponential through weighings.</summary>
    /// <param name="weighIns">Weighings in any order.</param>
    /// <returns>The fit; null with fewer than three weighings on different days, or where they do not bend towards a dry mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass that is not positive.</exception>
    /// <remarks>
    /// Model: for each time constant the dry mass and the excess are linear least squares; the time constant with the least remainder is found on 240
    /// equal ratios from a tenth of the shortest gap to ten times the span, then by golden section.
    /// Validity: second-stage drying in a steady room. Source: variable projection, Golub and Pereyra 1973; exponential drying is common practice, no
    /// source. Accuracy: exact on exact data; 1 g of scale error on six weighings over one time constant moves the dry mass by 0.5 %.
    /// </remarks>
    public static DryOutFit? Fit(IReadOnlyList<WeighIn> weighIns)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        foreach (var weighing in weighIns)
        {
            Require.Positive(weighing.MassKg);
            Require.Within(weighing.TimeDays, -1e6, 1e6, nameof(weighing.TimeDays), "days");
        }

        WeighIn[] sorted = [.. weighIns.OrderBy(w => w.TimeDays)];
        var times = sorted.Select(w => w.TimeDays).Distinct().ToArray();
        if (times.Length < 3)
        {
            return null;
        }

        var span = times[^1] - times[0];
        var gap = times.Skip(1).Zip(times, (later, earlier) => later - earlier).Min();
        var (low, high) = (Math.Log(gap / 10), Math.Log(10 * span));
        double At(int k) => low + (high - low) * k / Steps;
        var best = Enumerable.Range(0, Steps + 1).MinBy(k => Linear(sorted, Math.Exp(At(k))).Left);
        if (best is 0 or Steps)
        {
            return null;
        }

        var tau = Math.Exp(Golden(x => Linear(sorted, Math.Exp(x)).Left, At(best - 1), At(best + 1)));
        var (dry, excess, rest) = Linear(sorted, tau);
        return dry > 0 && excess > 0
            ? new DryOutFit(dry, excess, tau, times[0], sorted.Length > 3 ? Math.Sqrt(rest / sorted.Length) : null)
            {
                Covariance = DryOutCovariance.Of(sorted, excess, tau, rest),
            }
            : null;
    }

    private static (double Dry, double Excess, double Left) Linear(WeighIn[] weighIns, double tau)
    {
        var shape = weighIns.Select(w => Math.Exp(-(w.TimeDays - weighIns[0].TimeDays) / tau)).ToArray();
        var (meanShape, meanMass) = (shape.Average(), weighIns.Average(w => w.MassKg));
        double both = 0,
            own = 0;
        for (var i = 0; i < shape.Length; i++)
        {
            both += (shape[i] - meanShape) * (weighIns[i].MassKg - meanMass);
            own += (shape[i] - meanShape) * (shape[i] - meanShape);
        }

        var excess = both / own;
        var dry = meanMass - excess * meanShape;
        return (dry, excess, weighIns.Zip(shape, (w, s) => Math.Pow(w.MassKg - dry - excess * s, 2)).Sum());
    }

    private static double Golden(Func<double, double> cost, double low, double high)
    {
        var share = (Math.Sqrt(5) - 1) / 2;
        var (one, two) = (high - share * (high - low), low + share * (high - low));
        var (costOne, costTwo) = (cost(one), cost(two));
        for (var i = 0; i < 80; i++)
        {
            if (costOne < costTwo)
            {
                (high, two, costTwo) = (two, one, costOne);
                one = high - share * (high - low);
                costOne = cost(one);
            }
            else
            {
                (low, one, costOne) = (one, two, costTwo);
                two = low + share * (high - low);
                costTwo = cost(two);
            }
        }

        return (low + high) / 2;
    }
}
