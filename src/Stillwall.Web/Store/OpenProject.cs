using Stillwall.Files;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Web.Proving;

namespace Stillwall.Web.Store;

/// <summary>What happened to an open project.</summary>
internal enum NewsKind
{
    /// <summary>A page changed it.</summary>
    Edited,

    /// <summary>It was saved, or could not be.</summary>
    Saved,

    /// <summary>Another program changed its file, and the pages follow.</summary>
    Followed,

    /// <summary>Another program changed its file while this one was changed too: somebody must choose.</summary>
    Conflict,
}

/// <summary>Something that happened to an open project.</summary>
/// <param name="By">The page that did it; null for another program.</param>
internal sealed record ProjectNews(NewsKind Kind, object? By);

/// <summary>How the file on the disk stands to what is open.</summary>
/// <param name="Revision">Number of the state that was saved, from 1.</param>
/// <param name="Fault">Why the last state is not saved; null where it is.</param>
internal sealed record SaveState(int Revision, DateTimeOffset At, string? Fault);

/// <summary>A project folder that is open: its states, undo and redo, and the saving. Pages share it; every member may be called from any thread.</summary>
internal sealed class OpenProject : IDisposable
{
    private const int MostStates = 200;

    private readonly Lock gate = new();
    private readonly TimeProvider clock;
    private readonly ITimer watch;
    private readonly List<Snapshot> past = [];
    private readonly List<Snapshot> future = [];
    private (string Text, string? Table) onDisk;
    private (DateTime Project, DateTime Table) written;
    private int revision = 1;

