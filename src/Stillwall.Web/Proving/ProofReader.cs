using Stillwall.Appraisals;
using Stillwall.Appraisals.Proving;
using Stillwall.Files.Audio;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>What is played for the proofs of the page, and how what was brought is handed to them.</summary>
internal static class ProofReader
{
    internal const double RateHz = 48000;

    private const double LowHz = 5,
        HighHz = 1000,
        LengthS = 10,
        PeakDb = -12;

    private static readonly Dictionary<string, Func<double[]>> Signal = new(StringComparer.Ordinal)
    {
        ["sweep"] = () => new ExponentialSweep(LowHz, HighHz, LengthS).Samples(RateHz, PeakDb),
        ["slow"] = () => new ExponentialSweep(20, 200, 60).Samples(RateHz, PeakDb),
        ["pulses"] = () => TestSignals.Pulses(4, RateHz, PeakDb),
        ["noise"] = () => TestSignals.PinkNoise(16, 180, 30, RateHz, PeakDb),
    };

    private static readonly Lazy<Recording> TheSweep = new(() => new Recording(RateHz, [Signal["sweep"]()], 0));

    /// <summary>Name of the input that the page plays itself.</summary>
    internal const string Played = "played";

    /// <summary>Proofs that read recordings.</summary>
    internal static IEnumerable<string> Kinds => Proof.All.Where(p => p.Inputs.Any(i => i.IsRecording)).Select(p => p.Kind);

    /// <summary>Names of the signals to play.</summary>
    internal static IEnumerable<string> Signals => Signal.Keys;

    /// <summary>A signal as a file: peak 12 dB under full scale.</summary>
    internal static byte[] SignalFile(string name) =>
        WavWriter.Write(name == "sweep" ? TheSweep.Value : new Recording(RateHz, [Signal[name]()], 0), WavSamples.Bits24);

    /// <summary>How far the sweep may drive this cabinet; null where that is not known.</summary>
    internal static DriveBound? Bound(Facts facts) => facts.System is { } system ? DriveBound.Of(system.Network, LowHz, HighHz) : null;

    /// <summary>Asks for a proof with what somebody brought.</summary>
    /// <param name="brought">Recordings as files, their names and lengths stated as <c>parts</c>.</param>
    internal static ProofOutcome Read(
        string kind,
        Func<string, string?> asked,
        Facts facts,
        ReadOnlyMemory<byte> brought = default,
        ProofOutcome? before = null
    )
    {
        var (parts, odd) = (new BroughtParts(brought, asked("parts")), new List<AboutInput>());
        IReadOnlyList<Recording> Sounds(string name) => name == Played ? [TheSweep.Value] : parts.Sounds(kind, name, odd);
        var reading = Proof.Of(kind).Read(new ProofRequest(asked, Sounds, facts) { Before = before });
        return reading.Outcome is { } outcome
            ? outcome with
            {
                Warnings = [.. odd, .. outcome.Warnings],
            }
            : throw new BroughtRefusal(ProofTexts.Fault(kind, reading.Fault!));
    }
}
