using Stillwall.Files.Tests.Hostile;

namespace Stillwall.Cli.Tests.Hostile;

public class HostileRunTests
{
    private const int Runs = 500;

    private static readonly string[] Words =
    [
        "", "-", "--", "NaN", "-1", "1e308", "1e999 m", "0 mm", "5e-324 kg", "∞ Hz", "1 kg", "2 L", "1.5", "-0", "plaster", "petg", "330mmx210mm", "0mmx0mm", "1e300mmx1mm", "x",
        "2mm:petg,12mm:plaster,2mm:petg", "0:0:0:0", "1e300:1e300:0.4:1e300", "2mm:petg,,", ":::", "clamped", "supported", "../../nowhere", "/dev/null/x", "a\0b", "@file", "[x]", "\u202E",
        "lowpass", "transform", "100 Hz", "1e-300 Hz", "24 kHz", "-9.5 dB", "1e9 dB", "--json", "--csv", "--strict", "%s", "{0}", "\ud800", "9999999999999999999999",
    ];

    private static readonly string[][] Verbs =
    [
        ["appraise"], ["appraise", "--json"], ["curves", "--csv", "-"], ["curves", "--csv", "-", "--volts", "#"], ["room", "--csv", "-", "--volume-velocity", "#"],
        ["panel", "--layers", "#", "--size", "#", "--edges", "#"], ["panel", "--layers", "2mm:petg", "--size", "#", "--edges", "clamped"],
        ["panel", "--layers", "#", "--size", "330mmx210mm", "--edges", "supported", "--json"], ["mix", "--powder", "#", "--powder-per-water", "#", "--mix", "#"],
        ["mix", "--volume", "#", "--json"], ["filter", "lowpass", "--f0", "#", "--q", "#"], ["filter", "#", "--f0", "#", "--gain", "#", "--slope", "#"],
        ["filter", "transform", "--f0", "#", "--q", "#", "--fp", "#", "--qp", "#", "--rate", "#"], ["#", "#"], ["set", "#", "#"],
    ];

    [Fact]
    public void A_spoilt_project_or_argument_ends_in_a_published_exit_code_and_short_lines()
    {
        using var desk = new Desk();
        var demo = File.ReadAllText(desk.Project);
        Trials.Run(0, Runs, seed =>
        {
            var dice = new Dice(seed);
            File.WriteAllBytes(desk.Project, Mutation.Spoil(demo, dice));
            var verb = dice.Falls(0.3) ? Verbs[dice.Below(2)] : dice.Pick(Verbs);
            var args = verb.Select(word => word == "#" ? dice.Pick(Words) : word).ToList();
            if (verb[0] is "appraise" or "curves" or "room")
            {
                args.Add("reading-room");
            }

            if (dice.Falls(0.1))
            {
                args.Insert(dice.Below(args.Count + 1), dice.Pick(Words));
            }

            return Wrong(desk.Run(args)) is { } wrong ? $"{wrong} after {string.Join(" | ", args)}" : null;
        });
    }

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
