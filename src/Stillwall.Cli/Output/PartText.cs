using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;

namespace Stillwall.Cli.Output;

/// <summary>The drawn parts for people.</summary>
internal static class PartText
{
    /// <summary>What cannot be used as it is drawn: a line for each way, which names the parts.</summary>
    internal static IReadOnlyList<string> Unusable(PrintedParts result, Show show)
    {
        string Names(Func<PrintedPart, bool> which) => string.Join(", ", result.Parts.Where(which).Select(p => p.Name));
        var (open, large) = (Names(p => !p.Watertight), Names(p => p.Fits == false));
        return
        [
            .. open.Length > 0 ? [$"not closed: {open}"] : Array.Empty<string>(),
            .. large.Length > 0 ? [$"larger than the printer's bed: {large}"] : Array.Empty<string>(),
            .. result.Collisions.Select(c => Collide(c, show)),
        ];
    }

    private static string Collide(Collision c, Show show) => $"{c.First} and {c.Second} collide {show.Length(c.DepthM)} behind the front";

    internal static string Of(PrintedParts result, string folder, string extension, Facts facts, Terminal terminal)
    {
        var show = facts.Show;
        var parts = Tables.Of(
            terminal,
            $"Parts in {folder}: printing times are the least possible; half as much again or more is usual",
            ["file", ">size as printed", ">mass", ">time", "fits", ">triangles"],
            result.Parts.Select(p =>
                (IReadOnlyList<string>)
                    [
                        p.File,
                        string.Join(" × ", p.SizeM.Select(show.Length)),
                        p.MassKg is { } kg ? show.Mass(kg) : "unknown",
                        p.PrintSeconds is { } s ? Show.Time(s) : "unknown",
                        p.Fits switch
                        {
                            true => "yes",
                            false => "no",
                            _ => "unknown",
                        },
                        Show.Number(p.Triangles, 6),
                    ]
            )
        );
        var joints = Tables.Of(
            terminal,
            "Joints: clearance on either side of a tongue, and the bead of sealant",
            ["joint", ">clearance", ">bead", ">sealant"],
            result.Joints.Select(j => (IReadOnlyList<string>)[j.Joint, show.Small(j.ClearanceM), show.Distance(j.LengthM), show.Volume(j.VolumeM3)])
        );
        var open = result.Parts.Where(p => !p.Watertight).Select(p => p.File).ToList();
        List<string> said =
        [
            open.Count == 0 ? "Every surface is closed." : $"Not closed, do not print: {string.Join(", ", open)}.",
            .. result.Collisions.Count == 0
                ? ["Nothing collides in the assembled cabinet, driver and terminal counted."]
                : result.Collisions.Select(c => $"{Collide(c, show)}."),
            .. extension == "3mf" ? ["assembly.3mf holds all parts of the cabinet in their places."] : Array.Empty<string>(),
            "Print the calibration strip and its peg first: the hole the peg just enters tells the clearance your printer needs.",
            "Air the room while printing.",
        ];
        return $"{parts}\n{joints}\n{string.Join('\n', said.Select(line => Words.Wrapped(line, terminal.Width)))}\n";
    }
}
