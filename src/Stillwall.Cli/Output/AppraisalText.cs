using System.Globalization;
using System.Text;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Cli.Output;

/// <summary>An appraisal in words.</summary>
internal sealed class AppraisalText(LoadedProject loaded, Terminal terminal)
{
    private const int Indent = 2;

    /// <summary>The summary line, what does not hold, cautions and the next thing to do; with everything, every finding and figure besides.</summary>
    internal string Of(Appraisal appraisal, bool everything)
    {
        var text = new StringBuilder();
        text.Append(Ink.Strong(terminal, Words.Wrapped(Summary(appraisal), terminal.Width, 0, 2))).Append('\n');
        foreach (var verdict in new[] { Verdict.Fails, Verdict.Tight })
        {
            foreach (var finding in appraisal.Findings.Where(f => f.Verdict == verdict))
            {
                text.Append('\n').Append(One(finding));
            }
        }

        Unknowns(text, appraisal, everything);
        if (everything)
        {
            text.Append('\n');
            foreach (var finding in appraisal.Findings.Where(f => f.Verdict == Verdict.Holds))
            {
                text.Append(One(finding));
            }

            text.Append('\n').Append(FigureTables.Of(loaded.Project, appraisal, terminal));
        }

        var next = NextStep.StepOf(loaded.Project, appraisal);
        var care = everything ? CareText.AllOf(appraisal, terminal.Width) : CareText.WorstOf(appraisal, next, terminal.Width);
        text.Append(care.Length > 0 ? "\n" : "").Append(care);
        if (DemoMarks.Of(loaded.Project) is [_, ..] marks)
        {
            var blocks = marks.Count == 1 ? "1 block still has" : $"{Number(marks.Count)} blocks still have";
            var first = DemoMarks.ReplaceFirst(marks).FirstOrDefault() is { } what ? what.Split(':')[0] : marks[0].Block;
            text.Append('\n').Append(Words.Wrapped($"{blocks} values of the demo, see the notes; first: {first}", terminal.Width, 0, 2)).Append('\n');
        }

        text.Append('\n').Append(Words.Wrapped($"next: {NextStep.Of(loaded.Project, appraisal)}", terminal.Width, 0, 6)).Append('\n');
        text.Append(next is { } step ? CareText.At(step, loaded.Facts(), terminal.Width) : "");
        return text.ToString();
    }

    /// <summary>One verdict that is no longer what it was.</summary>
    internal string Changed(Finding was, Finding now) => $"{Ink.Of(terminal, was.Verdict, Ink.Mark(was.Verdict))} → {One(now, taken: 4)}";

    /// <summary>What of one stage does not hold, after one line that counts what does.</summary>
    internal string Checks(Appraisal appraisal, string stage)
    {
        var all = appraisal.Findings.Where(f => f.Stage == stage).ToList();
        var open = all.Where(f => f.Verdict != Verdict.Holds).ToList();
        var text = new StringBuilder(
            $"\n{Number(all.Count - open.Count)} of {Number(all.Count)} checks of this stage hold{(open.Count > 0 ? "; the others:" : "")}\n"
        );
        foreach (var finding in open.Where(f => f.Verdict != Verdict.Unknown || f.Remedy is not null))
        {
            text.Append(One(finding));
        }

        foreach (var same in open.Where(f => f.Verdict == Verdict.Unknown && f.Remedy is null).GroupBy(f => f.Because))
        {
            text.Append(Together(stage, same.Select(f => f.Topic), same.Key));
        }

        return text.ToString();
    }

    /// <summary>A verdict as a verb.</summary>
    internal static string Says(Verdict verdict) =>
        verdict switch
        {
            Verdict.Fails => "fails",
            Verdict.Tight => "is tight",
            Verdict.Holds => "holds",
            _ => "is unknown",
        };

    private string Summary(Appraisal appraisal)
    {
        int Count(Verdict verdict) => appraisal.Findings.Count(f => f.Verdict == verdict);
        var show = Show.Of(loaded.Project);
        var counts =
            $"{Number(Count(Verdict.Holds))} hold, {Number(Count(Verdict.Tight))} tight, {Number(Count(Verdict.Fails))} fail, "
            + $"{Number(Count(Verdict.Unknown))} unknown";
        var mass = appraisal.Mass.FinishedKg is { } kg ? show.Mass(kg) : "mass unknown";
        var hours = appraisal.Print.HonestPrintSeconds is [var from, var to]
            ? $"{Number(Math.Round(from / Units.Hour))} to {Number(Math.Round(to / Units.Hour))} h of printing"
            : "printing time unknown";
        var cost =
            appraisal.Cost is { TotalPrice: 0, Unpriced.Count: > 0 } ? "cost unknown"
            : appraisal.Cost.Unpriced.Count == 0 ? show.Money(appraisal.Cost.TotalPrice)
            : $"{show.Money(appraisal.Cost.TotalPrice)} and {Number(appraisal.Cost.Unpriced.Count)} without a price";
        return $"{counts}; {mass}, {hours}, {cost}";
    }

    private string One(Finding finding, int taken = 0)
    {
        var mark = Ink.Of(terminal, finding.Verdict, Ink.Mark(finding.Verdict));
        var head = $"{finding.Stage}: {finding.Topic}: ";
        var body = Words.Wrapped(head + finding.Because, terminal.Width, taken + Indent, Indent);
        var text = $"{mark} {body}\n";
        if (finding.Remedy is null)
        {
            return text;
        }

        // A line to be typed is never broken.
        var line = finding.Change.Count > 0 ? $"    {loaded.ApplyLine(finding.Id)}\n" : "";
        return text + $"  → {Words.Wrapped(finding.Remedy, terminal.Width, Indent + 2, Indent + 2)}\n" + line;
    }

    // One line for each stage is enough to see what is not stated; with everything, every one of them has its own.
    private void Unknowns(StringBuilder text, Appraisal appraisal, bool everything)
    {
        var unknown = appraisal.Findings.Where(f => f.Verdict == Verdict.Unknown).ToList();
        if (unknown.Count == 0)
        {
            return;
        }

        text.Append('\n');
        if (everything)
        {
            unknown.ForEach(f => text.Append(One(f)));
            return;
        }

        foreach (var stage in unknown.GroupBy(f => f.Stage))
        {
            text.Append(Together(stage.Key, stage.Select(f => f.Topic), KeyNames.Together(stage.Select(f => f.Because))));
        }
    }

    private string Together(string stage, IEnumerable<string> topics, string because) =>
        $"{Ink.Of(terminal, Verdict.Unknown, Ink.Mark(Verdict.Unknown))} "
        + $"{Words.Wrapped($"{stage}: {string.Join(", ", topics)}: {because}", terminal.Width, Indent, Indent)}\n";

    private static string Number(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
