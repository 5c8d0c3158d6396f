namespace Stillwall.Cli.Tests.Outputs;

/// <summary>No option of any verb writes over what a project is made of.</summary>
public sealed class ProtectedFileTests : IDisposable
{
    private static readonly string[] Read = ["--frequencies", "--alone", "--with-mass", "--in-box", "--played", "--background", "--against", "--more"];

    // One line each: the file that must stay, and how it is named.
    private static readonly string[] Places =
    [
        "reading-room/stillwall.json",
        "reading-room/../reading-room/stillwall.json",
        "reading-room/STILLWALL.JSON",
        "reading-room/stillwall.json.",
        "project.link",
        "folder.link/stillwall.json",
        "reading-room/stillwall.json.1",
        "reading-room/stillwall.json.2",
        "kept.link",
        "reading-room/drivers.csv",
        "reading-room/Drivers.csv",
        "drivers.link",
        "other/tables/candidates.csv",
        "other/stillwall.json",
        "reading-room/measurements/taps.wav",
        "measured.link",
        "folder.link/measurements/taps.wav",
        "reading-room/measurements/bars/first.csv",
    ];

    private readonly Desk desk = OutputCases.Desk();

    public ProtectedFileTests()
    {
        Assert.Equal(0, desk.Run("set", "cabinet.core", "11 mm", "--project", "reading-room").ExitCode);
        Assert.Equal(0, desk.Run("set", "cabinet.core", "12 mm", "--project", "reading-room").ExitCode);
        desk.Write("other/stillwall.json", "{ \"stillwall\": 1, \"drivers\": \"tables/candidates.csv\" }\n");
        desk.Write("other/tables/candidates.csv", File.ReadAllText(desk.PathTo("reading-room/drivers.csv")));
        desk.Write("reading-room/measurements/taps.wav", "what was recorded");
        desk.Write("reading-room/measurements/bars/first.csv", "what was weighed");
        foreach (
            var (link, target) in new[]
            {
                ("project.link", "stillwall.json"),
                ("kept.link", "stillwall.json.1"),
                ("drivers.link", "drivers.csv"),
                ("measured.link", "measurements/taps.wav"),
            }
        )
        {
            File.CreateSymbolicLink(desk.PathTo(link), desk.PathTo($"reading-room/{target}"));
        }

        Directory.CreateSymbolicLink(desk.PathTo("folder.link"), desk.PathTo("reading-room"));
    }

    public static TheoryData<string> Cases => [.. OutputCases.Names];

    public static TheoryData<string> OfFiles => [.. OutputCases.OfFiles];

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Every_option_that_writes_is_known_as_one_and_tried_here()
    {
        var options = OutputCases.Options().ToList();
        var named = options.Where(o =>
            o.Option.HelpName is { } shape
            && (shape == OutputCases.Folder || shape.Contains("FILE", StringComparison.Ordinal) || shape.Contains('.'))
            && !Read.Contains(o.Option.Name)
        );
        Assert.All(
            named,
            o => Assert.True(OutputCases.Writes(o.Option), $"{o.Name} names a file: make it an OutputOption, or list it here as one that is only read")
        );
        Assert.All(
            options.Where(o => OutputCases.Writes(o.Option)),
            o => Assert.True(OutputCases.Names.Contains(o.Name), $"{o.Name} writes: add a command to OutputCases")
        );
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_project_its_kept_versions_its_table_and_its_measurements_stay(string option)
    {
        var before = Everything();
        Assert.All(Places, place => AssertRefused(option, place, 2));
        Assert.Equal(before, Everything());
    }

    [Theory]
    [MemberData(nameof(OfFiles))]
    public void A_second_name_of_a_file_and_what_the_command_reads_stay(string option)
    {
        foreach (var (link, target) in new[] { ("hard.json", "stillwall.json"), ("hard.csv", "drivers.csv"), ("hard.wav", "measurements/taps.wav") })
        {
            HardLink(desk.PathTo($"reading-room/{target}"), desk.PathTo(link));
        }

        var before = Everything();
        var inputs = OutputCases.Words(option, "").Where(word => File.Exists(desk.PathTo(word)));
        Assert.All(inputs.Concat(["hard.json", "hard.csv", "hard.wav"]), place => AssertRefused(option, place, 2));
        Assert.Equal(before, Everything());
    }

    [Fact]
    public void A_project_of_another_name_stays_too()
    {
        desk.Write("attic/window.json", File.ReadAllText(desk.Project));
        desk.Write("attic/window.json.1", "a version that is kept");
        desk.Write("attic/drivers.csv", File.ReadAllText(desk.PathTo("reading-room/drivers.csv")));
        var before = Everything();

        Assert.All(
            ["attic/window.json", "attic/window.json.1", "attic/drivers.csv", "attic/WINDOW.json"],
            place => Assert.Equal(2, desk.Run("curves", "attic/window.json", "--csv", place).ExitCode)
        );
        Assert.Equal(before, Everything());
    }

    [Fact]
    public void Two_outputs_of_one_command_have_two_names_and_none_is_written_where_one_is_refused()
    {
        string[] words = [.. OutputCases.Words("prove impedance --csv", "new.csv"), "--driver"];
        var before = Everything();

        Assert.Equal("./new.csv: is named for two outputs; a name for each\n", desk.Run([.. words, "./new.csv"]).Error);
        Assert.Equal(2, desk.Run([.. words, "reading-room/drivers.csv"]).ExitCode);
        Assert.Equal(3, desk.Run([.. words, "nowhere/driver.json"]).ExitCode);
        Assert.Equal(before, Everything());
    }

    [Fact]
    public void A_new_file_among_the_measurements_is_welcome()
    {
        Assert.Equal(0, desk.Run("signal", "sweep", "--seconds", "1", "--out", "reading-room/measurements/sweep.wav").ExitCode);
        AssertRefused("signal --out", "reading-room/measurements/sweep.wav", 2);
    }

    private void AssertRefused(string option, string place, int exitCode)
    {
        var ran = desk.Run(OutputCases.Words(option, place));
        Assert.True((ran.ExitCode, ran.Output) == (exitCode, ""), $"{place}: {ran}");
        Assert.Matches(@"\A[^\n]{1,300}\n\z", ran.Error);
        Assert.StartsWith(place, ran.Error, StringComparison.Ordinal);
    }

    private Dictionary<string, string> Everything() =>
        Directory
            .GetFiles(desk.Folder, "*", SearchOption.AllDirectories)
            .ToDictionary(file => file, file => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file))));

    private static void HardLink(string file, string name)
    {
        using var made = System.Diagnostics.Process.Start("ln", [file, name]);
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
