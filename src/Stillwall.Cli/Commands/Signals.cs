using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;
using Stillwall.Files.Audio;
using Stillwall.Files.Outputs;
using Stillwall.Projects;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;

namespace Stillwall.Cli.Commands;

/// <summary><c>signal</c>: sounds to play for a proof.</summary>
internal static class Signals
{
    private static readonly IReadOnlyList<string> Kinds = ["sweep", "tone", "noise", "pulses", "levels"];

    private static readonly IReadOnlyList<string> Formats = ["16", "24", "float"];

    internal static Verb Verb()
    {
        var kind = new TextArgument(
            "KIND",
            "sweep, tone, noise (a pink band), pulses (which way does the cone go), levels (an octave below and above the crossover in turn, for trimming)"
        );
        var file = new OutputOption("--out", "FILE.wav", "file to write; - is standard output");
        var from = new QuantityOption("--from", Dimension.Frequency, "where a sweep or band begins; 10 Hz where left out") { Span = (0.1, 20000) };
        var to = new QuantityOption("--to", Dimension.Frequency, "where it ends; 1000 Hz where left out") { Span = (0.2, 48000) };
        var frequency = new QuantityOption("--frequency", Dimension.Frequency, "of a tone, or the crossover of levels; 40 Hz and 80 Hz where left out")
        {
            Span = (0.1, 48000),
        };
        var seconds = new QuantityOption("--seconds", Dimension.None, "how long, s; 10 where left out") { Span = (0.1, 600) };
        var rate = new QuantityOption("--rate", Dimension.None, "sampling rate, Hz: 44100, 48000 or 96000; 48000 where left out")
        {
            IsWhole = true,
            Span = (8000, 192000),
        };
        var level = new QuantityOption("--level", Dimension.Level, "peak re full scale; -12 dB where left out") { Span = (-100, 0) };
        var samples = new TextOption("--samples", "KIND", "16, 24 or float; 24 where left out", Formats);
        var lead = new QuantityOption("--lead", Dimension.Time, "silence before it; none where left out") { Span = (0, 60) };
        var tail = new QuantityOption("--tail", Dimension.Time, "silence after it; none where left out") { Span = (0, 60) };
        var project = new TextOption("--project", "PROJECT", "says how far this cabinet may be driven");
        return new Verb(
            "signal",
            "writes a sound to play for a proof, and says how loud it may be played",
            "stillwall signal sweep --out sweep.wav --from 10Hz --to 1kHz --seconds 10 --level \"-12 dB\""
        )
        {
            Step = WorkStep.Signal,
            Takes = [kind, file, from, to, frequency, seconds, rate, level, samples, lead, tail, project],
            Do = call =>
            {
                var name = Known(call.Text(kind)!);
                var (hertz, duration, peak) = (call.Value(rate) ?? 48000, call.Value(seconds) ?? 10, call.Value(level) ?? -12);
                var (low, high) = (call.Value(from) ?? 10, call.Value(to) ?? 1000);
                var one = call.Value(frequency) ?? (name == "levels" ? 80 : 40);
                var target = call.Needed(file);
                Check(name, low, high, one, hertz);
                var sound = Make(kind: name, low: low, high: high, one: one, seconds: duration, rate: hertz, peak: peak);
                var whole = TestSignals.WithSilence(sound, hertz, call.Value(lead) ?? 0, call.Value(tail) ?? 0);
                var facts = call.Text(project) is { } path ? LoadedProject.Load(call.Session, path).Facts() : null;
                call.Deliver(file, SoundMark.Put(WavWriter.Write(new Recording(hertz, [whole], 0), Format(call.Text(samples)))));
                foreach (var caution in Cautions.At(WorkStep.Signal, facts))
                {
                    call.Session.Tell($"Caution: {caution.Sentence}");
                }

                call.Session.Tell(
                    Bound(
                        facts,
                        name is "tone" ? one
                            : name is "levels" ? one / 2
                            : name is "pulses" ? 20
                            : low,
                        name is "tone" ? one
                            : name is "levels" ? 2 * one
                            : name is "pulses" ? 100
                            : high
                    )
                );
                if (target != "-")
                {
                    call.Session.PrintLine(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{target}: {name}, {whole.Length / hertz:0.###} s at {hertz:0} Hz, peak {Show.Level(peak)} re full scale"
                        )
                    );
                }

                return ExitCodes.Done;
            },
        };
    }

    private static string Known(string kind) => Kinds.Contains(kind) ? kind : throw Invocation.NotOneOf("signal", kind, Kinds);

    private static WavSamples Format(string? word) =>
        word switch
        {
            "16" => WavSamples.Bits16,
            "float" => WavSamples.FloatingPoint,
            _ => WavSamples.Bits24,
        };

    private static double[] Make(string kind, double low, double high, double one, double seconds, double rate, double peak) =>
        kind switch
        {
            "sweep" => new ExponentialSweep(low, high, seconds).Samples(rate, peak),
            "tone" => TestSignals.Tone(one, seconds, rate, peak),
            "noise" => TestSignals.PinkNoise(low, high, seconds, rate, peak),
            "pulses" => TestSignals.Pulses(seconds, rate, peak),
            _ => TestSignals.LevelPair(one, seconds, rate, peak),
        };

    private static void Check(string kind, double low, double high, double one, double rate)
    {
        var half = rate / 2;
        if (kind is "sweep" or "noise" && !(high > low * 1.01 && high < half))
        {
            throw Refusal.Input(
                $"--to: {Show.Frequency(high)} is out of range; above --from ({Show.Frequency(low)}) and below {Show.Frequency(half)}, half the sampling rate"
            );
        }

        if (kind is "tone" or "levels" && one * (kind == "levels" ? 2 : 1) >= half)
        {
            throw Refusal.Input($"--frequency: {Show.Frequency(one)} is out of range; below {Show.Frequency(kind == "levels" ? half / 2 : half)}");
        }
    }

    // How much voltage the cone bears.
    private static string Bound(Facts? facts, double low, double high)
    {
        if (facts is null)
        {
            return $"Below its resonance a cone moves far: --project says how much voltage it can take.";
        }

        if (facts.System?.Network is not { Driver.XmaxM: { } xmax } network)
        {
            return $"How much voltage the cone can take is not known: {KeyNames.Missing(facts.System is null ? facts.MissingForBox : "driver.xmax")}.";
        }

        var bound = DriveBound.Of(network, low, high)!;
        return $"At {Show.Frequency(bound.FrequencyHz)} the cone reaches its {facts.Show.Small(xmax)} with {Show.Number(bound.VoltageV, 2)} V rms at the "
            + $"terminals ({Show.Level(bound.LevelDb)} at {facts.Show.Distance(1)}): keep to half of that.";
    }
}
