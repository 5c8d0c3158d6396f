using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Ranking;
using Stillwall.Appraisals.WallChoices;
using Stillwall.Figures;
using Stillwall.Figures.Sheets;
using Stillwall.Projects;

namespace Stillwall.Web.Store;

/// <summary>Everything computed from one state of a project, each part once and only when it is asked for. Several pages may share it.</summary>
internal sealed class Plan
{
    /// <summary>How many questions there are.</summary>
    internal const int QuestionCount = 4;

    private readonly Lock gate = new();
    private readonly Dictionary<string, Task> searches = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Finding> sought = new(StringComparer.Ordinal);
    private readonly Project project;
    private readonly Lazy<Mender> mender;
    private readonly Lazy<RankedDrivers> ranked;
    private readonly Lazy<IReadOnlyList<Sheet>> sheets;
    private readonly Lazy<WallChoice> wallChoice;
    private readonly Lazy<Chart?> wallSound;
    private readonly Lazy<Chart?>[] questions;

    private Task last = Task.CompletedTask;
    private Appraisal? appraisal;

    internal Plan(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        this.project = project;
        mender = new(() => new Mender(project, candidates));
        ranked = new(() => Ranking.Of(project, candidates));
        wallChoice = new(() => WallChoice.Of(project, candidates));
        wallSound = new(() => WallSoundChart.Of(Facts));
        sheets = new(() => SheetSet.Of(new Facts(project, candidates)));
        questions =
        [
            new(() => ResponseCharts.HowLow(Facts)),
            new(() => ResponseCharts.HowLoud(Facts)),
            new(() => ResponseCharts.HowFar(Facts)),
            new(() => ResponseCharts.WhatTheAmplifierFeels(Facts)),
        ];
    }

    /// <summary>Whether figures and findings are there.</summary>
    internal bool IsReady => mender.IsValueCreated;

    /// <summary>Everything computed.</summary>
    internal Facts Facts => mender.Value.Facts;

    /// <summary>Every finding; with its remedy once that has been sought.</summary>
    internal IReadOnlyList<Finding> Findings
    {
        get
        {
            var judged = mender.Value.Judged;
            lock (gate)
            {
                return [.. judged.Select(f => sought.GetValueOrDefault(f.Id, f))];
            }
        }
    }

    /// <summary>The same as the command line prints it.</summary>
    internal Appraisal Appraisal =>
        appraisal ??= new Appraisal(
            Project: Facts.Project.Name,
            Box: Facts.Box,
            Walls: Facts.Walls,
            Parts: Facts.Parts,
            Pour: Facts.Pour,
            Print: Facts.Print,
            Mass: Facts.Mass,
            Supplies: Facts.Supplies,
            Cost: Facts.Cost,
            Quiet: Facts.Quiet,
            Findings: mender.Value.Judged,
            Cautions: Cautions.Of(Facts)
        );

    /// <summary>The candidates, ranked in this cabinet.</summary>
    internal RankedDrivers Ranked => ranked.Value;

    /// <summary>Kinds of wall side by side, and the lightest that passes; takes seconds.</summary>
    internal WallChoice WallChoice => wallChoice.Value;

    /// <summary>The walls' sound beside the cone; null where it is not known.</summary>
    internal Chart? WallSound => wallSound.Value;

    /// <summary>How warm the wall gets; null where the heat is not known.</summary>
    internal Chart? Warmth => WarmthChart.Of(Facts);

    /// <summary>The dimensioned sheets.</summary>
    internal IReadOnlyList<Sheet> Sheets => sheets.Value;

    /// <summary>The four questions as charts; what cannot be drawn is left out.</summary>
    internal IReadOnlyList<Chart> Questions => [.. Enumerable.Range(0, QuestionCount).Select(Question).OfType<Chart>()];

    /// <summary>One of the four questions as a chart; null where it cannot be drawn.</summary>
    internal Chart? Question(int which) => questions[which].Value;

    /// <summary>Whether a question has been answered already.</summary>
    internal bool IsAnswered(int which) => questions[which].IsValueCreated;

    /// <summary>Every chart, as files are made of them; those of the walls, of the neighbour and of price and level too.</summary>
    internal IReadOnlyList<Chart> Charts => [.. Questions, .. new[] { WallSound, Warmth, NeighbourChart.Of(Facts.Quiet), BestBuys }.OfType<Chart>()];

    /// <summary>Price against level of the candidates; null where none has both.</summary>
    internal Chart? BestBuys => BestBuyChart.Of(Ranked.Drivers, Facts.Show, project.Brief.Aim?.LevelDb);

    /// <summary>
    /// Seeks the remedies of what does not hold, the worst first, one after the other, on a thread of its own. Pages that share the plan share the
    /// search.
    /// </summary>
    /// <param name="found">Told after each.</param>
    internal async Task SeekRemedies(Action found, CancellationToken stop)
    {
        var open = Findings
            .Where(f => f.Verdict is Verdict.Fails or Verdict.Tight)
            .OrderByDescending(f => f.Verdict == Verdict.Fails)
            .Select(f => f.Id)
            .ToList();
        foreach (var id in open)
        {
            stop.ThrowIfCancellationRequested();
            await Searched(id).WaitAsync(stop);
            found();
        }
    }

    // One search at a time: they share their trials.
    private Task Searched(string id)
    {
        lock (gate)
        {
            return searches.TryGetValue(id, out var running) ? running : searches[id] = last = Search(last, id);
        }
    }

    private async Task Search(Task before, string id)
    {
        await before;
        var finding = await Task.Factory.StartNew(
            () => mender.Value.Sought(id)!,
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
        lock (gate)
        {
            sought[id] = finding;
        }
    }
}
