using System.CommandLine;
using Stillwall.Cli.Commands;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Tests.Outputs;

/// <summary>Every option that writes, with a command that succeeds; # is what is written.</summary>
internal static class OutputCases
{
    internal const string Folder = "DIR";

    private static readonly string[] All =
    [
        "rank --svg: rank reading-room --svg #",
        "curves --csv: curves reading-room --csv #",
        "curves --svg: curves reading-room --svg #",
        "curves --png: curves reading-room --png #",
        "parts --out: parts reading-room --out #",
        "sheets --out: sheets reading-room --out #",
        "room --csv: room reading-room --csv #",
        "room --svg: room reading-room --map 45Hz --svg #",
        "quiet --csv: quiet reading-room --csv #",
        "filter --csv: filter peaking --f0 45Hz --gain 6dB --frequencies at.csv --csv #",
        "signal --out: signal tone --seconds 1 --out #",
        "prove impedance --csv: prove impedance z.wav --reference 10ohm --with-mass m.wav --mass 20g --sd 214cm2 --csv #",
        "prove impedance --driver: prove impedance z.wav --reference 10ohm --with-mass m.wav --mass 20g --sd 214cm2 --driver #",
        "prove sweep --csv: prove sweep heard.wav --played sweep.wav --csv #",
    ];

    internal static IEnumerable<string> Names => All.Select(c => c.Split(": ")[0]);

    /// <summary>Those that write one file.</summary>
    internal static IEnumerable<string> OfFiles => Names.Where(name => !IsOfFolder(name));

    internal static bool IsOfFolder(string name) => Options().Single(o => o.Name == name).Option.HelpName == Folder;

    internal static string[] Words(string name, string target) =>
        [.. All.Single(c => c.StartsWith(name + ": ", StringComparison.Ordinal)).Split(": ")[1].Split(' ').Select(word => word == "#" ? target : word)];

    /// <summary>Every option of every verb, with its verb before it.</summary>
    internal static IEnumerable<(string Name, Option Option)> Options() => Verbs.All().SelectMany(verb => Options(verb, verb.Name));

    /// <summary>A desk with everything that the commands read.</summary>
    internal static Desk Desk()
    {
        var desk = new Desk();
        ProofSounds.Impedance(desk, "z.wav");
        ProofSounds.Impedance(desk, "m.wav", 25);
        ProofSounds.Sweep(desk);
        desk.Write("at.csv", "frequency_hz\n20\n45\n");
        return desk;
    }

    private static IEnumerable<(string, Option)> Options(Command command, string path) =>
        command.Options.Select(o => ($"{path} {o.Name}", o)).Concat(command.Subcommands.SelectMany(sub => Options(sub, $"{path} {sub.Name}")));

    internal static bool Writes(Option option) => option is OutputOption;
}
