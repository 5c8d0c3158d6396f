using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the neighbour question, of hearing, of the floor and of joining the main speakers.</summary>
internal static class QuietFindings
{
    private static readonly Lever Quieter = new("brief.everyday.level", Toward.Less, 0.5, "an everyday level of {new} instead of {old}");

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Quiet",
            "neighbour at the everyday level",
            "ISO 12354-1:2017 frame with the room's modal sum; uncertainty ISO 12999-1:2020 situation A; local rules come first",
            new("over-curve", "quiet.bands[].over_db"),
            Neighbour,
            [Quieter, new Lever("brief.everyday.quiet_hours.level", Toward.Less, 0.5, "{new} in the quiet hours instead of {old}")]
        ),
        new(
            "Quiet",
            "polite level with the equaliser",
            "as that, with the equaliser that takes least from the seat",
            new("polite-level-equalised", "quiet.loudest_polite_level_with_equaliser_db"),
            Polite,
            Quieter
        ),
        new(
            "Quiet",
            "force into the floor; does it walk",
            "elementary: a rigid body on its feet, swaying and rocking under the cone's reaction; advice",
            new("floor-force", "mass.finished_kg"),
            Floor,
            new Lever("cabinet.feet.stiffness", Toward.Less, 500, "feet of {new} together instead of {old}")
        ),
        new(
            "Quiet",
            "hearing",
            "NIOSH 98-126: 85 dB(A) for 8 h, 3 dB exchange",
            new("hearing-dose", "quiet.seat_a_db"),
            Hearing,
            [new Lever("brief.everyday.hours", Toward.Less, 0.25, "{new} hours a day instead of {old}"), Quieter]
        ),
        new(
            "Quiet",
            "matches the main speakers",
            "free-field sum of second-order roll-offs with fourth-order crossovers, best delay, polarity and level; the limit is our choice",
            new("joining", "box.system_resonance_hz", "box.system_q"),
            MainSpeakers,
            new Lever("brief.aim.crossover", Toward.Either, 1, "a crossover of {new} instead of {old}")
        ),
    ];

    private static Judgement Neighbour(Facts f)
    {
        var judged = f
            .Quiet.Bands.Where(b => b.OverDb is not null)
            .Select(b => new Excess(b.OverDb!.Value, b.UncertaintyDb ?? 0, $"in the {Show.Number(b.BandHz)} Hz band"))
            .Concat(f.Quiet.WeightedLimits.Select(w => new Excess(w.OverDb, w.UncertaintyDb, $"with its {w.Weighting}-weighted level")))
            .Concat(
                f.Quiet.QuietHours is { } hours
                    ?
                    [
                        new Excess(
                            hours.OverDb,
                            hours.UncertaintyDb,
                            hours.BandHz is { } band ? $"in the quiet hours in the {Show.Number(band)} Hz band" : "in the quiet hours with its weighted level"
                        ),
                    ]
                    : []
            )
            .ToList();
        if (judged.Count == 0)
        {
            return Unknown("dB", f.MissingForQuiet);
        }

        var limit = f.Limits.NeighbourOverDb;
        var worst = judged.MaxBy(e => e.OverDb + e.DoubtDb)!;
        var (over, doubt) = (worst.OverDb, worst.DoubtDb);
        var highest = judged.Max(e => e.OverDb - e.DoubtDb);
        var because =
            $"{worst.Where} {Show.Level(Math.Abs(over - limit))} {(over > limit ? "over" : "under")} the "
            + $"{(worst.Where.Contains("weighted", StringComparison.Ordinal) ? "limit" : "curve")}, give or take {Show.Level(doubt)}: the wall is a "
            + "forecast";
        return highest > limit
            ? AtMost(over, 0, limit, "dB", because) with
            {
                Verdict = Verdict.Fails,
                Value = over,
            }
            : AtMost(over, doubt, limit, "dB", because);
    }

    private sealed record Excess(double OverDb, double DoubtDb, string Where);

    private static Judgement Polite(Facts f)
    {
        if (f.Quiet.LoudestPoliteLevelWithEqualiserDb is not { } polite || f.Project.Brief.Everyday?.LevelDb is not { } level)
        {
            return Unknown("dB", f.MissingForQuiet);
        }

        return AtLeast(
            polite,
            level,
            "dB",
            Nearness.Level,
            $"polite up to {Show.Level(polite)} at the "
                + $"seat{(f.Quiet.Equaliser is [_, ..] sections ? $" with {EqualiserWords.Of(sections)}" : " without any equaliser")}; everyday listening "
                + $"is {Show.Level(level)}"
        );
    }

    private static Judgement Floor(Facts f)
    {
        if (f.Floor is not { } floor)
        {
            return Unknown("dB", f.MissingForFloor);
        }

        var walks = floor.FrictionRatio is { } ratio && ratio < 1;
        var verdict = walks || floor.ReRigidDb > 0 ? Verdict.Tight : Verdict.Holds;
        return new Judgement(
            verdict,
            floor.ReRigidDb,
            0,
            "dB",
            -floor.ReRigidDb,
            $"at the lowest note and full level the feet pass {f.Show.Force(floor.FloorN)} along the cone's axis into the floor, "
                + $"{Show.Level(floor.ReRigidDb)} against rigid feet; friction holds {f.Show.Force(floor.FrictionN)}, so it {(walks ? "walks" : "stays")}"
        );
    }

    private static Judgement Hearing(Facts f)
    {
        if (f.Quiet.SeatADb is not { } a)
        {
            return Unknown("1", f.MissingForQuiet);
        }

        return f.Project.Brief.Everyday?.Hours is not { } hours
            ? Unknown("1", "brief.everyday.hours")
            : AtMost(
                Neighbours.Hearing.DoseRatio(a, hours),
                1,
                "1",
                Nearness.Tenth,
                $"{Show.Level(a)} A-weighted for {Show.Number(hours, 2)} h a day from the bass alone"
            );
    }

    private static Judgement MainSpeakers(Facts f) =>
        f.Joining is { } joining
            ? AtMost(
                joining.RippleDb,
                f.Limits.MainSpeakersRippleDb,
                "dB",
                Nearness.Tenth,
                $"±{Show.Level(joining.RippleDb)} from half to twice the crossover with the best settings: {Settings(joining)}"
            )
            : Unknown(
                "dB",
                f.Project.Brief.MainSpeakers is null ? "brief.main_speakers"
                    : f.Project.Brief.MainSpeakers.CornerHz is null ? "brief.main_speakers.corner"
                    : f.Project.Brief.Aim?.CrossoverHz is null ? "brief.aim.crossover"
                    : f.MissingForBox
            );

    private static string Settings(Neighbours.Joins.Joining joining)
    {
        var late = joining.DelayS >= 0 ? "main speakers" : "cabinet";
        return $"delay the {late} by {Show.Number(Math.Abs(joining.DelayS) * 1e3, 2)} ms, "
            + $"{(joining.Inverted ? "invert the cabinet" : "do not invert the cabinet")}, turn it {(joining.TrimDb >= 0 ? "up" : "down")} by "
            + $"{Show.Level(Math.Abs(joining.TrimDb))}";
    }
}
