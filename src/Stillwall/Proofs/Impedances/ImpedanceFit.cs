using MathNet.Numerics.LinearAlgebra;

namespace Stillwall.Proofs.Impedances;

/// <summary>Finds which kind of driver a voltage ratio is of, and its values.</summary>
internal static class ImpedanceFit
{
    // Between 5 Hz and 2 kHz, where the source has something to say, and every second line: neighbours of those share little (our choice).
    private const double LeastHz = 5,
        GreatestHz = 2000,
        LeastCoherence = 0.3,
        ThinningRatio = 1.008;
    private const int FewestLines = 24;

    // Half of a normal 95 % band is 1.96 deviations; a tenth more, for the weights are estimated too (by 200 simulated recordings).
    private const double Quantile = 2.15;

    // A family with more values must explain this much more of the square sum, in variances; one that explains this much less is ruled out (our choice).
    private const double Worthwhile = 30;

    // What the method leaves over of a clean recording: no reason to look for another family.
    private const double CleanMisfit = 2e-4,
        SmearedMisfit = 5e-3;

    // About the resonance a curve that is of no family counts in full, and from this many octaves away less and less (our choice).
    private const double FullOctaves = 1.5;

    private const double Unexplained = 1.5,
        FirstDeviation = 2e-3;

    /// <summary>Fits; null where there are too few lines or no resonance is found.</summary>
    /// <param name="ratio">The voltage ratio.</param>
    /// <param name="referenceOhm">The resistor, ohm.</param>
    /// <param name="known">What is known beside.</param>
    /// <param name="near">A fit that is near; null looks for a model in the curve.</param>
    internal static ImpedanceFitted? Of(VoltageRatio ratio, double referenceOhm, KnownBeside known, ImpedanceFitted? near = null)
    {
        var lines = LinesOf(ratio);
        if (lines.Count < FewestLines || (near?.Model ?? Start(ratio, lines, referenceOhm)) is not { } start)
        {
            return null;
        }

        var search = new ImpedanceSearch(ratio, lines, referenceOhm, known);
        var found = Best(search, Weights(ratio, lines, near), start, near?.Gain ?? 1);
        return found is { } all && all.Variance > Unexplained && near is not null && !IsClean(ratio, all)
            ? search.Robust(all.Sought, AboutResonance(ratio, lines, near, all.Model.ResonanceHz), all.Model, all.Gain) is { } about
                ? about with { Rivals = all.Rivals }
                : all
            : found;
    }

    // A first look weighs all lines nearly alike, and so does every look at a driver that is not quite the model: else the few lines without noise
    // would bend the rest.
    private static double[] Weights(VoltageRatio ratio, List<int> lines, ImpedanceFitted? near)
    {
        var floor =
            near is null ? FirstDeviation
            : near.Variance > Unexplained ? near.MisfitRatio / 2
            : 0;
        return [.. lines.Select(k => 1 / Math.Sqrt((ratio.DeviationRatios[k] * ratio.DeviationRatios[k]) + (floor * floor)))];
    }

    private static double[] AboutResonance(VoltageRatio ratio, List<int> lines, ImpedanceFitted near, double resonanceHz)
    {
        double Share(int line) => Math.Min(1, FullOctaves / Math.Max(1e-9, Math.Abs(Math.Log2(line * ratio.SpacingHz / resonanceHz))));
        return [.. Weights(ratio, lines, near).Select((w, i) => w * Share(lines[i]))];
    }

    // The simplest coil first; another, and a suspension that creeps, where they explain more.
    private static ImpedanceFitted? Best(ImpedanceSearch search, double[] weights, ImpedanceModel start, double gain)
    {
        var (mayDiffer, isCoilKnown) = (search.Known.GainDeviationRatio > 0, search.Known.CoilOhm is not null);
        ImpedanceFitted? Try(CoilKind coil, bool creeps, ImpedanceModel from, bool hasGain = false) =>
            search.Robust(new ImpedanceFamily(coil, creeps, hasGain || (mayDiffer && isCoilKnown)), weights, from, gain);
        var plain = Try(CoilKind.Plain, creeps: false, start);
        if (plain is not null && IsClean(search.Ratio, plain))
        {
            return plain;
        }

        var from = plain?.Model ?? start;
        var tried = new[] { plain, Try(CoilKind.Lossy, creeps: false, from), Try(CoilKind.Semi, creeps: false, from) }.OfType<ImpedanceFitted>().ToList();
        if (Better(search, tried) is not { } still)
        {
            return null;
        }

        if (!IsClean(search.Ratio, still) && Try(still.Family.Coil, creeps: true, still.Model) is { } creeping)
        {
            tried.Add(creeping);
        }

        var best = Better(search, tried)!;
        if (mayDiffer && !isCoilKnown && !search.Ratio.IsSmeared)
        {
            // One channel louder than the other bends a curve as a lossy coil does, too; it is believed where three quarters of what was left over go by it.
            var louder = new[] { best, plain }
                .OfType<ImpedanceFitted>()
                .Distinct()
                .Select(t => Try(t.Family.Coil, t.Family.Creeps, t.Model, hasGain: true))
                .OfType<ImpedanceFitted>()
                .Where(t => t.MisfitRatio < best.MisfitRatio / 4 && Math.Abs(Math.Log(t.Gain)) > ImpedanceSearch.ShapeTellsGain);
            best = Better(search, louder) ?? best;
        }

        return best with { Rivals = [.. tried.Where(t => t != best && !IsRuledOut(search, t, best)).Select(t => t.Model)] };
    }

    private static ImpedanceFitted? Better(ImpedanceSearch search, IEnumerable<ImpedanceFitted> tried) =>
        tried.Aggregate((ImpedanceFitted?)null, (best, next) => best is null || Gained(search, best, next) > Worthwhile ? next : best);

    private static bool IsRuledOut(ImpedanceSearch search, ImpedanceFitted one, ImpedanceFitted best) => Gained(search, one, best) > Worthwhile;

    private static double Gained(ImpedanceSearch search, ImpedanceFitted from, ImpedanceFitted to) =>
        search.Lines.Count * Math.Log(from.Variance / Math.Max(1e-300, to.Variance));

    private static bool IsClean(VoltageRatio ratio, ImpedanceFitted fitted) => fitted.MisfitRatio < (ratio.IsSmeared ? SmearedMisfit : CleanMisfit);

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

    /// <summary>
    /// Half of each figure's 95 % band: by the slopes of the figures against the values, and by how far the figures of other families go that the
    /// recording does not rule out.
    /// </summary>
    internal static ImpedanceFigures Bands(ImpedanceFitted fitted)
    {
        var at = fitted.At;
        var (here, rivals) = (fitted.Model.Figures(), fitted.Rivals.Select(r => r.Figures()).ToList());
        double Band(Func<ImpedanceFigures, double> figure)
        {
            double At(int i, double by) => figure(fitted.Family.Unpacked(ImpedanceSearch.Moved(at, i, by)).Figures());
            var slopes = Vector<double>.Build.Dense(at.Length, i => (At(i, 1e-4) - At(i, -1e-4)) / 2e-4);
            var noise = Quantile * Math.Sqrt(Math.Max(0, slopes * (fitted.Covariance * slopes)));
            var off = rivals.Select(r => Math.Abs(figure(r) - figure(here))).Append(0).Max();
            return Math.Sqrt(noise * noise + off * off);
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
}
