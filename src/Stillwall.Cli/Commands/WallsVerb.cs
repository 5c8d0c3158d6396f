using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.WallChoices;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;

namespace Stillwall.Cli.Commands;

/// <summary><c>walls</c>: kinds of wall side by side, and the lightest that passes.</summary>
internal static class WallsVerb
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var json = Common.Json;
        return new Verb("walls", "kinds of wall in the same outside, side by side, and the lightest that passes", "stillwall walls my-cabinet")
        {
            Takes = [project, json],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var facts = loaded.Facts();
                if (facts.Walls.Count == 0)
                {
                    throw Want.OfWalls("walls", facts);
                }

                var choice = WallChoice.Of(loaded.Project, loaded.Candidates);
                call.Session.Print(call.Has(json) ? ResultJson.Write(choice) : Text(choice, facts.Show, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    private static string Text(WallChoice choice, Show show, Terminal terminal) =>
        Tables.Of(
            terminal,
            "Kinds of wall, the same outside",
            ["wall", ">mode", ">sound", ">mass", ">net", ">price", ">print", "pour"],
            choice.Kinds.Select(k =>
                (IReadOnlyList<string>)
                    [
                        $"{Ink.Mark(k.Verdict)} {k.Kind}",
                        Show.Frequency(k.FirstModeHz),
                        Or(k.WallToConeDb, Show.Level),
                        Or(k.FinishedKg, show.Mass),
                        Or(k.NetVolumeM3, show.Volume),
                        show.Money(k.TotalPrice),
                        Or(k.PrintSeconds, Show.Time),
                        Poured(k, show),
                    ]
            )
        )
        + string.Concat(
            choice
                .Kinds.Where(k => k.Reasons.Count > 0)
                .Select(k => Words.Wrapped($"{k.Kind} fails: {string.Join("; ", k.Reasons)}.", terminal.Width, 0, 2) + "\n")
        )
        + $"\n{Words.Wrapped(Lightest(choice.Lightest, show), terminal.Width)}\n"
        + Words.Wrapped(
            "mode and sound (against the cone): the worst panel and case, edges supported. mass: finished. print: at least. pour: least passage, and "
                + "whether the mix flows through. The lattices are one cell across the core, two nozzles thick; the stiffness of an empty one is known to "
                + "a factor of 1.5.",
            terminal.Width
        )
        + "\n";

    private static string Lightest(LightestWall? light, Show show)
    {
        if (light is null)
        {
            return "No core from 4 to 30 mm with up to two braces passes all of walls and pour.";
        }

        var against =
            !light.StatedPasses ? "the cabinet as stated does not pass"
            : light.SavedKg > 0.005 ? $"{show.Mass(light.SavedKg)} less than as stated"
            : "as light as the cabinet as stated";
        var held = light.HeldBy.Count > 0 ? $" A core 1 mm thinner fails: {string.Join("; ", light.HeldBy)}." : "";
        return $"Lightest double skin that passes all of walls and pour: core {show.Length(light.CoreM)}, "
            + $"{light.Braces.ToString(CultureInfo.InvariantCulture)} {(light.Braces == 1 ? "brace" : "braces")}, "
            + $"struts every {show.Length(light.StrutPitchM)}: {show.Mass(light.FinishedKg)}, {against}.{held}";
    }

    private static string Poured(WallKind kind, Show show) =>
        kind.CanBePoured switch
        {
            null => "–",
            true => $"{show.Small(kind.PassageM!.Value)}, yes",
            false => $"{show.Small(kind.PassageM!.Value)}, no",
        };

    private static string Or(double? value, Func<double, string> write) => value is { } known ? write(known) : "unknown";
}
