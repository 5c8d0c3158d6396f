using Stillwall.Materials;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Spectra;
using static System.FormattableString;

namespace Stillwall.Proofs.PartyWalls;

/// <summary>One third-octave through the party wall.</summary>
/// <param name="BandHz">Name of the band, Hz.</param>
/// <param name="SourceDb">Level on this side, dB re full scale.</param>
/// <param name="ReceiverDb">Level on the other side, background taken off, dB re full scale.</param>
/// <param name="BackgroundDb">Level of the background there, dB re full scale; null where it was not recorded.</param>
/// <param name="DifferenceDb">Level difference, dB.</param>
/// <param name="UncertaintyDb">Half of its 95 % band by the length of the recordings, dB; places in the rooms count more.</param>
/// <param name="IsAtLeast">Whether the background hides the rest: the wall keeps off at least so much.</param>
public sealed record WallBand(
    double BandHz,
    double SourceDb,
    double ReceiverDb,
    double? BackgroundDb,
    [property: Numerics.ComputedBy("wall-difference", "recording", "recording.there", "recording.background")] double DifferenceDb,
    double UncertaintyDb,
    bool IsAtLeast
);

/// <summary>What recordings on both sides of a party wall say.</summary>
/// <param name="Bands">The bands from 20 to 160 Hz; empty where the recordings say nothing.</param>
/// <param name="Trouble">Why they say nothing; null where they say something.</param>
/// <param name="Warnings">What is to be kept in mind.</param>
public sealed record WallReading(IReadOnlyList<WallBand> Bands, string? Trouble, IReadOnlyList<string> Warnings);

/// <summary>Level difference through a party wall by one microphone that nobody has calibrated, carried from one room to the other at the same gain.</summary>
public static class LevelDifference
{
    private const double RateHz = 3000,
        LeastS = 5;
    private const int Segment = 1 << 13;

    // ISO 16283-1:2014, 9.2: from 6 to 10 dB the background is taken off, at 6 dB and less 1.3 dB and no more (from memory).
    private const double CleanDb = 10,
        HiddenDb = 6,
        MostCorrectionDb = 1.3;

    /// <summary>Compares recordings of the same noise or sweep on both sides.</summary>
    /// <param name="source">On this side.</param>
    /// <param name="receiver">On the other side, at the same gain.</param>
    /// <param name="background">On the other side with nothing playing; null where it was not recorded.</param>
    /// <returns>The bands, or why there are none.</returns>
    /// <remarks>
    /// Model: energy per third-octave by averaged spectra; D = L1 − L2, L2 corrected for the background. Validity: steady noise of ten seconds or
    /// more, the same gain and microphone throughout; several places in each room make it better. Source: ISO 16283-1:2014 for the correction (from
    /// memory), bands IEC 61260-1:2014; random error 4.34/√(BT) dB of a band, Bendat and Piersol 2010 (from memory).
    /// Accuracy: 0.1 dB for the energies; below 50 Hz a place in a room is worth several decibels.
    /// </remarks>
    public static WallReading Of(Recording source, Recording receiver, Recording? background)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        (string Name, Recording? Sound)[] all =
        [
            ("the recording on this side", source),
            ("the recording on the other side", receiver),
            ("the recording of the background", background),
        ];
        var warnings = new List<string>();
        foreach (var (name, sound) in all)
        {
            if (sound is not null && sound.DurationS < LeastS)
            {
                return new WallReading([], Invariant($"{name} is too short ({sound.DurationS:0.#} s); {LeastS:0} s or more"), []);
            }

            if (sound is not null && ChannelHealth.Of(sound.Loudest(), sound.StepFraction) is { } health && (health.IsSilent || health.IsClipped))
            {
                if (health.IsSilent && sound != background)
                {
                    return new WallReading([], $"{name} has nothing on it; the same noise on both sides, at the same gain", []);
                }

                warnings.AddRange(health.IsClipped ? [$"{name} is clipped: its levels are off"] : Array.Empty<string>());
            }
        }

        if (background is null)
        {
            warnings.Add("no recording of the background: what the other room hears anyway counts as coming through the wall");
        }

        var (one, two, three) = (Levels(source), Levels(receiver), background is null ? null : Levels(background));
        var bands = ThirdOctaves.Bands.Select((band, i) => Band(band, one[i], two[i], three?[i], Math.Min(source.DurationS, receiver.DurationS))).ToList();
        return new WallReading(bands, null, warnings);
    }

    private static WallBand Band(ThirdOctave band, double source, double receiver, double? background, double durationS)
    {
        var above = receiver - (background ?? double.NegativeInfinity);
        var corrected =
            above > CleanDb ? receiver
            : above > HiddenDb ? receiver + (10 * Math.Log10(1 - Math.Pow(10, -above / 10)))
            : receiver - MostCorrectionDb;
        var random = 1.96 * 4.34 / Math.Sqrt((band.UpperHz - band.LowerHz) * durationS) * Math.Sqrt(2);
        return new WallBand(
            BandHz: band.NominalHz,
            SourceDb: source,
            ReceiverDb: corrected,
            BackgroundDb: background,
            DifferenceDb: source - corrected,
            UncertaintyDb: random,
            IsAtLeast: above <= HiddenDb
        );
    }

    private static List<double> Levels(Recording recording)
    {
        var samples = Resampling.To(recording.Loudest(), recording.RateHz, RateHz);
        var spectrum = CrossSpectrum.Of(samples, samples, RateHz, Segment);

        // Mean square in a band: twice the one-sided lines, whose mean |X|² is the density times the rate.
        return
        [
            .. ThirdOctaves.Bands.Select(b =>
                10
                * Math.Log10(
                    Math.Max(
                        1e-30,
                        2
                            / RateHz
                            * (b.UpperHz - b.LowerHz)
                            * FractionalOctaves.MeanEnergy(spectrum.FirstPower, spectrum.SpacingHz, new OctaveBand(b.CentreHz, b.LowerHz, b.UpperHz))
                    )
                )
            ),
        ];
    }
}
