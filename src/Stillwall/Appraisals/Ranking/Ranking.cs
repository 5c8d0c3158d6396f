using Stillwall.Appraisals.Findings;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Ranking;

/// <summary>Ranks candidate drivers in one cabinet.</summary>
public static class Ranking
{
    // The findings that depend on the driver and are cheap to judge; the spread of drivers, at a thousand draws each, is left to the appraisal.
    private static readonly IReadOnlyList<FindingRule> Rules =
    [
        .. new[]
        {
            "driver/parameters-agree-with-one-another",
            "driver/fits-the-front",
            "driver/clear-of-braces-skins-and-rear",
            "driver/amplifier-can-drive-it",
            "cabinet/system-q-as-wanted",
            "cabinet/reaches-the-lowest-note",
            "cabinet/loud-enough-and-what-gives-out-first",
        }.Select(id => AllFindings.Find(id) ?? throw new InvalidOperationException($"{id}: no such finding")),
    ];

    /// <summary>Ids of the findings that count in a ranking.</summary>
    internal static IReadOnlyList<string> FindingIds { get; } = [.. Rules.Select(r => r.Id)];

    /// <summary>Ranks every candidate in the project's cabinet.</summary>
    /// <param name="project">The project; the driver it names has no part in it.</param>
    /// <param name="candidates">The candidates, each stated value above 0.</param>
    /// <param name="top">How many of the best to give back, 1 or more; null for all.</param>
    /// <returns>The candidates in the order holds, tight, unknown, fails, then the loudest, the cheapest and by name; odd but possible rows too.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="top"/> is below 1, or a candidate states a value that is not positive.</exception>
    /// <remarks>
    /// Model: each candidate with its own displacement and opening in the cabinet as drawn, a stated net volume as it is; judged by the very findings
    /// of the appraisal, of which the spread of drivers is left out. Validity: as the findings. Source: the stages' own formulas; order and front are
    /// our choice.
    /// Accuracy: figures and verdicts equal those of an appraisal with that driver.
    /// </remarks>
    public static RankedDrivers Of(Project project, IReadOnlyList<DriverSheet> candidates, int? top = null)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(candidates);
        Require.Within(top ?? 1, 1, int.MaxValue, nameof(top));
        var cabinet = new Facts(project with { Driver = null }, []);
        var ranked = candidates.Select(c => Judged(cabinet.Choosing(c), c)).ToArray();
        MarkBestBuys(ranked);
        var ordered = ranked
            .OrderBy(d => d.Verdict)
            .ThenByDescending(d => d.MaxSplAtLowestDb ?? double.NegativeInfinity)
            .ThenBy(d => d.Price ?? double.PositiveInfinity)
            .ThenBy(d => d.Name, StringComparer.Ordinal);
        return new RankedDrivers([.. ordered.Take(top ?? int.MaxValue)]);
    }

    private static RankedDriver Judged(Facts facts, DriverSheet sheet)
    {
        var worst = (Verdict?)null;
        List<(string Because, string Id)> fails = [],
            tight = [];
        List<string> unjudged = [];
        foreach (var rule in Rules)
        {
            var judgement = rule.Judge(facts);
            if (judgement.Verdict == Verdict.Unknown)
            {
                unjudged.Add(rule.Topic);
                continue;
            }

            worst = worst is { } other && other > judgement.Verdict ? other : judgement.Verdict;
            (
                judgement.Verdict switch
                {
                    Verdict.Fails => fails,
                    Verdict.Tight => tight,
                    _ => null,
                }
            )?.Add((judgement.Because, rule.Id));
        }

        var box = facts.Box;
        List<(string Because, string Id)> reasons = [.. fails, .. tight];
        return new RankedDriver(
            Name: sheet.Name,
            Verdict: worst ?? Verdict.Unknown,
            Reasons: [.. reasons.Select(r => r.Because)],
            ReasonIds: [.. reasons.Select(r => r.Id)],
            Unjudged: unjudged,
            SystemResonanceHz: box.SystemResonanceHz,
            SystemQ: box.SystemQ,
            F3Hz: box.F3Hz,
            F10Hz: box.F10Hz,
            MaxSplAtLowestDb: box.MaxSplAtLowestDb,
            LimitedByAtLowest: box.LimitedByAtLowest,
            Price: sheet.Price,
            Front: false
        );
    }

    // From the cheapest up: a driver is a best buy when none so far, nor any of its own price, is louder.
    private static void MarkBestBuys(RankedDriver[] ranked)
    {
        var loudest = double.NegativeInfinity;
        foreach (
            var sameprice in Enumerable
                .Range(0, ranked.Length)
                .Where(i => ranked[i] is { Price: not null, MaxSplAtLowestDb: not null })
                .GroupBy(i => ranked[i].Price!.Value)
                .OrderBy(g => g.Key)
        )
        {
            loudest = Math.Max(loudest, sameprice.Max(i => ranked[i].MaxSplAtLowestDb!.Value));
            foreach (var i in sameprice)
            {
                ranked[i] = ranked[i] with { Front = ranked[i].Verdict != Verdict.Fails && ranked[i].MaxSplAtLowestDb >= loudest };
            }
        }
    }
}
