using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Files.Audio;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Every proof of the page: which there are, what is played for them, and how they are read.</summary>
internal static class ProofReader
{
    /// <summary>The step of the job that a proof is, for what to take care of.</summary>
    internal static WorkStep StepOf(string kind) =>
        kind switch
        {
            Driver => WorkStep.Driver,
            Impedance => WorkStep.Impedance,
            Sweep => WorkStep.Sweep,
            Tap => WorkStep.TapTest,
            Wall => WorkStep.PartyWall,
            Polarity => WorkStep.Polarity,
            Hold => WorkStep.HoldTest,
            Weight => WorkStep.WeighIn,
            _ => WorkStep.Rattle,
        };

    internal const string Impedance = "impedance",
        Driver = "driver",
        Sweep = "sweep",
        Tap = "tap",
        Wall = "wall",
        Polarity = "polarity",
        Hold = "hold",
        Weight = "weight",
        Rattle = "rattle";

    internal const double RateHz = 48000;

    private const double LowHz = 5,
        HighHz = 1000,
        LengthS = 10,
        PeakDb = -12;

    private static readonly Dictionary<string, Func<double[]>> Played = new(StringComparer.Ordinal)
    {
        ["sweep"] = () => new ExponentialSweep(LowHz, HighHz, LengthS).Samples(RateHz, PeakDb),
        ["slow"] = () => new ExponentialSweep(20, 200, 60).Samples(RateHz, PeakDb),
        ["pulses"] = () => TestSignals.Pulses(4, RateHz, PeakDb),
        ["noise"] = () => TestSignals.PinkNoise(16, 180, 30, RateHz, PeakDb),
    };

    private static readonly Lazy<Recording> TheSweep = new(() => new Recording(RateHz, [Played["sweep"]()], 0));

    private static readonly Dictionary<string, Func<ProofRequest, ProofOutcome>> ByRecording = new(StringComparer.Ordinal)
    {
        [Impedance] = ImpedanceProofs.Of,
        [Driver] = ImpedanceProofs.DriverOf,
        [Tap] = TapProof.Of,
        [Sweep] = r => SweepProof.Of(r, TheSweep.Value),
        [Wall] = WallProof.Of,
        [Polarity] = PolarityProof.Of,
    };

    private static readonly Dictionary<string, Func<ProofRequest, ProofOutcome>> ByHand = new(StringComparer.Ordinal)
    {
        [Hold] = HandProofs.Hold,
        [Weight] = HandProofs.Weight,
        [Rattle] = HandProofs.Rattle,
    };

    /// <summary>Proofs that read recordings.</summary>
    internal static IEnumerable<string> Kinds => ByRecording.Keys;

    /// <summary>Names of the signals to play.</summary>
    internal static IEnumerable<string> Signals => Played.Keys;

    /// <summary>A signal as a file: peak 12 dB under full scale.</summary>
    internal static byte[] SignalFile(string name) =>
        WavWriter.Write(name == "sweep" ? TheSweep.Value : new Recording(RateHz, [Played[name]()], 0), WavSamples.Bits24);

    /// <summary>How far the sweep may drive this cabinet; null where that is not known.</summary>
    internal static DriveBound? Bound(Facts facts) => facts.System is { } system ? DriveBound.Of(system.Network, LowHz, HighHz) : null;

    /// <summary>Reads the recordings of one proof.</summary>
    /// <exception cref="ProofRefusal">A recording or a stated value cannot be used.</exception>
    internal static ProofOutcome Read(string kind, ProofRequest request) => ByRecording[kind](request);

    /// <summary>Reads a proof that needs no recording.</summary>
    /// <param name="kind">Which proof.</param>
    /// <param name="asked">What is stated, by name.</param>
    /// <param name="facts">The project to compare with.</param>
    /// <exception cref="ProofRefusal">A stated value cannot be used.</exception>
    internal static ProofOutcome Answer(string kind, Func<string, string?> asked, Facts facts) => ByHand[kind](new ProofRequest(default, asked, facts, null));

    /// <summary>An entry of the logbook.</summary>
    internal static IReadOnlyList<(string, string)> Entry(string kind, string note, string? part = null) =>
        part is null ? [("kind", kind), ("note", note)] : [("kind", kind), ("part", part), ("note", note)];

    /// <summary>What a reading says.</summary>
    /// <exception cref="ProofRefusal">It says nothing.</exception>
    internal static T Said<T>(T? result, string? trouble, string name = ProofRequest.Main)
        where T : class => result ?? throw new ProofRefusal(ProofTexts.Recording(name, trouble ?? ""));
}
