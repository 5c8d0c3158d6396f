using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Materials;

namespace Stillwall.Cli.Commands;

/// <summary><c>rating</c>: a wall's data sheet as one number, and as the row that a project states.</summary>
internal static class Rating
{
    internal static Verb Verb()
    {
        var file = new TextArgument("WALL.csv", "columns band and sound reduction: third-octaves by their names, Hz and dB");
        var json = Common.Json;
        return new Verb("rating", "one number for a wall known by its third-octaves, and the row that a project states for it", "stillwall rating wall.csv")
        {
            Takes = [file, json],
            Do = call =>
            {
                var name = call.Text(file)!;
                var read = ReductionTable.Read(call.Session.Read(name, ReductionTable.GreatestLength));
                if (read.Faults.Count > 0 || read.ReductionDb.Count == 0)
                {
                    throw Refusal.Input(
                        read.Faults.Count > 0
                            ? read.Faults.Select(f => $"{Path.GetFileName(name)}:{f}")
                            : [$"{Path.GetFileName(name)}:1: has no bands; one a line"]
                    );
                }

                var wall = RatedWall.Of(read.ReductionDb);
                call.Session.Print(call.Has(json) ? ResultJson.Write(wall) : Text(wall, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    private static string Text(RatedWall wall, Terminal terminal)
    {
        var rating = wall.Rating is { } r
            ? $"Rw (C; Ctr) = {N(r.WeightedDb)} ({N(r.PinkTermDb)}; {N(r.TrafficTermDb)}) "
                + $"dB{(r is { PinkTermFrom50HzDb: { } pink, TrafficTermFrom50HzDb: { } traffic } ? $", from 50 Hz ({N(pink)}; {N(traffic)}) dB" : "")}, "
                + "after ISO 717-1:2020."
            : "No rating: the sixteen bands 100 to 3150 Hz are not all there.";
        var row = wall is { ReductionDb: { } ten, LowestKnownHz: { } lowest }
            ? Words.Wrapped($"To state it, from {Show.Frequency(lowest)} as given, below with 6 dB an octave (our choice), 20 to 160 Hz:", terminal.Width)
                + "\n\"partition\": \"own\", \"reduction\": "
                + $"[{string.Join(", ", ten.Select(value => $"\"{Math.Round(value, 1).ToString(CultureInfo.InvariantCulture)} dB\""))}]\n"
            : "No row to state: the 160 Hz band is not there.\n";
        return $"{Ink.Strong(terminal, Words.Wrapped(rating, terminal.Width))}\n\n{row}\nBass is not in Rw: the row decides what the neighbour hears of it.\n";
    }

    private static string N(double value) => Show.Number(value);
}
