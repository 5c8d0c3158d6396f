using Stillwall.Projects;

namespace Stillwall.Appraisals.Findings;

/// <summary>How near a limit still counts as tight.</summary>
internal enum Nearness
{
    /// <summary>Ratios, lengths, masses, money, frequencies: a tenth of the limit.</summary>
    Tenth,

    /// <summary>Levels: 3 dB.</summary>
    Level,

    /// <summary>Temperatures: 5 K.</summary>
    Temperature,

    /// <summary>Spatial fits: 5 mm.</summary>
    Fit,

    /// <summary>Dates: 30 days.</summary>
    Days,

    /// <summary>Counts: never tight.</summary>
    Count,
}

/// <summary>What a rule makes of one plan, before remedies are sought.</summary>
internal sealed record Judgement(Verdict Verdict, double? Value, double? Limit, string Unit, double? Margin, string Because, string? Remedy = null)
{
    /// <summary>Something that is needed is not stated: a key, or a reason in words.</summary>
    internal static Judgement Unknown(string unit, string missing) => new(Verdict.Unknown, null, null, unit, null, KeyNames.Missing(missing));

    /// <summary>The value may be at most the limit.</summary>
    internal static Judgement AtMost(double value, double limit, string unit, Nearness nearness, string because) =>
        Of(value, limit, limit - value, unit, nearness, because);

    /// <summary>The value must be at least the limit.</summary>
    internal static Judgement AtLeast(double value, double limit, string unit, Nearness nearness, string because) =>
        Of(value, limit, value - limit, unit, nearness, because);

    /// <summary>The value may stray from a target by a tolerance; its outer fifth is tight.</summary>
    internal static Judgement Near(double value, double target, double tolerance, string unit, string because)
    {
        var margin = tolerance - Math.Abs(value - target);
        return new(
            margin < 0 ? Verdict.Fails
                : margin < tolerance / 5 ? Verdict.Tight
                : Verdict.Holds,
            value,
            target + Math.CopySign(tolerance, value - target),
            unit,
            margin,
            because
        );
    }

    /// <summary>A value with a band of doubt may be at most the limit: it fails when all of it is past, is tight when it straddles.</summary>
    internal static Judgement AtMost(double value, double doubt, double limit, string unit, string because)
    {
        var margin = limit - value;
        return new(
            margin + doubt < 0 ? Verdict.Fails
                : margin - doubt < 0 ? Verdict.Tight
                : Verdict.Holds,
            value,
            limit,
            unit,
            margin,
            because
        );
    }

    /// <summary>The same judgement as advice: it never fails.</summary>
    internal Judgement AsAdvice() => Verdict == Verdict.Fails ? this with { Verdict = Verdict.Tight } : this;

    private static Judgement Of(double value, double limit, double margin, string unit, Nearness nearness, string because)
    {
        var near = nearness switch
        {
            Nearness.Tenth => 0.1 * Math.Abs(limit),
            Nearness.Level => 3,
            Nearness.Temperature => 5,
            Nearness.Fit => 0.005,
            Nearness.Days => 30,
            _ => 0,
        };
        return new(
            margin < 0 ? Verdict.Fails
                : margin < near ? Verdict.Tight
                : Verdict.Holds,
            value,
            limit,
            unit,
            margin,
            because
        );
    }
}
