using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>room</c>: what the room makes of the cabinet at the seat.</summary>
internal static class Room
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var velocity = new QuantityOption("--volume-velocity", Dimension.None, "volume velocity of the source, m3/s rms; 0.001 where left out") { Span = (1e-12, 1e3) };
        var csv = Common.Csv("level and phase at 10, 12 … 200 Hz");
        return new Verb("room", "level at the seat for a source of constant volume velocity in the stated room", "stillwall room my-cabinet --volume-velocity 0.001 --csv room.csv")
        {
            Takes = [project, velocity, csv],
            Do = call =>
            {
                var facts = LoadedProject.Load(call.Session, call.Text(project)).Facts();
                var source = call.Value(velocity) ?? 0.001;
                var file = call.Text(csv);
                var room = facts.Room ?? throw Refusal.Input($"room: unknown, for want of {Want.OfRoom(facts.Project)}");
                var curve = RoomCurve.Of(room, source);
                if (file is null)
                {
                    call.Session.Print(Table(curve, source, facts.Show, call.Session.Terminal));
                    return ExitCodes.Done;
                }

                call.Session.Deliver(file, CsvText.Write(["frequency_hz", "spl_db", "phase_deg"], curve.Select(p => (IReadOnlyList<double?>)[p.FrequencyHz, p.SplDb, p.PhaseDeg])));
                Common.SayWritten(call.Session, file, curve.Count);
                return ExitCodes.Done;
            },
        };
    }

    private static string Table(IReadOnlyList<RoomPoint> curve, double source, Show show, Terminal terminal) => Tables.Of(
        terminal, $"At the seat, for a source of {show.VolumeVelocity(source)} at every frequency", [">frequency", ">level", ">phase"],
        curve.Where(p => p.FrequencyHz % 10 == 0).Select(p => (IReadOnlyList<string>)[Show.Frequency(p.FrequencyHz), Show.Level(p.SplDb), $"{Show.Number(Math.Round(p.PhaseDeg))}°"]));
}
