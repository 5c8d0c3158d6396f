using System.Collections.Concurrent;
using Stillwall.Files.Tests.Hostile;

namespace Stillwall.Cli.Tests.Hostile;

public class HostileRunTests
{
    private const int Runs = 500;

    private static readonly string[] Words =
    [
        "",
        "-",
        "--",
        "NaN",
        "-1",
        "1e308",
        "1e999 m",
        "0 mm",
        "5e-324 kg",
        "∞ Hz",
        "1 kg",
        "2 L",
        "1.5",
        "-0",
        "plaster",
        "petg",
        "330mmx210mm",
        "0mmx0mm",
        "1e300mmx1mm",
        "x",
        "2mm:petg,12mm:plaster,2mm:petg",
        "0:0:0:0",
        "1e300:1e300:0.4:1e300",
        "2mm:petg,,",
        ":::",
        "clamped",
        "supported",
        "../nowhere-at-all/x",
        "/dev/null/x",
        "a\0b",
        "@file",
        "[x]",
        "\u202E",
        "lowpass",
        "transform",
        "100 Hz",
        "1e-300 Hz",
        "24 kHz",
        "-9.5 dB",
        "1e9 dB",
        "--json",
        "--csv",
        "--strict",
        "%s",
        "{0}",
        "\ud800",
        "9999999999999999999999",
    ];

    // What a verb could be asked of in earnest, besides.
    private static readonly string[] Known =
    [
        "cabinet.core",
        "cabinet.strut_pitch",
        "cabinet.outside.width",
        "brief.aim.level",
        "driver",
        "driver.fs",
        "cabinet",
        "brief.room.seat_at",
        "materials.skin",
        "pour_date",
        "name",
        "note",
        "12 mm",
        "1 mm",
        "200 mm",
        "Dunlin 8",
        "petg",
        "own",
        "2026-02-30",
        "0.1 m, 0.1 m, 0.1 m",
        "box.system_q",
        "box.f3_hz",
        "walls[0].bonded.first_mode_hz",
        "walls[99].width_m",
        "pour.batches[0].powder_kg",
        "mass.finished_kg",
        "findings",
        "quiet.bands[9].over_db",
        "cabinet/system-q-as-wanted",
        "brief/cost",
        "driver/fits-the-front",
        "2",
        "0",
        "-3",
    ];

    private static readonly string[][] Verbs =
    [
        ["appraise"],
        ["appraise", "--json"],
        ["curves", "--csv", "-"],
        ["curves", "--csv", "-", "--volts", "#"],
        ["room", "--csv", "-", "--volume-velocity", "#"],
        ["panel", "--layers", "#", "--size", "#", "--edges", "#"],
        ["panel", "--layers", "2mm:petg", "--size", "#", "--edges", "clamped"],
        ["panel", "--layers", "#", "--size", "330mmx210mm", "--edges", "supported", "--json"],
        ["mix", "--powder", "#", "--powder-per-water", "#", "--mix", "#"],
        ["mix", "--volume", "#", "--json"],
        ["filter", "lowpass", "--f0", "#", "--q", "#"],
        ["filter", "#", "--f0", "#", "--gain", "#", "--slope", "#"],
        ["filter", "transform", "--f0", "#", "--q", "#", "--fp", "#", "--qp", "#", "--rate", "#"],
        ["#", "#"],
        ["set", "#", "#"],
        ["rank", "."],
        ["rank", "--json", "."],
        ["rank", "--top", "#", "."],
        ["set", "#", "#", "--project", "."],
        ["set", "#", "#", "--project", "."],
        ["apply", "#", "--project", "."],
        ["why", "#", "--project", "."],
        ["why", "#", "--json", "--project", "."],
        ["pour", "."],
        ["supplies", "."],
        ["quiet", "."],
        ["join", "--json", "."],
        ["join", "."],
        ["curves", "--svg", "-", "."],
        ["schema"],
        ["start", "reading-room"],
    ];

    private static readonly string Demo = File.ReadAllText(DemoFile("stillwall.json")),
        Drivers = File.ReadAllText(DemoFile("drivers.csv"));

    private readonly ConcurrentBag<Desk> desks = [];

    [Fact]
    public void A_spoilt_project_or_argument_ends_in_a_published_exit_code_and_short_lines()
    {
        try
        {
            Trials.Run(0, Runs, Case);
        }
        finally
        {
            foreach (var desk in desks)
            {
                desk.Dispose();
            }
        }
    }

    private string? Case(int seed)
    {
        var desk = desks.TryTake(out var free) ? free : new Desk();
        try
        {
            var dice = new Dice(seed);
            File.WriteAllBytes(
                desk.Project,
                dice.Falls(0.3) ? Mutation.Spoil(Demo, dice)
                    : dice.Falls(0.6) ? TreeMutation.Spoil(Demo, dice)
                    : File.ReadAllBytes(DemoFile("stillwall.json"))
            );
            File.WriteAllBytes(
                desk.PathTo("reading-room/drivers.csv"),
                dice.Falls(0.3) ? Mutation.SpoilTable(Drivers, dice) : File.ReadAllBytes(DemoFile("drivers.csv"))
            );
            var verb = dice.Falls(0.1) ? Verbs[dice.Below(2)] : dice.Pick(Verbs);
            var args = verb.Select(word =>
                    word == "#" ? dice.Pick(dice.Falls(0.5) ? Words : Known)
                    : word == "." ? "reading-room"
                    : word
                )
                .ToList();
            if (verb[0] is "appraise" or "room" || verb is ["curves", "--csv", ..])
            {
                args.Add("reading-room");
            }

            if (dice.Falls(0.1))
            {
                args.Insert(dice.Below(args.Count + 1), dice.Pick(Words));
            }

            return Wrong(desk.Run(args)) is { } wrong ? $"{wrong} after {string.Join(" | ", args)}" : null;
        }
        finally
        {
            desks.Add(desk);
        }
    }

    private static string DemoFile(string name) => Path.Combine(Repository.Folder, "samples", "reading-room", name);

    private static string? Wrong(Ran ran)
    {
        var all = ran.Output + ran.Error;
        return ran.ExitCode is < 0 or > 3 ? $"exit code {ran.ExitCode}: {ran.Error}"
            : all.Contains("Exception", StringComparison.Ordinal) || all.Contains("   at ", StringComparison.Ordinal) ? $"names an exception: {ran.Error}"
            : ran.ExitCode >= 2 && ran.Output.Length > 0 ? "prints although it refuses"
            : ran.Error.Split('\n').FirstOrDefault(line => line.Length > 300) is { } line ? $"a line of {line.Length} characters"
            : null;
    }
}
