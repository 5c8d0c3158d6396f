using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Materials;
using Stillwall.Pours;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>mix</c>: one batch.</summary>
internal static class Mixing
{
    internal static Verb Verb()
    {
        var powder = new QuantityOption("--powder", Dimension.Mass, "powder to mix, such as 4kg; pounds or gallons here give pounds and gallons in the table")
        {
            Span = (1e-6, 1e6),
        };
        var volume = new QuantityOption("--volume", Dimension.Volume, "slurry to mix, such as 4L; instead of --powder") { Span = (1e-9, 1e3) };
        var ratio = new QuantityOption("--powder-per-water", Dimension.None, "mass of powder for one of water; the mix's usual ratio where left out")
        {
            Span = (0.3, 20),
        };
        var name = new TextOption("--mix", "MIX", $"kind of mix: {string.Join(", ", Names)}; plaster where left out", Names);
        var core = new QuantityOption(
            "--core",
            Dimension.Length,
            "thickness of the cast whose warmth is told, between skins of 2 mm petg; 12 mm where left out"
        )
        {
            Span = (0.002, 0.5),
        };
        var json = Common.Json;
        return new Verb(
            "mix",
            "one batch of cast: what it takes, fills, weighs and how warm it gets",
            "stillwall mix --powder 4kg --powder-per-water 1.5 --mix plaster"
        )
        {
            Takes = [powder, volume, ratio, name, core, json],
            Do = call =>
            {
                var kind = CastMixes.Find(call.Text(name) ?? "plaster")!;
                var mix = Mixed(kind, call.Value(powder), call.Value(volume), call.Value(ratio) ?? kind.PowderPerWaterRatio);
                call.Session.Print(
                    call.Has(json)
                        ? ResultJson.Write(mix)
                        : Table(
                            mix,
                            kind,
                            call.Value(core) ?? UsualCoreM,
                            new Show(TypedUnits.AreInch(call.Text(powder), call.Text(volume), call.Text(core)), ""),
                            call.Session.Terminal
                        )
                );
                return ExitCodes.Done;
            },
        };
    }

    private const double UsualCoreM = 0.012,
        UsualSkinM = 0.002;

    private static IReadOnlyList<string> Names { get; } = [.. CastMixes.All.Select(m => m.Name)];

    private static MixFigures Mixed(CastMix kind, double? powderKg, double? volumeM3, double ratio) =>
        (powderKg, volumeM3) switch
        {
            ({ } mass, null) => Mix.FromPowder(kind, mass, ratio, Air.Reference.TemperatureC),
            (null, { } volume) => Mix.FromVolume(kind, volume, ratio, Air.Reference.TemperatureC),
            (null, null) => throw Refusal.Input("mix: --powder or --volume is missing; one of them"),
            _ => throw Refusal.Input("mix: --powder and --volume are both given; one of them"),
        };

    private static string Table(MixFigures mix, CastMix kind, double coreM, Show show, Terminal terminal)
    {
        var range = mix.AdiabaticPeakRangeC is [var least, var greatest]
            ? $", {show.Temperature(least)} to {show.Temperature(greatest)} by published heats"
            : "";
        return Tables.Of(
            terminal,
            $"{kind.Name}, powder to water {Show.Number(mix.PowderKg / mix.WaterKg)} : 1, at {show.Temperature(Air.Reference.TemperatureC)}",
            ["", ""],
            [
                ["powder", show.Mass(mix.PowderKg)],
                ["water", show.Mass(mix.WaterKg)],
                ["slurry", $"{show.Liquid(mix.SlurryVolumeM3)} at {show.Density(mix.SlurryDensityKgM3, 4)}"],
                ["together, wet", show.Mass(mix.WetMassKg)],
                ["set and dry", $"{show.Mass(mix.DryMassKg)} at {show.Density(mix.DryDensityKgM3, 4)}, {Show.Percent(mix.Porosity)} pores"],
                ["water to dry out", show.Mass(mix.FreeWaterKg)],
                [
                    "peak if no heat is lost",
                    mix.AdiabaticPeakC is { } peak ? show.Temperature(peak) + range : "unknown: the heat of setting of this mix is not known",
                ],
                [$"peak in a wall of {show.Length(coreM)}", Warmth(mix, kind, coreM, show)],
            ]
        );
    }

    private static string Warmth(MixFigures mix, CastMix kind, double coreM, Show show) =>
        SettingHeat.Expected(
            mix: kind,
            figures: mix,
            coreM: coreM,
            skin: SkinMaterials.Petg,
            outerM: UsualSkinM,
            innerM: UsualSkinM,
            airC: Air.Reference.TemperatureC
        )
            is { } heat
            ? $"{show.Temperature(heat.ExpectedPeakC)} after {Show.Time(heat.PeakTimeS)}, {show.Temperature(heat.OuterFaceC)} on its outside"
            : "unknown";
}
