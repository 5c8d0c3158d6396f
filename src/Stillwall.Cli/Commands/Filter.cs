using System.Globalization;
using System.Text;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cabinets;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>filter</c>: one section of an equaliser.</summary>
internal static class Filter
{
    private const int GreatestFile = 16 << 20;

    private static readonly (double, double) Hertz = (0.01, 1e6);

    internal static Verb Verb()
    {
        var kind = new TextArgument("KIND", $"one of {string.Join(", ", FilterDesign.Kinds)}");
        var f0 = new QuantityOption("--f0", Dimension.Frequency, "corner or middle; for transform the box as it is") { Span = Hertz };
        var q = new QuantityOption("--q", Dimension.None, "Q, 1/√2 where left out; for transform the box as it is") { Span = (0.01, 1000) };
        var gain = new QuantityOption("--gain", Dimension.Level, "gain of a peak or shelf, such as \"-9.5 dB\"") { Span = (-60, 60) };
        var slope = new QuantityOption("--slope", Dimension.None, "slope of a shelf, 1 where left out; instead of --q") { Span = (0.01, 10) };
        var fp = new QuantityOption("--fp", Dimension.Frequency, "corner as wished, for transform") { Span = Hertz };
        var qp = new QuantityOption("--qp", Dimension.None, "Q as wished, for transform; 1/√2 where left out") { Span = (0.01, 1000) };
        var rate = new QuantityOption("--rate", Dimension.None, "sampling rate, Hz; 48000 where left out") { Span = (100, 1e7) };
        var json = Common.Json;
        var csv = Common.Csv("the response");
        var frequencies = new TextOption("--frequencies", "FILE", "CSV whose first column says at which frequencies, Hz; 10 Hz to 1 kHz where left out");
        return new Verb("filter", "coefficients and response of one second-order section", "stillwall filter peaking --f0 45Hz --q 2 --gain \"-8 dB\" --json")
        {
            Takes = [kind, f0, q, gain, slope, fp, qp, rate, json, csv, frequencies],
            Do = call =>
            {
                call.OneOutput(json, csv);
                var inputs = new FilterInputs
                {
                    Kind = Known(call.Text(kind)!),
                    F0Hz = call.Needed(f0),
                    Q = call.Value(q),
                    GainDb = call.Value(gain) ?? 0,
                    SlopeFactor = call.Value(slope) ?? 1,
                    FpHz = call.Value(fp),
                    PoleQ = call.Value(qp) ?? Math.Sqrt(0.5),
                    RateHz = call.Value(rate) ?? 48000,
                };
                var section = Section(inputs, call.Value(slope));
                var points = call.Text(frequencies) is { } file
                    ? FrequenciesOf(call.Session, file, inputs.RateHz)
                    : [.. ResponseCurve.FrequenciesHz(40).Where(f => f <= inputs.RateHz / 2)];
                Write(call, section, points, call.Has(json), csv);
                call.Session.Print(
                    call.Has(json) || call.Text(csv) is not null || !LiftsTheLowest(inputs)
                        ? ""
                        : CareText.At(WorkStep.Equaliser, null, call.Session.Terminal.Width)
                );
                return ExitCodes.Done;
            },
        };
    }

    private static bool LiftsTheLowest(FilterInputs inputs) =>
        inputs is { Kind: SectionKind.Transform } or { Kind: SectionKind.Lowshelf or SectionKind.Peaking, GainDb: > 0 };

    private static SectionKind Known(string kind) =>
        EnumWords.Find<SectionKind>(kind) ?? throw Invocation.NotOneOf("filter", kind, FilterDesign.Kinds);

    private static Biquad Section(FilterInputs inputs, double? slope)
    {
        var half = inputs.RateHz / 2;
        foreach (var (name, hertz) in new[] { ("--f0", inputs.F0Hz), ("--fp", inputs.FpHz ?? inputs.F0Hz) })
        {
            if (hertz >= half)
            {
                throw Refusal.Input($"{name}: {Show.Frequency(hertz)} is out of range; below {Show.Frequency(half)}, half the sampling rate");
            }
        }

        if (inputs.Kind == SectionKind.Transform && inputs.FpHz is null)
        {
            throw Refusal.Input("--fp is missing; the corner as wished, such as 28Hz");
        }

        if (inputs is { Kind: SectionKind.Lowshelf or SectionKind.Highshelf, Q: not null } && slope is not null)
        {
            throw Refusal.Input("filter: --q and --slope are both given; one of them");
        }

        try
        {
            return FilterDesign.Of(inputs);
        }
        catch (ArgumentOutOfRangeException) when (slope is not null)
        {
            throw Refusal.Input($"--slope: {Show.Number(slope.Value)} is too steep for a gain of {Show.Level(inputs.GainDb)}; at most 1 whatever the gain");
        }
    }

    private static void Write(Invocation call, Biquad section, List<double> points, bool asJson, OutputOption csv)
    {
        call.Deliver(
            csv,
            CsvText.Write(
                ["frequency_hz", "magnitude_db", "phase_deg"],
                points.Select(f => (IReadOnlyList<double?>)[f, section.MagnitudeDb(f), section.PhaseDeg(f)])
            )
        );
        if (asJson)
        {
            call.Session.Print(ResultJson.Write(section));
        }
        else if (call.Text(csv) is { } file)
        {
            Common.SayWritten(call.Session, file, points.Count);
        }
        else
        {
            call.Session.Print(Table(section, call.Session.Terminal));
        }
    }

    private static string Table(Biquad section, Terminal terminal) =>
        Tables.Of(
            terminal,
            $"H(z) in powers of 1/z at {Show.Number(section.RateHz, 6)} Hz",
            ["", ">b", ">a"],
            Enumerable
                .Range(0, 3)
                .Select(i =>
                    (IReadOnlyList<string>)
                        [i == 0 ? "1" : $"z^-{i.ToString(CultureInfo.InvariantCulture)}", Coefficient(section.B[i]), Coefficient(section.A[i])]
                )
        );

    private static string Coefficient(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    // The first column of every line that has a number there; one header line may stand above.
    private static List<double> FrequenciesOf(Session session, string file, double rateHz)
    {
        var lines = Encoding.UTF8.GetString(session.Read(file, GreatestFile)).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var points = new List<double>();
        for (var i = 0; i < lines.Length; i++)
        {
            var cell = lines[i].Split(',')[0].Trim().Trim('"');
            var isNumber = double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var hertz);
            if (cell.Length == 0 || (!isNumber && points.Count == 0 && i == lines.TakeWhile(l => l.Trim().Length == 0).Count()))
            {
                continue;
            }

            points.Add(
                isNumber && hertz >= 0 && hertz <= rateHz / 2
                    ? hertz
                    : throw Refusal.Input(
                        $"{Path.GetFileName(file)}:{(i + 1).ToString(CultureInfo.InvariantCulture)}: \"{cell}\" is no frequency; 0 to "
                            + $"{Show.Number(rateHz / 2, 6)} Hz, half the sampling rate"
                    )
            );
        }

        return points.Count > 0 ? points : throw Refusal.Input($"{Path.GetFileName(file)}: has no frequencies in its first column; one number a line");
    }
}
