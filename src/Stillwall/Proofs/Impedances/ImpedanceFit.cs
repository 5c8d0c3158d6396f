using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Complex = System.Numerics.Complex;

namespace Stillwall.Proofs.Impedances;

/// <summary>Fits the model to a voltage ratio.</summary>
internal static class ImpedanceFit
{
    // Between 5 Hz and 2 kHz, where the source has something to say, and every second line: neighbours of those share little (our choice).
    private const double LeastHz = 5,
        GreatestHz = 2000,
        LeastCoherence = 0.3,
        ThinningRatio = 1.008;
    private const int FewestLines = 24;

    // Lines at twice the distance share 1/36 of their square, on either side.
    private const double SharedFactor = 1 + (2.0 / 36);

    // Half of a normal 95 % band is 1.96 deviations; a tenth more, for the weights are estimated too (by 200 simulated recordings).
    private const double Quantile = 2.15;

    // Residuals of the ratio that are worth a word.
    private const double LeastHum = 1e-3;

    // A lossy coil must explain this much more of the square sum, in variances, and the plain one must miss by more than this.
    private const double Worthwhile = 30,
        WorthwhileMisfit = 2e-4,
        SmearedMisfit = 5e-3,
        Unexplained = 1.5,
        FirstDeviation = 2e-3;

    /// <summary>A fit: the model, the covariance of the logarithms of its values, and what it leaves over.</summary>
    internal sealed record Fitted(ImpedanceModel Model, Matrix<double> Covariance, double Variance, double MisfitRatio, IReadOnlyList<int> LeftOut);

    /// <summary>Fits; null where there are too few lines or no resonance is found.</summary>
    /// <param name="near">A fit that is near; null looks for a model in the curve.</param>
    internal static Fitted? Of(VoltageRatio ratio, double referenceOhm, Fitted? near = null)
    {
        var lines = LinesOf(ratio);
        if (lines.Count < FewestLines || (near?.Model ?? Start(ratio, lines, referenceOhm)) is not { } start)
        {
            return null;
        }

        // A first look weighs all lines nearly alike, and so does every look at a driver that is not quite the model: else the few lines without
        // noise would bend the rest.
        var floor =
            near is null ? FirstDeviation
            : near.Variance > Unexplained ? near.MisfitRatio / 2
            : 0;
        var weights = lines.Select(k => 1 / Math.Sqrt((ratio.DeviationRatios[k] * ratio.DeviationRatios[k]) + (floor * floor))).ToArray();
        var plain = Robust(ratio, lines, referenceOhm, weights, Packed(start, isLossy: false));
        if (plain is not null && (plain.Variance < Unexplained || plain.MisfitRatio < (ratio.IsSmeared ? SmearedMisfit : WorthwhileMisfit)))
        {
            return plain;
        }

        var whole = start.InductanceH + start.LossyInductanceH;
        var guess = start.LossOhm > 0 ? start : start with { InductanceH = 0.4 * whole, LossyInductanceH = whole, LossOhm = 2 * start.DcResistanceOhm };
        var lossy = Robust(ratio, lines, referenceOhm, weights, Packed(guess, isLossy: true));
        if (plain is null)
        {
            return lossy;
        }

        var isBetter = lossy is not null && lines.Count * Math.Log(plain.Variance / lossy.Variance) > Worthwhile;
        return isBetter ? lossy : plain;
    }

    // The lines that are used: every second one, then thinned to a fixed ratio.
    private static List<int> LinesOf(VoltageRatio ratio)
    {
        var lines = new List<int>();
        var last = 0.0;
        for (var k = Math.Max(3, (int)Math.Ceiling(LeastHz / ratio.SpacingHz)); k < ratio.Ratios.Length - 3 && k * ratio.SpacingHz <= GreatestHz; k++)
        {
            if (
                k - last >= 2
                && k >= last * ThinningRatio
                && ratio.PowerDensityRatios[k] > VoltageRatio.AudibleRatio
                && ratio.CoherenceFractions[k] > LeastCoherence
                && ratio.DeviationRatios[k] > 0
            )
            {
                lines.Add(k);
                last = k;
            }
        }

        return lines;
    }

