using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Findings;

/// <summary>Seeks the least change of a stated quantity that makes a finding hold.</summary>
/// <remarks>
/// A lever is moved in growing strides until the rule holds (or is at least tight where it failed), then the last stride is halved down to the lever's
/// step. The rule itself judges every trial, so a change that is offered has been seen to work. Every other rule then judges the changed plan: the cheapest
/// lever that makes nothing else fail is offered; failing that the one that makes the fewest fail, and only where it mends more than it breaks. The number
/// of findings that fail therefore falls with every change that is applied to one of them, and no chain of changes comes back to where it was.
/// </remarks>
internal static class Remedies
{
    private const int Strides = 9,
        Halvings = 30;

    // Where the least move makes something else fail, moves this much further are tried too, as shares of the old value (our choice).
    private static readonly double[] Further = [0.06, 0.15, 0.3];

    // Plates and rooms take longest; by then most changes that break something are known to.
    private static readonly int[] QuickFirst =
    [
        .. Enumerable.Range(0, AllFindings.Rules.Count).OrderBy(i => AllFindings.Rules[i].Stage is "Walls" or "Quiet" ? 1 : 0),
    ];

    // From here on a spatial fit is no longer tight.
    private const double FitSpareM = 0.005;

    /// <summary>The finding with its remedy, where one of its levers has one; where none has, a finding that fails says so.</summary>
    internal static Finding Sought(FindingRule rule, Finding finding, Trials trials)
    {
        var facts = trials.Facts;
        if (finding.Verdict is not (Verdict.Fails or Verdict.Tight))
        {
            return finding;
        }

        Trial? best = null;
        foreach (var move in Moves(rule, finding.Verdict, trials))
        {
            if (Tried(rule, move, trials, best?.Broken.Count ?? int.MaxValue) is not { } trial)
            {
                continue;
            }

            if (trial.Broken.Count == 0)
            {
                return Offered(finding, trial);
            }

            best = trial;
        }

        return finding.Verdict != Verdict.Fails ? finding
            : best is { } some && some.Broken.Count < some.MendedCount ? Offered(finding, some)
            : finding with { Remedy = Without(rule, finding, best, facts) };
    }

    // The plan is changed before a wish is given up, and what makes it hold comes before what makes it tight.
    private static IEnumerable<Move> Moves(FindingRule rule, Verdict verdict, Trials trials) =>
        from givesUp in new[] { false, true }
        from wanted in verdict == Verdict.Fails ? new[] { Verdict.Holds, Verdict.Tight } : [Verdict.Holds]
        from move in (givesUp ? [] : Direct(rule, trials, wanted)).Concat(
            rule.Levers.Where(l => l.GivesUp == givesUp).SelectMany(lever => Moved(rule, lever, trials, wanted))
        )
        select move;

    private static Finding Offered(Finding finding, Trial trial) =>
        finding with
        {
            Remedy =
                trial.Move.Words
                + (trial.Broken.Count == 0 ? "" : $"; it mends {Counted(trial.MendedCount)} and makes fail: {string.Join(", ", trial.Broken)}"),
            Change = [.. trial.Move.Keys.Select(m => m.ToChange())],
        };

    // Said plainly: what would mend it and at what price, or which quantities were moved in vain.
    private static string Without(FindingRule rule, Finding finding, Trial? best, Facts facts)
    {
        var own = finding.Remedy is { } remedy ? $"{remedy}; " : "";
        if (best is not null)
        {
            return $"{own}no stated change within reach makes it hold by itself: {best.Move.Words} would, but makes fail: {string.Join(", ", best.Broken)}";
        }

        var moved = rule.Levers.SelectMany(l => l.Keys).Distinct(StringComparer.Ordinal).Where(key => ProjectKeys.Get(facts.Project, key) is not null).ToList();
        return moved.Count > 0
            ? $"{own}no stated change within reach makes it hold: {string.Join(", ", moved)} {(moved.Count == 1 ? "was" : "were")} moved in vain"
            : finding.Remedy ?? "no stated change makes it hold";
    }

    private static string Counted(int findings) => findings == 1 ? "this finding" : string.Create(CultureInfo.InvariantCulture, $"{findings} findings");

    // Null as soon as it breaks as much as the best so far.
    private static Trial? Tried(FindingRule rule, Move move, Trials trials, int tooMany)
    {
        var changed = trials.At(move.Keys)!;
        var (broken, mended) = (new List<int>(), 0);
        foreach (var i in QuickFirst)
        {
            var (other, was) = (AllFindings.Rules[i], trials.Before[i]);
            var fails = other.Id != rule.Id && other.Judge(changed).Verdict == Verdict.Fails;
            mended += was == Verdict.Fails && !fails ? 1 : 0;
            if (fails && was != Verdict.Fails)
            {
                broken.Add(i);
                if (broken.Count >= tooMany)
                {
                    return null;
                }
            }
        }

        return new Trial(move, [.. broken.Order().Select(i => $"{AllFindings.Rules[i].Stage}: {AllFindings.Rules[i].Topic}")], mended);
    }

