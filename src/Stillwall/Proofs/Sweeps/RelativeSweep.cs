using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Spectra;
using static System.FormattableString;

namespace Stillwall.Proofs.Sweeps;

/// <summary>How a recorded sweep is looked into.</summary>
/// <param name="PointsPerOctaveCount">Bands in an octave, 1 to 96.</param>
/// <param name="GateS">How long the answer is listened to after its peak, s.</param>
public sealed record SweepSettings(int PointsPerOctaveCount = 24, double GateS = 1.5);

/// <summary>Relative response from a recording of a played signal.</summary>
public static class RelativeSweep
{
    /// <summary>Highest frequency that is looked at, Hz.</summary>
    public const double GreatestHz = 5000;

    // What stands out less is not the played signal; arrival may drift this much over a ratio of e before the rates are taken as different (our choice).
    private const double LeastProminence = 20,
        GreatestDriftS = 0.03,
        LeastTogether = 0.5;

    private const string NotPlayed = "does not hold what was played: the file that was played, recorded loud enough, both at their true rates";

    // Less than this is no answer to what was played (our choice).
    private const double LeastSignalToNoiseDb = 3;

    // A file at 44.1 kHz that says 96 kHz is off by this much and a little less.
    private const double GreatestWrongRatePercent = 60;

    // The response is worth telling where the played energy in a ratio of frequencies is within 30 dB of its greatest (our choice).
    private const double LeastShare = 1e-3;

    // The circle: 1.5 s gate and 24 points an octave want lines 0.09 Hz apart.
    private const int GatedLength = 1 << 17;
    private const double LongestBeforeS = 0.4;

    /// <summary>Looks into a recording.</summary>
    /// <param name="recorded">The recording; its loudest channel counts.</param>
    /// <param name="played">What was played, as a file.</param>
    /// <param name="settings">Bands and gate.</param>
    /// <returns>The response and what goes with it, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A setting out of range.</exception>
    /// <remarks>
    /// Model: both at 12 kHz, deconvolved in the frequency domain, aligned at the greatest of the answer, gated from before it (short of the second
    /// harmonic) to the gate after it, energy averaged in fractional octaves; harmonics two to five by their lead L·ln k; noise from parts of the
    /// answer as long as the gate where nothing of the signal can be. Validity: 5 Hz to 5 kHz, within the span that was played; two clocks may differ
    /// by 200 ppm. Source: Farina 2000 (from memory); bands IEC 61260-1:2014; gate and limits are our choice.
    /// Accuracy: 0.1 dB from 20 to 400 Hz on computed recordings with noise 50 dB down. The microphone's own response is in it.
    /// </remarks>
    public static SweepReading Of(Recording recorded, Recording played, SweepSettings settings)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        ArgumentNullException.ThrowIfNull(played);
        ArgumentNullException.ThrowIfNull(settings);
        Require.Within(settings.GateS, 0.02, 5, nameof(settings.GateS), "s");
        var (warnings, isMatched) = (new List<string>(), false);
        var (r, s) = (At(recorded), At(played));
        if (TroubleOf(recorded, played, warnings) is { } trouble)
        {
            return new SweepReading(null, trouble, []);
        }

        var law = SweepLaw.Of(s, Resampling.BassRateHz);
        if (law is null && ClockOffset.Ratio(r, s) is { } apart)
        {
            r = ClockOffset.Removed(r, apart);
            warnings.Add(
                Invariant($"the recorder's clock runs {Math.Abs(apart) * 1e6:0} ppm {(apart > 0 ? "faster" : "slower")} than the player's, ")
                    + "as both halves of the recording tell: taken out"
            );
            isMatched = true;
        }

