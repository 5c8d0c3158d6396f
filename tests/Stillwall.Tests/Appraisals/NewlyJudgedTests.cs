using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>How joints, bridges, rattle, plan and core are judged.</summary>
public sealed class NewlyJudgedTests
{
    // Heads: 0.6 mm of clearance in all; braces: 0.3 mm + 0.1 %; ABS shrinks by 0.7 % (from memory), half of it unevenly.
    [Fact]
    public void Abs_takes_more_than_the_clearance_of_a_wide_cabinet()
    {
        var abs = Of("parts/pieces-go-together", DemoProject.Project with { Materials = DemoProject.Project.Materials! with { Skin = "abs" } });
        Assert.Equal((Verdict.Fails, 0.0), (abs.Verdict, abs.Limit));
        Assert.Equal(0.0003 + 0.001 * 0.244 - 0.0035 * 0.244, abs.Margin!.Value, 1e-9);
        Assert.Contains("ABS", abs.Because, StringComparison.Ordinal);
        Assert.NotNull(abs.Remedy);
    }

    [Fact]
    public void A_plastic_that_is_not_stated_leaves_it_unknown() =>
        Assert.Equal(
            "not stated yet: plastic of the skins (materials.skin)",
            Of("parts/pieces-go-together", DemoProject.Project with { Materials = DemoProject.Project.Materials! with { Skin = null } }).Because
        );

