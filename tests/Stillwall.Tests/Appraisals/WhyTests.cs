using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.Findings;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

public sealed class WhyTests
{
    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All);

    // A ready box with a stated fill factor in half space: everything below has a closed form.
    private static readonly Facts Ready = new(
        DemoProject.Project with
        {
            Cabinet = new Cabinet
            {
                NetVolumeM3 = 0.024,
                Fill = new Fill { Factor = 1.2 },
                Leak = new Leak
                {
                    GapM = 1e-4,
                    LengthM = 0.7,
                    DepthM = 0.008,
                },
            },
            Brief = DemoProject.Project.Brief with { Room = null },
        },
        DemoDrivers.All
    );

    private const double Alpha = 0.024 / (1.2 * 0.024);

    [Fact]
    public void Every_number_of_the_appraisal_has_a_formula_a_basis_and_finite_sensitivities()
    {
        var results = Why.Results(Demo);
        Assert.True(results.Count > 300, $"{results.Count} results");
        foreach (var why in Why.Of(Demo, results))
        {
            Assert.False(string.IsNullOrWhiteSpace(why.Formula), why.Result);
            Assert.False(string.IsNullOrWhiteSpace(why.Basis), why.Result);
            Assert.False(string.IsNullOrWhiteSpace(why.Unit), why.Result);
            Assert.All(why.Inputs, i => Assert.True(double.IsFinite(i.Sensitivity ?? 0), $"{why.Result}: {i.Key}"));
        }
    }

    [Fact]
    public void The_values_are_those_of_the_appraisal()
    {
        var appraisal = Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All);
        double? Value(string result) => Why.Of(Demo, result).Value;
        Assert.Equal(appraisal.Box.SystemQ, Value("box.system_q"));
        Assert.Equal(appraisal.Walls.Single(w => w.Panel == "front").Bonded.FirstModeHz, Value("walls.front.bonded.first_mode_hz"));
        Assert.Equal(appraisal.Walls[4].Bonded.FirstModeHz, Value("walls[4].bonded.first_mode_hz"));
        Assert.Equal(appraisal.Pour.Batches[0].PowderKg, Value("pour.batches[0].powder_kg"));
        Assert.Equal(appraisal.Pour.AdiabaticPeakRangeC![1], Value("pour.adiabatic_peak_range_c[1]"));
        Assert.Equal(appraisal.Quiet.Bands.Single(b => b.BandHz == 63).NeighbourDb, Value("quiet.bands[63].neighbour_db"));
        Assert.Equal(appraisal.Quiet.Bands[2].NeighbourDb, Value("quiet.bands[2].neighbour_db"));
        Assert.Equal(appraisal.Parts[1].MassKg, Value($"parts[\"{appraisal.Parts[1].Name}\"].mass_kg"));
        Assert.Equal(appraisal.Supplies.Single(s => s.Item == "cast powder").Needed, Value("supplies[\"cast powder\"].needed"));
        Assert.Equal(appraisal.Findings.Single(f => f.Id == "cabinet/system-q-as-wanted").Value, Value("cabinet/system-q-as-wanted"));
    }

    // Small 1972: fc = fs √(1 + α), Qtc = Qts √(1 + α), α = Vas/(kV). Leak: Q ∝ fc · kV · depth/(length · gap³). Power ∝ distance² · 10^(level/10).
    [Theory]
    [InlineData("box.system_resonance_hz", "driver.fs", 1)]
    [InlineData("box.system_resonance_hz", "driver.vas", Alpha / (2 * (1 + Alpha)))]
    [InlineData("box.system_resonance_hz", "cabinet.net_volume", -Alpha / (2 * (1 + Alpha)))]
    [InlineData("box.system_q", "driver.qes", 5.5 / (5.5 + 0.475))]
    [InlineData("box.system_q", "driver.qms", 0.475 / (5.5 + 0.475))]
    [InlineData("box.system_q", "cabinet.net_volume", -Alpha / (2 * (1 + Alpha)))]
    [InlineData("box.reference_efficiency", "driver.fs", 3)]
    [InlineData("box.reference_efficiency", "driver.qes", -1)]
    [InlineData("box.leak_q", "cabinet.leak.gap", -3)]
    [InlineData("box.leak_q", "cabinet.leak.length", -1)]
    [InlineData("box.leak_q", "cabinet.leak.depth", 1)]
    [InlineData("box.power_needed_w", "brief.aim.distance", 2)]
    public void A_sensitivity_is_the_exponent_of_the_closed_form(string result, string key, double exponent)
    {
        var input = Why.Of(Ready, result).Inputs.Single(i => i.Key == key);
        Assert.Equal(exponent, input.Sensitivity!.Value, 0.002);
    }

    [Fact]
    public void A_driver_of_the_table_shows_its_resolved_parameters()
    {
        var inputs = Why.Of(Demo, "box.system_q").Inputs;
        Assert.Equal(0.475, (double)inputs.Single(i => i.Key == "driver.qes").Value!, 1e-9);
        Assert.Null(inputs.Single(i => i.Key == "box.effective_volume_m3").Sensitivity);
        Assert.Equal(Demo.Box.EffectiveVolumeM3, inputs.Single(i => i.Key == "box.effective_volume_m3").Value);
    }

    [Fact]
    public void What_stands_behind_a_result_that_goes_in_is_told_too()
    {
        var depth = Why.Of(Demo, "box.system_resonance_hz").Inputs.Single(i => i.Key == "cabinet.outside.depth");
        Assert.Equal(0.33, depth.Value);
        Assert.InRange(depth.Sensitivity!.Value, -1, -0.01);
    }

    [Fact]
    public void A_mistyped_result_is_answered_with_the_nearest()
    {
        var fault = Assert.Throws<ArgumentException>(() => Why.Of(Ready, "box.systm_q"));
        Assert.Contains("box.system_q", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Why.Of(Ready, "walls.front.bonded.first_mode_hz"));
        Assert.Throws<ArgumentException>(() => Why.Of(Ready, ""));
    }

    [Fact]
    public void A_word_a_whole_number_and_a_result_have_no_sensitivity()
    {
        var inputs = Why.Of(Demo, "walls.left.bonded.first_mode_hz").Inputs;
        Assert.Equal("petg", inputs.Single(i => i.Key == "materials.skin").Value);
        Assert.All(
            inputs.Where(i => i.Value is string or int or null || i.Key.StartsWith("walls[", StringComparison.Ordinal)),
            i => Assert.Null(i.Sensitivity)
        );
    }

    [Fact]
    public void A_result_that_is_not_known_is_explained_without_a_value()
    {
        var why = Why.Of(new Facts(DemoProject.Project with { Driver = null }, DemoDrivers.All), "box.system_q");
        Assert.Null(why.Value);
        Assert.All(why.Inputs, i => Assert.Null(i.Sensitivity));
    }

    [Fact]
    public void Every_number_of_every_finding_can_be_asked_for_as_it_stands_in_the_appraisal()
    {
        var findings = Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All).Findings;
        var asked = findings
            .SelectMany(
                (f, i) =>
                    new (string Path, double? Value)[]
                    {
                        ($"findings[{i}].value", f.Value),
                        ($"findings[\"{f.Id}\"].limit", f.Limit),
                        ($"findings['{f.Id}'].margin", f.Margin),
                        ($"findings[{f.Id}]", f.Value),
                        ($"{f.Id}.limit", f.Limit),
                    }
            )
            .ToList();
        var told = Why.Of(Demo, asked.Select(a => a.Path));
        Assert.All(asked.Zip(told), p => Assert.Equal((p.First.Path, p.First.Value), (p.Second.Result, p.Second.Value)));
        Assert.All(told, w => Assert.False(string.IsNullOrWhiteSpace(w.Basis)));
        Assert.Throws<ArgumentException>(() => Why.Of(Demo, "findings[4].because"));
        Assert.Throws<ArgumentException>(() => Why.Of(Demo, "findings[4711].value"));
    }

    // A margin below a limit is limit − value, so their sensitivities add up: s(m) m = s(limit) limit − s(value) value.
    [Theory]
    [InlineData("cabinet/reaches-the-lowest-note", "brief.aim.lowest")]
    [InlineData("cabinet/reaches-the-lowest-note", "cabinet.outside.depth")]
    [InlineData("brief/cabinet-fits-the-spot", "cabinet.outside.depth")]
    [InlineData("pour/skins-bulge", "limits.bulge")]
    [InlineData("pour/skins-hold", "limits.skin_strength")]
    public void The_sensitivities_of_a_margin_follow_from_those_of_value_and_limit(string id, string key)
    {
        (double Value, double Effect) Of(string which)
        {
            var why = Why.Of(Demo, $"findings[\"{id}\"].{which}");
            return (why.Value!.Value, why.Inputs.SingleOrDefault(i => i.Key == key)?.Sensitivity ?? 0);
        }

        var (value, limit, margin) = (Of("value"), Of("limit"), Of("margin"));
        Assert.NotEqual(0, margin.Effect);
        Assert.Equal(limit.Value * limit.Effect - value.Value * value.Effect, margin.Value * margin.Effect, 1e-6 * Math.Abs(limit.Value) + 1e-12);
    }

    // Formulas: bulge s⁴, stress s², both linear in the head; strength over its factor; dose doubles every 3 dB.
    [Theory]
    [InlineData("pour/skins-hold.limit", "limits.skin_strength", -1)]
    [InlineData("quiet/hearing", "brief.everyday.hours", 1)]
    [InlineData("pour/powder-in-stock-with-reserve", "limits.cast_reserve", 0.1 / 1.1)]
    [InlineData("walls/panel-resonance-above-the-working-range.limit", "brief.aim.crossover", 1)]
    [InlineData("parts/filament-in-stock", "limits.filament_waste", 0.1 / 1.1)]
    [InlineData("proof/core-as-assumed", "measured.core_modulus", 1)]
    public void A_finding_s_number_has_the_exponent_of_its_formula(string result, string key, double exponent) =>
        Assert.Equal(exponent, Why.Of(Demo, result).Inputs.Single(i => i.Key == key).Sensitivity!.Value, 0.001);

    // The worst case falls by a decibel with each decibel of the allowance that is taken away; a lost band of the wall is within it (definitions of
    // QuietAnswer).
    [Fact]
    public void A_figure_beside_the_appraisal_is_explained_by_its_own_formula_and_moves_with_what_is_stated()
    {
        static QuietAnswer? Again(Facts f) => QuietAnswer.Of(f.Project, f.Quiet);
        var answer = Again(Demo)!;
        var why = Why.Of(Demo, answer, nameof(QuietAnswer.WorstCasePoliteDb), Again);
        Assert.Equal((answer.WorstCasePoliteDb, "dB"), (why.Value, why.Unit));
        Assert.StartsWith("Loudest polite level if the wall is at its worst", why.Formula, StringComparison.Ordinal);
        var allowed = Demo.With(
            DemoProject.Project with
            {
                Brief = DemoProject.Project.Brief with { Neighbour = DemoProject.Project.Brief.Neighbour! with { AllowanceDb = 3 } },
            }
        );
        Assert.Equal(answer.WorstCasePoliteDb + 3, Again(allowed)!.WorstCasePoliteDb, 1e-9);
        // A result in dB tells dB: one per cent of 3 dB is 0.03 dB.
        Assert.Equal(
            0.03,
            Why.Of(allowed, Again(allowed)!, nameof(QuietAnswer.WorstCasePoliteDb), Again)
                .Inputs.Single(i => i.Key == "brief.neighbour.allowance")
                .Sensitivity!.Value,
            1e-6
        );
        Assert.Throws<ArgumentException>(() => Why.Of(Demo, answer, nameof(QuietAnswer.EverydayDb)));
    }

    // The end of a name is its unit, the longest that fits: docs/conventions.md.
    [Fact]
    public void A_figure_has_the_unit_that_its_name_ends_in()
    {
        string Unit(object record, string property) => Why.Of(Demo, record, property).Unit;
        Assert.Equal("Pa*s/m3", Unit(new Stillwall.Cabinets.HoldTestResult(2e5, 40, Stillwall.Cabinets.LeakBound.None), "LeakResistancePaSM3"));
        Assert.Equal("V", Unit(new Stillwall.Proofs.Signals.DriveBound(20, 12, 90), "VoltageV"));
        Assert.Equal("N/A", Unit(new Stillwall.Proofs.Impedances.MeasuredDriver(30, 5, 0.5, 3.5, 0, 0.02, 0.024, 0.07, 10, 0), "BlTM"));
        Assert.Equal("N*m", Unit(Stillwall.Appraisals.WallChoices.WallKinds.Of(DemoProject.Project, DemoDrivers.All)[0], "StiffnessNm"));
        Assert.Equal("N", Unit(Demo.Floor!, "FloorN"));
    }

    // Small 1972: 1/Qts = 1/Qms + 1/Qes.
    [Fact]
    public void What_was_stated_beside_a_figure_is_told_with_it()
    {
        var bar = new Stillwall.Proofs.Taps.TapFigures(1000, 4e9, 0.01, 1100);
        var why = Why.Of(Demo, bar, nameof(bar.DensityKgM3), null, [new ExplainedInput("recording.mass_kg", 0.28, "kg", null)]);
        Assert.Equal(0.28, why.Inputs.Single(i => i.Key == "recording.mass_kg").Value);
        Assert.All(why.Inputs, i => Assert.Null(i.Sensitivity));
        var qts = Why.Of(Demo, Demo.Driver!, nameof(Stillwall.Drivers.Driver.Qts), f => f.Driver);
        Assert.Equal(0.475 / (5.5 + 0.475), qts.Inputs.Single(i => i.Key == "driver.qms").Sensitivity!.Value, 1e-3);
    }

    // Elementary: the exponent of a power.
    [Fact]
    public void A_number_beside_the_project_moves_a_result_by_its_exponent()
    {
        Assert.Equal(3, Why.Sensitivity(2, x => x * x * x)!.Value, 1e-3);
        Assert.Equal(-0.5, Why.Sensitivity(7, x => 1 / Math.Sqrt(x))!.Value, 1e-3);
        Assert.Equal(0, Why.Sensitivity(7, _ => 4));
        Assert.Null(Why.Sensitivity(0, x => x + 1));
        Assert.Null(Why.Sensitivity(7, x => x > 7 ? null : x));
    }

    // By hand: the first lift is 12 mm of core and 30 mm of inner sleeve, the last one ends where the outer sleeve does: the depth less two skins of
    // the plates.
    [Fact]
    public void The_lifts_end_at_the_top_of_the_form()
    {
        Assert.Equal(0.042, Why.Of(Demo, "cast.lift_tops_m[0]").Value!.Value, 1e-9);
        Assert.Equal(0.33 - 0.004, Why.Of(Demo, $"cast.lift_tops_m[{Demo.Cast.LiftTopsM.Count - 1}]").Value!.Value, 1e-9);
    }

    // The room's height moves what the amplifier must give; the distance, of which nothing depends where a room is stated, does not.
    [Fact]
    public void What_is_read_and_moves_a_result_is_named_and_nothing_else()
    {
        var inputs = Why.Of(Demo, "box.power_needed_w").Inputs.Where(i => i.Acts is not null).ToDictionary(i => i.Key);
        Assert.Equal(Acting.Smooth, inputs["brief.room.height"].Acts);
        Assert.True(inputs["brief.room.height"].Sensitivity > 1);
        Assert.Equal(Acting.Steps, inputs["cabinet.braces"].Acts);
        Assert.DoesNotContain("brief.aim.distance", inputs.Keys);
        Assert.DoesNotContain("brief.neighbour.area", inputs.Keys);
    }

    [Fact]
    public void A_bound_that_is_not_reached_is_told_as_inactive()
    {
        var inputs = Why.Of(Demo, "box.max_spl_at_lowest_db").Inputs.ToDictionary(i => i.Key);
        Assert.Equal(Acting.Inactive, inputs["driver.xmax"].Acts);
        Assert.Equal(Acting.Smooth, inputs["brief.amplifier.power"].Acts);
        Assert.Equal(0.01 * 10 / Math.Log(10), inputs["brief.amplifier.power"].Sensitivity!.Value, 1e-5);
    }

    // The outer sleeve is cut into more pieces past the printer's width, so that the largest piece comes back to what it was.
    [Fact]
    public void What_moves_a_result_only_on_the_way_acts_in_steps() =>
        Assert.Equal(Acting.Steps, Why.Of(Demo, "parts/every-part-fits-the-printer").Inputs.Single(i => i.Key == "cabinet.outside.width").Acts);

    [Fact]
    public void What_moves_a_finding_of_the_demo_is_among_its_inputs()
    {
        var inputs = AllFindings.Rules.Select(r => r.Id).ToDictionary(
            id => id,
            id => Why.Of(Demo, $"{id}.margin").Inputs.Select(i => i.Key).ToHashSet(StringComparer.Ordinal)
        );
        var before = Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All).Findings;
        var silent = ProjectKeys
            .AllKeys()
            .Where(key => ProjectKeys.Get(DemoProject.Project, key) is double and not 0)
            .Select(key =>
                (Key: key, Project: ProjectKeys.With(DemoProject.Project, key, (object)((double)ProjectKeys.Get(DemoProject.Project, key)! * 1.004)))
            )
            .Where(m => !ProjectChecks.Of(m.Project).Any())
            .AsParallel()
            .AsOrdered()
            .SelectMany(m =>
                before
                    .Zip(Appraisal.WithoutRemedies(m.Project, DemoDrivers.All).Findings)
                    .Where(p =>
                        p.First.Margin is { } was
                        && p.Second.Margin is { } now
                        && Math.Abs(now - was) > 1e-6 * Math.Abs(was)
                        && !inputs[p.First.Id].Contains(m.Key)
                    )
                    .Select(p => $"{p.First.Id}: {m.Key}")
            )
            .ToList();
        Assert.True(silent.Count == 0, string.Join('\n', silent));
    }
}
