using System.Globalization;
using System.Text;

namespace Stillwall.Cli.Tests;

/// <summary>Everything a person sees has a file of expected output, compared byte by byte; see tests/data/cli/README.md.</summary>
public sealed class ExpectedOutputTests
{
    private const string Ending = ".expected.txt";

    private static readonly Dictionary<string, Action<Desk>> Preparations = new(StringComparer.Ordinal)
    {
        ["appraise-bare"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1, \"name\": \"bare\" }\n"),
        ["appraise-failing"] = desk => desk.State("brief.aim.level", "\"110 dB\""),
        ["appraise-inch"] = desk => desk.State("display_units", "\"inch\""),
        ["pour-inch"] = desk => desk.State("display_units", "\"inch\""),
        ["pour-grout"] = desk => desk.State("materials.cast", "{ \"mix\": \"cement-grout\", \"bucket\": \"2 L\", \"people\": 2 }"),
        ["supplies-short"] = desk =>
            desk.State(
                "stock",
                "[ { \"item\": \"driver\", \"amount\": \"1 pc\" }, { \"item\": \"cast powder\", \"amount\": \"1 kg\" }, { \"item\": \"sealant\", "
                    + "\"amount\": \"1 pc\", \"best_before\": \"2026-01-01\" } ]"
            ),
        ["supplies-unstated"] = desk => desk.State("stock", null),
        ["quiet-loud"] = desk => desk.State("brief.everyday.level", "\"75 dB\""),
        ["join-seat"] = desk =>
        {
            desk.State("brief.main_speakers.left_at", "[\"0.6 m\", \"0.3 m\", \"1.1 m\"]");
            desk.State("brief.main_speakers.right_at", "[\"2.6 m\", \"0.3 m\", \"1.1 m\"]");
        },
        ["quiet-night"] = desk =>
        {
            desk.State("brief.everyday.quiet_hours", "{ \"from\": 22, \"to\": 7, \"level\": \"55 dB\", \"curve\": \"night-rooms-uk-2005\" }");
            desk.State("brief.neighbour.curve", "\"threshold-de-1997\"");
            desk.State("brief.neighbour.a_weighted_limit", "\"15 dB\"");
        },
        ["rating"] = desk => desk.Write("wall.csv", File.ReadAllText(Repository.Data("partition/rated.csv"))),
        ["rating-short"] = desk => desk.Write("wall.csv", "100,30\n125,32\n160,35\n"),
        ["error-rating"] = desk => desk.Write("wall.csv", "band,reduction\n100,30\n110,31\n100,29\n125,loud\n"),
        ["quiet-equaliser"] = desk => desk.State("brief.everyday.level", "\"75 dB\""),
        ["error-quiet-equaliser"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1, \"name\": \"bare\" }\n"),
        ["quiet-bare"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1, \"name\": \"bare\" }\n"),
        ["pour-bare"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1, \"name\": \"bare\" }\n"),
        ["prove-impedance"] = desk => ProofSounds.Impedance(desk, "z.wav"),
        ["prove-impedance-cabinet"] = desk => ProofSounds.Impedance(desk, "z.wav", 49),
        ["prove-sweep"] = ProofSounds.Sweep,
        ["prove-tap"] = ProofSounds.Taps,
        ["prove-wall"] = ProofSounds.Wall,
        ["prove-weight"] = desk =>
            desk.Write("weights.csv", "date,mass_kg\n2026-11-16,11.9\n2026-11-20,11.3\n2026-11-26,10.7\n2026-12-04,10.2\n2026-12-14,9.9\n"),
        ["error-prove-mono"] = desk => ProofSounds.Taps(desk),
        ["error-prove-not-a-sound"] = desk => desk.Write("notes.wav", "date,mass_kg\n"),
        ["error-prove-weight"] = desk => desk.Write("weights.csv", "date,mass_kg\n2026-11-16,heavy\n16.11.2026,9.4\n2026-11-17\n"),
        ["apply"] = desk => desk.State("brief.aim.level", "\"110 dB\""),
        ["error-driver-unknown"] = desk => desk.State("driver", "\"Dunlim 8\""),
        ["error-drivers-outside"] = desk => desk.State("drivers", "\"../drivers.csv\""),
        ["error-drivers-not-there"] = desk => desk.State("drivers", "\"candidates.csv\""),
        ["error-faults"] = desk => desk.Write("faulty/stillwall.json", "{ \"stillwall\": 1,\n  \"budgett\": 3,\n  \"cabinet\": { \"core\": 12 } }\n"),
        ["error-room-unknown"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1 }\n"),
        ["error-sheets-unknown"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1 }\n"),
        ["error-walls-unknown"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1 }\n"),
        ["error-curves-unknown"] = desk => desk.Write("bare/stillwall.json", "{ \"stillwall\": 1 }\n"),
    };