    // From the curve itself: the greatest real part is at the resonance, its width there is the mechanical Q.
    private static ImpedanceModel? Start(VoltageRatio ratio, List<int> lines, double referenceOhm)
    {
        var curve = lines
            .Select(k => (Hz: k * ratio.SpacingHz, Z: referenceOhm * ratio.Ratios[k] / (1 - ratio.Ratios[k])))
            .Where(p => double.IsFinite(p.Z.Real) && double.IsFinite(p.Z.Imaginary))
            .ToList();
        var low = curve.Where(p => p.Hz < 500).ToList();
        if (low.Count < FewestLines / 2)
        {
            return null;
        }

        var peak = Enumerable.Range(0, low.Count).MaxBy(i => low[Math.Max(0, i - 1)].Z.Real + low[i].Z.Real + low[Math.Min(low.Count - 1, i + 1)].Z.Real);
        var reals = low.Select(p => p.Z.Real).Order().ToList();
        var re = Math.Max(reals[reals.Count / 20], referenceOhm * 1e-4);
        var res = low[peak].Z.Real - re;
        if (res < 0.05 * re)
        {
            return null;
        }

        var half = low.Where(p => p.Z.Real > re + (res / 2)).ToList();
        var width = Math.Max(half[^1].Hz - half[0].Hz, 2 * ratio.SpacingHz);
        var (top, at) = (curve[^1].Z.Imaginary, curve[^1].Hz);
        return new ImpedanceModel(re, low[peak].Hz, Math.Clamp(low[peak].Hz / width, 0.3, 50), res, Math.Clamp(top / (2 * Math.PI * at), 1e-6, 0.1));
    }

    // Tukey's weights: a line that lies far out, as one on the power line's hum does, has no say.
    private static Fitted? Robust(VoltageRatio ratio, List<int> lines, double referenceOhm, double[] weights, double[] start)
    {
        var spread = Enumerable.Repeat(1.0, lines.Count).ToArray();
        var at = start;
        Matrix<double>? covariance = null;
        var (variance, residuals) = (0.0, Array.Empty<Complex>());
        for (var round = 0; round < 4; round++)
        {
            var whitened = weights.Zip(spread, (w, s) => w * Math.Sqrt(s)).ToArray();
            if (Least(ratio, lines, referenceOhm, whitened, at) is not { } found)
            {
                return null;
            }

            (at, covariance) = found;
            residuals = Residuals(ratio, lines, referenceOhm, weights, at);
            var scale = Math.Max(1e-12, Median(residuals.Select(r => r.Magnitude)) / 1.1774);
            variance = residuals.Zip(spread, (r, s) => s * Square(r)).Sum() / Math.Max(1, (2 * spread.Sum()) - at.Length);
            var next = Spread([.. residuals.Select(r => r.Magnitude / scale)]);
            var isSettled = round > 0 && next.Zip(spread, (a, b) => Math.Abs(a - b)).Max() < 0.01;
            spread = next;
            if (isSettled)
            {
                break;
            }
        }

        var misfit = Math.Sqrt(residuals.Zip(weights, (r, w) => Square(r) / (w * w)).Zip(spread, (e, s) => s * e).Sum() / spread.Sum());
        var left = lines.Where((_, i) => spread[i] == 0 && residuals[i].Magnitude > LeastHum * weights[i]).ToList();
        return new Fitted(Unpacked(at), covariance! * SharedFactor, variance, misfit, left);
    }

    // Hum is a line or two wide; a longer stretch that misses is the model's doing, and keeps its say.
    private static double[] Spread(double[] misses)
    {
        var spread = Array.ConvertAll(misses, Tukey);
        for (var i = 0; i < spread.Length; i++)
        {
            var end = i;
            while (end < spread.Length && misses[end] > Far / 2)
            {
                end++;
            }

            if (end - i > WidestHum)
            {
                Array.Fill(spread, 1, i, end - i);
            }

            i = Math.Max(i, end - 1);
        }

        return spread;
    }

    private static double Tukey(double r) => r >= Far ? 0 : Math.Pow(1 - (r / Far * (r / Far)), 2);

    // For complex residuals, in standard deviations of one part: cuts off one line in a thousand by chance.
    private const double Far = 6;
    private const int WidestHum = 4;

