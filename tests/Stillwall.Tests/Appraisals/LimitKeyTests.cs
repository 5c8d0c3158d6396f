using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>Every limit that the maker may change moves the finding that is held against it.</summary>
public sealed class LimitKeyTests
{
    // The demo with what it leaves open stated, so that every limit has something to be held against.
    private static readonly Project Stated = DemoProject.Project with
    {
        Measured = new Measured
        {
            CoreModulusPa = 4.1e9,
            SystemResonanceHz = 50,
            SystemQ = 0.72,
        },
        Logbook =
        [
            new LogEntry
            {
                Date = new DateOnly(2027, 2, 1),
                Kind = "weigh-in",
                MassKg = 7,
            },
        ],
    };

    private static readonly IReadOnlyList<Finding> Before = Of(Stated);

    // Key, an extreme value of it, the finding, what comes of it. A longest print is advice and never fails.
    public static TheoryData<string, string, string, Verdict> Table =>
        new()
        {
            { "limits.lift_mass", "2 kg", "brief/weight-for-the-hands-that-lift-it", Verdict.Fails },
            { "limits.parameter_mismatch", "0.001", "driver/parameters-agree-with-one-another", Verdict.Fails },
            { "limits.magnet_clearance", "150 mm", "driver/clear-of-braces-skins-and-rear", Verdict.Fails },
            { "limits.leak_q", "1000", "cabinet/airtight-enough", Verdict.Fails },
            { "limits.fill_density_low", "20 kg/m3", "cabinet/fill-sensible", Verdict.Fails },
            { "limits.fill_density_high", "10 kg/m3", "cabinet/fill-sensible", Verdict.Fails },
            { "limits.air_mode_ratio", "20", "cabinet/first-air-mode-inside-above-the-working-range", Verdict.Fails },
            { "limits.panel_mode_ratio", "20", "walls/panel-resonance-above-the-working-range", Verdict.Fails },
            { "limits.wall_to_cone", "-100 dB", "walls/wall-sound-below-the-cone", Verdict.Fails },
            { "limits.keyed_fraction", "1", "walls/core-keyed-to-the-skins", Verdict.Fails },
            { "limits.joint_safety", "100", "walls/lifted-by-the-front-hung-by-the-rear", Verdict.Fails },
            { "limits.keyed_strength", "1 kPa", "walls/lifted-by-the-front-hung-by-the-rear", Verdict.Fails },
            { "limits.insert_safety", "100", "walls/driver-screws-hold", Verdict.Fails },
            { "limits.insert_pull_out", "100 N", "walls/driver-screws-hold", Verdict.Fails },
            { "limits.screw_torque", "3 N*m", "walls/driver-screws-hold", Verdict.Fails },
            { "limits.gasket_pressure", "2 MPa", "walls/driver-screws-hold", Verdict.Fails },
            { "limits.tilt", "80 deg", "walls/stands-without-tipping", Verdict.Fails },
            { "limits.span_ratio", "1", "parts/thin-walls-stand-while-printing", Verdict.Fails },
            { "limits.wall_height_ratio", "1", "parts/thin-walls-stand-while-printing", Verdict.Fails },
            { "limits.bridge", "1 mm", "parts/bridges-and-overhangs", Verdict.Fails },
            { "limits.overhang", "30 deg", "parts/bridges-and-overhangs", Verdict.Fails },
            { "limits.filament_waste", "2", "parts/filament-in-stock", Verdict.Fails },
            { "limits.longest_print", "60 s", "parts/longest-single-print", Verdict.Tight },
            { "limits.bulge", "0.001 mm", "pour/skins-bulge", Verdict.Fails },
            { "limits.skin_strength", "100", "pour/skins-hold", Verdict.Fails },
            { "limits.cast_reserve", "2", "pour/powder-in-stock-with-reserve", Verdict.Fails },
            { "limits.heat_margin", "50 K", "pour/heat-below-softening", Verdict.Fails },
            { "limits.passage", "90 mm", "pour/mix-flows-into-the-cavity", Verdict.Fails },
            { "limits.dryness", "0.001", "pour/dry-before-it-is-sealed", Verdict.Fails },
            { "limits.neighbour_over", "-40 dB", "quiet/neighbour-at-the-everyday-level", Verdict.Fails },
            { "limits.main_speakers_ripple", "0.05 dB", "quiet/matches-the-main-speakers", Verdict.Fails },
            { "limits.room_allowance", "20 dB", "cabinet/loud-enough-and-what-gives-out-first", Verdict.Fails },
            { "limits.proof_resonance", "0.001", "proof/resonance-as-designed", Verdict.Fails },
            { "limits.proof_q", "0.001", "proof/q-as-designed", Verdict.Fails },
            { "limits.proof_modulus", "0.001", "proof/core-as-assumed", Verdict.Fails },
        };

    [Theory]
    [MemberData(nameof(Table))]
    public void A_limit_moves_its_finding(string key, string value, string id, Verdict verdict)
    {
        var after = Of(ProjectKeys.With(Stated, key, value));
        Assert.True(Before.Single(f => f.Id == id).Verdict is Verdict.Holds or Verdict.Tight, $"{id} holds as it is: {Before.Single(f => f.Id == id).Because}");
        Assert.True(after.Single(f => f.Id == id).Verdict == verdict, after.Single(f => f.Id == id).Because);
        Assert.NotEqual(
            (Before.Single(f => f.Id == id).Verdict, Before.Single(f => f.Id == id).Margin),
            (after.Single(f => f.Id == id).Verdict, after.Single(f => f.Id == id).Margin)
        );
    }

    // A single printed wall has nothing but its sealant.
    [Fact]
    public void The_strength_of_sealant_moves_the_joints_of_a_single_wall()
    {
        var single = VariedProjects.With(Stated, c => c with { CoreM = 0 });
        Judged(single, Verdict.Fails);
        Judged(ProjectKeys.With(single, "limits.sealant_strength", "1 MPa"), Verdict.Holds);

        static void Judged(Project project, Verdict verdict) =>
            Assert.Equal(verdict, Of(project).Single(f => f.Id == "walls/lifted-by-the-front-hung-by-the-rear").Verdict);
    }

    [Fact]
    public void No_limit_of_the_file_is_left_out_of_the_table()
    {
        var keys = ProjectKeys.AllKeys().Where(k => k.StartsWith("limits.", StringComparison.Ordinal) && k != "limits.note").ToList();
        Assert.Equal(keys.Order(StringComparer.Ordinal), Table.Select(row => row.Data.Item1).Append("limits.sealant_strength").Order(StringComparer.Ordinal));
        Assert.Equal(36, keys.Count);
    }

    private static IReadOnlyList<Finding> Of(Project project) => Appraisal.WithoutRemedies(project, DemoDrivers.All).Findings;
}
