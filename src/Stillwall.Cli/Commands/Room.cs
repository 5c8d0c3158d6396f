using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Drawings;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>room</c>: what the room makes of the cabinet at the seat, where it is loud, and where to stand and sit.</summary>
internal static class Room
{
    private static readonly IReadOnlyList<string> Movable = ["cabinet", "seat", "both"];

    internal static Verb Verb()
    {
        var project = Common.Project;
        var velocity = new QuantityOption("--volume-velocity", Dimension.None, "volume velocity of the source, m3/s rms; 0.001 where left out")
        {
            Span = (1e-12, 1e3),
        };
        var csv = Common.Csv("level and phase at 10, 12 … 200 Hz");
        var map = new QuantityOption("--map", Dimension.Frequency, "draws the plan of the room, coloured by level at this frequency; needs --svg")
        {
            Span = (5, RoomModel.HighestMeanHz),
        };
        var svg = new OutputOption("--svg", "FILE", "where the plan goes; - is standard output");
        var places = new TextOption("--places", "WHAT", "searches where to stand or sit: cabinet, seat or both", Movable);
        var json = new Flag("--json", "with --places: one JSON document on standard output and nothing else");
        return new Verb(
            "room",
            "level at the seat for a source of constant volume velocity in the stated room; a plan of it; where to stand and sit",
            "stillwall room my-cabinet --map 45Hz --svg room.svg"
        )
        {
            Takes = [project, velocity, csv, map, svg, places, json],
            Do = call =>
            {
                call.OneOutput(json, csv, svg);
                var (at, picture, moved) = (call.Value(map), call.Text(svg), call.Text(places));
                if (at is null != picture is null)
                {
                    throw Refusal.Input(
                        at is null
                            ? "--map is missing; the frequency that --svg is drawn for, such as 45Hz"
                            : "--svg is missing; the file that the plan is drawn into"
                    );
                }

                if (call.Has(json) && moved is null)
                {
                    throw Refusal.Input("--places is missing; --json answers it, such as --places both --json");
                }

                var facts = LoadedProject.Load(call.Session, call.Text(project)).Facts();
                var (source, file) = (call.Value(velocity) ?? 0.001, call.Text(csv));
                var room = facts.Room ?? throw Want.OfRoom("room", facts);
                if (file is not null)
                {
                    var curve = RoomCurve.Of(room, source);
                    call.Deliver(
                        csv,
                        CsvText.Write(["frequency_hz", "spl_db", "phase_deg"], curve.Select(p => (IReadOnlyList<double?>)[p.FrequencyHz, p.SplDb, p.PhaseDeg]))
                    );
                    Common.SayWritten(call.Session, file, curve.Count);
                }

                if (picture is not null)
                {
                    call.Deliver(svg, RoomMapSvg.Of(RoomMap.Of(room, at!.Value, source), facts.Show));
                    Say(call.Session, picture, "the plan of the room");
                }

                if (moved is not null)
                {
                    Places(call.Session, facts, room, moved, call.Has(json));
                }
                else if (file is null && picture is null)
                {
                    call.Session.Print(Table(room, source, facts, call.Session.Terminal));
                }

                return ExitCodes.Done;
            },
        };
    }

    private static void Say(Session session, string file, string what)
    {
        if (file != "-")
        {
            session.PrintLine($"{file}: {what}");
        }
    }

    private static string Table(RoomModel room, double source, Facts facts, Terminal terminal)
    {
        var distance = facts.Project.Brief.Aim?.DistanceM ?? 2;
        var corner = PressureZone.CornerHz(room.Geometry.VolumeM3, distance, room.Air);
        return Tables.Of(
                terminal,
                $"At the seat, for a source of {facts.Show.VolumeVelocity(source)} at every frequency",
                [">frequency", ">level", ">phase", ">mean of the room", ">seat over mean"],
                RoomCurve
                    .Of(room, source, 10)
                    .Select(p => (Point: p, Mean: RoomCurve.MeanDb(room, p.FrequencyHz, source)))
                    .Select(p =>
                        (IReadOnlyList<string>)
                            [
                                Show.Frequency(p.Point.FrequencyHz),
                                Show.Level(p.Point.SplDb),
                                $"{Show.Number(Math.Round(p.Point.PhaseDeg))}°",
                                Show.Level(p.Mean),
                                Show.Level(p.Point.SplDb - p.Mean),
                            ]
                    )
            )
            + "\n"
            + Words.Wrapped(
                $"Lowest mode {Show.Frequency(room.LowestModeHz)}; below it the room is pressed evenly, and an airtight one adds 12 dB for each octave "
                    + $"under {Show.Frequency(corner)} against {facts.Show.Distance(distance)} in the open: "
                    + $"{Show.Level(PressureZone.GainDb(20, room.Geometry.VolumeM3, distance, room.Air))} at 20 Hz. Real rooms leak and add less.",
                terminal.Width
            )
            + "\n";
    }

    private static void Places(Session session, Facts facts, RoomModel room, string moved, bool asJson)
    {
        var options = new PlaceOptions
        {
            MovesCabinet = moved != "seat",
            MovesSeat = moved != "cabinet",
            HighestHz = Math.Clamp(facts.Project.Brief.Aim?.CrossoverHz ?? 100, 25, 160),
        };
        var report = PlaceSearch.Of(
            room.Geometry,
            room.Air,
            options,
            progress: session.Terminal.OutputIsTerminal ? new Share(session) : null,
            stop: session.Terminal.Stop
        );
        session.Print(asJson ? ResultJson.Write(report) : Choices(report, options, facts.Show, session.Terminal));
    }

    private static string Choices(PlaceReport report, PlaceOptions options, Show show, Terminal terminal)
    {
        IReadOnlyList<string> Row(string name, PlaceChoice c) =>
            [name, At(c.Cabinet, show), At(c.Seat, show), Show.Level(c.SeatOverMeanDb), $"±{Show.Level(c.UnevennessDb)}"];
        return Tables.Of(
                terminal,
                "Where to stand and sit",
                ["", "cabinet at", "seat at", ">seat over mean", ">unevenness"],
                [
                    Row("now", report.Now),
                    .. report.Loudest.Select((c, i) => Row(i == 0 ? "most for the seat" : "", c)),
                    .. report.Evenest.Select((c, i) => Row(i == 0 ? "most even" : "", c)),
                ]
            )
            + "\n"
            + Words.Wrapped(
                $"{report.TriedCount.ToString(CultureInfo.InvariantCulture)} pairs tried, 20 Hz to {Show.Frequency(options.HighestHz)}. at: across the "
                    + "width, along the length. seat over mean: what the seat gets that the wall does not, dB for dB. unevenness: spread of the "
                    + "third-octaves. Rigid walls: differences under 1 dB mean nothing.",
                terminal.Width
            )
            + "\n";
    }

    private static string At(Place place, Show show) => $"{show.Distance(place.XM)}, {show.Distance(place.YM)}";

    // Tells every fifth part; a search takes a second or two.
    private sealed class Share(Session session) : IProgress<double>
    {
        private int told;

        public void Report(double value)
        {
            if ((int)(value * 5) is var fifth && fifth > told && fifth < 5)
            {
                told = fifth;
                session.Tell($"{(fifth * 20).ToString(CultureInfo.InvariantCulture)} % of the places tried");
            }
        }
    }
}
