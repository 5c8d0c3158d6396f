using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Proofs.PartyWalls;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove wall</c>: level difference through the party wall.</summary>
internal static class ProveWall
{
    internal static Verb Verb()
    {
        var here = new TextArgument("HERE.wav", "noise or a slow sweep, recorded in your room");
        var there = new TextArgument("THERE.wav", "the same, recorded in the neighbour's room with the same microphone and gain, with the neighbour's consent");
        var background = new TextOption("--background", "FILE.wav", "the neighbour's room with nothing playing");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "wall",
            "how much less of each third-octave is next door, which replaces the table's figure for the wall",
            "stillwall prove wall here.wav there.wav --background quiet.wav --project my-cabinet --keep"
        )
        {
            Step = WorkStep.PartyWall,
            Takes = [here, there, background, json, keeping.Project, keeping.Keep, keeping.Log],
            Do = call =>
            {
                var loaded = keeping.Load(call);
                var quiet = call.Text(background) is { } file ? Sounds.Load(call.Session, file) : null;
                var reading = LevelDifference.Of(Sounds.Load(call.Session, call.Text(here)!), Sounds.Load(call.Session, call.Text(there)!), quiet);
                if (reading.Trouble is { } trouble)
                {
                    throw Refusal.Input($"prove wall: {trouble}");
                }

                Sounds.Warn(call.Session, call.Text(there)!, reading.Warnings);
                if (call.Has(keeping.Keep) && reading.Bands.Any(b => b.DifferenceDb is < -20 or > 120))
                {
                    throw Refusal.Input("prove wall: a band is louder there than here by 20 dB or more; HERE.wav first, THERE.wav second, at one gain");
                }

                call.Session.Print(call.Has(json) ? ResultJson.Write(reading) : Table(reading, call.Session.Terminal));
                keeping.Save(
                    call,
                    loaded,
                    "party wall",
                    $"{Show.Level(reading.Bands[4].DifferenceDb)} at 50 Hz",
                    [("party_wall", [.. reading.Bands.Select(b => b.DifferenceDb)])],
                    call.Has(json)
                );
                CareText.Say(call.Session, WorkStep.PartyWall, loaded?.Facts(), call.Has(json));
                return ExitCodes.Done;
            },
        };
    }

    private static string Table(WallReading reading, Terminal terminal) =>
        Tables.Of(
            terminal,
            "Level difference through the party wall",
            [">band", ">here", ">there", ">difference", ">± by length"],
            reading.Bands.Select(b =>
                (IReadOnlyList<string>)
                    [
                        Show.Frequency(b.BandHz),
                        Show.Level(b.SourceDb),
                        Show.Level(b.ReceiverDb),
                        $"{(b.IsAtLeast ? "at least " : "")}{Show.Level(b.DifferenceDb)}",
                        Show.Level(b.UncertaintyDb),
                    ]
            )
        )
        + "\n"
        + Words.Wrapped(
            "Levels re full scale: only the difference means something, for nobody has calibrated the microphone. Several places in each room, averaged "
                + "by ear or by walking slowly, count more than long recordings.",
            terminal.Width
        )
        + "\n";
}
