using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
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
            Box(appraisal, show, terminal), Walls(appraisal, show, terminal), Parts(appraisal, show, terminal),
            Pour(appraisal, show, terminal), Supplies(appraisal, show, terminal), Quiet(appraisal, terminal),
        ];
        return string.Join('\n', tables.Where(t => t is not null));
    }

    private static string Box(Appraisal a, Show show, Terminal terminal)
    {
        var b = a.Box;
        return Tables.Of(terminal, "Box", ["", ""],
        [
            ["net volume", Or(b.NetVolumeM3, show.Volume)],
            ["as the cone feels it", $"{Or(b.EffectiveVolumeM3, show.Volume)}, fill factor {Or(b.FillFactor, v => Show.Number(v))}"],
            ["resonance, Q", $"{Or(b.SystemResonanceHz, Show.Frequency)}, {Or(b.SystemQ, v => Show.Number(v))}"],
            ["3 dB and 10 dB down", $"{Or(b.F3Hz, Show.Frequency)}, {Or(b.F10Hz, Show.Frequency)}"],
            ["sensitivity", Or(b.SensitivityDb, Show.Level)],
            ["greatest level at the lowest note", $"{Or(b.MaxSplAtLowestDb, Show.Level)} half space, {Or(b.MaxSplAtSeatDb, Show.Level)} at the seat, by {b.LimitedByAtLowest ?? "unknown"}"],
            ["power for the wanted level", Or(b.PowerNeededW, v => $"{Show.Number(v)} W")],
            ["leak Q", b.LeakQ is { } q ? Show.Number(q) : "airtight or unknown"],
            ["first air mode inside", Or(b.LowestAirModeHz, Show.Frequency)],
        ]);
    }

    private static string? Walls(Appraisal a, Show show, Terminal terminal)
    {
        static string Case(WallCase? c) => c is null ? "–" : $"{Show.Frequency(c.FirstModeHz)}, {(c.WallToConeDb is { } db ? Show.Level(db) : "unknown")}";
        return a.Walls.Count == 0 ? null : Tables.Of(terminal, "Walls: first mode, level against the cone", ["panel", ">clear span", ">bonded", ">slipping", ">core cut by struts"],
            a.Walls.Select(w => (IReadOnlyList<string>)[w.Panel, $"{show.Length(w.WidthM)} × {show.Length(w.HeightM)}", Case(w.Bonded), Case(w.Slipping), Case(w.CutCore)]));
    }

    private static string? Parts(Appraisal a, Show show, Terminal terminal)
    {
        if (a.Parts.Count == 0)
        {
            return null;
        }

        IReadOnlyList<string> total = ["altogether", "", Or(a.Print.FilamentKg, show.Mass), Or(a.Print.PrintSeconds, Show.Time), ""];
        return Tables.Of(terminal, "Parts: printing time is the least it can be", ["part", ">size as printed", ">mass", ">time", "fits"],
            a.Parts.Select(p => (IReadOnlyList<string>)[
                p.Name, string.Join(" × ", p.SizeM.Select(show.Length)), Or(p.MassKg, show.Mass), Or(p.PrintSeconds, Show.Time),
                p.Fits switch { true => "yes", false => "no", _ => "unknown" }]).Append(total));
    }

    internal static string? Pour(Appraisal a, Show show, Terminal terminal)
    {
        var p = a.Pour;
        if (p.PowderKg is null)
        {
            return null;
        }

        var totals = Tables.Of(terminal, "Pour", ["", ""],
        [
            ["cavity", Or(p.CavityVolumeM3, show.Volume)],
            ["to mix, reserve counted", $"{Or(p.PowderKg, show.Mass)} of powder, {Or(p.WaterKg, show.Mass)} of water"],
            ["in the cabinet", $"{Or(p.WetInCabinetKg, show.Mass)} wet, {Or(p.DryInCabinetKg, show.Mass)} dry"],
            ["pressure and bulge", $"{Or(p.FormPressurePa, v => $"{Show.Number(v / 1000, 2)} kPa")}, {Or(p.SkinBulgeM, show.Length)}"],
            ["peak", $"{Or(p.ExpectedPeakC, show.Temperature)} expected, {Or(p.AdiabaticPeakC, show.Temperature)} if no heat left"],
        ]);
        return p.Batches.Count == 0 ? totals : totals + "\n" + Tables.Of(terminal, "Batches: times from the first water", [">batch", ">lift", ">powder", ">water", ">start", ">pour by"],
            p.Batches.Select((b, i) => (IReadOnlyList<string>)[Count(i + 1), Count(b.Lift), show.Mass(b.PowderKg), show.Mass(b.WaterKg), Show.Time(b.StartS), Show.Time(b.PourByS)]));
    }

    internal static string? Supplies(Appraisal a, Show show, Terminal terminal)
    {
        static string Amount(double? amount, string unit) => amount is { } v ? $"{Show.Number(v)} {unit}" : "unknown";
        return a.Supplies.Count == 0 ? null : Tables.Of(terminal, "Supplies", ["item", ">needed", ">in stock", ">to buy", ">price", "state"],
            a.Supplies.Select(s => (IReadOnlyList<string>)[
                s.Item, Amount(s.Needed, s.Unit), Amount(s.InStock, s.Unit), Amount(s.ToBuy, s.Unit), s.Price is { } price ? show.Money(price) : "–", s.State]));
    }

    internal static string? Quiet(Appraisal a, Terminal terminal) =>
        a.Quiet.Bands.All(b => b.OverDb is null && b.SeatDb is null) ? null : Tables.Of(terminal, "Quiet: everyday level by third-octaves", [">band", ">seat", ">room", ">wall", ">neighbour", ">give or take", ">curve", ">over"],
            a.Quiet.Bands.Select(b => (IReadOnlyList<string>)[
                Show.Frequency(b.BandHz), Or(b.SeatDb, Show.Level), Or(b.SourceRoomDb, Show.Level), Or(b.ReductionDb, Show.Level), Or(b.NeighbourDb, Show.Level),
                Or(b.UncertaintyDb, Show.Level), Or(b.CurveDb, Show.Level), Or(b.OverDb, Show.Level)]));

    private static string Or(double? value, Func<double, string> write) => value is { } known ? write(known) : "unknown";

    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
}