    private static readonly string[][] Cases =
    [
        ["help", "--help"],
        ["version", "--version"],
        ["help-start", "start", "--help"],
        ["help-appraise", "appraise", "--help"],
        ["help-set", "set", "--help"],
        ["help-apply", "apply", "--help"],
        ["help-why", "why", "--help"],
        ["why", "why", "box.system_resonance_hz", "--project", "reading-room"],
        ["error-why", "why", "box.system_k", "--project", "reading-room"],
        ["help-sheets", "sheets", "--help"],
        ["sheets", "sheets", "reading-room", "--out", "out"],
        ["error-sheets-unknown", "sheets", "bare"],
        ["help-rank", "rank", "--help"],
        ["help-pour", "pour", "--help"],
        ["help-supplies", "supplies", "--help"],
        ["help-quiet", "quiet", "--help"],
        ["help-rating", "rating", "--help"],
        ["rating", "rating", "wall.csv"],
        ["rating-short", "rating", "wall.csv"],
        ["error-rating", "rating", "wall.csv"],
        ["rank", "rank", "reading-room", "--top", "6"],
        ["pour", "pour", "reading-room"],
        ["supplies", "supplies", "reading-room"],
        ["quiet", "quiet", "reading-room"],
        ["help-curves", "curves", "--help"],
        ["help-panel", "panel", "--help"],
        ["help-parts", "parts", "--help"],
        ["parts", "parts", "reading-room", "--out", "out"],
        ["help-mix", "mix", "--help"],
        ["help-room", "room", "--help"],
        ["help-filter", "filter", "--help"],
        ["help-join", "join", "--help"],
        ["help-schema", "schema", "--help"],
        ["help-serve", "serve", "--help"],
        ["error-serve-missing", "serve", "reading-room"],
        ["start", "start", "another", "--demo"],
        ["appraise", "appraise", "reading-room"],
        ["appraise-all", "appraise", "reading-room", "--all"],
        ["appraise-bare", "appraise", "bare"],
        ["appraise-inch", "appraise", "reading-room"],
        ["pour-inch", "pour", "reading-room"],
        ["pour-grout", "pour", "reading-room"],
        ["pour-bare", "pour", "bare"],
        ["supplies-short", "supplies", "reading-room"],
        ["supplies-unstated", "supplies", "reading-room"],
        ["quiet-loud", "quiet", "reading-room"],
        ["quiet-night", "quiet", "reading-room"],
        ["quiet-equaliser", "quiet", "reading-room", "--csv", "equaliser.csv"],
        ["error-quiet-equaliser", "quiet", "bare", "--json"],
        ["quiet-bare", "quiet", "bare"],
        ["appraise-failing", "appraise", "reading-room", "--strict"],
        ["set", "set", "cabinet.core", "8 mm", "--project", "reading-room"],
        ["set-nothing-changes", "set", "limits.wall_to_cone", "-28 dB", "--project", "reading-room"],
        ["apply", "apply", "cabinet/loud-enough-and-what-gives-out-first", "--project", "reading-room"],
        ["curves", "curves", "reading-room"],
        ["room", "room", "reading-room"],
        ["room-map", "room", "reading-room", "--map", "45Hz", "--svg", "room.svg"],
        ["room-places", "room", "reading-room", "--places", "both"],
        ["error-room-map", "room", "reading-room", "--map", "45Hz"],
        ["error-room-places", "room", "reading-room", "--places", "sofa"],
        ["join", "join", "reading-room"],
        ["join-seat", "join", "reading-room"],
        ["help-walls", "walls", "--help"],
        ["walls", "walls", "reading-room"],
        ["curves-walls", "curves", "reading-room", "--walls"],
        ["error-walls-unknown", "walls", "bare"],
        ["panel", "panel", "--layers", "2mm:petg,12mm:plaster,2mm:petg", "--size", "330mmx210mm", "--edges", "clamped"],
        ["mix", "mix", "--powder", "4kg", "--powder-per-water", "1.5", "--mix", "plaster"],
        ["mix-grout", "mix", "--volume", "4 L", "--mix", "cement-grout"],
        ["filter", "filter", "peaking", "--f0", "45 Hz", "--q", "2", "--gain", "-8 dB"],
        ["help-signal", "signal", "--help"],
        ["help-prove", "prove", "--help"],
        ["prove-help-impedance", "prove", "impedance", "--help"],
        ["prove-help-sweep", "prove", "sweep", "--help"],
        ["prove-help-wall", "prove", "wall", "--help"],
        ["prove-help-tap", "prove", "tap", "--help"],
        ["prove-help-hold", "prove", "hold", "--help"],
        ["prove-help-weight", "prove", "weight", "--help"],
        ["prove-help-rattle", "prove", "rattle", "--help"],
        ["prove-help-polarity", "prove", "polarity", "--help"],
        ["signal", "signal", "sweep", "--out", "sweep.wav", "--from", "10Hz", "--to", "1kHz", "--seconds", "2", "--project", "reading-room"],
        ["signal-tone", "signal", "tone", "--out", "tone.wav", "--frequency", "40Hz", "--seconds", "1"],
        ["prove-impedance", "prove", "impedance", "z.wav", "--reference", "10 ohm"],
        ["prove-impedance-cabinet", "prove", "impedance", "z.wav", "--reference", "10 ohm", "--project", "reading-room", "--keep", "--log", "2026-11-30"],
        ["prove-sweep", "prove", "sweep", "heard.wav", "--played", "sweep.wav", "--project", "reading-room"],
        ["prove-wall", "prove", "wall", "here.wav", "there.wav", "--project", "reading-room", "--keep"],
        [
            "prove-tap",
            "prove",
            "tap",
            "taps.wav",
            "--length",
            "160mm",
            "--width",
            "40mm",
            "--thickness",
            "40mm",
            "--mass",
            "268.8g",
            "--project",
            "reading-room",
            "--keep",
            "--log",
            "2026-11-30",
        ],
        ["prove-hold", "prove", "hold", "--seconds", "2.1", "--project", "reading-room", "--keep"],
        ["prove-hold-fast", "prove", "hold", "--seconds", "0.3", "--project", "reading-room"],
        ["prove-weight", "prove", "weight", "weights.csv", "--project", "reading-room"],
        ["prove-rattle", "prove", "rattle"],
        ["prove-rattle-none", "prove", "rattle", "--none", "--project", "reading-room", "--log", "2026-12-01"],
        ["error-signal-kind", "signal", "sweeep", "--out", "x.wav"],
        ["error-signal-to", "signal", "sweep", "--out", "x.wav", "--from", "100Hz", "--to", "50Hz"],
        ["error-prove-alone", "prove"],
        ["error-prove-reference", "prove", "impedance", "z.wav", "--reference", "10"],
        ["error-prove-not-there", "prove", "impedance", "z.wav", "--reference", "10 ohm"],
        ["error-prove-mono", "prove", "impedance", "taps.wav", "--reference", "10 ohm"],
        ["error-prove-not-a-sound", "prove", "impedance", "notes.wav", "--reference", "10 ohm"],
        ["error-prove-keep", "prove", "hold", "--seconds", "2", "--keep"],
        ["error-prove-log", "prove", "hold", "--seconds", "2", "--project", "reading-room", "--log", "tomorrow"],
        ["error-prove-weight", "prove", "weight", "weights.csv"],
        ["error-verb", "apprase"],
        ["error-option", "appraise", "--jsn"],
        ["error-value-missing", "mix", "--powder"],
        ["error-option-twice", "mix", "--powder", "4kg", "--powder", "5kg"],
        ["error-word-too-many", "appraise", "reading-room", "twice"],
        ["error-argument-missing", "start"],
        ["error-unit", "mix", "--powder", "4"],
        ["error-nothing-to-mix", "mix"],
        ["error-range", "mix", "--powder", "4kg", "--powder-per-water", "100"],
        ["error-mix", "mix", "--powder", "4kg", "--mix", "plastr"],
        ["error-size", "panel", "--layers", "2mm:petg", "--size", "330mm"],
        ["error-layer", "panel", "--layers", "2mm:pteg", "--size", "330mmx210mm"],
        ["error-filter-kind", "filter", "peeking", "--f0", "45Hz"],
        ["error-filter-f0", "filter", "highpass", "--f0", "30kHz"],
        ["error-filter-slope", "filter", "lowshelf", "--f0", "60Hz", "--gain", "12 dB", "--slope", "6"],
        ["error-two-outputs", "filter", "lowpass", "--f0", "30Hz", "--csv", "-", "--json"],
        ["error-project-not-there", "appraise", "nowhere"],
        ["error-faults", "appraise", "faulty"],
        ["error-driver-unknown", "appraise", "reading-room"],
        ["error-drivers-outside", "appraise", "reading-room"],
        ["error-drivers-not-there", "appraise", "reading-room"],
        ["error-room-unknown", "room", "bare"],
        ["error-curves-unknown", "curves", "bare"],
        ["error-start-not-empty", "start", "reading-room"],
        ["error-csv-folder", "curves", "reading-room", "--csv", "nowhere/curves.csv"],
        ["error-set-key", "set", "cabinet.cor", "8 mm", "--project", "reading-room"],
        ["error-set-value", "set", "cabinet.core", "8", "--project", "reading-room"],
        ["error-watch-json", "appraise", "reading-room", "--watch", "--json"],
        ["error-apply-id", "apply", "pour/skins-bulg", "--project", "reading-room"],
        ["error-apply-holds", "apply", "pour/skins-bulge", "--project", "reading-room"],
    ];

