using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Figures;
using Stillwall.Figures.Sheets;
using Stillwall.Projects;

namespace Stillwall.Web.Store;

/// <summary>Everything computed from one state of a project, each part once and only when it is asked for. Several pages may share it.</summary>
internal sealed class Plan(Project project, IReadOnlyList<DriverSheet> candidates)
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, Task> searches = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Finding> sought = new(StringComparer.Ordinal);
    private readonly Lazy<Mender> mender = new(() => new Mender(project, candidates));
    private readonly Lazy<RankedDrivers> ranked = new(() => Ranking.Of(project, candidates));
    private readonly Lazy<IReadOnlyList<Sheet>> sheets = new(() => SheetSet.Of(new Facts(project, candidates)));

    private Task last = Task.CompletedTask;
    private Appraisal? appraisal;
    private IReadOnlyList<Chart>? questions;

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
    internal Appraisal Appraisal => appraisal ??= new Appraisal(
        Facts.Project.Name, Facts.Box, Facts.Walls, Facts.Parts, Facts.Pour, Facts.Print, Facts.Mass, Facts.Supplies, Facts.Cost, Facts.Quiet, mender.Value.Judged);

    /// <summary>The candidates, ranked in this cabinet.</summary>
    internal RankedDrivers Ranked => ranked.Value;

    /// <summary>The dimensioned sheets.</summary>
    internal IReadOnlyList<Sheet> Sheets => sheets.Value;

    /// <summary>The four questions as charts; what cannot be drawn is left out.</summary>
    internal IReadOnlyList<Chart> Questions => questions ??=
        [.. new[] { ResponseCharts.HowLow(Facts), ResponseCharts.HowLoud(Facts), ResponseCharts.HowFar(Facts), ResponseCharts.WhatTheAmplifierFeels(Facts) }.OfType<Chart>()];

    /// <summary>Every chart, as files are made of them; the neighbour's and that of price and level too.</summary>
    internal IReadOnlyList<Chart> Charts => [.. Questions, .. new[] { NeighbourChart.Of(Facts.Quiet), Front }.OfType<Chart>()];

    /// <summary>Price against level of the candidates; null where none has both.</summary>
    internal Chart? Front => FrontChart.Of([.. Ranked.Drivers.Select(d => new FrontDriver(d.Name, d.Price, d.MaxSplAtLowestDb, d.Verdict, d.Front))], Facts.Show, project.Brief.Aim?.LevelDb);

    /// <summary>Seeks the remedies of what does not hold, the worst first, one after the other, on a thread of its own. Pages that share the plan share the search.</summary>
    /// <param name="found">Told after each.</param>
    /// <param name="stop">Stops between two of them.</param>
    internal async Task SeekRemedies(Action found, CancellationToken stop)
    {
        var open = Findings.Where(f => f.Verdict is Verdict.Fails or Verdict.Tight).OrderByDescending(f => f.Verdict == Verdict.Fails).Select(f => f.Id).ToList();
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
        var finding = await Task.Factory.StartNew(() => mender.Value.Sought(id)!, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        lock (gate)
        {
            sought[id] = finding;
        }
    }
}
