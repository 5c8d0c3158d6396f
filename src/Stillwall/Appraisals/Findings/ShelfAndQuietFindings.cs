using System.Globalization;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of supplies and of the neighbour question.</summary>
internal static class ShelfAndQuietFindings
{
    private static readonly Lever Quieter = new("brief.everyday.level", Toward.Less, 0.5, "an everyday level of {new} instead of {old}");

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new("Supplies", "nothing past its date", "best-before dates as stated", Dates),
        new("Supplies", "all to hand for each step", "the supplies list against the shelf", ToHand),
        new("Quiet", "neighbour at the everyday level", "ISO 12354 frame with the room's modal sum; uncertainty ISO 12999-1 situation A; local rules come first", Neighbour, Quieter),
        new("Quiet", "polite level with the equaliser", "the same, with one high-pass", Polite, Quieter),
        new("Quiet", "force into the floor; does it walk", "one mass on its feet against the cone's reaction; advice", Floor),
        new("Quiet", "hearing", "NIOSH recommended exposure limit: 85 dB(A) for 8 h, 3 dB exchange", Hearing,
            new Lever("brief.everyday.hours", Toward.Less, 0.25, "{new} hours a day instead of {old}"), Quieter),
        new("Quiet", "joins the mains", "free-field sum of second-order roll-offs with fourth-order crossovers, best delay, polarity and level; the limit is our choice", Mains,
            new Lever("brief.aim.crossover", Toward.Either, 1, "a crossover of {new} instead of {old}")),
    ];

    private static Judgement Dates(Facts f)
    {
        if (f.Project.Stock is not { } stock)
        {
            return Unknown("d", "stock");
        }

        var dated = stock.Where(s => s.BestBefore is not null).OrderBy(s => s.BestBefore).FirstOrDefault();
        if (dated is null)
        {
            return new Judgement(Verdict.Holds, null, null, "d", null, "nothing on the shelf has a date");
        }

        return f.Project.PourDate is not { } pour
            ? Unknown("d", "pour_date")
            : AtLeast(dated.BestBefore!.Value.DayNumber - pour.DayNumber, 0, "d", Nearness.Days, string.Create(CultureInfo.InvariantCulture, $"the {dated.Item} is good until {dated.BestBefore:yyyy-MM-dd}; the pour is on {pour:yyyy-MM-dd}")) with
            { Remedy = dated.BestBefore < pour ? string.Create(CultureInfo.InvariantCulture, $"replace the {dated.Item}, or pour on {dated.BestBefore:yyyy-MM-dd} or before") : null };
    }

    private static Judgement ToHand(Facts f)
    {
        if (f.Project.Stock is null)
        {
            return Unknown("pc", "stock");
        }

        var lacking = f.Supplies.Where(l => l.State is "short" or "missing" or "past date").ToList();
        var open = f.Supplies.Where(l => l.State == "unknown").Select(l => l.Item).ToList();
        if (lacking.Count == 0 && open.Count > 0)
        {
            return Unknown("pc", $"cannot be said of {string.Join(", ", open)}");
        }

        return AtMost(lacking.Count, 0, "pc", Nearness.Count, lacking.Count == 0
            ? $"all {f.Supplies.Count} items are on the shelf"
            : $"{lacking.Count} of {f.Supplies.Count} items are not: {string.Join(", ", lacking.Select(l => $"{l.Item} ({l.State})"))}") with
        { Remedy = lacking.Count > 0 ? $"buy {string.Join(", ", lacking.Select(f.ToBuyWords))}" : null };
    }

    private static Judgement Neighbour(Facts f)
    {
        var judged = f.Quiet.Bands.Where(b => b.OverDb is not null).ToList();
        if (judged.Count == 0)
        {
            return Unknown("dB", f.MissingForQuiet);
        }

        var limit = f.Limits.NeighbourOverDb;
        var worst = judged.MaxBy(b => b.OverDb + (b.UncertaintyDb ?? 0))!;
        var (over, doubt) = (worst.OverDb!.Value, worst.UncertaintyDb ?? 0);
        var highest = judged.Max(b => b.OverDb!.Value - (b.UncertaintyDb ?? 0));
        var because = $"in the {Show.Number(worst.BandHz)} Hz band {Show.Level(Math.Abs(over - limit))} {(over > limit ? "over" : "under")} the curve, give or take {Show.Level(doubt)}: the wall is a forecast";
        return highest > limit ? AtMost(over, 0, limit, "dB", because) with { Verdict = Verdict.Fails, Value = over } : AtMost(over, doubt, limit, "dB", because);
    }

    private static Judgement Polite(Facts f)
    {
        if (f.Quiet.LoudestPoliteLevelWithEqualiserDb is not { } polite || f.Project.Brief.Everyday?.LevelDb is not { } level)
        {
            return Unknown("dB", f.MissingForQuiet);
        }

        return AtLeast(polite, level, "dB", Nearness.Level,
            $"polite up to {Show.Level(polite)} at the seat{(f.Quiet.Equaliser is [var section, ..] ? $" with a high-pass at {Show.Frequency(section.F0Hz)}" : " without any equaliser")}; everyday listening is {Show.Level(level)}");
    }

    private static Judgement Floor(Facts f)
    {
        if (f.Floor is not { } floor)
        {
            return Unknown("dB", f.MissingForFloor);
        }

        var walks = floor.FrictionRatio is { } ratio && ratio < 1;
        var verdict = walks || floor.ReRigidDb > 0 ? Verdict.Tight : Verdict.Holds;
        return new Judgement(verdict, floor.ReRigidDb, 0, "dB", -floor.ReRigidDb,
            $"at the lowest note and full level the feet pass {Show.Number(floor.FloorN, 2)} N into the floor, {Show.Level(floor.ReRigidDb)} of a rigid stand; friction holds {Show.Number(floor.FrictionN, 2)} N, so it {(walks ? "walks" : "stays")}");
    }

    private static Judgement Hearing(Facts f)
    {
        if (f.Quiet.SeatADb is not { } a)
        {
            return Unknown("1", f.MissingForQuiet);
        }

        return f.Project.Brief.Everyday?.Hours is not { } hours
            ? Unknown("1", "brief.everyday.hours")
            : AtMost(Neighbours.Hearing.DoseRatio(a, hours), 1, "1", Nearness.Tenth, $"{Show.Level(a)} A-weighted for {Show.Number(hours, 2)} h a day from the bass alone; A-weighting hides bass");
    }

    private static Judgement Mains(Facts f) => f.Joining is { } joining
        ? AtMost(joining.RippleDb, f.Limits.MainsRippleDb, "dB", Nearness.Tenth,
            $"±{Show.Level(joining.RippleDb)} from half to twice the crossover with the best settings: {Settings(joining)}")
        : Unknown("dB", f.Project.Brief.Mains is null ? "brief.mains" : f.Project.Brief.Mains.CornerHz is null ? "brief.mains.corner" : f.Project.Brief.Aim?.CrossoverHz is null ? "brief.aim.crossover" : f.MissingForBox);

    private static string Settings(Neighbours.MainSpeakers.Joining joining)
    {
        var late = joining.DelayS >= 0 ? "mains" : "cabinet";
        return $"{late} {Show.Number(Math.Abs(joining.DelayS) * 1e3, 2)} ms later, cabinet {(joining.Inverted ? "inverted" : "not inverted")} and {Show.Level(Math.Abs(joining.TrimDb))} {(joining.TrimDb >= 0 ? "up" : "down")}";
    }
}
