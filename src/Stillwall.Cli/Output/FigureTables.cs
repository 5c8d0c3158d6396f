using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Numerics;
using Stillwall.Projects;
using Stillwall.Walls;

namespace Stillwall.Cli.Output;

/// <summary>The figures of an appraisal as tables.</summary>
internal static class FigureTables
{
    internal static string Of(Project project, Appraisal appraisal, Terminal terminal)
    {
        var show = Show.Of(project);
        string?[] tables =
        [
            Box(appraisal, show, terminal),
            Walls(appraisal, show, terminal),
            Parts(appraisal, show, terminal),
            Pour(appraisal, show, terminal),
            SupplyText.Table(appraisal, show, terminal),
            QuietText.Table(appraisal, terminal),
        ];
        return string.Join('\n', tables.Where(t => t is not null));
    }

    private static string Box(Appraisal a, Show show, Terminal terminal)
    {
        var b = a.Box;
        return Tables.Of(
            terminal,
            "Box",
            ["", ""],
            [
                ["net volume", Or(b.NetVolumeM3, show.Volume)],
                ["effective volume", $"{Or(b.EffectiveVolumeM3, show.Volume)}, fill factor {Or(b.FillFactor, v => Show.Number(v))}"],
                ["resonance, Q", $"{Or(b.SystemResonanceHz, Show.Frequency)}, {Or(b.SystemQ, v => Show.Number(v))}"],
                ["f3, f10 (−3, −10 dB)", $"{Or(b.F3Hz, Show.Frequency)}, {Or(b.F10Hz, Show.Frequency)}"],
                ["sensitivity", Or(b.SensitivityDb, Show.Level)],
                [
                    "greatest level at the lowest note",
                    $"{Or(b.MaxSplAtLowestDb, Show.Level)} half space, {Or(b.MaxSplAtSeatDb, Show.Level)} at the seat; limited by: "
                        + $"{b.LimitedByAtLowest?.Word() ?? "unknown"}",
                ],
                ["power for the wanted level", Or(b.PowerNeededW, v => $"{Show.Number(v)} W")],
                ["leak Q", b.LeakQ is { } q ? Show.Number(q) : "airtight or unknown"],
                ["first air mode inside", Or(b.LowestAirModeHz, Show.Frequency)],
            ]
        );
    }

    private static string? Walls(Appraisal a, Show show, Terminal terminal)
    {
        static string Case(WallCase? c) => c is null ? "–" : $"{Show.Frequency(c.FirstModeHz)}, {(c.WallToConeDb is { } db ? Show.Level(db) : "unknown")}";
        return a.Walls.Count == 0
            ? null
            : Tables.Of(
                terminal,
                "Walls: first mode, level relative to the cone",
                ["panel", ">clear span", ">bonded", ">slipping", ">core cut by struts"],
                a.Walls.Select(w =>
                    (IReadOnlyList<string>)[w.Panel, $"{show.Length(w.WidthM)} × {show.Length(w.HeightM)}", Case(w.Bonded), Case(w.Slipping), Case(w.CutCore)]
                )
            );
    }

    private static string? Parts(Appraisal a, Show show, Terminal terminal)
    {
        if (a.Parts.Count == 0)
        {
            return null;
        }

        IReadOnlyList<string> total = ["total", "", Or(a.Print.FilamentKg, show.Mass), Or(a.Print.PrintSeconds, Show.Time), ""];
        return Tables.Of(
            terminal,
            "Parts: printing times are the least possible",
            ["part", ">size as printed", ">mass", ">time", "fits"],
            a.Parts.Select(p =>
                    (IReadOnlyList<string>)
                        [
                            p.Name,
                            string.Join(" × ", p.SizeM.Select(show.Length)),
                            Or(p.MassKg, show.Mass),
                            Or(p.PrintSeconds, Show.Time),
                            p.Fits switch
                            {
                                true => "yes",
                                false => "no",
                                _ => "unknown",
                            },
                        ]
                )
                .Append(total)
        );
    }

    private static string? Pour(Appraisal a, Show show, Terminal terminal)
    {
        var p = a.Pour;
        if (p.PowderKg is null)
        {
            return null;
        }

        var totals = Tables.Of(
            terminal,
            "Pour",
            ["", ""],
            [
                ["cavity", Or(p.CavityVolumeM3, show.Volume)],
                ["to mix, reserve counted", $"{Or(p.PowderKg, show.Mass)} of powder, {Or(p.WaterKg, show.Mass)} of water"],
                ["in the cabinet", $"{Or(p.WetInCabinetKg, show.Mass)} wet, {Or(p.DryInCabinetKg, show.Mass)} dry"],
                ["pressure and bulge of the skin", $"{Or(p.FormPressurePa, show.Pressure)}, {Or(p.SkinBulgeM, show.Length)}"],
                ["peak", $"{Or(p.ExpectedPeakC, show.Temperature)} expected, {Or(p.AdiabaticPeakC, show.Temperature)} if no heat is lost"],
                ["when it is warmest", $"{Or(p.PeakTimeS, Show.Time)} after a bucket's first water, {Or(p.PeakOuterFaceC, show.Temperature)} on the outside"],
                ["thickest place of the cast", $"{Or(p.ThickestPlaceM, show.Length)}, in the edges of front and rear, cooled from two sides"],
            ]
        );
        return p.Batches.Count == 0
            ? totals
            : totals
                + "\n"
                + Tables.Of(
                    terminal,
                    "Batches: times from the first water",
                    [">batch", ">lift", ">powder", ">water", ">start", ">pour by"],
                    p.Batches.Select(
                        (b, i) =>
                            (IReadOnlyList<string>)
                                [Count(i + 1), Count(b.Lift), show.Mass(b.PowderKg), show.Mass(b.WaterKg), Show.Time(b.StartS), Show.Time(b.PourByS)]
                    )
                );
    }

    private static string Or(double? value, Func<double, string> write) => value is { } known ? write(known) : "unknown";

    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
}