        var length = FourierTransform.PowerOfTwo(
            r.Length + (int)((law?.HarmonicLeadS(6) ?? 1) * Resampling.BassRateHz) + (int)(2 * settings.GateS * Resampling.BassRateHz) + s.Length / 4
        );
        length = Math.Max(length, FourierTransform.PowerOfTwo(s.Length));
        var (transfer, power) = Deconvolution.Of(r, s, length);
        var response = new Response(FourierTransform.Signal(transfer), Resampling.BassRateHz);
        if (response.Prominence() < LeastProminence)
        {
            return new SweepReading(null, NotPlayed, []);
        }

        var (fromHz, toHz) = Span(power, Resampling.BassRateHz / length);
        if (law is null)
        {
            warnings.Add($"what was played is no exponential sweep: harmonics stay unknown{(isMatched ? "" : ", and two clocks that differ cost up to 1 dB")}");
        }
        else
        {
            (fromHz, toHz) = (Math.Max(fromHz, law.FromHz), law.ToHz < 0.9 * SweepLaw.FollowedRatio * Resampling.BassRateHz ? Math.Min(toHz, law.ToHz) : toHz);
        }

        if (toHz < 1.1 * fromHz)
        {
            return new SweepReading(null, "cannot be compared: the played file covers no span of frequencies; a sweep", []);
        }

        if (law is not null && Drift(transfer, Resampling.BassRateHz / length, fromHz, toHz) is var drift && Math.Abs(drift) > GreatestDriftS)
        {
            var off = 100 * Math.Abs(drift) / law.TimeConstantS;
            return new SweepReading(
                null,
                off > GreatestWrongRatePercent
                    ? NotPlayed
                    : Invariant($"runs {(drift > 0 ? "slower" : "faster")} than what was played (about {off:0.#} %): one of the two files says ")
                        + "a wrong rate, or another sweep was played",
                []
            );
        }

