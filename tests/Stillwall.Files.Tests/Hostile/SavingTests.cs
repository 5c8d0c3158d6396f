using System.Diagnostics;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

public sealed class SavingTests : IDisposable
{
    private const string FolderOfChild = "STILLWALL_TEST_SAVE_FOLDER";
    private const int Kills = 12;

    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-").FullName;

    private string ProjectFile => Path.Combine(folder, "stillwall.json");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_save_over_what_another_writer_has_changed_is_refused_unless_forced()
    {
        ProjectStore.Save(folder, Text(0));
        var loaded = ProjectStore.Load(folder).Text;
        Assert.Null(ProjectStore.Save(folder, Text(1), loaded));

        var fault = ProjectStore.Save(folder, Text(2), loaded);

        Assert.Equal(StoreTrouble.Changed, fault?.Kind);
        Assert.DoesNotContain('\n', fault!.ToString());
        Assert.Equal(Text(1), File.ReadAllText(ProjectFile));
        Assert.Null(ProjectStore.Save(folder, Text(2)));
        Assert.Equal(Text(2), File.ReadAllText(ProjectFile));
    }

    [Fact]
    public void A_file_that_was_taken_away_since_it_was_read_is_not_put_back()
    {
        Assert.Equal(StoreTrouble.Changed, ProjectStore.Save(folder, Text(1), Text(0))?.Kind);
        Assert.Empty(Directory.GetFiles(folder));
    }

    [Fact]
    public void A_save_that_is_broken_off_anywhere_leaves_a_whole_project_and_one_draft_at_most()
    {
        for (var i = 0; i < 8; i++)
        {
            ProjectStore.Save(folder, Text(i));
        }

        var brokenOff = 0;
        for (var trial = 0; brokenOff < 240; trial++)
        {
            var (before, steps) = (File.ReadAllText(ProjectFile), 1 + trial % 9);
            var end = Record.Exception(() => ProjectStore.Save(folder, Text(100 + trial), null, () => steps = steps > 1 ? steps - 1 : throw new BrokenOff()));

            Assert.True(end is null or BrokenOff, end?.Message);
            brokenOff += end is null ? 0 : 1;
            Assert.Contains(File.ReadAllText(ProjectFile), new[] { before, Text(100 + trial) });
            Assert.InRange(Drafts().Length, 0, 1);
            Assert.InRange(Enumerable.Range(1, 5).Count(version => File.Exists($"{ProjectFile}.{version}")), 4, 5);
            AssertWhole();
        }

        Assert.Null(ProjectStore.Save(folder, Text(999)));
        Assert.Empty(Drafts());
    }

    [Fact]
    public async Task Writers_at_the_same_time_leave_whole_files()
    {
        await Task.WhenAll(Enumerable.Range(0, 4).Select(writer => Task.Run(() =>
        {
            for (var i = 0; i < 25; i++)
            {
                Assert.Null(ProjectStore.Save(folder, Text((100 * writer) + i)));
            }
        })));

        AssertWhole();
        Assert.Empty(Drafts());
        Assert.All(Enumerable.Range(1, 5), version => Assert.Empty(ProjectReader.Read(File.ReadAllBytes($"{ProjectFile}.{version}")).Faults));
    }

    [Fact]
    public void Of_two_who_change_the_same_text_one_is_told()
    {
        for (var round = 0; round < 30; round++)
        {
            ProjectStore.Save(folder, Text(0));
            var faults = new StoreFault?[2];
            Parallel.For(0, 2, writer => faults[writer] = ProjectStore.Save(folder, Text(1 + writer), Text(0)));
            Assert.Single(faults, fault => fault?.Kind == StoreTrouble.Changed);
        }
    }

    [Fact]
    public async Task A_saving_program_that_is_killed_leaves_a_whole_project()
    {
        ProjectStore.Save(folder, Text(0));
        var dice = new Dice(7);
        for (var kill = 0; kill < Kills; kill++)
        {
            var before = File.ReadAllText(ProjectFile);
            using var child = Child();
            for (var wait = 0; wait < 3000 && File.ReadAllText(ProjectFile) == before && !child.HasExited; wait++)
            {
                await Task.Delay(10, TestContext.Current.CancellationToken);
            }

            Assert.False(child.HasExited, "the saving program ended by itself");
            await Task.Delay(dice.Below(60), TestContext.Current.CancellationToken);
            child.Kill(entireProcessTree: true);
            await child.WaitForExitAsync(TestContext.Current.CancellationToken);

            Assert.InRange(Drafts().Length, 0, 1);
            AssertWhole();
            Assert.Null(ProjectStore.Save(folder, Text(-1 - kill)));
            Assert.Empty(Drafts());
        }
    }

    // Not a test by itself: what the program does that is killed.
    [Fact(Explicit = true)]
    public void Save_without_end()
    {
        var place = Environment.GetEnvironmentVariable(FolderOfChild);
        Assert.SkipWhen(place is null, "only for the test that kills it");
        for (var i = 0; ; i++)
        {
            ProjectStore.Save(place, Text(i));
        }
    }

    private Process Child()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in new[] { typeof(SavingTests).Assembly.Location, "-explicit", "only", "-method", $"{typeof(SavingTests).FullName}.{nameof(Save_without_end)}" })
        {
            start.ArgumentList.Add(word);
        }

        start.Environment[FolderOfChild] = folder;
        return Process.Start(start)!;
    }

    private string[] Drafts() => Directory.GetFiles(folder, "*.tmp");

    private void AssertWhole()
    {
        var loaded = ProjectStore.Load(folder);
        Assert.Null(loaded.Trouble);
        Assert.Empty(loaded.Reading!.Faults);
    }

    private static string Text(int version) => $"{{ \"stillwall\": 1, \"name\": \"version {version}\", \"note\": \"{new string('x', 3000)}\" }}\n";

    private sealed class BrokenOff : Exception;
}
