using Stillwall.Appraisals;
using Stillwall.Projects;
using Stillwall.Web.Store;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Controls;

/// <summary>One figure of the title block.</summary>
internal sealed record TitleFigure(string Name, string Result, string Number, string Unit, string Beside, string? BesideResult);

/// <summary>The figures of the title block.</summary>
internal static class TitleFigures
{
    /// <summary>The six figures of a state.</summary>
    internal static IReadOnlyList<TitleFigure> Of(Snapshot state)
    {
        var (facts, project) = (state.Plan.Facts, state.Project);
        var (show, box, print, cost) = (facts.Show, facts.Box, facts.Print, facts.Cost);
        var aim = project.Brief.Aim;
        return
        [
            Figure(
                ShellTexts.NetVolume,
                "box.net_volume_m3",
                box.NetVolumeM3 is { } net ? show.Volume(net) : null,
                box.InsideVolumeM3 is { } inside ? TitleTexts.Inside(show.Volume(inside)) : "",
                "box.inside_volume_m3"
            ),
            Figure(
                ShellTexts.Resonance,
                "box.system_resonance_hz",
                box.SystemResonanceHz is { } f ? Show.Frequency(f) : null,
                box.F10Hz is { } f10 ? TitleTexts.Under(Show.Number(f10, 2)) : "",
                "box.f10_hz"
            ),
            Figure(
                ShellTexts.SystemQ,
                "box.system_q",
                box.SystemQ is { } q ? Show.Number(q, 3) : null,
                aim is null ? "" : TitleTexts.Wanted(Show.Number(aim.SystemQ - aim.SystemQTolerance, 2), Show.Number(aim.SystemQ + aim.SystemQTolerance, 2))
            ),
            Figure(
                ShellTexts.Mass,
                "mass.finished_kg",
                facts.Mass.FinishedKg is { } kg ? show.Mass(kg) : null,
                TitleTexts.ToLift(show.Mass(facts.Limits.LiftMassKg))
            ),
            Figure(
                ShellTexts.Printing,
                "print.honest_print_seconds[1]",
                print.HonestPrintSeconds is [var from, var to] ? $"{Math.Round(from / Units.Hour)}–{Math.Round(to / Units.Hour)} h" : null,
                print.LongestPrintSeconds is { } longest ? TitleTexts.Longest($"{Math.Floor(longest / Units.Hour)} h") : "",
                "print.longest_print_seconds"
            ),
            Figure(
                ShellTexts.Price,
                "cost.total_price",
                cost is { TotalPrice: 0, Unpriced.Count: > 0 } ? null : show.Money(cost.TotalPrice),
                project.Budget is { } budget ? TitleTexts.Budget(show.Money(budget)) : ""
            ),
        ];
    }

    private static TitleFigure Figure(string name, string result, string? quantity, string beside, string? besideResult = null)
    {
        var (number, unit) = quantity is null ? (ShellTexts.NotKnown, "") : Words.Split(quantity);
        return new TitleFigure(name, result, number, unit, beside, beside.Length > 0 ? besideResult : null);
    }
}
