using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Projects;

public sealed class ProjectStoreTests : IDisposable
{
    private const string First = "{ \"stillwall\": 1 }\n";

    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-").FullName;

    private string ProjectFile => Path.Combine(folder, "stillwall.json");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_was_saved_is_loaded_by_folder_and_by_file()
    {
        Assert.Null(ProjectStore.Save(folder, First));

        foreach (var path in new[] { folder, folder + "/", ProjectFile })
        {
            var loaded = ProjectStore.Load(path);
            Assert.Null(loaded.Trouble);
            Assert.Equal(First, loaded.Text);
            Assert.Equal(1, loaded.Reading?.Project?.FormatVersion);
            Assert.Equal((folder, ProjectFile), (loaded.Folder, loaded.File));
        }
    }

    [Fact]
    public void The_last_five_versions_are_kept()
    {
        for (var i = 0; i <= 7; i++)
        {
            Assert.Null(ProjectStore.Save(folder, Text(i)));
        }

        Assert.Equal(Text(7), File.ReadAllText(ProjectFile));
        Assert.Equal([Text(6), Text(5), Text(4), Text(3), Text(2)], Enumerable.Range(1, 5).Select(v => File.ReadAllText($"{ProjectFile}.{v}")));
        Assert.Equal(6, Directory.GetFiles(folder).Length);
    }

    [Fact]
    public void Saving_the_same_text_again_keeps_no_version_of_it()
    {
        ProjectStore.Save(folder, First);
        ProjectStore.Save(folder, First);

        Assert.Equal([ProjectFile], Directory.GetFiles(folder));
    }

    // A folder where the former version should go stops the save half way: the draft is written by then, the file not yet replaced.
    [Fact]
    public void A_save_that_is_interrupted_leaves_the_old_file()
    {
        ProjectStore.Save(folder, First);
        Directory.CreateDirectory(ProjectFile + ".1");

        var fault = ProjectStore.Save(folder, Text(2));

        Assert.Equal(StoreTrouble.Unwritable, fault?.Kind);
        Assert.Equal(First, File.ReadAllText(ProjectFile));
        Assert.Equal([ProjectFile], Directory.GetFiles(folder));
    }

    [Fact]
    public async Task A_reader_never_finds_a_part_of_a_file()
    {
        ProjectStore.Save(folder, Text(0));
        using var done = new CancellationTokenSource();
        var reader = Task.Run(
            () =>
            {
                var read = 0;
                while (!done.IsCancellationRequested || read == 0)
                {
                    var loaded = ProjectStore.Load(folder);
                    Assert.Null(loaded.Trouble);
                    Assert.Empty(loaded.Reading!.Faults);
                    read++;
                }
            },
            TestContext.Current.CancellationToken
        );

        for (var i = 1; i <= 60; i++)
        {
            Assert.Null(ProjectStore.Save(folder, Text(i)));
        }

        await done.CancelAsync();
        await reader;
    }

    [Fact]
    public void A_path_that_is_not_there_is_told_in_one_line()
    {
        Assert.Equal(StoreTrouble.NotThere, ProjectStore.Load(Path.Combine(folder, "nowhere")).Trouble?.Kind);
        Assert.Equal(StoreTrouble.NotThere, ProjectStore.Load(folder).Trouble?.Kind);
        Assert.Equal(StoreTrouble.NotThere, ProjectStore.Load("a\0b").Trouble?.Kind);
        Assert.Equal(StoreTrouble.NotThere, ProjectStore.Load("").Trouble?.Kind);
        Assert.Equal(StoreTrouble.NotThere, ProjectStore.Save(Path.Combine(folder, "nowhere", "stillwall.json"), First)?.Kind);
        Assert.Equal($"{folder}: has no stillwall.json in it; a project folder", ProjectStore.Load(folder).Trouble?.ToString());
    }

    [Fact]
    public void A_write_protected_file_is_not_replaced()
    {
        ProjectStore.Save(folder, First);
        File.SetAttributes(ProjectFile, FileAttributes.ReadOnly);

        Assert.Equal(StoreTrouble.Unwritable, ProjectStore.Save(folder, Text(1))?.Kind);
        Assert.Equal(First, File.ReadAllText(ProjectFile));
        File.SetAttributes(ProjectFile, FileAttributes.Normal);
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "making a link needs a privilege on Windows");
        var real = Path.Combine(folder, "real.json");
        File.WriteAllText(real, First);
        File.CreateSymbolicLink(ProjectFile, real);

        Assert.Null(ProjectStore.Save(folder, Text(3)));

        Assert.Equal(Text(3), File.ReadAllText(real));
        Assert.NotNull(new FileInfo(ProjectFile).LinkTarget);
    }

    [Fact]
    public void A_file_too_large_to_be_a_project_is_a_fault_of_the_file()
    {
        File.WriteAllText(ProjectFile, First + new string(' ', 5_000_000));

        Assert.Contains("at most 4 MB", Assert.Single(ProjectStore.Load(folder).Reading!.Faults).Message, StringComparison.Ordinal);
    }

    private static string Text(int version) => $"{{ \"stillwall\": 1, \"name\": \"version {version}\", \"note\": \"{new string('x', 3000)}\" }}\n";
}