        var result = Result(response, law, fromHz, toHz, settings);
        return result.SignalToNoiseDb < LeastSignalToNoiseDb
            ? new SweepReading(null, NotPlayed, [])
            : new SweepReading(
                law is null
                    ? result
                    : result with
                    {
                        ClockDoubtDb = ClockDoubt.Of(transfer, law, length, (r, by) => Points(r, law, fromHz, toHz, settings, by)),
                    },
                null,
                warnings
            );
    }

    /// <summary>The energy mean of several recordings, such as places round the seat.</summary>
    /// <param name="results">Results with the same points, one or more.</param>
    /// <returns>One result: delay and ratios of the first, points averaged and set to zero again.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No result, or results with different points.</exception>
    /// <remarks>
    /// Model: 10 lg of the mean of 10^(L/10), each recording counting alike. Validity: one gain of the microphone. Source: common practice, no
    /// source. Accuracy: exact.
    /// </remarks>
    public static SweepResult Mean(IReadOnlyList<SweepResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        Require.Within(results.Count, 1, 1000, nameof(results), "recordings");
        Require.Within(results.Max(r => r.Points.Count), results.Min(r => r.Points.Count), results[0].Points.Count, nameof(results), "points in every one");
        var points = results[0]
            .Points.Select(
                (p, i) =>
                    p with
                    {
                        MagnitudeDb = Decibels(results.Average(r => Math.Pow(10, r.Points[i].MagnitudeDb / 10))),
                        SignalToNoiseDb = results.Min(r => r.Points[i].SignalToNoiseDb),
                    }
            );
        return results[0] with { Points = AboutZero([.. points]), SignalToNoiseDb = results.Min(r => r.SignalToNoiseDb) };
    }

    /// <summary>Sets a response to zero: the mean of its points from 100 to 200 Hz, of all where it has none there.</summary>
    /// <param name="points">The points.</param>
    /// <returns>The same points, moved.</returns>
    /// <remarks>Model: arithmetic mean of levels. Source: our choice. Accuracy: exact.</remarks>
    public static IReadOnlyList<SweepPoint> AboutZero(IReadOnlyList<SweepPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var about = points.Where(p => p.FrequencyHz is >= 100 and <= 200).ToList();
        var zero = (about.Count > 0 ? about : points).Select(p => p.MagnitudeDb).DefaultIfEmpty(0).Average();
        return [.. points.Select(p => p with { MagnitudeDb = p.MagnitudeDb - zero })];
    }

    private static double[] At(Recording recording) => Resampling.To(recording.Loudest(), recording.RateHz, Resampling.BassRateHz);

    private static string? TroubleOf(Recording recorded, Recording played, List<string> warnings)
    {
        var (r, s) = (ChannelHealth.Of(recorded.Loudest(), recorded.StepFraction), ChannelHealth.Of(played.Loudest(), played.StepFraction));
        if (r.IsSilent || s.IsSilent)
        {
            return r.IsSilent ? "has nothing on it; the played sweep, loud enough" : "cannot be compared: the played file has nothing on it";
        }

        if (recorded.DurationS < 0.5 || played.DurationS < 0.5)
        {
            return "is too short; half a second or more, of the played file too";
        }

        if (recorded.Channels.Select(c => ChannelHealth.Of(c, recorded.StepFraction)).MaxBy(h => h.RmsFraction)!.IsClipped)
        {
            warnings.Add("the recording is clipped: levels and harmonics are off; record again with the level down by 6 dB");
        }

        if (recorded.DurationS < played.DurationS - 0.05)
        {
            warnings.Add(
                Invariant($"the recording is shorter than what was played ({recorded.DurationS:0.#} of {played.DurationS:0.#} s): its end is missing")
            );
        }

        return null;
    }

    // Where what was played has energy in ratios of frequency, averaged over a sixth of an octave.
    private static (double FromHz, double ToHz) Span(double[] power, double spacingHz)
    {
        var bands = FractionalOctaves.Bands(6, Math.Max(1, 4 * spacingHz), GreatestHz);
        var energies = bands.Select(b => b.CentreHz * FractionalOctaves.MeanEnergy(power, spacingHz, b)).ToList();
        var loud = bands.Where((_, i) => energies[i] > LeastShare * energies.Max()).ToList();
        return (loud[0].LowerHz, loud[^1].UpperHz);
    }

    // How the arrival moves with the logarithm of the frequency, by the mean turn of phase from line to line in half octaves, each weighing alike.
    private static double Drift(Complex[] transfer, double spacingHz, double fromHz, double toHz)
    {
        var times = new List<(double Log, double TimeS)>();
        foreach (var band in FractionalOctaves.Bands(2, Math.Max(fromHz, 60), toHz))
        {
            var (turn, energy) = (Complex.Zero, 0.0);
            for (var k = (int)(band.LowerHz / spacingHz) + 1; k < Math.Min(transfer.Length - 1, (int)(band.UpperHz / spacingHz)); k++)
            {
                turn += transfer[k + 1] * Complex.Conjugate(transfer[k]);
                energy += (transfer[k] * Complex.Conjugate(transfer[k])).Real;
            }

            // A band of nothing but noise, as where the recording ended too early, arrives at no time.
            if (turn.Magnitude > LeastTogether * energy)
            {
                times.Add((Math.Log(band.CentreHz), -turn.Phase / (2 * Math.PI * spacingHz)));
            }
        }

        if (times.Count < 4)
        {
            return 0;
        }

        var (log, time) = (times.Average(t => t.Log), times.Average(t => t.TimeS));
        return times.Sum(t => (t.Log - log) * (t.TimeS - time)) / times.Sum(t => (t.Log - log) * (t.Log - log));
    }

    private static SweepResult Result(Response response, ExponentialSweep? law, double fromHz, double toHz, SweepSettings settings)
    {
        var before = law is null ? LongestBeforeS : Math.Min(LongestBeforeS, 0.45 * law.HarmonicLeadS(2));
        var spacing = response.RateHz / GatedLength;
        var round = settings.GateS / 4;
        var signal = response.Energies(-before, settings.GateS, round, GatedLength);
        var noise = Noise(response, law, before, settings, round);
        var bands = FractionalOctaves.Bands(settings.PointsPerOctaveCount, fromHz, toHz);
        double Mean(double[] energies, OctaveBand b) => FractionalOctaves.MeanEnergy(energies, spacing, b);
        var points = bands
            .Select(b => new SweepPoint(b.CentreHz, Decibels(Mean(signal, b)), Ratio(Mean(signal, b), Mean(noise, b)) is { } above ? Decibels(above) : null))
            .ToList();
        var harmonics = law is null ? [] : Harmonics(response, law, signal, bands, toHz, before);
        double? distortion =
            harmonics.Count > 0 && harmonics.Any(h => h.Ratio is not null) ? Math.Sqrt(harmonics.Sum(h => (h.Ratio ?? 0) * (h.Ratio ?? 0))) : null;
        var above = Ratio(bands.Sum(b => Mean(signal, b)), bands.Sum(b => Mean(noise, b)));
        return new SweepResult(response.PeakS, distortion, above is { } ratio ? Decibels(ratio) : null, harmonics, AboutZero(points));
    }

    // The response alone, without noise and harmonics, its bands moved by a factor.
    private static IReadOnlyList<SweepPoint> Points(Response response, ExponentialSweep law, double fromHz, double toHz, SweepSettings settings, double by)
    {
        var energies = response.Energies(-Math.Min(LongestBeforeS, 0.45 * law.HarmonicLeadS(2)), settings.GateS, settings.GateS / 4, GatedLength);
        return AboutZero([
            .. FractionalOctaves
                .Bands(settings.PointsPerOctaveCount, fromHz, toHz)
                .Select(b => new SweepPoint(
                    b.CentreHz,
                    Decibels(FractionalOctaves.MeanEnergy(energies, response.RateHz / GatedLength, new OctaveBand(b.CentreHz, b.LowerHz * by, b.UpperHz * by))),
                    null
                )),
        ]);
    }

    private static double? Ratio(double one, double other) => other > 1e-12 * one ? one / other : null;

    // Two parts as long as the gate: after the answer, and before the sixth harmonic. A moment of the sweep lies in one of them where the recording
    // has only noise.
    private static double[] Noise(Response response, ExponentialSweep? law, double before, SweepSettings settings, double round)
    {
        var span = before + settings.GateS;
        var lead = (law?.HarmonicLeadS(6) ?? 0) + before;
        var after = response.Energies(settings.GateS + 0.1, settings.GateS + 0.1 + span, round, GatedLength);
        var early = response.Energies(-lead - span, -lead, round, GatedLength);
        return [.. after.Zip(early, Math.Max)];
    }

    private static List<Harmonic> Harmonics(
        Response response,
        ExponentialSweep law,
        double[] signal,
        IReadOnlyList<OctaveBand> bands,
        double toHz,
        double before
    )
    {
        var spacing = response.RateHz / GatedLength;
        var harmonics = new List<Harmonic>();
        for (var order = 2; order <= 5; order++)
        {
            var (lead, next) = (law.HarmonicLeadS(order), law.HarmonicLeadS(order + 1) - law.HarmonicLeadS(order));
            var part = response.Energies(-lead - (0.4 * next), Math.Min(-lead + (0.5 * next), -before), 0.2 * next, GatedLength);
            var (sum, fundamental) = (0.0, 0.0);
            foreach (var b in bands.Where(b => b.UpperHz * order < toHz && b.LowerHz >= law.FromHz))
            {
                var up = new OctaveBand(b.CentreHz * order, b.LowerHz * order, b.UpperHz * order);
                sum += FractionalOctaves.MeanEnergy(part, spacing, up);
                fundamental += FractionalOctaves.MeanEnergy(signal, spacing, b);
            }

            harmonics.Add(new Harmonic(order, fundamental > 0 ? Math.Sqrt(sum / fundamental) : null));
        }

        return harmonics;
    }

    private static double Decibels(double energy) => 10 * Math.Log10(Math.Max(energy, 1e-30));
}
