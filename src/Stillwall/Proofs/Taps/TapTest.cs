using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using static System.FormattableString;

namespace Stillwall.Proofs.Taps;

/// <summary>Young's modulus and loss factor of a cast bar, from a recording of taps.</summary>
public static class TapTest
{
    // What a cast can be: the first bending mode lies between these (our choice).
    private const double LeastModulusPa = 2e8,
        GreatestModulusPa = 1e11;

    // The impact itself, and how long a bar is listened to.
    private const double SkippedS = 0.001,
        LongestS = 2;

    // With fewer, taps are also looked for in the noise (our choice).
    private const int FewTaps = 5;

    // Bands wider than these say nothing: 2 % in frequency, 4 % in modulus; half of the loss factor (our choice).
    private const double WidestFrequencyRatio = 0.02,
        WidestLossRatio = 0.5;

    // A tap further than this from the median is named: 0.5 % in frequency or half the loss factor, and five times the usual spread (our choice).
    private const double FarFrequencyRatio = 0.005,
        FarLossRatio = 0.5,
        FarSpread = 5;

    /// <summary>Looks into a recording.</summary>
    /// <param name="recording">One or more taps in the middle of the bar, a tenth of a second or more apart; the loudest channel counts.</param>
    /// <param name="bar">The bar.</param>
    /// <param name="caliperM">How far a size may be off, m, 0 or more.</param>
    /// <param name="scalesKg">How far the mass may be off, kg, 0 or more.</param>
    /// <returns>Modulus and loss factor with their bands, or why there are none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size or the mass is out of range.</exception>
    /// <remarks>
    /// Model: each tap's sound about the first bending mode as one decaying sinusoid, by straight lines through logarithm and phase of its envelope;
    /// loss factor = decrement/π; modulus after ASTM E1876-15; outliers do not count; bands: Student's over three taps or more, else the fit's own;
    /// caliper and scales as even spreads, squares added, width and thickness each once. Validity: bar free at 0.224 and 0.776 of its length. Source:
    /// ASTM E1876-15; the limits are our choice.
    /// Accuracy: 0.1 % in frequency, 2 % in loss factor on computed bars; a real bar loses some at its supports, so the loss factor is an upper
    /// bound.
    /// </remarks>
    public static TapReading Of(Recording recording, TestBar bar, double caliperM = 1e-4, double scalesKg = 1e-3)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(bar);
        Require.NotNegative(caliperM);
        Require.NotNegative(scalesKg);
        var (leastHz, greatestHz) = (bar.FrequencyHz(LeastModulusPa), bar.FrequencyHz(GreatestModulusPa));
        var samples = recording.Loudest();
        var health = ChannelHealth.Of(samples, recording.StepFraction);
        if (health.IsSilent)
        {
            return new TapReading(null, "has nothing on it; taps, loud enough", []);
        }

        if (leastHz * 2 > recording.RateHz / 2)
        {
            return new TapReading(null, Invariant($"cannot hold the sound of so short a bar ({leastHz:0} Hz and up); a higher rate, or a longer bar"), []);
        }

        List<string> warnings = health.IsClipped ? ["it is clipped: tap more softly or turn the level down; the loss factor is doubtful"] : [];
        var pieces = Pieces(samples, TapOnsets.Find(Heard(samples, recording.RateHz, greatestHz), recording.RateHz), recording.RateHz);
        if (
            pieces.Count < FewTaps
            && Pieces(samples, TapsInNoise.Find(samples, recording.RateHz, leastHz, Math.Min(greatestHz, 0.45 * recording.RateHz)), recording.RateHz)
                is var hidden
            && hidden.Count > pieces.Count
        )
        {
            pieces = hidden;
            warnings.Add("the taps stand little above the noise: the bands tell how far the figures can be trusted; tap where it is quiet for narrower ones");
        }

        if (
            pieces.Count == 0
            || TapSpectrum.FundamentalHz(
                pieces.Select(p => samples[p.From..p.To]),
                Before(samples, pieces),
                recording.RateHz,
                leastHz,
                Math.Min(greatestHz, 0.45 * recording.RateHz)
            )
                is not { } aboutHz
        )
        {
            return new TapReading(
                null,
                pieces.Count == 0
                    ? "has no tap in it; single taps with silence between them"
                    : Invariant($"rings nowhere between {leastHz:0} and {greatestHz:0} Hz, where a cast bar of these sizes does; ")
                        + "check the sizes, hang the bar at its nodes",
                []
            );
        }