    private static (double[] At, Matrix<double> Covariance)? Least(VoltageRatio ratio, List<int> lines, double referenceOhm, double[] weights, double[] start)
    {
        var count = 2 * lines.Count;
        Vector<double> Model(Vector<double> p, Vector<double> x)
        {
            var r = Residuals(ratio, lines, referenceOhm, weights, [.. p]);
            return Vector<double>.Build.Dense(count, i => i % 2 == 0 ? r[i / 2].Real : r[i / 2].Imaginary);
        }

        var zero = Vector<double>.Build.Dense(count);
        var objective = ObjectiveFunction.NonlinearModel(Model, Vector<double>.Build.Dense(count, i => i), zero, accuracyOrder: 2);
        try
        {
            var found = new LevenbergMarquardtMinimizer(
                gradientTolerance: 1e-9,
                stepTolerance: 1e-8,
                functionTolerance: 1e-9,
                maximumIterations: 60
            ).FindMinimum(objective, Vector<double>.Build.Dense(start));
            return found.MinimizingPoint.Any(v => !double.IsFinite(v)) || found.Covariance is null ? null : ([.. found.MinimizingPoint], found.Covariance);
        }
        catch (Exception e) when (e is MathNet.Numerics.NonConvergenceException or OptimizationException or InvalidOperationException)
        {
            return null;
        }
    }

    // Measured less modelled ratio, the model seen through the same window, in standard deviations.
    private static Complex[] Residuals(VoltageRatio ratio, List<int> lines, double referenceOhm, double[] weights, double[] packed)
    {
        var model = Unpacked(packed);
        return [.. lines.Select((k, i) => weights[i] * (ratio.Ratios[k] - Seen(model, referenceOhm, k, ratio.SpacingHz, ratio.IsSmeared)))];
    }

    /// <summary>The model's ratio on one line, smeared by the window as the measured one is.</summary>
    /// <remarks>
    /// Averaging Hann-windowed segments smears the ratio by the squared magnitude of the window's transform. Its second and fourth moments are both ⅓
    /// line² and line⁴ (by Parseval's theorem from the window's slopes), so three points with weights ⅙, ⅔, ⅙ do the same to any curve of fifth
    /// order.
    /// </remarks>
    private static Complex Seen(ImpedanceModel model, double referenceOhm, int line, double spacingHz, bool isSmeared)
    {
        Complex Ratio(int k)
        {
            var z = model.AtOhm(k * spacingHz);
            return z / (z + referenceOhm);
        }

        return isSmeared ? ((4 * Ratio(line)) + Ratio(line - 1) + Ratio(line + 1)) / 6 : Ratio(line);
    }

    // Logarithms keep every value positive and make the covariance one of relative errors.
    private static double[] Packed(ImpedanceModel m, bool isLossy)
    {
        double[] plain = [Math.Log(m.DcResistanceOhm), Math.Log(m.ResonanceHz), Math.Log(m.MechanicalQ), Math.Log(m.MotionalOhm), Math.Log(m.InductanceH)];
        return isLossy ? [.. plain, Math.Log(m.LossyInductanceH), Math.Log(m.LossOhm)] : [.. plain[..4], Math.Log(m.InductanceH + m.LossyInductanceH)];
    }

    private static ImpedanceModel Unpacked(double[] p)
    {
        double At(int i) => Math.Exp(Math.Clamp(p[i], -40, 40));
        return new ImpedanceModel(
            DcResistanceOhm: At(0),
            ResonanceHz: At(1),
            MechanicalQ: At(2),
            MotionalOhm: At(3),
            InductanceH: At(4),
            LossyInductanceH: p.Length > 5 ? At(5) : 0,
            LossOhm: p.Length > 5 ? At(6) : 0
        );
    }

    /// <summary>Half of each figure's 95 % band, by the slopes of the figures against the logarithms of the values.</summary>
    internal static ImpedanceFigures Bands(Fitted fitted)
    {
        var at = Packed(fitted.Model, fitted.Model.LossOhm > 0);
        double Band(Func<ImpedanceFigures, double> figure)
        {
            var slopes = Vector<double>.Build.Dense(at.Length, i => (figure(Moved(at, i, 1e-4).Figures()) - figure(Moved(at, i, -1e-4).Figures())) / 2e-4);
            return Quantile * Math.Sqrt(Math.Max(0, slopes * (fitted.Covariance * slopes)));
        }

        return new ImpedanceFigures(
            ResonanceHz: Band(f => f.ResonanceHz),
            QMechanical: Band(f => f.QMechanical),
            QElectrical: Band(f => f.QElectrical),
            QTotal: Band(f => f.QTotal),
            DcResistanceOhm: Band(f => f.DcResistanceOhm),
            InductanceH: Band(f => f.InductanceH),
            PeakOhm: Band(f => f.PeakOhm)
        );
    }

    private static ImpedanceModel Moved(double[] at, int i, double by)
    {
        var moved = (double[])at.Clone();
        moved[i] += by;
        return Unpacked(moved);
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static double Square(Complex value) => (value.Real * value.Real) + (value.Imaginary * value.Imaginary);
}
