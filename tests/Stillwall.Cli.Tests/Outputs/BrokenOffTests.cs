using System.Diagnostics;
using System.Security.Cryptography;
using Stillwall.Files.Tests.Hostile;

namespace Stillwall.Cli.Tests.Outputs;

/// <summary>Runs that are killed, or whose disk is full, in the middle of writing: every file is whole, and the next run clears up.</summary>
public sealed class BrokenOffTests : IDisposable
{
    private const int Kills = 3;

    private readonly Desk desk = new();

    public BrokenOffTests()
    {
        Directory.CreateDirectory(desk.PathTo("out"));
        desk.Write("other/stillwall.json", File.ReadAllText(desk.Project).Replace("\"braces\": 1", "\"braces\": 2", StringComparison.Ordinal));
        desk.Write("other/drivers.csv", File.ReadAllText(desk.PathTo("reading-room/drivers.csv")));
    }

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("parts # --anyway --out out", 40)]
    [InlineData("sheets # --out out", 20)]
    [InlineData("signal noise --seconds 20 --samples float --rate 96000 --out out/target --project #", 6)]
    [InlineData("curves # --points-per-decade 10000 --csv out/target", 2)]
    public async Task A_run_that_is_killed_leaves_whole_files_and_the_next_one_clears_up(string command, int longestDelayMs)
    {
        var (one, other) = (Whole(Words(command, "reading-room")), Whole(Words(command, "other")));
        var (dice, withDraft) = (new Dice(7), 0);
        for (var kill = 0; kill < Kills || (withDraft == 0 && kill < 4 * Kills); kill++)
        {
            using var child = Start(Words(command, kill % 2 == 0 ? "reading-room" : "other"));
            while (Drafts().Length == 0 && !child.HasExited)
            {
                Thread.SpinWait(1000);
            }

#pragma warning disable RS0030 // The kill falls anywhere in the writing: this time is the case itself.
            await Task.Delay(dice.Below(longestDelayMs), TestContext.Current.CancellationToken);
#pragma warning restore RS0030
            child.Kill();
            await child.WaitForExitAsync(TestContext.Current.CancellationToken);
            withDraft += Drafts().Length > 0 ? 1 : 0;
            Assert.All(
                Written().Where(file => file.Key != "made.json"),
                file => Assert.True(one.Contains(file) || other.Contains(file), $"{file.Key} is neither the former nor the new file")
            );
        }

        Assert.True(withDraft > 0, "no kill fell into the writing");
        Assert.Equal(one, Whole(Words(command, "reading-room")));
        Assert.Empty(Drafts());
    }

    [Theory]
    [InlineData("parts reading-room --out out")]
    [InlineData("sheets reading-room --out out")]
    [InlineData("signal noise --seconds 20 --out out/target")]
    [InlineData("curves reading-room --points-per-decade 10000 --csv out/target")]
    public void A_full_disk_is_told_in_one_line_and_leaves_what_was_there(string command)
    {
        var words = command.Split(' ');
        AssertUnwritten(words, before: []);
        desk.Write("out/notes.txt", "glue first");
        AssertUnwritten(words, before: ["notes.txt"]);
    }

    // A small disk of its own where the system lets us have one; else the system's limit on the size of a file breaks the writing off.
    private void AssertUnwritten(string[] words, string[] before)
    {
        var isSmallDisk = before.Length == 0 && Run("mount", ["-t", "tmpfs", "-o", "size=64k", "none", desk.PathTo("out")]).ExitCode == 0;
        try
        {
            var ran = isSmallDisk
                ? Run("dotnet", [Program, .. words])
                : Run("bash", ["-c", "trap '' XFSZ; ulimit -f 30; exec \"$@\"", "bash", "dotnet", Program, .. words]);
            Assert.Equal((3, ""), (ran.ExitCode, ran.Output));
            Assert.Matches(@"\Aout/[^\n]{1,290}: cannot be written \([^\n]+\n\z", ran.Error);
            Assert.Equal(before, Directory.GetFileSystemEntries(desk.PathTo("out")).Select(Path.GetFileName));
        }
        finally
        {
            if (isSmallDisk)
            {
                Assert.Equal(0, Run("umount", [desk.PathTo("out")]).ExitCode);
            }
        }
    }

    private static string Program => Path.Combine(AppContext.BaseDirectory, "stillwall.dll");

    private static string[] Words(string command, string project) => [.. command.Split(' ').Select(word => word == "#" ? project : word)];

    private Dictionary<string, string> Whole(string[] words)
    {
        var ran = desk.Run(words);
        Assert.True(ran.ExitCode == 0, ran.Error);
        return Written();
    }

    private Dictionary<string, string> Written() =>
        Directory
            .GetFiles(desk.PathTo("out"))
            .Where(file => !file.EndsWith(".draft", StringComparison.Ordinal))
            .ToDictionary(file => Path.GetFileName(file), file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file))));

    private string[] Drafts() => Directory.GetFiles(desk.PathTo("out"), "*.draft");

    private Process Start(string[] words) => Process.Start(Told("dotnet", [Program, .. words]))!;

    private Ran Run(string program, string[] words)
    {
        try
        {
            using var process = Process.Start(Told(program, words))!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return new Ran(process.ExitCode, output, error.Result);
        }
        catch (System.ComponentModel.Win32Exception e)
        {
            return new Ran(-1, "", e.Message);
        }
    }

    private ProcessStartInfo Told(string program, string[] words)
    {
        var start = new ProcessStartInfo(program, words)
        {
            WorkingDirectory = desk.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };

        // The runtime's own double mapping is a large file, which the limit would forbid.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return start;
    }
}