        var noise = Before(samples, pieces) is { Length: > 0 } quiet ? DecayFit.NoiseOf(quiet, recording.RateHz, aboutHz) : 0;
        var fits = pieces
            .Select(p => (p.From, Fit: DecayFit.Of(samples.AsSpan(p.From, p.To - p.From), recording.RateHz, aboutHz, noise)))
            .Where(p => p.Fit is not null)
            .Select(p => (TimeS: p.From / recording.RateHz, Fit: p.Fit!))
            .ToList();
        return fits.Count == 0
            ? new TapReading(
                null,
                Invariant($"does not ring down at {aboutHz:0} Hz: what sounds there is no tapped bar; single taps with silence between them"),
                []
            )
            : Judged(fits, bar, caliperM, scalesKg, warnings);
    }

    private static TapReading Judged(List<(double TimeS, DecayFit Fit)> fits, TestBar bar, double caliperM, double scalesKg, List<string> warnings)
    {
        var isFar = Outliers(fits);
        var good = fits.Where((_, i) => !isFar[i]).Select(f => f.Fit).ToList();
        warnings.AddRange(
            fits.Select((f, i) => (f, i))
                .Where(p => isFar[p.i])
                .Select(p =>
                    Invariant($"tap {p.i + 1} at {p.f.TimeS:0.00} s is left out: {p.f.Fit.FrequencyHz:0.#} Hz and ")
                    + Invariant($"a loss factor of {p.f.Fit.LossFactor:0.0000} are far from the others")
                )
        );
        if (good.Count == 1)
        {
            warnings.Add("one tap counts: tap five times, for a band that can be trusted");
        }

        var (hertz, loss) = (good.Average(f => f.FrequencyHz), good.Average(f => f.LossFactor));
        var hertzBand = Band(good, f => f.FrequencyHz, f => f.FrequencyDeviationHz);
        var lossBand = Band(good, f => f.LossFactor, f => f.DecayDeviationPerS / (Math.PI * f.FrequencyHz));
        if (hertzBand > WidestFrequencyRatio * hertz || lossBand > WidestLossRatio * loss)
        {
            return new TapReading(
                null,
                Invariant(
                    $"is too noisy: {hertz:0} ± {hertzBand:0} Hz, loss factor {loss:0.000} ± {lossBand:0.000}; tap where it is quiet, five times or more"
                ),
                []
            );
        }

        var (modulus, density) = (bar.ModulusPa(hertz), bar.DensityKgM3);

        // Half of the 95 % band of a value that is as likely anywhere within ± a: 1.96·a/√3.
        const double even = 1.96 / 1.7320508075688772;
        double Share(double off, double size) => even * off / size;
        var (mass, length, width, thickness) = (
            Share(scalesKg, bar.MassKg),
            Share(caliperM, bar.LengthM),
            Share(caliperM, bar.WidthM),
            Share(caliperM, bar.ThicknessM)
        );
        var noise = new TapFigures(hertzBand, modulus * 2 * hertzBand / hertz, lossBand, 0);
        var sizes = modulus * Root(mass, 3 * length, width, 3 * thickness);
        var band = new TapFigures(hertzBand, Root(noise.YoungsModulusPa, sizes), lossBand, density * Root(mass, length, width, thickness));
        var taps = fits.Select((f, i) => new Tap(f.TimeS, f.Fit.FrequencyHz, f.Fit.LossFactor, isFar[i])).ToList();
        return new TapReading(new TapResult(new TapFigures(hertz, modulus, loss, density), band, noise, taps), null, warnings);
    }

    private static double Root(params double[] parts) => Math.Sqrt(parts.Sum(p => p * p));

    private static double Band(List<DecayFit> fits, Func<DecayFit, double> value, Func<DecayFit, double> deviation)
    {
        if (fits.Count < 3)
        {
            return 1.96 * Math.Sqrt(fits.Sum(f => deviation(f) * deviation(f))) / fits.Count;
        }

        var mean = fits.Average(value);
        var spread = Math.Sqrt(fits.Sum(f => Math.Pow(value(f) - mean, 2)) / (fits.Count - 1));
        return MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, fits.Count - 1, 0.975) * spread / Math.Sqrt(fits.Count);
    }

    private static bool[] Outliers(List<(double TimeS, DecayFit Fit)> fits)
    {
        if (fits.Count < 3)
        {
            return new bool[fits.Count];
        }

        var (hertz, loss) = (Median(fits.Select(f => f.Fit.FrequencyHz)), Median(fits.Select(f => f.Fit.LossFactor)));
        var (hertzSpread, lossSpread) = (
            Median(fits.Select(f => Math.Abs(f.Fit.FrequencyHz - hertz))),
            Median(fits.Select(f => Math.Abs(f.Fit.LossFactor - loss)))
        );
        return
        [
            .. fits.Select(f =>
                Math.Abs(f.Fit.FrequencyHz - hertz) > Math.Max(FarFrequencyRatio * hertz, FarSpread * hertzSpread)
                || Math.Abs(f.Fit.LossFactor - loss) > Math.Max(FarLossRatio * loss, FarSpread * lossSpread)
            ),
        ];
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[sorted.Count / 2] + sorted[(sorted.Count - 1) / 2]) / 2;
    }

    // Without the hiss above what a bar can sound; second differences would hear little else.
    private static double[] Heard(double[] samples, double rateHz, double greatestHz)
    {
        var half = (int)(rateHz / (4 * greatestHz));
        if (half < 1)
        {
            return samples;
        }

        var (smooth, sum) = (new double[samples.Length], 0.0);
        for (var i = 0; i < samples.Length + half; i++)
        {
            sum += (i < samples.Length ? samples[i] : 0) - (i - (2 * half) - 1 >= 0 ? samples[i - (2 * half) - 1] : 0);
            if (i >= half)
            {
                smooth[i - half] = sum / ((2 * half) + 1);
            }
        }

        return smooth;
    }

    private static List<(int From, int To)> Pieces(double[] samples, List<int> onsets, double rateHz)
    {
        var skip = (int)(SkippedS * rateHz);
        return
        [
            .. onsets
                .Select(
                    (at, i) =>
                        (
                            From: at + skip,
                            To: Math.Min(
                                Math.Min(samples.Length, at + (int)(LongestS * rateHz)),
                                i + 1 < onsets.Count ? onsets[i + 1] - (2 * skip) : int.MaxValue
                            )
                        )
                )
                .Where(p => p.To - p.From > 5 * skip),
        ];
    }

    // What is heard before the first tap; nothing where that is too short to say anything.
    private static double[] Before(double[] samples, List<(int From, int To)> pieces) =>
        pieces.Count > 0 && pieces[0].From > 8000 ? samples[..(pieces[0].From - 500)] : [];
}
