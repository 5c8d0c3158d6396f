using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Complex = System.Numerics.Complex;

namespace Stillwall.Proofs.Impedances;

/// <summary>Seeks the values of one family that leave least of a voltage ratio over.</summary>
/// <param name="Ratio">The voltage ratio.</param>
/// <param name="Lines">Its lines that are used.</param>
/// <param name="ReferenceOhm">The resistor, ohm.</param>
/// <param name="Known">What is known beside.</param>
internal sealed record ImpedanceSearch(VoltageRatio Ratio, IReadOnlyList<int> Lines, double ReferenceOhm, KnownBeside Known)
{
    // Lines at twice the distance share 1/36 of their square, on either side.
    private const double SharedFactor = 1 + (2.0 / 36);

    // Residuals of the ratio that are worth a word.
    private const double LeastHum = 1e-3;

    // For complex residuals, in standard deviations of one part: cuts off one line in a thousand by chance.
    private const double Far = 6;
    private const int WidestHum = 4;

    // What is left over beyond noise is the model's doing, and neighbours miss alike: over half an octave they count as one (our choice).
    private const double Unexplained = 1.5,
        AlikeRatio = 1.4142;

    /// <summary>How far the shape of a curve is trusted to tell the gain of one channel over the other (our choice).</summary>
    internal const double ShapeTellsGain = 0.005;

    /// <summary>Seeks with Tukey's weights: a line that lies far out, as one on the power line's hum does, has no say.</summary>
    /// <param name="family">The family.</param>
    /// <param name="weights">Weight of each line, one over its standard deviation.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="gain">Gain to begin with.</param>
    internal ImpedanceFitted? Robust(ImpedanceFamily family, double[] weights, ImpedanceModel start, double gain)
    {
        var spread = Enumerable.Repeat(1.0, Lines.Count).ToArray();
        var at = family.Packed(start, gain);
        var (variance, residuals) = (1.0, Array.Empty<Complex>());
        for (var round = 0; round < 4; round++)
        {
            var whitened = weights.Zip(spread, (w, s) => w * Math.Sqrt(s)).ToArray();
            if (Least(family, whitened, Math.Sqrt(variance * Alike(variance)), at) is not { } found)
            {
                return null;
            }

            at = found;
            residuals = Residuals(family, weights, at);
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
        var left = Lines.Where((_, i) => spread[i] == 0 && residuals[i].Magnitude > LeastHum * weights[i]).ToList();
        var inherent = weights.Zip(spread, (w, s) => w * Math.Sqrt(s)).ToArray();
        var open = family with { HasGain = Known.GainDeviationRatio > 0 };
        var full = family == open ? at : open.Packed(family.Unpacked(at), 1);
        return Covariance(open, inherent, full, variance, family.HasGain) is { } covariance
            ? new ImpedanceFitted(open, full, covariance, variance, misfit, left) { Sought = family }
            : null;
    }

    private double[]? Least(ImpedanceFamily family, double[] weights, double deviation, double[] start)
    {
        Vector<double> Model(Vector<double> p, Vector<double> x) => Vector<double>.Build.DenseOfEnumerable(Misses(family, weights, deviation, [.. p]));
        var count = Misses(family, weights, deviation, start).Count;
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
            return found.MinimizingPoint.Any(v => !double.IsFinite(v)) ? null : [.. found.MinimizingPoint];
        }
        catch (Exception e) when (e is MathNet.Numerics.NonConvergenceException or OptimizationException or InvalidOperationException)
        {
            return null;
        }
    }

    // The lines' parts, and after them how far the values are from what is known beside; that counts as much as a line that is off by as many deviations.
    private List<double> Misses(ImpedanceFamily family, double[] weights, double deviation, double[] at)
    {
        var misses = new List<double>(2 * Lines.Count + 2);
        foreach (var r in Residuals(family, weights, at))
        {
            misses.Add(r.Real);
            misses.Add(r.Imaginary);
        }

        misses.AddRange(Beside(family, at).Select(m => m * deviation));
        return misses;
    }

    private IEnumerable<double> Beside(ImpedanceFamily family, double[] at)
    {
        if (family.HasGain)
        {
            yield return Math.Log(family.GainOf(at)) / Known.GainDeviationRatio;
        }

        if (Known.CoilOhm is { } ohm)
        {
            yield return (Math.Exp(at[0]) - ohm) / Known.CoilDeviationOhm;
        }
    }