    private OpenProject(string folder, Snapshot now, TimeProvider clock)
    {
        (Folder, Now, this.clock) = (folder, now, clock);
        Name = Path.GetFileName(Path.TrimEndingDirectorySeparator(folder));
        onDisk = (now.Text, now.TableText);
        written = Stamps(now);
        Saved = new SaveState(1, clock.GetLocalNow(), null);
        watch = clock.CreateTimer(_ => Look(), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));
    }

    /// <summary>Told after something happened, on any thread.</summary>
    internal event Action<ProjectNews>? Changed;

    /// <summary>Full path of the folder.</summary>
    internal string Folder { get; }

    /// <summary>Name of the folder; the pages' addresses have it.</summary>
    internal string Name { get; }

    /// <summary>The present state.</summary>
    internal Snapshot Now { get; private set; }

    /// <summary>The state before the last change; null where there is none.</summary>
    internal Snapshot? Before
    {
        get
        {
            lock (gate)
            {
                return past.Count > 0 ? past[^1] : null;
            }
        }
    }

    /// <summary>What undo would take back; null where there is nothing.</summary>
    internal string? CanUndo => Before is null ? null : Now.What;

    /// <summary>What redo would do again; null where there is nothing.</summary>
    internal string? CanRedo
    {
        get
        {
            lock (gate)
            {
                return future.Count > 0 ? future[^1].What : null;
            }
        }
    }

    /// <summary>What recordings showed since the project was opened.</summary>
    internal ProofBoard Proofs { get; } = new();

    /// <summary>How the file stands to the present state.</summary>
    internal SaveState Saved { get; private set; }

    /// <summary>What another program wrote while this one was changed; null where nobody must choose.</summary>
    internal Snapshot? Theirs { get; private set; }

    /// <summary>Opens a project folder.</summary>
    internal static (OpenProject? Project, IReadOnlyList<string> Faults) Open(string folder, TimeProvider clock)
    {
        var (state, faults) = Read(folder, "opened");
        return state is null ? (null, faults) : (new OpenProject(Path.GetFullPath(folder), state, clock), []);
    }

    /// <summary>Changes stated values.</summary>
    /// <returns>What is wrong with the values; empty when it is done.</returns>
    internal IReadOnlyList<string> Set(object by, IReadOnlyList<(string Key, string Stated)> changes, string what) =>
        Edit(by, ProjectEdit.Setting(changes), what);

    /// <summary>Changes the text of the project.</summary>
    /// <returns>What is wrong with it; empty when it is done.</returns>
    internal IReadOnlyList<string> Edit(object by, ProjectEdit edit, string what)
    {
        lock (gate)
        {
            var (next, faults) = Tried(Now, edit, what);
            if (next is null)
            {
                return faults;
            }

            Take(next);
        }

        Tell(NewsKind.Edited, by);
        Save(by);
        return [];
    }

    /// <summary>What a change would give, without making it.</summary>
    internal static (Snapshot? State, IReadOnlyList<string> Faults) Tried(Snapshot from, ProjectEdit edit, string what)
    {
        try
        {
            var (state, faults) = from.With(DemoMarks.Without(edit.Of(from.Text), from.Project, edit.Keys.Select(key => key.Split('[')[0])), what);
            return (state, [.. faults.Select(f => f.Message)]);
        }
        catch (ArgumentException e)
        {
            // The framework puts the parameter's name behind the message.
            return (null, [e.Message.Split(" (Parameter '")[0]]);
        }
    }

    /// <summary>Replaces the whole text of the project, or the table of drivers.</summary>
    internal IReadOnlyList<string> Replace(object? by, string text, string? tableText, string what)
    {
        var (next, faults) = Snapshot.Read(text, tableText, what);
        if (next is null)
        {
            return [.. faults.Select(f => f.ToString())];
        }

        lock (gate)
        {
            Take(next);
        }

        Tell(NewsKind.Edited, by);
        Save(by);
        return [];
    }

    /// <summary>Takes the last change back.</summary>
    internal void Undo(object by) => Turn(by, past, future);

    /// <summary>Does again what was taken back.</summary>
    internal void Redo(object by) => Turn(by, future, past);

    /// <summary>Settles a conflict.</summary>
    /// <param name="theirs">Whether to take what the other program wrote; else it is overwritten, and kept as the former version.</param>
    internal void Choose(object by, bool theirs)
    {
        lock (gate)
        {
            if (Theirs is not { } other)
            {
                return;
            }

            onDisk = (other.Text, other.TableText);
            Theirs = null;
            if (theirs)
            {
                Take(other);
            }
        }

        Tell(NewsKind.Edited, by);
        Save(by);
    }

    public void Dispose() => watch.Dispose();

    private static (Snapshot? State, IReadOnlyList<string> Faults) Read(string folder, string what)
    {
        var stored = ProjectStore.Load(folder);
        if (stored.Trouble is { } trouble)
        {
            return (null, [trouble.ToString()]);
        }

        var (table, fault) = TableOf(stored.Folder, stored.Reading!.Project?.Drivers);
        var (state, faults) = Snapshot.Read(stored.Text!, table, what);
        return fault is not null ? (null, [fault]) : (state, [.. faults.Select(f => f.ToString())]);
    }

    private static (string? Text, string? Fault) TableOf(string folder, string? name)
    {
        if (name is null)
        {
            return (null, null);
        }

        if (FolderPath.Inside(folder, name) is not { } file)
        {
            return (null, $"{ProjectStore.FileName}: drivers: \"{name}\" leads out of the project folder; a file within it");
        }

        try
        {
            return new FileInfo(file) is { Exists: true, Length: <= DriverTable.GreatestLength } ? (File.ReadAllText(file), null) : (null, null);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return (null, $"{name}: {PathTrouble.Unread(e)}");
        }
    }

    private void Turn(object by, List<Snapshot> from, List<Snapshot> to)
    {
        lock (gate)
        {
            if (from.Count == 0)
            {
                return;
            }

            to.Add(Now);
            Now = from[^1];
            from.RemoveAt(from.Count - 1);
            revision++;
        }

        Tell(NewsKind.Edited, by);
        Save(by);
    }

    private void Take(Snapshot next)
    {
        past.Add(Now);
        if (past.Count > MostStates)
        {
            past.RemoveAt(0);
        }

        future.Clear();
        Now = next;
        revision++;
    }

    private void Save(object? by)
    {
        lock (gate)
        {
            if (Theirs is not null)
            {
                return;
            }

            var fault = SaveNow(Now);
            if (fault?.Kind == StoreTrouble.Changed)
            {
                Theirs = Read(Folder, "changed by another program").State;
            }

            Saved = fault is null ? new SaveState(revision, clock.GetLocalNow(), null) : Saved with { Fault = fault.ToString() };
        }

        Tell(Theirs is null ? NewsKind.Saved : NewsKind.Conflict, by);
    }

    private StoreFault? SaveNow(Snapshot now)
    {
        if (now.TableText is { } table && table != onDisk.Table && SaveTable(now.Project.Drivers ?? "drivers.csv", table) is { } wrong)
        {
            return wrong;
        }

        if (ProjectStore.Save(Folder, now.Text, onDisk.Text) is { } fault)
        {
            return fault;
        }

        (onDisk, written) = ((now.Text, now.TableText), Stamps(now));
        return null;
    }

    private StoreFault? SaveTable(string name, string text) =>
        FolderPath.Inside(Folder, name) is not { } file
            ? new StoreFault(StoreTrouble.Unwritable, name, "leads out of the project folder; a file within it")
            : ProjectStore.Save(file, text);

    // Another program may change the file at any time: where nothing here waits to be saved, the pages follow.
    private void Look()
    {
        lock (gate)
        {
            if (Theirs is not null || Stamps(Now) == written)
            {
                return;
            }

            written = Stamps(Now);
            if (Read(Folder, "changed by another program").State is not { } other || (other.Text == onDisk.Text && other.TableText == onDisk.Table))
            {
                return;
            }

            if (Saved.Fault is not null)
            {
                Theirs = other;
            }
            else
            {
                onDisk = (other.Text, other.TableText);
                Take(other);
                Saved = new SaveState(revision, clock.GetLocalNow(), null);
            }
        }

        Tell(Theirs is null ? NewsKind.Followed : NewsKind.Conflict, null);
    }

    private (DateTime Project, DateTime Table) Stamps(Snapshot state) =>
        (
            File.GetLastWriteTimeUtc(Path.Combine(Folder, ProjectStore.FileName)),
            File.GetLastWriteTimeUtc(Path.Combine(Folder, FolderPath.Inside(Folder, state.Project.Drivers ?? "") ?? Folder))
        );

    private void Tell(NewsKind kind, object? by) => Changed?.Invoke(new ProjectNews(kind, by));
}
