using System.Globalization;
using System.Text;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Projects;

namespace Stillwall.Cli.Output;

/// <summary>An appraisal in words.</summary>
internal static class AppraisalText
{
    private const int Indent = 2;

    /// <summary>The summary line, what does not hold, cautions and the next thing to do; with everything, every finding and figure besides.</summary>
    internal static string Of(Project project, Appraisal appraisal, bool everything, Terminal terminal)
    {
        var text = new StringBuilder();
        text.Append(Ink.Strong(terminal, Summary(project, appraisal))).Append('\n');
        foreach (var verdict in new[] { Verdict.Fails, Verdict.Tight })
        {
            foreach (var finding in appraisal.Findings.Where(f => f.Verdict == verdict))
            {
                text.Append('\n').Append(One(finding, terminal));
            }
        }

        Unknowns(text, appraisal, everything, terminal);
        if (everything)
        {
            text.Append('\n');
            foreach (var finding in appraisal.Findings.Where(f => f.Verdict == Verdict.Holds))
            {
                text.Append(One(finding, terminal));
            }

            text.Append('\n').Append(FigureTables.Of(project, appraisal, terminal));
        }

        Lines(text, Cautions.Of(project, appraisal), terminal);
        text.Append('\n').Append(Words.Wrapped($"next: {NextStep.Of(project, appraisal)}", terminal.Width, 0, 6)).Append('\n');
        return text.ToString();
    }

    /// <summary>One verdict that is no longer what it was.</summary>
    internal static string Changed(Finding was, Finding now, Terminal terminal) =>
        $"{Ink.Of(terminal, was.Verdict, Ink.Mark(was.Verdict))} → {One(now, terminal)}";

    /// <summary>A verdict as a verb.</summary>
    internal static string Says(Verdict verdict) => verdict switch { Verdict.Fails => "fails", Verdict.Tight => "is tight", Verdict.Holds => "holds", _ => "is unknown" };

    private static string Summary(Project project, Appraisal appraisal)
    {
        int Count(Verdict verdict) => appraisal.Findings.Count(f => f.Verdict == verdict);
        var show = Show.Of(project);
        var counts = $"{Number(Count(Verdict.Holds))} hold, {Number(Count(Verdict.Tight))} tight, {Number(Count(Verdict.Fails))} fail, {Number(Count(Verdict.Unknown))} unknown";
        var mass = appraisal.Mass.FinishedKg is { } kg ? show.Mass(kg) : "mass unknown";
        var hours = appraisal.Print.HonestPrintSeconds is [var from, var to] ? $"{Number(Math.Round(from / 3600))} to {Number(Math.Round(to / 3600))} h of printing" : "printing time unknown";
        var cost = appraisal.Cost.Unpriced.Count == 0 ? show.Money(appraisal.Cost.TotalPrice)
            : $"{show.Money(appraisal.Cost.TotalPrice)} and {Number(appraisal.Cost.Unpriced.Count)} without a price";
        return $"{counts}; {mass}, {hours}, {cost}";
    }

    private static string One(Finding finding, Terminal terminal)
    {
        var mark = Ink.Of(terminal, finding.Verdict, Ink.Mark(finding.Verdict));
        var head = $"{finding.Stage}: {finding.Topic}: ";
        var body = Words.Wrapped(head + finding.Because, terminal.Width, Indent, Indent);
        var text = $"{mark} {body}\n";
        if (finding.Remedy is null)
        {
            return text;
        }

        var how = finding.Change.Count > 0 ? $" (stillwall apply {finding.Id})" : "";
        return text + $"  → {Words.Wrapped(finding.Remedy + how, terminal.Width, Indent + 2, Indent + 2)}\n";
    }

    // One line for each stage is enough to see what is not stated; with everything, every one of them has its own.
    private static void Unknowns(StringBuilder text, Appraisal appraisal, bool everything, Terminal terminal)
    {
        var unknown = appraisal.Findings.Where(f => f.Verdict == Verdict.Unknown).ToList();
        if (unknown.Count == 0)
        {
            return;
        }

        text.Append('\n');
        if (everything)
        {
            unknown.ForEach(f => text.Append(One(f, terminal)));
            return;
        }

        foreach (var stage in unknown.GroupBy(f => f.Stage))
        {
            var mark = Ink.Of(terminal, Verdict.Unknown, Ink.Mark(Verdict.Unknown));
            var because = string.Join("; ", stage.Select(f => f.Because).Distinct(StringComparer.Ordinal));
            text.Append($"{mark} {Words.Wrapped($"{stage.Key}: {string.Join(", ", stage.Select(f => f.Topic))}: {because}", terminal.Width, Indent, Indent)}\n");
        }
    }

    private static void Lines(StringBuilder text, IReadOnlyList<string> lines, Terminal terminal)
    {
        if (lines.Count > 0)
        {
            text.Append('\n');
        }

        foreach (var line in lines)
        {
            text.Append($"! {Words.Wrapped(line, terminal.Width, Indent, Indent)}\n");
        }
    }

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
