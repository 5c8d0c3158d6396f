using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

public sealed class SavingTests : IDisposable
{
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
    public void A_save_that_is_broken_off_anywhere_leaves_a_whole_project_and_two_drafts_at_most()
    {
        for (var i = 0; i < 8; i++)
        {
            ProjectStore.Save(folder, Text(i));
        }

        var brokenOff = 0;
        for (var trial = 0; brokenOff < 240; trial++)
        {
            var (before, steps) = (File.ReadAllText(ProjectFile), 1 + trial % 13);
            var end = Record.Exception(() => ProjectStore.Save(folder, Text(100 + trial), null, () => steps = steps > 1 ? steps - 1 : throw new BrokenOff()));

            Assert.True(end is null or BrokenOff, end?.Message);
            brokenOff += end is null ? 0 : 1;
            Assert.Contains(File.ReadAllText(ProjectFile), new[] { before, Text(100 + trial) });
            Assert.InRange(Drafts().Length, 0, 2);
            Assert.InRange(Enumerable.Range(1, 5).Count(version => File.Exists($"{ProjectFile}.{version}")), 4, 5);
            AssertWhole();
            Assert.All(
                Enumerable.Range(1, 5).Select(version => $"{ProjectFile}.{version}").Where(File.Exists),
                kept => Assert.Empty(ProjectReader.Read(File.ReadAllBytes(kept)).Faults)
            );
        }

        Assert.Null(ProjectStore.Save(folder, Text(999)));
        Assert.Empty(Drafts());
    }

    [Fact]
    public void What_another_program_writes_in_the_middle_of_a_save_is_told_and_stays()
    {
        for (var at = 1; at <= 6; at++)
        {
            ProjectStore.Save(folder, Text(0));
            var step = 0;

            var fault = ProjectStore.Save(
                folder,
                Text(1),
                Text(0),
                () =>
                {
                    if (++step == at)
                    {
                        File.WriteAllText(ProjectFile, Text(2));
                    }
                }
            );

            Assert.Equal(StoreTrouble.Changed, fault?.Kind);
            Assert.Equal(Text(2), File.ReadAllText(ProjectFile));
            Assert.Empty(Drafts());
        }
    }

    [Fact]
    public void A_save_that_was_broken_off_pushes_no_version_out()
    {
        for (var i = 0; i <= 5; i++)
        {
            ProjectStore.Save(folder, Text(i));
        }

        for (var i = 0; i < 4; i++)
        {
            Assert.Throws<BrokenOff>(() =>
                ProjectStore.Save(
                    folder,
                    Text(6),
                    null,
                    () =>
                    {
                        if (File.Exists(ProjectFile + ".1") && File.ReadAllText(ProjectFile + ".1") == Text(5))
                        {
                            throw new BrokenOff();
                        }
                    }
                )
            );
        }

        Assert.Null(ProjectStore.Save(folder, Text(6)));
        Assert.Equal([Text(5), Text(4), Text(3), Text(2), Text(1)], Enumerable.Range(1, 5).Select(version => File.ReadAllText($"{ProjectFile}.{version}")));
    }

    [Fact]
    public async Task Writers_at_the_same_time_leave_whole_files()
    {
        await Task.WhenAll(
            Enumerable
                .Range(0, 4)
                .Select(writer =>
                    Task.Run(() =>
                    {
                        for (var i = 0; i < 25; i++)
                        {
                            Assert.Null(ProjectStore.Save(folder, Text((100 * writer) + i)));
                        }
                    })
                )
        );

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

    private string[] Drafts() => Directory.GetFiles(folder, "*.tmp");

    private void AssertWhole()
    {
        var loaded = ProjectStore.Load(folder);
        Assert.Null(loaded.Trouble);
        Assert.Empty(loaded.Reading!.Faults);
    }

    private static string Text(int version) => SavingChild.Text(version);

    private sealed class BrokenOff : Exception;
}
