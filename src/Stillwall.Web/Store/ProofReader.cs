using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;
using Stillwall.Files.Audio;
using Stillwall.Files.Json;
using Stillwall.Files.Projects;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Sweeps;
using Stillwall.Proofs.Taps;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Store;

/// <summary>Why a recording or what was asked of it is refused, in one line.</summary>
internal sealed class ProofRefusal(string line) : Exception(line);

/// <summary>Reads recordings for the proof, as the command line does.</summary>
internal static class ProofReader
{
    internal const string Impedance = "impedance", Sweep = "sweep", Tap = "tap";

    internal const double RateHz = 48000, LeadS = 1;

    // Less than a metre or two of cable has.
    private const double LeastInductanceH = 1e-6;

    private const double LowHz = 5, HighHz = 1000, LengthS = 10, PeakDb = -12;

    private static readonly Lazy<Recording> Played = new(() => new Recording(RateHz, [new ExponentialSweep(LowHz, HighHz, LengthS).Samples(RateHz, PeakDb)], 0));

    /// <summary>The sweep for every proof that plays one: 5 Hz to 1 kHz in ten seconds, peak 12 dB under full scale.</summary>
    internal static byte[] SweepFile() => WavWriter.Write(Played.Value, WavSamples.Bits24);

    /// <summary>How far the sweep may drive this cabinet; null where that is not known.</summary>
    internal static DriveBound? Bound(Facts facts) => facts.System is { } system ? DriveBound.Of(system.Network, LowHz, HighHz) : null;

    /// <summary>Reads one recording.</summary>
    /// <param name="kind">Which proof.</param>
    /// <param name="wav">All of the file.</param>
    /// <param name="asked">What is stated beside it, by name.</param>
    /// <param name="facts">The project to compare with.</param>
    /// <exception cref="ProofRefusal">The recording or a stated value cannot be used.</exception>
    internal static ProofOutcome Read(string kind, ReadOnlySpan<byte> wav, Func<string, string?> asked, Facts facts)
    {
        Func<Recording, IReadOnlyList<string>, ProofOutcome> proof = kind switch
        {
            Impedance => ImpedanceOf(Quantity(asked, "reference", Dimension.Resistance, (1e-2, 1e4)), facts),
            Tap => TapOf(Bar(asked), facts),
            _ => SweepOf(asked("at") ?? "near", facts),
        };
        var file = WavReader.Read(wav);
        return proof(file.Recording ?? throw new ProofRefusal(ProofTexts.Recording(file.Fault!)), file.Warnings);
    }

    private static Func<Recording, IReadOnlyList<string>, ProofOutcome> ImpedanceOf(double ohm, Facts facts) => (recording, odd) =>
    {
        var reading = ImpedanceRecording.Of(recording, ohm);
        var r = reading.Result ?? throw new ProofRefusal(ProofTexts.Recording(reading.Trouble!));
        if (facts.System is { } system)
        {
            r = r with
            {
                Cabinet = CabinetProof.Of(r, system.Network, system.NetVolumeM3),
                Curve = [.. r.Curve.Select(p => p with { ComputedOhm = system.Network.At(p.FrequencyHz, 1).ImpedanceOhm.Magnitude })],
            };
        }

        var u = r.Uncertainty;
        List<ExplainedInput> beside = [Recorded(recording), new("recording.reference_ohm", ohm, "ohm", null), new("recording.resonance_hz", r.ResonanceHz, "Hz", null), new("recording.q_total", r.QTotal, "1", null)];
        ProofFigure Figure(string name, string text, object record, string property) => new(name, text, Why.Of(facts, record, property, null, beside));
        List<ProofFigure> figures =
        [
            Figure(ProofTexts.Resonance, Bands.Of(r.ResonanceHz, u.ResonanceHz, "Hz"), r, nameof(r.ResonanceHz)), Figure(ProofTexts.QTotal, Bands.Of(r.QTotal, u.QTotal), r, nameof(r.QTotal)),
            Figure(ProofTexts.QMechanical, Bands.Of(r.QMechanical, u.QMechanical), r, nameof(r.QMechanical)), Figure(ProofTexts.QElectrical, Bands.Of(r.QElectrical, u.QElectrical), r, nameof(r.QElectrical)),
            Figure(ProofTexts.CoilResistance, Bands.Of(r.DcResistanceOhm, u.DcResistanceOhm, "ohm"), r, nameof(r.DcResistanceOhm)),
            Figure(ProofTexts.CoilInductance, r.InductanceH > LeastInductanceH ? Bands.Of(r.InductanceH * 1e3, u.InductanceH * 1e3, "mH") : ProofTexts.TooSmall, r, nameof(r.InductanceH)),
        ];
        if (r.Cabinet is { } c)
        {
            figures.Add(Figure(ProofTexts.Down3, Show.Frequency(c.F3Hz), c, nameof(c.F3Hz)));
            figures.Add(Figure(ProofTexts.Down10, Show.Frequency(c.F10Hz), c, nameof(c.F10Hz)));
            figures.Add(Figure(ProofTexts.Fill, c is { FillFactor: { } fill, FillFactorBandFactor: { } band } ? Bands.Of(fill, band) : ProofTexts.NotKnown, c, nameof(c.FillFactor)));
        }

        return new ProofOutcome(Impedance, ResultJson.Write(r), figures, [.. odd, .. reading.Warnings], [Kept("measured.system_resonance", r.ResonanceHz), Kept("measured.system_q", r.QTotal)], ProofCharts.Impedance(r));
    };

