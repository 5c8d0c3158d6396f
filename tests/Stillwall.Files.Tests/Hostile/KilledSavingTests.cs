using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

public sealed class KilledSavingTests : IDisposable
{
    private const int Lanes = 4,
        KillsPerLane = 75;

    // Longer than one save, so that a kill falls anywhere in it.
    private const int LongestLifeMs = 12;

    private const int LongestWaitMs = 500;

    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Three_hundred_kills_in_the_middle_of_saving_lose_no_version_and_leave_no_half_file()
    {
        var left = await Task.WhenAll(Enumerable.Range(0, Lanes).Select(lane => Task.Run(() => KillMany(lane), TestContext.Current.CancellationToken)));

        Assert.True(left.Sum() > Lanes, $"only {left.Sum()} kills fell into a save");
    }

    // How many kills left a draft behind.
    private async Task<int> KillMany(int lane)
    {
        var project = Directory.CreateDirectory(Path.Combine(folder, $"lane-{lane}")).FullName;
        var file = Path.Combine(project, ProjectStore.FileName);
        for (var number = 0; number <= ProjectStore.KeptVersions; number++)
        {
            Assert.Null(ProjectStore.Save(project, SavingChild.Text(number)));
        }

        var (dice, withDraft) = (new Dice(100 + lane), 0);
        for (var kill = 0; kill < KillsPerLane; kill++)
        {
            using var child = SavingChild.Start(project);
            var said = await child.StandardOutput.BaseStream.ReadAsync(new byte[1], TestContext.Current.CancellationToken);
            Assert.True(said == 1, "the saving program ended by itself");
#pragma warning disable RS0030 // The kill falls anywhere in the writing: this time is the case itself.
            await Task.Delay(dice.Below(LongestLifeMs), TestContext.Current.CancellationToken);
#pragma warning restore RS0030
            if (kill % 2 == 1)
            {
                WaitForDraft(project);
            }

            child.Kill();
            await child.WaitForExitAsync(TestContext.Current.CancellationToken);

            withDraft += Drafts(project) > 0 ? 1 : 0;
            AssertWhole(file);
            Assert.Null(ProjectStore.Save(project, SavingChild.Text(SavingChild.NumberOf(file) + 1)));
            Assert.Equal(0, Drafts(project));
        }

        return withDraft;
    }

    // Every second kill comes when a draft is seen, so that some fall into a save however fast or busy the machine is.
    private static void WaitForDraft(string project) => SpinWait.SpinUntil(() => Drafts(project) > 0, LongestWaitMs);

    private static int Drafts(string project) => Directory.GetFiles(project, "*.tmp").Length;

    private static void AssertWhole(string file)
    {
        Assert.Empty(ProjectStore.Load(file).Reading!.Faults);
        var kept = Enumerable.Range(1, ProjectStore.KeptVersions).Select(version => $"{file}.{version}").Where(File.Exists).ToList();
        Assert.InRange(kept.Count, ProjectStore.KeptVersions - 1, ProjectStore.KeptVersions);
        Assert.InRange(Drafts(Path.GetDirectoryName(file)!), 0, 2);

        // One after the other without a hole; the last one is kept twice where the kill fell between keeping and replacing.
        var numbers = kept.Prepend(file).Select(SavingChild.NumberOf).Distinct().ToList();
        Assert.Equal(Enumerable.Range(0, numbers.Count).Select(i => numbers[0] - i), numbers);
    }
}
