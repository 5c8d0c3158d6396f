using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Findings;

/// <summary>Seeks the least change of a stated quantity that makes a finding hold.</summary>
/// <remarks>
/// A lever is moved in growing strides until the rule holds (or is at least tight where it failed), then the last stride is halved down to the lever's
/// step. The rule itself judges every trial, so a change that is offered has been seen to work.
/// </remarks>
internal static class Remedies
{
    private const int Strides = 9, Halvings = 30;

    /// <summary>The finding with its remedy, where one of its levers has one.</summary>
    internal static Finding Sought(FindingRule rule, Finding finding, Facts facts)
    {
        if (finding.Verdict is not (Verdict.Fails or Verdict.Tight))
        {
            return finding;
        }

        foreach (var wanted in finding.Verdict == Verdict.Fails ? new[] { Verdict.Holds, Verdict.Tight } : [Verdict.Holds])
        {
            foreach (var lever in rule.Levers)
            {
                if (Moved(rule, lever, facts, wanted) is { } moved)
                {
                    return finding with { Remedy = Words(lever, moved, facts.Show), Change = [.. moved.Select(m => m.ToChange())] };
                }
            }
        }

        return finding;
    }

    private static IReadOnlyList<MovedKey>? Moved(FindingRule rule, Lever lever, Facts facts, Verdict wanted)
    {
        var stated = lever.Keys.Select(key => (Key: key, Field: ProjectKeys.Find(key)!, Value: ProjectKeys.Get(facts.Project, key))).ToList();
        if (stated.Any(s => s.Value is null))
        {
            return null;
        }

        var old = stated.Select(s => Convert.ToDouble(s.Value, CultureInfo.InvariantCulture)).ToList();
        IReadOnlyList<MovedKey> At(double first) => [.. stated.Select((s, i) => new MovedKey(s.Key, s.Field, old[i], i == 0 ? first : Decimal(old[i], first - old[0], lever.Step)))];
        bool Works(double first) => Judged(rule, facts, At(first)) is { } verdict && verdict <= wanted;
        var ways = lever.Toward switch { Toward.More => [1], Toward.Less => [-1], _ => new[] { 1, -1 } };
        var found = ways.Select(way => Nearest(old[0], way, lever.Step, stated[0].Field.Span, Works)).Where(v => v is not null).OrderBy(v => Math.Abs(v!.Value - old[0])).FirstOrDefault();
        return found is { } value ? At(value) : null;
    }

    private static double? Nearest(double old, int way, double step, WithinAttribute? span, Func<double, bool> works)
    {
        var stride = Math.Max(step, Math.Abs(old) * 0.02);
        var before = old;
        for (var i = 0; i < Strides; i++)
        {
            var trial = OnGrid(old + way * stride, step, way);
            if (span is not null && (trial < span.Least || trial > span.Greatest))
            {
                return null;
            }

            if (works(trial))
            {
                return Halved(before, trial, way, step, works);
            }

            before = trial;
            stride *= 1.8;
        }

        return null;
    }

    private static double Halved(double fails, double holds, int way, double step, Func<double, bool> works)
    {
        for (var i = 0; i < Halvings && Math.Abs(holds - fails) > step * 1.01; i++)
        {
            var middle = OnGrid((holds + fails) / 2, step, way);
            if (Math.Abs(middle - holds) < step / 2 || Math.Abs(middle - fails) < step / 2)
            {
                break;
            }

            if (works(middle))
            {
                holds = middle;
            }
            else
            {
                fails = middle;
            }
        }

        return holds;
    }

    private static Verdict? Judged(FindingRule rule, Facts facts, IReadOnlyList<MovedKey> moved)
    {
        if (moved.Any(m => m.Field.Span is { } span && (m.New < span.Least || m.New > span.Greatest)))
        {
            return null;
        }

        var changed = moved.Aggregate(facts.Project, (project, m) => ProjectKeys.With(project, m.Key, m.Held));
        return ProjectChecks.Of(changed).Any() || facts.With(changed) is not { IsDrawn: true } trial ? null : rule.Judge(trial).Verdict switch { Verdict.Unknown => null, var verdict => verdict };
    }

    // Decimal steps, so that 0.038 is 0.038 and not 0.038000000000000006.
    private static double OnGrid(double value, double step, int way)
    {
        var grid = (decimal)step;
        var steps = (decimal)value / grid;
        return (double)((way > 0 ? Math.Ceiling(steps - 1e-9m) : Math.Floor(steps + 1e-9m)) * grid);
    }

    private static double Decimal(double old, double delta, double step) => (double)((decimal)old + Math.Round((decimal)delta / (decimal)step) * (decimal)step);

    private static string Words(Lever lever, IReadOnlyList<MovedKey> moved, Show show) => lever.Words
        .Replace("{new}", show.Stated(moved[0].New, moved[0].Field.Dimension), StringComparison.Ordinal)
        .Replace("{old}", show.Stated(moved[0].Old, moved[0].Field.Dimension), StringComparison.Ordinal);

    private sealed record MovedKey(string Key, ModelField Field, double Old, double New)
    {
        // Boxed by itself: with a double in the other branch a whole number would be held as one.
        internal object Held => Field.Kind == FieldKind.Whole ? (object)(int)Math.Round(New) : New;

        internal Change ToChange() => new(Key, Field.Kind is FieldKind.Number or FieldKind.Whole ? New : Units.Write(New, Field.Dimension));
    }
}