    [Fact]
    public void A_lean_at_its_limit_holds_and_a_steeper_limit_asks_for_support()
    {
        Finding Lean(double limitDeg) => Of("parts/bridges-and-overhangs", DemoProject.Project with { Limits = new Limits { OverhangDeg = limitDeg } });
        Assert.Equal(Verdict.Holds, Lean(45).Verdict);
        Assert.Equal((Verdict.Fails, "deg", 45.0, 44.0), (Lean(44).Verdict, Lean(44).Unit, Lean(44).Value!.Value, Lean(44).Limit!.Value));
        Assert.Contains("support", Lean(44).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_heard_decides_on_the_rattle()
    {
        Finding Heard(params LogEntry[] entries) => Of("proof/no-rattle", DemoProject.Project with { Logbook = entries });
        Assert.Contains("\"no rattle\"", Heard().Because, StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, Heard(Entry("no rattle")).Verdict);
        var two = Heard(Entry("rattle") with { Part = "terminal" }, Entry("rattle") with { Part = "rear" });
        Assert.Equal((Verdict.Fails, 2.0, 0.0, -2.0), (two.Verdict, two.Value!.Value, two.Limit!.Value, two.Margin!.Value));
        Assert.Contains("terminal", two.Because, StringComparison.Ordinal);
    }

    // Two fourth-order crossovers between second-order roll-offs: the computed join says which way; turned over, the other answer must be the good one.
    [Fact]
    public void The_polarity_that_was_found_is_held_against_the_join()
    {
        Finding Found(Polarity? way) =>
            Of("proof/polarity-matches-the-main-speakers", DemoProject.Project with { Measured = DemoProject.Project.Measured with { Polarity = way } });
        Assert.Equal((Verdict.Unknown, "not measured yet: polarity against the main speakers (measured.polarity)"), (Found(null).Verdict, Found(null).Because));
        var isInverted = new Facts(DemoProject.Project, DemoDrivers.All).Joining!.Inverted;
        Assert.Equal(Verdict.Holds, Found(isInverted ? Polarity.Opposite : Polarity.Same).Verdict);
        var wrong = Found(isInverted ? Polarity.Same : Polarity.Opposite);
        Assert.Equal((Verdict.Fails, 1.0, 0.0), (wrong.Verdict, wrong.Value!.Value, wrong.Limit!.Value));
        Assert.Contains("swap the two wires", wrong.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_main_speakers_the_same_way_is_asked_for()
    {
        var alone = DemoProject.Project with { Brief = DemoProject.Project.Brief with { MainSpeakers = null } };
        Verdict Found(Polarity way) => Of("proof/polarity-matches-the-main-speakers", alone with { Measured = new Measured { Polarity = way } }).Verdict;
        Assert.Equal(Verdict.Holds, Found(Polarity.Same));
        Assert.Equal(Verdict.Fails, Found(Polarity.Opposite));
    }

    // The filled and dry coupon by hand: 116 mm × 118 mm × 12 mm between ends, skins and floor, less what stands there; plastic as much more. Cast at
    // the density that 1.5:1 leaves (stoichiometry). Standing: three slots of 2 (1.6 × 4.2 + 2 × 1.6) mm² and four keys of (2.4 + 4)/2 × 2.8 mm² over
    // 118 mm; three struts of 31.4 mm² over 118 mm less two windows of 28 mm, and two slopes of 19.4 mm² × 7.15 mm + 12 mm² × 1.3 mm each.
    [Fact]
    public void The_coupon_of_the_demo_weighs_what_plastic_and_dry_cast_of_its_cavity_do()
    {
        const double dryDensity = 1.1862 * 1.5 / (1.5 / 2640 + 1 / 998.0);
        const double standing = 3 * (19.84 * 118 + 31.4 * 62 + 2 * (19.4 * 7.15 + 12 * 1.3)) + 4 * 8.96 * 118;
        const double plastic = 120 * 16 * 2 + (2 * 120 * 2 + 2 * 2 * 12) * 118 + standing;
        const double planned = ((116 * 118 * 12 - standing) * dryDensity + plastic * 1270) * 1e-9;
        var finding = Of("logbook/plan-against-actual", DemoProject.Project);
        Assert.Equal(Math.Abs(0.29 / planned - 1), finding.Value!.Value, 0.003);
        Assert.Equal(Verdict.Holds, finding.Verdict);
    }

    [Fact]
    public void A_part_far_off_the_plan_is_advice_and_never_fails()
    {
        var heavy = Of("logbook/plan-against-actual", DemoProject.Project with { Logbook = [Entry("actual") with { Part = "brace", MassKg = 1 }] });
        Assert.Equal(Verdict.Tight, heavy.Verdict);
        Assert.True(heavy.Margin < 0);
        Assert.Contains("brace", heavy.Because, StringComparison.Ordinal);
        Assert.NotNull(heavy.Remedy);
    }

    // Plaster is assumed to lose 0.012 of its energy a radian (Hopkins 2007); a bar that rings longer is worse.
    [Fact]
    public void A_core_that_rings_longer_than_assumed_fails_though_it_is_stiff()
    {
        var ringing = Of(
            "proof/core-as-assumed",
            DemoProject.Project with
            {
                Measured = new Measured { CoreModulusPa = 4.3e9, CoreLossFactor = 0.004 },
            }
        );
        Assert.Equal((Verdict.Fails, "1", 0.004), (ringing.Verdict, ringing.Unit, ringing.Value!.Value));
        Assert.Equal(0.7 * 0.012, ringing.Limit!.Value, 1e-12);
        Assert.Equal(Verdict.Holds, Of("proof/core-as-assumed", DemoProject.Project with { Measured = new Measured { CoreLossFactor = 0.015 } }).Verdict);
    }

    // Small 1972: fc = fs √(1 + Vas/(kV)); 24 L of Vas at fs = 30 Hz and 55 Hz measured are 24/((55/30)² − 1) = 10.2 L.
    [Fact]
    public void A_resonance_that_is_off_tells_how_much_air_the_cone_feels()
    {
        var off = Of("proof/resonance-as-designed", DemoProject.Project with { Measured = new Measured { SystemResonanceHz = 55 } });
        Assert.Equal(Verdict.Fails, off.Verdict);
        Assert.Contains("10.2 L", off.Remedy, StringComparison.Ordinal);
        Assert.Contains(
            "below its driver",
            Of("proof/resonance-as-designed", DemoProject.Project with { Measured = new Measured { SystemResonanceHz = 25 } }).Remedy,
            StringComparison.Ordinal
        );
    }

    // Losses in parallel: 1/Q = 1/0.715 + 1/Q of the loss; 0.5 measured asks for 1/(1/0.5 − 1/0.715) = 1.66.
    [Fact]
    public void A_q_that_is_too_low_tells_the_loss_that_explains_it() =>
        Assert.Contains(
            "Q of 1.7",
            Of("proof/q-as-designed", DemoProject.Project with { Measured = new Measured { SystemQ = 0.5 } }).Remedy,
            StringComparison.Ordinal
        );

    // Preload 5·T/d (T = F · 0.2 d): the torque that is told leaves the insert exactly the wanted safety.
    [Fact]
    public void Screws_that_pull_too_hard_are_told_their_torque()
    {
        var sheet = DemoDrivers.All.Single(d => d.Name == "Dunlin 8") with { Bolts = 4 };
        var tried = Of(
            "walls/driver-screws-hold",
            DemoProject.Project with
            {
                Driver = new DriverChoice(null, sheet),
                Limits = new Limits { InsertSafety = 6 },
            }
        );
        Assert.Equal(Verdict.Fails, tried.Verdict);
        Assert.Matches(@"^tighten to 0\.1\d* N·m", tried.Remedy);
    }

    private static LogEntry Entry(string kind) => new() { Date = new DateOnly(2027, 1, 4), Kind = kind };

    private static Finding Of(string id, Project project) => Appraisal.WithoutRemedies(project, DemoDrivers.All).Findings.Single(f => f.Id == id);
}
