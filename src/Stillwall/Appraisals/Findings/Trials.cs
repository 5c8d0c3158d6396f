using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Findings;

/// <summary>A plan, and what became of it when stated quantities were moved: each trial is computed once, whatever rule asks for it.</summary>
internal sealed class Trials(Facts facts, IReadOnlyList<Verdict> before)
{
    private readonly Dictionary<string, Facts?> tried = new(StringComparer.Ordinal);

    /// <summary>The plan.</summary>
    internal Facts Facts => facts;

    /// <summary>Every rule's verdict on the plan, in the rules' order.</summary>
    internal IReadOnlyList<Verdict> Before => before;

    /// <summary>The plan with quantities moved; null where the file would not accept it.</summary>
    internal Facts? At(IReadOnlyList<MovedKey> moved)
    {
        var name = string.Join(' ', moved.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Key}={m.New:R}")));
        if (!tried.TryGetValue(name, out var changed))
        {
            changed = Changed(moved);
            tried.Add(name, changed);
        }

        return changed;
    }

    /// <summary>A rule's verdict with quantities moved; null where the file would not accept it or the rule cannot judge it.</summary>
    internal Verdict? Judged(FindingRule rule, IReadOnlyList<MovedKey> moved) =>
        At(moved) is { } changed && rule.Judge(changed).Verdict is not Verdict.Unknown and var verdict ? verdict : null;

    private Facts? Changed(IReadOnlyList<MovedKey> moved)
    {
        if (moved.Any(m => m.Field.Span is { } span && (m.New < span.Least || m.New > span.Greatest)))
        {
            return null;
        }

        var project = moved.Aggregate(facts.Project, (p, m) => ProjectKeys.With(p, m.Key, m.Held));
        return !ProjectChecks.Of(project).Any() && facts.With(project) is { IsDrawn: true } changed ? changed : null;
    }
}

/// <summary>One stated quantity and where it was moved to.</summary>
internal sealed record MovedKey(string Key, ModelField Field, double Old, double New)
{
    // Boxed by itself: with a double in the other branch a whole number would be held as one.
    internal object Held => Field.Kind == FieldKind.Whole ? (object)(int)Math.Round(New) : New;

    internal Change ToChange() => new(Key, Field.Kind is FieldKind.Number or FieldKind.Whole ? New : Units.Write(New, Field.Dimension));
}
