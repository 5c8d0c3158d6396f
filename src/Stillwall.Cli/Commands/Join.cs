using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Neighbours.Joins;

namespace Stillwall.Cli.Commands;

/// <summary><c>join</c>: the cabinet with the main speakers.</summary>
internal static class Join
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var json = Common.Json;
        return new Verb("join", "delay, polarity and level with which the cabinet joins the main speakers best, in the free field", "stillwall join my-cabinet")
        {
            Takes = [project, json],
            Do = call =>
            {
                var facts = LoadedProject.Load(call.Session, call.Text(project)).Facts();
                var joining = facts.Joining ?? throw Want.OfJoining("join", facts);
                call.Session.Print(
                    call.Has(json)
                        ? ResultJson.Write(JoiningReport.Of(joining, facts.WaysToJoin, facts.JoiningAtSeat))
                        : Table(joining, call.Session.Terminal) + Rest(facts, call.Session.Terminal)
                );
                return ExitCodes.Done;
            },
        };
    }

    private static string Table(Joining joining, Terminal terminal)
    {
        var delayed = joining.DelayS < 0 ? "cabinet" : "main speakers";
        var heading =
            $"Delay the {delayed} by {Show.Number(Math.Abs(joining.DelayS) * 1e3, 2)} ms, polarity {(joining.Inverted ? "turned" : "as it is")}, cabinet "
            + $"{Show.Level(Math.Abs(joining.TrimDb))} {(joining.TrimDb < 0 ? "down" : "up")}: the sum is even within ±{Show.Level(joining.RippleDb)}";
        return Tables.Of(
                terminal,
                heading,
                [">frequency", ">cabinet", ">main speakers", ">together"],
                joining
                    .Curve.Where((_, i) => i % 8 == 0)
                    .Select(p =>
                        (IReadOnlyList<string>)[Show.Frequency(p.FrequencyHz), Show.Level(p.CabinetDb), Show.Level(p.MainSpeakersDb), Show.Level(p.SumDb)]
                    )
            ) + "\nFree field: the room changes it, so the ear has the last word.\n";
    }

    private static string Rest(Facts facts, Terminal terminal) =>
        "\n"
        + Tables.Of(
            terminal,
            "Other orders, each at its best",
            ["low-pass", "high-pass", ">ripple", ">delay of the main speakers", "polarity", ">cabinet"],
            facts.WaysToJoin.Select(w =>
                (IReadOnlyList<string>)
                    [
                        Order(w.LowPassOrder),
                        Order(w.HighPassOrder),
                        $"±{Show.Level(w.RippleDb)}",
                        $"{Show.Number(w.DelayS * 1e3, 2)} ms",
                        w.Inverted ? "turned" : "as it is",
                        Show.Level(w.TrimDb),
                    ]
            )
        )
        + "\n"
        + Words.Wrapped(AtSeat(facts), terminal.Width)
        + "\n";

    private static string Order(int order) => order == 2 ? "second" : "fourth";

    private static string AtSeat(Facts facts) =>
        facts.JoiningAtSeat is not { } seat
            ? "For the seat state where the main speakers stand: brief.main_speakers.left_at and right_at, and the room."
            : $"At the seat by third-octaves: ±{Show.Level(seat.RippleDb)} with {(seat.DelayS < 0 ? "the cabinet" : "the main speakers")} "
                + $"{Show.Number(Math.Abs(seat.DelayS) * 1e3, 2)} ms later, polarity {(seat.Inverted ? "turned" : "as it is")}, cabinet "
                + $"{Show.Level(Math.Abs(seat.TrimDb))} {(seat.TrimDb < 0 ? "down" : "up")}; "
                + $"±{Show.Level(seat.MovedRippleDb)} where the seat is moved by {facts.Show.Distance(SeatJoining.MovedM)}; "
                + $"±{Show.Level(seat.FreeFieldRippleDb)} with the free field's setting, made up for the distances. Advice: a rigid room has sharper "
                + "peaks than yours.";
}
