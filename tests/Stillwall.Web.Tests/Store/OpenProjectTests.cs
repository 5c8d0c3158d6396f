using System.IO.Compression;
using Stillwall.Files.Projects;
using Stillwall.Web.Store;

namespace Stillwall.Web.Tests.Store;

/// <summary>A project that is open: changes, undo, saving, and others who write the same file.</summary>
public sealed class OpenProjectTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-store-").FullName;
    private readonly Workshop workshop;
    private readonly OpenProject project;

    public OpenProjectTests()
    {
        workshop = new Workshop(folder, null, TimeProvider.System);
        project = workshop.Current().Project!;
    }

    private string File => Path.Combine(folder, "reading-room", ProjectStore.FileName);

    public void Dispose()
    {
        workshop.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void The_first_start_makes_the_demo_byte_for_byte()
    {
        var demo = Path.Combine(Source.Root, "samples", "reading-room");
        Assert.Equal(System.IO.File.ReadAllBytes(Path.Combine(demo, "stillwall.json")), System.IO.File.ReadAllBytes(File));
        Assert.Equal(
            System.IO.File.ReadAllBytes(Path.Combine(demo, "drivers.csv")),
            System.IO.File.ReadAllBytes(Path.Combine(folder, "reading-room", "drivers.csv"))
        );
    }

    [Fact]
    public void A_note_stays_when_the_last_value_beside_it_is_taken_out()
    {
        Assert.Empty(project.Set(this, [("cabinet.fill.note", "two layers of wool felt")], "note"));
        Assert.Empty(project.Edit(this, ProjectEdit.Removing("cabinet.fill.mass"), "fill taken out"));
        Assert.Null(project.Now.Project.Cabinet!.Fill!.MassKg);
        Assert.Contains("\"fill\": { \"note\": \"two layers of wool felt\" }", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_is_in_the_file_at_once_and_nothing_else_of_it_moves()
    {
        var before = System.IO.File.ReadAllText(File);
        Assert.Empty(project.Set(this, [("cabinet.outside.depth", "280 mm")], "depth"));
        Assert.Equal(before.Replace("\"depth\": \"330 mm\"", "\"depth\": \"280 mm\"", StringComparison.Ordinal), System.IO.File.ReadAllText(File));
        Assert.Null(project.Saved.Fault);
        Assert.Equal(2, project.Saved.Revision);
    }

    [Theory]
    [InlineData("cabinet.core", "12 kg")]
    [InlineData("cabinet.core", "-3 mm")]
    [InlineData("cabinet.braces", "1.5")]
    [InlineData("cabinet.outside.depth", "")]
    [InlineData("driver", "Nobody's 8\u0000")]
    [InlineData("cabinet.no_such_key", "1 mm")]
    public void A_value_that_is_not_accepted_changes_nothing_and_says_why(string key, string stated)
    {
        var (before, text) = (project.Now, System.IO.File.ReadAllText(File));
        Assert.NotEmpty(Assert.Single(project.Set(this, [(key, stated)], key)));
        Assert.Same(before, project.Now);
        Assert.Equal(text, System.IO.File.ReadAllText(File));
    }

    [Fact]
    public void Undo_and_redo_go_through_every_state_and_the_file_goes_along()
    {
        string[] depths = ["330", "300", "280", "260"];
        foreach (var depth in depths[1..])
        {
            Assert.Empty(project.Set(this, [("cabinet.outside.depth", $"{depth} mm")], depth));
        }

        foreach (var depth in depths[..^1].Reverse())
        {
            project.Undo(this);
            Assert.Contains($"\"depth\": \"{depth} mm\"", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
        }

        Assert.Null(project.CanUndo);
        foreach (var depth in depths[1..])
        {
            project.Redo(this);
            Assert.Contains($"\"depth\": \"{depth} mm\"", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
        }

        Assert.Null(project.CanRedo);
    }

    [Fact]
    public async Task A_change_by_another_program_is_followed_and_can_be_taken_back()
    {
        var heard = new TaskCompletionSource<ProjectNews>();
        project.Changed += news => heard.TrySetResult(news);
        var text = System.IO.File.ReadAllText(File);
        Assert.Null(ProjectStore.Save(File, ProjectTextEditor.SetStated(text, "cabinet.core", "14 mm")));
        var news = await heard.Task.WaitAsync(TimeSpan.FromSeconds(10), TestContext.Current.CancellationToken);
        Assert.Equal(new ProjectNews(NewsKind.Followed, null), news);
        Assert.Equal(0.014, project.Now.Project.Cabinet!.CoreM);
        project.Undo(this);
        Assert.Equal(text, System.IO.File.ReadAllText(File));
    }

    [Theory]
    [InlineData(true, "14 mm", "330 mm")]
    [InlineData(false, "12 mm", "280 mm")]
    public void Where_both_have_changed_it_somebody_must_choose_and_nothing_is_lost(bool theirs, string core, string depth)
    {
        var text = System.IO.File.ReadAllText(File);
        System.IO.File.WriteAllText(File, ProjectTextEditor.SetStated(text, "cabinet.core", "14 mm"));
        Assert.Empty(project.Set(this, [("cabinet.outside.depth", "280 mm")], "depth"));
        Assert.NotNull(project.Theirs);
        Assert.Contains("14 mm", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
        project.Choose(this, theirs);
        Assert.Null(project.Theirs);
        var chosen = System.IO.File.ReadAllText(File);
        Assert.Contains($"\"core\": \"{core}\"", chosen, StringComparison.Ordinal);
        Assert.Contains($"\"depth\": \"{depth}\"", chosen, StringComparison.Ordinal);
        if (!theirs)
        {
            Assert.Contains("14 mm", System.IO.File.ReadAllText(File + ".1"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_project_goes_out_as_an_archive_and_comes_back_the_same()
    {
        Assert.Empty(project.Set(this, [("name", "Alcove <b>&\"'")], "name"));
        var archive = ProjectZip.Pack(project.Folder);
        using (var zip = new ZipArchive(new MemoryStream(archive)))
        {
            Assert.Equal(["drivers.csv", "stillwall.json", "stillwall.schema.json"], zip.Entries.Select(e => e.FullName));
        }

        Assert.Equal(archive, ProjectZip.Pack(project.Folder));
        Assert.Null(workshop.Import("second", new MemoryStream(archive)));
        Assert.Equal(["reading-room", "second"], workshop.Names);
        Assert.Equal(project.Now.Text, workshop.Find("second").Project!.Now.Text);
    }

    [Theory]
    [InlineData("../outside.txt")]
    [InlineData("/tmp/outside.txt")]
    [InlineData("sub/../../outside.txt")]
    public void An_archive_that_leads_out_of_its_folder_is_refused_whole(string entry)
    {
        var archive = Archive(("stillwall.json", project.Now.Text), (entry, "outside"));
        Assert.Contains("leads out", workshop.Import("second", archive), StringComparison.Ordinal);
        Assert.Equal(["reading-room"], workshop.Names);
        Assert.Equal(["reading-room"], Directory.GetFileSystemEntries(folder).Select(p => Path.GetFileName(p)!));
    }

    [Theory]
    [InlineData("stillwall.json", "{ \"stillwall\": 1, \"cabinet\": { \"core\": 12 } }", "cabinet.core")]
    [InlineData("other.json", "{}", "stillwall.json")]
    public void An_archive_without_a_sound_project_says_what_is_wrong(string file, string text, string told)
    {
        Assert.Contains(told, workshop.Import("second", Archive((file, text))), StringComparison.Ordinal);
        Assert.Equal(["reading-room"], workshop.Names);
    }

    [Theory]
    [InlineData("")]
    [InlineData("..")]
    [InlineData(".hidden")]
    [InlineData("a/b")]
    [InlineData("a\\b")]
    [InlineData("reading-room")]
    [InlineData(" blank")]
    public void A_name_that_is_no_new_folder_is_refused(string name)
    {
        Assert.NotNull(workshop.Duplicate(project, name));
        Assert.NotNull(workshop.Import(name, Archive(("stillwall.json", project.Now.Text))));
    }

    [Fact]
    public void A_copy_is_a_project_of_its_own()
    {
        Assert.Null(workshop.Duplicate(project, "second try"));
        var copy = workshop.Find("second try").Project!;
        Assert.Empty(copy.Set(this, [("cabinet.core", "15 mm")], "core"));
        Assert.Equal(0.012, project.Now.Project.Cabinet!.CoreM);
    }

    [Fact]
    public void A_table_of_drivers_outside_the_folder_is_not_read()
    {
        var text = ProjectTextEditor.SetStated(project.Now.Text, "drivers", "../elsewhere.csv");
        System.IO.File.WriteAllText(Path.Combine(folder, "elsewhere.csv"), "name\n");
        Directory.CreateDirectory(Path.Combine(folder, "sly"));
        System.IO.File.WriteAllText(Path.Combine(folder, "sly", ProjectStore.FileName), text);
        var (opened, faults) = workshop.Find("sly");
        Assert.Null(opened);
        Assert.Contains("leads out of the project folder", Assert.Single(faults), StringComparison.Ordinal);
    }

    private static MemoryStream Archive(params (string Path, string Text)[] files) =>
        new(ProjectZip.Pack(files.Select(f => (f.Path, System.Text.Encoding.UTF8.GetBytes(f.Text)))));
}
