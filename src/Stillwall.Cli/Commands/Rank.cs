using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Figures;
using Stillwall.Files;
using Stillwall.Files.Charts;
using Stillwall.Files.Json;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>rank</c>: every candidate in this cabinet, the best first.</summary>
internal static class Rank
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var json = Common.Json;
        var top = new QuantityOption("--top", Dimension.None, "how many to show; all where left out") { IsWhole = true, Span = (1, 100000) };
        var svg = new OutputOption("--svg", "FILE", "draws level against price; - is standard output");
        return new Verb("rank", "every candidate driver in this cabinet, the best first, with the reason for each refusal", "stillwall rank my-cabinet --top 5")
        {
            Takes = [project, top, json, svg],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var ranked = Ranking.Of(loaded.Project, loaded.Candidates, (int?)call.Value(top));
                if (call.Text(svg) is { } file)
                {
                    call.Deliver(svg, Drawn(loaded.Project, Ranking.Of(loaded.Project, loaded.Candidates)));
                    Common.SayWritten(call.Session, file, ranked.Drivers.Count);
                    return ExitCodes.Done;
                }

                call.Session.Print(call.Has(json) ? ResultJson.Write(ranked) : Table(loaded, ranked, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    private static string Drawn(Project project, RankedDrivers ranked)
    {
        var chart = BestBuyChart.Of(ranked.Drivers, Show.Of(project));
        return ChartPicture.Svg(chart ?? throw Refusal.Input("rank: no candidate has both a price and a level to draw"));
    }

    private static string Table(LoadedProject loaded, RankedDrivers ranked, Terminal terminal)
    {
        var show = Show.Of(loaded.Project);
        var table = Tables.Of(
            terminal,
            Title(loaded, ranked, show),
            ["", "driver", ">price", ">greatest level", "limited by", ">resonance", ">Q"],
            ranked.Drivers.Select(d =>
                (IReadOnlyList<string>)
                    [
                        Ink.Mark(d.Verdict) + (d.Front ? " *" : ""),
                        d.Name,
                        d.Price is { } price ? show.Money(price) : "–",
                        d.MaxSplAtLowestDb is { } level ? Show.Level(level) : "unknown",
                        d.LimitedByAtLowest?.Word() ?? "–",
                        d.SystemResonanceHz is { } f ? Show.Frequency(f) : "–",
                        d.SystemQ is { } q ? Show.Number(q) : "–",
                    ]
            )
        );
        var legend =
            Words.Wrapped("● holds, ◐ tight, ▲ fails, ○ unknown; * the loudest of those that cost no more; resonance and Q: of the closed box", terminal.Width)
            + "\n";
        var reasons = ranked
            .Drivers.Where(d => d.Reasons.Count > 0)
            .Select(d =>
                $"\n{Ink.Mark(d.Verdict)} {Visible.Of(d.Name)}\n" + string.Concat(d.Reasons.Select(r => $"  {Words.Wrapped(r, terminal.Width, 2, 4)}\n"))
            );
        return table + legend + string.Concat(reasons);
    }

    private static string Title(LoadedProject loaded, RankedDrivers ranked, Show show)
    {
        static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
        var aim = loaded.Project.Brief.Aim;
        var (shown, all) = (ranked.Drivers.Count, loaded.Candidates.Count);
        var level = aim?.LowestHz is { } lowest ? $"; level at {Show.Frequency(lowest)}, half space, {show.Distance(aim.DistanceM)}" : "";
        return $"{(shown < all ? $"The best {Count(shown)} of {Count(all)} drivers" : Count(all) + " drivers")} in this cabinet{level}";
    }
}