    private Matrix<double>? Covariance(ImpedanceFamily family, double[] weights, double[] at, double variance, bool isGainFound)
    {
        var scale = 1 / Math.Sqrt(variance * Alike(variance) * SharedFactor);
        var columns = Enumerable
            .Range(0, at.Length)
            .Select(i =>
            {
                var (more, less) = (Moved(at, i, 1e-5), Moved(at, i, -1e-5));
                var (a, b) = (Misses(family, weights, 1, more), Misses(family, weights, 1, less));
                var data = 2 * Lines.Count;
                return a.Zip(b).Select((p, k) => (p.First - p.Second) / 2e-5 * (k < data ? scale : 1)).ToArray();
            });
        var slopes = Matrix<double>.Build.DenseOfColumnArrays(columns);
        var inverse = slopes.TransposeThisAndMultiply(slopes).PseudoInverse();
        return !inverse.Enumerate().All(double.IsFinite) ? null
            : family.HasGain ? WithGainInDoubt(inverse, family.Gain, Math.Exp(at[0]), isGainFound)
            : inverse;
    }

    // A gain that was not sought may be anything that two knobs set by hand leave. That a curve's shape tells the gain is trusted to little more: a
    // real coil and suspension are not quite any family's (our choice).
    private Matrix<double> WithGainInDoubt(Matrix<double> covariance, int gain, double coilOhm, bool isFound)
    {
        var byMeter = Known.CoilOhm is null ? double.PositiveInfinity : Known.CoilDeviationOhm / coilOhm / (1 + (coilOhm / ReferenceOhm));
        var (least, found) = (isFound ? Math.Min(ShapeTellsGain, byMeter) : Known.GainDeviationRatio, covariance[gain, gain]);
        var moves = covariance.Column(gain);
        return found > 0 && found < least * least ? covariance + (moves.OuterProduct(moves) * ((least * least) - found) / (found * found)) : covariance;
    }

    // How many lines count as one.
    private double Alike(double variance) =>
        variance > Unexplained ? Math.Max(1, Lines.Count * Math.Log(AlikeRatio) / Math.Log((double)Lines[^1] / Lines[0])) : 1;

    /// <summary>Values with one of them moved.</summary>
    internal static double[] Moved(double[] at, int i, double by)
    {
        var moved = (double[])at.Clone();
        moved[i] += by;
        return moved;
    }

    // Measured less modelled ratio, the model seen through the same window, in standard deviations.
    private Complex[] Residuals(ImpedanceFamily family, double[] weights, double[] packed)
    {
        var (model, gain) = (family.Unpacked(packed), family.GainOf(packed));
        return [.. Lines.Select((k, i) => weights[i] * (Ratio.Ratios[k] - (gain * Seen(model, k))))];
    }

    /// <summary>The model's ratio on one line, smeared by the window as the measured one is.</summary>
    /// <remarks>
    /// Averaging Hann-windowed segments smears the ratio by the squared magnitude of the window's transform. Its second and fourth moments are both ⅓
    /// line² and line⁴ (by Parseval's theorem from the window's slopes), so three points with weights ⅙, ⅔, ⅙ do the same to any curve of fifth
    /// order.
    /// </remarks>
    private Complex Seen(ImpedanceModel model, int line)
    {
        Complex At(int k)
        {
            var z = model.AtOhm(k * Ratio.SpacingHz);
            return z / (z + ReferenceOhm);
        }

        return Ratio.IsSmeared ? ((4 * At(line)) + At(line - 1) + At(line + 1)) / 6 : At(line);
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

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static double Square(Complex value) => (value.Real * value.Real) + (value.Imaginary * value.Imaginary);
}

/// <summary>What was found for one family.</summary>
/// <param name="Family">The family.</param>
/// <param name="At">Its values.</param>
/// <param name="Covariance">Their covariance.</param>
/// <param name="Variance">What is left over, in variances of the noise.</param>
/// <param name="MisfitRatio">The same of the voltage ratio, root mean square.</param>
/// <param name="LeftOut">Lines without a say.</param>
internal sealed record ImpedanceFitted(
    ImpedanceFamily Family,
    double[] At,
    Matrix<double> Covariance,
    double Variance,
    double MisfitRatio,
    IReadOnlyList<int> LeftOut
)
{
    /// <summary>The family whose values were sought; what differs in the gain counts for the bands alone.</summary>
    internal ImpedanceFamily Sought { get; init; } = Family;

    /// <summary>The model.</summary>
    internal ImpedanceModel Model { get; } = Family.Unpacked(At);

    /// <summary>Gain of the load's channel over the source's.</summary>
    internal double Gain { get; } = Family.GainOf(At);

    /// <summary>Other families that the recording does not rule out.</summary>
    internal IReadOnlyList<ImpedanceModel> Rivals { get; init; } = [];
}
