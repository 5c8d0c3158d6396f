using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>One layer of a wall that heat passes through.</summary>
/// <param name="PowerWM3">Heat that a volume of it gives off while it sets, W/m³, 0 or more.</param>
/// <param name="StartRiseK">How much warmer than the air it is at the start, K.</param>
internal sealed record HeatLayer(double ThicknessM, double ConductivityWMK, double HeatCapacityJM3K, double PowerWM3 = 0, double StartRiseK = 0);

/// <summary>How warm a wall gets, and where its heat went until then.</summary>
/// <param name="PeakRiseK">Greatest rise over the air anywhere in the wall, K.</param>
/// <param name="PeakTimeS">When that is, from the start of the release, s.</param>
/// <param name="ReleasedJM2">Heat released until then, per area of wall, J/m².</param>
/// <param name="StoredJM2">Heat that is in the wall then beyond what was in it at the start, J/m².</param>
/// <param name="LostJM2">Heat that the faces have passed to the air until then, J/m².</param>
internal sealed record WallWarming(double PeakRiseK, double OuterFaceRiseK, double PeakTimeS, double ReleasedJM2, double StoredJM2, double LostJM2);

/// <summary>Heat through a wall over time: layers that conduct, store and release it, between two faces that lose it to the air.</summary>
internal static class TransientWall
{
    /// <summary>Cells in each layer that releases heat (our choice).</summary>
    public const int CellsInSource = 16;

    /// <summary>Cells in every other layer (our choice).</summary>
    public const int CellsElsewhere = 4;

    private const int StepsOfRelease = 100;
    private const double Unchanged = 1e-12;
    private const int MostSteps = 100 * StepsOfRelease;

    /// <summary>Warms a wall from the air's temperature, or what its layers start with, until it is past its peak.</summary>
    /// <param name="outerLossWM2K">Heat that the outer face passes to the air, W/(m²·K), 0 or more.</param>
    /// <param name="innerLossWM2K">Heat that the inner face passes to the air, W/(m²·K); 0 while the inner sleeve is closed.</param>
    /// <returns>The warming; null where the wall is still getting warmer after a hundred times the release.</returns>
    /// <remarks>
    /// Model: one-dimensional conduction in finite volumes, 16 in a layer that releases heat and 4 in every other, with the trapezoidal rule (Crank
    /// and Nicolson) in a hundred steps of the release.
    /// Validity: walls wide against their thickness; constant properties. Source: Crank and Nicolson 1947 (from memory); number of cells and steps
    /// our choice.
    /// Accuracy: 0.1 % of the rise against the exact series of a slab; heat released, stored and lost balance to rounding.
    /// </remarks>
    public static WallWarming? Warm(IReadOnlyList<HeatLayer> layers, double releaseS, double outerLossWM2K, double innerLossWM2K = 0)
    {
        Check(layers);
        Require.Positive(releaseS);
        Require.NotNegative(outerLossWM2K);
        Require.NotNegative(innerLossWM2K);
        var wall = new Cells(layers, outerLossWM2K, innerLossWM2K, releaseS / StepsOfRelease);
        var (rise, next) = (wall.Start.ToArray(), new double[wall.Count]);
        double lost = 0;
        for (var step = 0; step < MostSteps; step++)
        {
            wall.Advance(rise, next, step < StepsOfRelease);
            if (step >= StepsOfRelease && next.Max() <= rise.Max() * (1 + Unchanged))
            {
                return Told(step);
            }

            lost += wall.LossOver(rise, next);
            (rise, next) = (next, rise);
        }

        return null;

        WallWarming Told(int steps) =>
            new(
                rise.Max(),
                wall.OuterFace(rise),
                steps * releaseS / StepsOfRelease,
                releaseS * layers.Sum(l => l.PowerWM3 * l.ThicknessM),
                rise.Select((r, i) => (r - wall.Start[i]) * wall.Capacity[i]).Sum(),
                lost
            );
    }