    public static TheoryData<string> Names => [.. Cases.Select(c => c[0])];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_output_is_as_expected(string name)
    {
        using var desk = new Desk();
        Preparations.GetValueOrDefault(name)?.Invoke(desk);
        var args = Cases.Single(c => c[0] == name)[1..];
        var seen = Record(args, desk.Run(args));
        var file = Repository.Data($"cli/{name}{Ending}");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, seen);
        }

        Assert.True(File.Exists(file), $"{file} is not there: look at the output and run again with STILLWALL_WRITE_EXPECTED=1");
        Assert.Equal(File.ReadAllText(file), seen);
    }

    [Fact]
    public void Every_expected_file_belongs_to_a_case() =>
        Assert.Equal(
            Cases.Select(c => c[0] + Ending).Append("README.md").Order(StringComparer.Ordinal),
            Directory.GetFiles(Repository.Data("cli")).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_verb_has_its_expected_help()
    {
        using var desk = new Desk();
        var listed = desk.Run("--help")
            .Output.Split("Verbs:\n")[1]
            .Split("\n\n")[0]
            .Split('\n')
            .Where(l => l.Length > 2 && l[2] != ' ')
            .Select(l => l.Trim().Split(' ')[0]);
        Assert.Equal(
            listed.Order(StringComparer.Ordinal),
            Cases.Select(c => c[0]).Where(n => n.StartsWith("help-", StringComparison.Ordinal)).Select(n => n[5..]).Order(StringComparer.Ordinal)
        );
    }

    private static string Record(string[] args, Ran ran)
    {
        var text = new StringBuilder();
        text.Append("$ stillwall ").AppendJoin(' ', args.Select(a => a.Contains(' ', StringComparison.Ordinal) ? $"\"{a}\"" : a)).Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"exit code {ran.ExitCode}\n--- standard output\n{ran.Output}--- standard error\n{ran.Error}");
        return text.ToString();
    }
}