    private static Func<Recording, IReadOnlyList<string>, ProofOutcome> TapOf(TestBar bar, Facts facts) => (recording, odd) =>
    {
        var show = facts.Show;
        var reading = TapTest.Of(recording, bar);
        var r = reading.Result ?? throw new ProofRefusal(ProofTexts.Recording(reading.Trouble!));
        var u = r.Uncertainty;
        List<ExplainedInput> beside =
        [
            Recorded(recording), new("recording.frequency_hz", r.FrequencyHz, "Hz", null), new("recording.length_m", bar.LengthM, "m", null), new("recording.width_m", bar.WidthM, "m", null),
            new("recording.thickness_m", bar.ThicknessM, "m", null), new("recording.mass_kg", bar.MassKg, "kg", null),
        ];
        ProofFigure Figure(string name, string text, string property) => new(name, text, Why.Of(facts, r, property, null, beside));
        return new ProofOutcome(
            Tap, ResultJson.Write(r),
            [
                new(ProofTexts.TapsThatCount, ProofTexts.CountOf(r.Taps.Count(t => !t.IsOutlier), r.Taps.Count), null), Figure(ProofTexts.Bending, Bands.Of(r.FrequencyHz, u.FrequencyHz, "Hz"), nameof(r.FrequencyHz)),
                Figure(ProofTexts.Modulus, show.Inch ? show.Pressure(r.YoungsModulusPa) : Bands.Of(r.YoungsModulusPa / 1e9, u.YoungsModulusPa / 1e9, "GPa"), nameof(r.YoungsModulusPa)),
                Figure(ProofTexts.LossFactor, Bands.Of(r.LossFactor, u.LossFactor), nameof(r.LossFactor)),
                Figure(ProofTexts.Density, show.Inch ? show.Density(r.DensityKgM3) : Bands.Of(r.DensityKgM3, u.DensityKgM3, "kg/m³"), nameof(r.DensityKgM3)),
            ],
            [.. odd, .. reading.Warnings], [Kept("measured.core_modulus", r.YoungsModulusPa), Kept("measured.core_loss_factor", r.LossFactor), Kept("measured.core_density", r.DensityKgM3)], null);
    };

    private static Func<Recording, IReadOnlyList<string>, ProofOutcome> SweepOf(string place, Facts facts)
    {
        var isSeat = place is "seat" or "near" ? place == "seat" : throw new ProofRefusal(ProofTexts.NoSuchPlace(place));
        return (recording, odd) =>
        {
            var reading = RelativeSweep.Of(recording, Played.Value, new SweepSettings());
            var r = reading.Result ?? throw new ProofRefusal(ProofTexts.Recording(reading.Trouble!));
            var computed = facts.System is { } system && (!isSeat || facts.Room is not null) ? ComputedShape.Of(r, system.Network, isSeat ? facts.Room : null) : null;
            ProofFigure Figure(string name, string text, string property) => new(name, text, Why.Of(facts, r, property, null, [Recorded(recording), new("recording.played", ProofTexts.Played, "1", null)]));
            return new ProofOutcome(
                Sweep, ResultJson.Write(r),
                [
                    Figure(ProofTexts.Delay, $"{Show.Number(r.DelayS * 1e3)} ms", nameof(r.DelayS)), Figure(ProofTexts.Harmonics, r.HarmonicDistortion is { } h ? Show.Percent(h) : ProofTexts.NotKnown, nameof(r.HarmonicDistortion)),
                    Figure(ProofTexts.AboveNoise, r.SignalToNoiseDb is { } snr ? Show.Level(snr) : ProofTexts.NoNoise, nameof(r.SignalToNoiseDb)),
                ],
                [.. odd, .. reading.Warnings, isSeat ? ProofTexts.AtSeat : ProofTexts.Near], [], ProofCharts.Sweep(r, computed));
        };
    }

    private static ExplainedInput Recorded(Recording recording) => new("recording", ProofTexts.Recorded(recording.DurationS, recording.RateHz), "1", null);

    private static (string, string) Kept(string key, double value) => (key, MeasuredText.Of(key, [value]));

    private static TestBar Bar(Func<string, string?> asked)
    {
        var bar = new TestBar(
            Quantity(asked, "length", Dimension.Length, (1e-3, 10)), Quantity(asked, "width", Dimension.Length, (1e-3, 10)), Quantity(asked, "thickness", Dimension.Length, (1e-4, 1)),
            Quantity(asked, "mass", Dimension.Mass, (1e-4, 1000)));
        return bar.ThicknessM <= 0.35 * bar.LengthM ? bar : throw new ProofRefusal(ProofTexts.TooThick(bar.ThicknessM, bar.LengthM));
    }

    private static double Quantity(Func<string, string?> asked, string name, Dimension dimension, (double Least, double Most) span)
    {
        var text = asked(name) is { Length: > 0 } stated ? stated : throw new ProofRefusal(ProofTexts.NotStated(name));
        return Units.TryRead(text, dimension, out var value, out _) && value >= span.Least && value <= span.Most ? value
            : throw new ProofRefusal(ProofTexts.NotWithin(name, text, Units.Write(span.Least, dimension), Units.Write(span.Most, dimension)));
    }
}