    /// <summary>The same wall over time, from the start of the release on.</summary>
    /// <param name="outerLossWM2K">Heat that the outer face passes to the air, W/(m²·K), 0 or more.</param>
    /// <returns>Time, s, and rise over the air of the warmest place and of the outer face, K, after every step.</returns>
    /// <remarks>Model: as <see cref="Warm"/>, the inner face closed. Source: as that.</remarks>
    public static IReadOnlyList<(double TimeS, double WarmestK, double OuterFaceK)> Course(
        IReadOnlyList<HeatLayer> layers,
        double releaseS,
        double outerLossWM2K,
        int releasesCount
    )
    {
        Check(layers);
        Require.Positive(releaseS);
        Require.NotNegative(outerLossWM2K);
        Require.Within(releasesCount, 1, 100, nameof(releasesCount));
        var wall = new Cells(layers, outerLossWM2K, 0, releaseS / StepsOfRelease);
        var (rise, next) = (wall.Start.ToArray(), new double[wall.Count]);
        List<(double, double, double)> course = [(0, rise.Max(), wall.OuterFace(rise))];
        for (var step = 0; step < releasesCount * StepsOfRelease; step++)
        {
            wall.Advance(rise, next, step < StepsOfRelease);
            (rise, next) = (next, rise);
            course.Add(((step + 1) * releaseS / StepsOfRelease, rise.Max(), wall.OuterFace(rise)));
        }

        return course;
    }

    private static void Check(IReadOnlyList<HeatLayer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        foreach (var layer in layers)
        {
            Require.Positive(layer.ThicknessM);
            Require.Positive(layer.ConductivityWMK);
            Require.Positive(layer.HeatCapacityJM3K);
            Require.NotNegative(layer.PowerWM3);
            Require.Within(layer.StartRiseK, -100, 100, nameof(layer.StartRiseK), "K");
        }

        if (!layers.Any(l => l.PowerWM3 > 0))
        {
            throw new ArgumentException("accepted: at least one layer that releases heat", nameof(layers));
        }
    }

    // Cells per area of wall. The system of one step never changes, so it is factorised once.
    private sealed class Cells
    {
        private readonly double[] source,
            pass,
            diagonal,
            right;
        private readonly double step,
            outer,
            inner;

        internal Cells(IReadOnlyList<HeatLayer> layers, double outer, double inner, double step)
        {
            var cells = layers.SelectMany(l => Enumerable.Repeat((Layer: l, Size: l.ThicknessM / CellsIn(l)), CellsIn(l))).ToList();
            Count = cells.Count;
            this.step = step;
            Capacity = [.. cells.Select(c => c.Size * c.Layer.HeatCapacityJM3K)];
            Start = [.. cells.Select(c => c.Layer.StartRiseK)];
            source = [.. cells.Select(c => c.Size * c.Layer.PowerWM3)];
            double Half(int i) => cells[i].Size / 2 / cells[i].Layer.ConductivityWMK;
            pass = [.. Enumerable.Range(0, Count - 1).Select(i => 1 / (Half(i) + Half(i + 1)))];
            this.outer = Through(outer, Half(0));
            this.inner = Through(inner, Half(Count - 1));
            OuterShare = outer > 0 ? this.outer / outer : 1;
            right = new double[Count];
            diagonal = new double[Count];
            for (var i = 0; i < Count; i++)
            {
                diagonal[i] = Capacity[i] / step + Leaving(i) / 2;
                diagonal[i] -= i == 0 ? 0 : pass[i - 1] * pass[i - 1] / 4 / diagonal[i - 1];
            }
        }

        internal int Count { get; }

        internal double[] Capacity { get; }

        internal double[] Start { get; }

        private double OuterShare { get; }

        internal double OuterFace(double[] rise) => rise[0] * OuterShare;

        internal double LossOver(double[] from, double[] to) => step / 2 * (outer * (from[0] + to[0]) + inner * (from[^1] + to[^1]));

        internal void Advance(double[] from, double[] to, bool releases)
        {
            for (var i = 0; i < Count; i++)
            {
                var arriving = (i > 0 ? pass[i - 1] * from[i - 1] : 0) + (i < Count - 1 ? pass[i] * from[i + 1] : 0);
                right[i] =
                    Capacity[i] / step * from[i]
                    + (arriving - Leaving(i) * from[i]) / 2
                    + (releases ? source[i] : 0)
                    + (i > 0 ? pass[i - 1] / 2 / diagonal[i - 1] * right[i - 1] : 0);
            }

            to[^1] = right[^1] / diagonal[^1];
            for (var i = Count - 2; i >= 0; i--)
            {
                to[i] = (right[i] + pass[i] / 2 * to[i + 1]) / diagonal[i];
            }
        }

        private double Leaving(int i) => (i > 0 ? pass[i - 1] : outer) + (i < Count - 1 ? pass[i] : inner);

        private static double Through(double loss, double half) => loss > 0 ? 1 / (1 / loss + half) : 0;

        private static int CellsIn(HeatLayer layer) => layer.PowerWM3 > 0 ? CellsInSource : CellsElsewhere;
    }
}