    // Values that the rule itself works out, where they make it what is wanted.
    private static IEnumerable<Move> Direct(FindingRule rule, Trials trials, Verdict wanted)
    {
        if (rule.Direct is not { } direct || direct(trials.Facts, wanted == Verdict.Holds ? FitSpareM : 0) is not { Count: > 0 } values)
        {
            yield break;
        }

        var show = trials.Facts.Show;
        IReadOnlyList<MovedKey> keys =
        [
            .. values.Select(v => new MovedKey(v.Key, ProjectKeys.Find(v.Key)!, (double)ProjectKeys.Get(trials.Facts.Project, v.Key)!, v.Value)),
        ];
        if (trials.Judged(rule, keys) <= wanted)
        {
            yield return new Move(
                string.Join(
                    " and ",
                    keys.Select(k => $"{k.Key.Split('.')[^1]} {show.Stated(k.New, k.Field.Dimension)} instead of {show.Stated(k.Old, k.Field.Dimension)}")
                ),
                keys
            );
        }
    }

    // The least move of a lever that works, for either way the nearer first.
    private static IEnumerable<Move> Moved(FindingRule rule, Lever lever, Trials trials, Verdict wanted)
    {
        var facts = trials.Facts;
        var stated = lever.Keys.Select(key => (Key: key, Field: ProjectKeys.Find(key)!, Value: ProjectKeys.Get(facts.Project, key))).ToList();
        if (stated.Any(s => s.Value is null))
        {
            return [];
        }

        var old = stated.Select(s => Convert.ToDouble(s.Value, CultureInfo.InvariantCulture)).ToList();
        var first = lever.Toward == Toward.Capped ? old.Max() : old[0];
        double New(int i, double to) =>
            lever.Toward == Toward.Capped ? Math.Min(old[i], to)
            : i == 0 ? to
            : Decimal(old[i], to - first, lever.Step);
        IReadOnlyList<MovedKey> At(double to) => [.. stated.Select((s, i) => new MovedKey(s.Key, s.Field, old[i], New(i, to))).Where(m => m.New != m.Old)];
        bool Works(double to) => trials.Judged(rule, At(to)) is { } verdict && verdict <= wanted;
        var ways = lever.Toward switch
        {
            Toward.More => [1],
            Toward.Less or Toward.Capped => [-1],
            _ => new[] { 1, -1 },
        };
        Move To(double to) => new(Words(lever, stated[0].Field, first, to, facts.Show), At(to));
        var nearest = ways.Select(way => (Way: way, Value: Nearest(first, way, lever.Step, stated[0].Field.Span, Works)))
            .Where(n => n.Value is not null)
            .OrderBy(n => Math.Abs(n.Value!.Value - first))
            .ToList();
        var further =
            wanted != Verdict.Holds
                ? []
                : nearest.SelectMany(n => Further.Select(share => OnGrid(n.Value!.Value + n.Way * share * Math.Abs(first), lever.Step, n.Way))).Where(Works);
        return nearest.Select(n => n.Value!.Value).Concat(further).Select(To);
    }

    private static double? Nearest(double old, int way, double step, WithinAttribute? span, Func<double, bool> works)
    {
        var stride = Math.Max(step, Math.Abs(old) * 0.02);
        var before = old;
        for (var i = 0; i < Strides; i++)
        {
            var trial = OnGrid(old + way * stride, step, way);
            // The last stride ends where the file's own range does.
            if (span is not null)
            {
                trial = OnGrid(Math.Clamp(trial, span.Least, span.Greatest), step, -way);
            }

            if (way > 0 ? trial <= before : trial >= before)
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

    // Decimal steps, so that 0.038 is 0.038 and not 0.038000000000000006.
    private static double OnGrid(double value, double step, int way)
    {
        var grid = (decimal)step;
        var steps = (decimal)value / grid;
        var whole = way > 0 ? Math.Ceiling(steps - 1e-9m) : Math.Floor(steps + 1e-9m);

        // A decimal keeps the sign of nothing.
        return whole == 0 ? 0 : (double)(whole * grid);
    }

    private static double Decimal(double old, double delta, double step) => (double)((decimal)old + Math.Round((decimal)delta / (decimal)step) * (decimal)step);

    private static string Words(Lever lever, ModelField field, double old, double to, Show show) =>
        lever
            .Words.Replace("{new}", show.Stated(to, field.Dimension), StringComparison.Ordinal)
            .Replace("{old}", show.Stated(old, field.Dimension), StringComparison.Ordinal);

    // Keys with their new values, and what to do in words.
    private sealed record Move(string Words, IReadOnlyList<MovedKey> Keys);

    // A change that was tried: which findings fail that did not before, and how many no longer do.
    private sealed record Trial(Move Move, IReadOnlyList<string> Broken, int MendedCount);
}
