using CsCheck;
using Stillwall.Materials;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class SettingHeatTests
{
    [Theory]
    [InlineData(0.008)]
    [InlineData(0.012)]
    [InlineData(0.020)]
    public void It_agrees_with_a_wall_in_slices_and_explicit_steps(double coreM)
    {
        var mix = CastMixes.Plaster;
        var poured = Mix.FromPowder(mix, 1, 1.5);
        var wall = SettingHeat.Expected(mix, poured, coreM, SkinMaterials.Petg, 0.002, 0.002, 20)!;
        Assert.Equal(Slices(mix, poured, coreM, SkinMaterials.Petg, 0.002), wall.ExpectedPeakC, 0.1);
    }

    // Water of 5 °C in a room of 20 °C: by hand, plaster 1.5 : 1 comes to (1620 · 20 + 4180 · 5)/5800 = 9.19 °C.
    [Fact]
    public void Cold_water_cools_the_slurry_by_the_balance_of_heat_and_the_wall_by_less()
    {
        var slurry = Mix.SlurryC(CastMixes.Plaster, 1.5, 20, 5);
        Assert.Equal(9.19, slurry, 0.005);
        Assert.Equal(20, Mix.SlurryC(CastMixes.Plaster, 1.5, 20, 20), 1e-12);
        double Peak(double start) =>
            SettingHeat
                .Expected(CastMixes.Plaster, Mix.FromPowder(CastMixes.Plaster, 1, 1.5, start), 0.012, SkinMaterials.Petg, 0.002, 0.002, 20, start)!
                .ExpectedPeakC;
        Assert.Equal(
            SettingHeat.Expected(CastMixes.Plaster, Mix.FromPowder(CastMixes.Plaster, 1, 1.5), 0.012, SkinMaterials.Petg, 0.002, 0.002, 20)!.ExpectedPeakC,
            Peak(20),
            1e-9
        );
        Assert.InRange(Peak(20) - Peak(slurry), 5, 20 - slurry);
    }

    // Two ways to the same peak: where the wall is found to be past it, and the greatest of its course.
    [Fact]
    public void The_course_of_the_wall_has_the_peak_that_was_found()
    {
        var poured = Mix.FromPowder(CastMixes.Plaster, 1, 1.5);
        var heat = SettingHeat.Expected(CastMixes.Plaster, poured, 0.012, SkinMaterials.Petg, 0.002, 0.002, 20)!;
        var course = SettingHeat.Course(CastMixes.Plaster, poured, 0.012, SkinMaterials.Petg, 0.002, 0.002, 20);
        var peak = course.MaxBy(p => p.WarmestC);
        Assert.Equal((heat.ExpectedPeakC, heat.PeakTimeS, heat.OuterFaceC), (peak.WarmestC, peak.TimeS, peak.OuterFaceC));
        Assert.Equal((CastMixes.Plaster.Times.InitialSetS, 20.0), (course[0].TimeS, course[0].WarmestC));
        Assert.True(course[^1].WarmestC < peak.WarmestC - 15, "it cools again");
        Assert.Empty(SettingHeat.Course(CastMixes.Plaster with { Heat = null }, poured, 0.012, SkinMaterials.Petg, 0.002, 0.002, 20));
    }

    // What is stored beyond the start and what was lost is what was released, whatever the start.
    [Theory]
    [InlineData(-12)]
    [InlineData(0)]
    [InlineData(15)]
    public void Heat_is_kept_with_a_start_of_its_own(double startRiseK)
    {
        var warm = TransientWall.Warm(
            [new HeatLayer(0.002, 0.2, 1.6e6), new HeatLayer(0.012, 0.6, 2.8e6, 1e5, startRiseK), new HeatLayer(0.002, 0.2, 1.6e6)],
            1200,
            8
        )!;
        Assert.Equal(warm.ReleasedJM2, warm.StoredJM2 + warm.LostJM2, 1e-9 * warm.ReleasedJM2);
    }

    [Fact]
    public void The_expected_peak_lies_between_the_room_and_the_peak_without_loss()
    {
        Gen.Select(Gen.Double[0.004, 0.03], Gen.Double[0.001, 0.004], Gen.Double[1.2, 2.5], Gen.Double[5, 30])
            .Sample(
                (core, skin, ratio, air) =>
                {
                    var poured = Mix.FromPowder(CastMixes.Plaster, 1, ratio, air);
                    var warm = SettingHeat.Expected(CastMixes.Plaster, poured, core, SkinMaterials.Pla, skin, skin, air)!.ExpectedPeakC;
                    Assert.InRange(warm, air, poured.AdiabaticPeakC!.Value);
                    Assert.True(SettingHeat.Expected(CastMixes.Plaster, poured, core * 1.2, SkinMaterials.Pla, skin, skin, air)!.ExpectedPeakC > warm);
                }
            );
    }

    [Fact]
    public void A_very_thick_wall_keeps_all_its_heat()
    {
        var poured = Mix.FromPowder(CastMixes.Plaster, 1, 1.5);
        Assert.Equal(
            poured.AdiabaticPeakC!.Value,
            SettingHeat.Expected(CastMixes.Plaster, poured, 5, SkinMaterials.Petg, 0.002, 0.002, 20)!.ExpectedPeakC,
            0.1
        );
    }

    [Fact]
    public void The_heat_of_grout_comes_over_days_and_hardly_warms_a_wall()
    {
        var poured = Mix.FromPowder(CastMixes.CementGrout, 1, 4);
        var heat = SettingHeat.Expected(CastMixes.CementGrout, poured, 0.012, SkinMaterials.Petg, 0.002, 0.002, 20)!;
        Assert.InRange(heat.ExpectedPeakC, 20, 30);
        Assert.True(poured.AdiabaticPeakC > 70);
    }

    [Fact]
    public void Unknown_heat_gives_no_peak() =>
        Assert.Null(
            SettingHeat.Expected(CastMixes.Plaster with { Heat = null }, Mix.FromPowder(CastMixes.Plaster, 1, 1.5), 0.012, SkinMaterials.Petg, 0.002, 0.002, 20)
        );

    // A second method: outer skin, cast and inner skin cut into slices, explicit steps of time, still air of 8 W/(m²·K) outside and nothing inside.
    private static double Slices(CastMix mix, MixFigures poured, double coreM, SkinMaterial skin, double skinM)
    {
        const int InSkin = 4,
            InCore = 24;
        const double Step = 0.02;
        var castHeat = (poured.DryMassKg * mix.Thermal.SpecificHeatJKgK + poured.FreeWaterKg * 4180) / poured.SlurryVolumeM3;
        var plastic = (Size: skinM / InSkin, Heat: skin.DensityKgM3 * skin.SpecificHeatJKgK, Conducts: skin.ConductivityWMK, Source: 0.0);
        var power = poured.PowderKg * mix.Heat!.HeatJKg / poured.SlurryVolumeM3 / (mix.Times.HeatEndS - mix.Times.InitialSetS);
        var cast = (Size: coreM / InCore, Heat: castHeat, Conducts: mix.Thermal.ConductivityWMK, Source: power);
        var cells = Enumerable.Repeat(plastic, InSkin).Concat(Enumerable.Repeat(cast, InCore)).Concat(Enumerable.Repeat(plastic, InSkin)).ToArray();
        var warm = Enumerable.Repeat(20.0, cells.Length).ToArray();
        var flow = new double[cells.Length + 1];
        var peak = 20.0;
        for (var t = 0.0; t < mix.Times.HeatEndS - mix.Times.InitialSetS; t += Step)
        {
            flow[0] = (20 - warm[0]) / (1.0 / 8 + cells[0].Size / 2 / cells[0].Conducts);
            for (var i = 1; i < cells.Length; i++)
            {
                flow[i] = (warm[i - 1] - warm[i]) / (cells[i - 1].Size / 2 / cells[i - 1].Conducts + cells[i].Size / 2 / cells[i].Conducts);
            }

            for (var i = 0; i < cells.Length; i++)
            {
                warm[i] += Step * (cells[i].Source + (flow[i] - flow[i + 1]) / cells[i].Size) / cells[i].Heat;
            }

            peak = Math.Max(peak, warm.Max());
        }

        return peak;
    }
}
