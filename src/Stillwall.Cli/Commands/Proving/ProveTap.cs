using System.Text.Json;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Projects;
using Stillwall.Proofs.Taps;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove tap</c>: modulus and loss factor of a cast bar.</summary>
internal static class ProveTap
{
    private static readonly (double, double) Sizes = (1e-3, 10);

    internal static Verb Verb()
    {
        var file = new TextArgument("FILE.wav", "five single taps in the middle of the bar, hung or laid on foam at 0.22 of its length from each end");
        var length = new QuantityOption("--length", Dimension.Length, "length by caliper") { Span = Sizes };
        var width = new QuantityOption("--width", Dimension.Length, "width across the tap") { Span = Sizes };
        var thickness = new QuantityOption("--thickness", Dimension.Length, "thickness in the direction of the tap") { Span = (1e-4, 1) };
        var mass = new QuantityOption("--mass", Dimension.Mass, "mass on the scales") { Span = (1e-4, 1000) };
        var poisson = new QuantityOption("--poisson", Dimension.None, "Poisson's ratio; 0.2 where left out") { Span = (0, 0.5) };
        var caliper = new QuantityOption("--caliper", Dimension.Length, "how far a size may be off; 0.1 mm where left out") { Span = (0, 0.01) };
        var scales = new QuantityOption("--scales", Dimension.Mass, "how far the mass may be off; 1 g where left out") { Span = (0, 1) };
        var against = new TextOption("--against", "BAR.json", "what --json said of another bar: which mix is stiffer and which is deader");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "tap",
            "Young's modulus and loss factor of a cast bar from the sound of taps (ASTM E1876)",
            "stillwall prove tap taps.wav --length 160mm --width 40mm --thickness 40mm --mass 268.8g"
        )
        {
            Step = WorkStep.TapTest,
            Takes = [file, length, width, thickness, mass, poisson, caliper, scales, against, json, keeping.Project, keeping.Keep, keeping.Log],
            Do = call =>
            {
                var loaded = keeping.Load(call);
                var bar = new TestBar(call.Needed(length), call.Needed(width), call.Needed(thickness), call.Needed(mass), call.Value(poisson) ?? 0.2);
                if (bar.ThicknessM > 0.35 * bar.LengthM)
                {
                    throw Refusal.Input(
                        $"--thickness: {Show.Number(bar.ThicknessM * 1e3)} mm is too thick for a length of {Show.Number(bar.LengthM * 1e3)} mm; at most "
                            + "0.35 of it, better a quarter"
                    );
                }

                var name = call.Text(file)!;
                var reading = TapTest.Of(Sounds.Load(call.Session, name), bar, call.Value(caliper) ?? 1e-4, call.Value(scales) ?? 1e-3);
                Sounds.Warn(call.Session, name, reading.Warnings);
                var result = reading.Result ?? throw Refusal.Input($"{name}: {reading.Trouble}");
                result = call.Text(against) is { } other
                    ? result with
                    {
                        Against = BarComparison.Of(Other(call.Session, other), new BarFigures(result.Figures, result.Uncertainty)),
                    }
                    : result;
                var show = loaded is null ? new Show(false, "") : Show.Of(loaded.Project);
                call.Session.Print(call.Has(json) ? ResultJson.Write(result) : Table(result, show, call.Session.Terminal));
                keeping.Save(
                    call: call,
                    loaded: loaded,
                    kind: "tap",
                    note: $"{show.Pressure(result.YoungsModulusPa)}, loss factor {Show.Number(result.LossFactor, 2)}",
                    measured: [("core_modulus", [result.YoungsModulusPa]), ("core_loss_factor", [result.LossFactor]), ("core_density", [result.DensityKgM3])],
                    isQuiet: call.Has(json),
                    part: "test bar"
                );
                CareText.Say(call.Session, WorkStep.TapTest, loaded?.Facts(), call.Has(json));
                return ExitCodes.Done;
            },
        };
    }

    private static BarFigures Other(Session session, string file)
    {
        try
        {
            using var document = JsonDocument.Parse(session.Read(file, 1 << 20));
            var (figures, band) = (document.RootElement, document.RootElement.GetProperty("uncertainty"));
            TapFigures Of(JsonElement e) =>
                new(
                    e.GetProperty("frequency_hz").GetDouble(),
                    e.GetProperty("youngs_modulus_pa").GetDouble(),
                    e.GetProperty("loss_factor").GetDouble(),
                    e.GetProperty("density_kg_m3").GetDouble()
                );
            return Of(figures) is { YoungsModulusPa: > 0, LossFactor: > 0 } sound ? new BarFigures(sound, Of(band)) : throw new KeyNotFoundException();
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw Refusal.Input($"{file}: is not what prove tap --json writes; the output of another bar");
        }
    }

    private static string Table(TapResult r, Show show, Terminal terminal)
    {
        var counted = r.Taps.Count(t => !t.IsOutlier);
        var text = Tables.Of(
            terminal,
            $"Tap test: {Show.Number(counted)} of {Show.Number(r.Taps.Count)} taps count; ± is the 95 % band, caliper and scales counted",
            ["", ""],
            [
                ["first bending mode", Bands.Of(r.FrequencyHz, r.Uncertainty.FrequencyHz, "Hz")],
                [
                    "Young's modulus",
                    show.Inch ? show.Pressure(r.YoungsModulusPa) : Bands.Of(r.YoungsModulusPa / 1e9, r.Uncertainty.YoungsModulusPa / 1e9, "GPa"),
                ],
                ["loss factor", Bands.Of(r.LossFactor, r.Uncertainty.LossFactor) + "; its supports are in it, so the cast has less"],
                ["density", show.Inch ? show.Density(r.DensityKgM3) : Bands.Of(r.DensityKgM3, r.Uncertainty.DensityKgM3, "kg/m³")],
            ]
        );
        return r.Against is not { } differences ? text : text + "\n" + string.Concat(differences.Select(d => Words.Wrapped(Said(d), terminal.Width) + "\n"));
    }

    private static string Said(BarDifference d)
    {
        var (what, more) = d.Figure == "loss_factor" ? ("loss factor", "deader") : ("modulus", "stiffer");
        var amount = $"{Show.Percent(Math.Abs(d.DifferenceRatio))} ± {Show.Percent(d.BandRatio)}";
        return d.IsBeyondNoise
            ? $"{(d.DifferenceRatio > 0 ? "This bar" : "The other bar")} is {more}: this one's {what} is {amount} "
                + $"{(d.DifferenceRatio > 0 ? "above" : "below")} the other's, beyond the noise."
            : $"In {what} the bars do not differ beyond the noise: {amount}.";
    }
}
