using Stillwall.Appraisals;

namespace Stillwall.Web.Store;

/// <summary>What one page looks at: the project, the state that is shown, a draft while somebody types, the former state as a pencil line.</summary>
internal sealed class Desk(Workshop workshop) : IDisposable
{
    // The other questions are answered and remedies sought once a hand rests.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly Lock gate = new();
    private CancellationTokenSource remedies = new();
    private Snapshot? wanted;
    private bool isBusy,
        isResting;

    /// <summary>Told when what is shown has changed, on any thread.</summary>
    internal event Action? Changed;

    /// <summary>Told when somebody asks why.</summary>
    internal event Action? Questioned;

    /// <summary>Of which result somebody asked why.</summary>
    internal WhyQuestion? Asked { get; private set; }

    /// <summary>The project; null where none could be opened.</summary>
    internal OpenProject? Project { get; private set; }

    /// <summary>Why no project is open.</summary>
    internal IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>The state whose figures are shown.</summary>
    internal Snapshot? Shown { get; private set; }

    /// <summary>The state before the last change, drawn in pencil.</summary>
    internal Snapshot? Former { get; private set; }

    /// <summary>Question whose chart is looked at: it is drawn first.</summary>
    internal int Question { get; set; }

    /// <summary>Whether a newer state is being computed.</summary>
    internal bool IsStale => wanted is not null && wanted != Shown;

    /// <summary>What another page or program did; null where there is nothing to tell.</summary>
    internal string? Notice { get; private set; }

    /// <summary>Id of the finding whose remedy was done last, as long as undo takes it back.</summary>
    internal (string Id, Snapshot State)? Mended { get; private set; }

    /// <summary>Opens the project on which pages open, or one by its name.</summary>
    internal void Open(string? name = null)
    {
        var (project, faults) = name is null ? workshop.Current() : workshop.Find(name);
        Faults = faults;
        if (project is null || project == Project)
        {
            return;
        }

        if (Project is not null)
        {
            Project.Changed -= Hear;
        }

        (Project, Former, Mended, Notice) = (project, null, null, null);
        project.Changed += Hear;
        Shown = project.Now;
        Want(project.Now);
    }

    /// <summary>Shows what a change would give, while somebody types.</summary>
    /// <returns>What is wrong with the value; empty where nothing is.</returns>
    internal IReadOnlyList<string> Try(ProjectEdit edit)
    {
        var (state, faults) = OpenProject.Tried(Project!.Now, edit, edit.Keys[0]);
        if (state is not null)
        {
            Former = Project.Now;
            Want(state);
        }

        return faults;
    }

    /// <summary>Goes back to what is stated.</summary>
    internal void Forget()
    {
        Former = Project!.Before;
        Want(Project.Now);
    }

    /// <summary>Changes stated values for good.</summary>
    internal IReadOnlyList<string> Set(IReadOnlyList<(string Key, string Stated)> changes, string what) => Project!.Set(this, changes, what);

    /// <summary>Changes the text of the project for good.</summary>
    internal IReadOnlyList<string> Edit(ProjectEdit edit, string what) => Project!.Edit(this, edit, what);

    /// <summary>Does what a finding proposes.</summary>
    internal IReadOnlyList<string> Mend(Finding finding)
    {
        var changes = finding.Change.Select(c => (c.Key, Convert.ToString(c.Value, System.Globalization.CultureInfo.InvariantCulture) ?? "")).ToList();
        var faults = Set(changes, finding.Topic);
        if (faults.Count == 0)
        {
            Mended = (finding.Id, Project!.Now);
            Changed?.Invoke();
        }

        return faults;
    }

    /// <summary>Takes the last change back.</summary>
    internal void Undo() => Project!.Undo(this);

    /// <summary>Does again what was taken back.</summary>
    internal void Redo() => Project!.Redo(this);

    /// <summary>Asks why a result is what it is.</summary>
    internal void Ask(WhyQuestion question)
    {
        Asked = question;
        Questioned?.Invoke();
    }

    /// <summary>Takes the notice away.</summary>
    internal void Read()
    {
        Notice = null;
        Changed?.Invoke();
    }

    /// <summary>Stops computing while nobody looks, and begins again.</summary>
    internal void Rest(bool on)
    {
        isResting = on;
        if (on)
        {
            remedies.Cancel();
        }
        else if (Project is not null)
        {
            Want(Project.Now);
        }
    }

    public void Dispose()
    {
        remedies.Cancel();
        remedies.Dispose();
        if (Project is not null)
        {
            Project.Changed -= Hear;
        }
    }

    private void Hear(ProjectNews news)
    {
        if (news.By != this && news.Kind is NewsKind.Edited or NewsKind.Followed)
        {
            Notice =
                news.Kind == NewsKind.Followed ? Texts.ShellTexts.FollowedFile
                : news.By != this ? Texts.ShellTexts.FollowedPage(Project!.Now.What)
                : Notice;
        }

        if (news.Kind is NewsKind.Edited or NewsKind.Followed)
        {
            Mended = Mended is { } m && m.State == Project!.Now ? m : null;
            Former = Project!.Before;
            Want(Project.Now);
        }
        else
        {
            Changed?.Invoke();
        }
    }

    // The latest wins: while one state is computed, only the newest of those that come meanwhile is kept.
    private void Want(Snapshot state)
    {
        if (isResting)
        {
            return;
        }

        lock (gate)
        {
            remedies.Cancel();
            wanted = state;
            if (state.IsComputed)
            {
                Shown = state;
            }
            else if (!isBusy)
            {
                isBusy = true;
                _ = Task.Run(Work);
            }
        }

        Changed?.Invoke();
        if (!IsStale)
        {
            SeekRemedies();
        }
    }

    private void SeekRemedies()
    {
        if (Shown is not { } shown || isResting)
        {
            return;
        }

        lock (gate)
        {
            remedies.Cancel();
            remedies = new CancellationTokenSource();
            _ = Seek(shown, remedies.Token);
        }
    }

    private async Task Seek(Snapshot shown, CancellationToken stop)
    {
        try
        {
            // What nobody looks at just now comes after what somebody waits for.
            await Task.Delay(Pause, stop);
            await Task.Run(() => shown.Plan.Questions, stop);
            await shown.Plan.SeekRemedies(() => Changed?.Invoke(), stop);
        }
        catch (OperationCanceledException)
        {
            // A newer state is shown.
        }
    }

    private void Work()
    {
        while (true)
        {
            Snapshot next;
            lock (gate)
            {
                if (wanted is null || wanted == Shown && wanted.IsComputed)
                {
                    isBusy = false;
                    break;
                }

                next = wanted;
            }

            _ = next.Plan.Facts;
            _ = next.Plan.Question(Question);
            Shown = next;
            Changed?.Invoke();
        }

        SeekRemedies();
    }
}
