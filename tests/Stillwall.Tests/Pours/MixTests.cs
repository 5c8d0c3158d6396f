using System.Text.Json;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class MixTests
{
    private static readonly JsonSerializerOptions SnakeCase = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };
    private static readonly CastMix Beta = CastMixes.Plaster with { PowderDensityKgM3 = 2630 };
    private static readonly Gen<CastMix> AnyMix = Gen.Int[0, CastMixes.All.Count - 1].Select(i => CastMixes.All[i]);

    [Fact]
    public void Densities_and_porosity_agree_with_the_independent_table()
    {
        foreach (var row in GypsumRow.All)
        {
            var mix = Mix.FromPowder(Beta, 1, 1 / row.WaterPerPowder);
            Assert.Equal(row.Slurry, mix.SlurryDensityKgM3, 0.6);
            Assert.Equal(row.DryComputed, mix.DryDensityKgM3, 0.8);
            Assert.Equal(row.Porosity, mix.Porosity, 6e-4);
        }
    }

    [Fact]
    public void Dry_density_is_within_two_percent_of_what_was_measured()
    {
        foreach (var row in GypsumRow.All.Where(r => r.DryTable is not null))
        {
            Assert.Equal(row.DryTable!.Value, Mix.FromPowder(CastMixes.Plaster, 1, 1 / row.WaterPerPowder).DryDensityKgM3, 0.02 * row.DryTable.Value);
        }
    }

    [Fact]
    public void The_rise_without_loss_agrees_with_the_independent_table_for_every_heat()
    {
        foreach (var row in GypsumRow.All)
        {
            foreach (var (heat, rise) in ((double[])[112.3e3, 118.1e3, 132.5e3]).Zip(row.Rises))
            {
                var mix = Mix.FromPowder(Beta with { Heat = new CastHeat(heat, heat, heat) }, 1, 1 / row.WaterPerPowder, airC: 18);
                Assert.Equal(18 + rise, mix.AdiabaticPeakC!.Value, 0.55);
            }
        }
    }

    // Common practice, no source: six kilograms at 1.5:1 take four of water; the dry mass is 1.1862 of the powder (molar masses 145.149 and 172.171 g/mol).
    [Fact]
    public void Six_kilograms_of_plaster_take_four_of_water_and_dry_to_seven()
    {
        var mix = Mix.FromPowder(CastMixes.Plaster, 6, 1.5);
        Assert.Equal(4, mix.WaterKg, 1e-12);
        Assert.Equal(10, mix.WetMassKg, 1e-12);
        Assert.Equal(6 * (172.171 / 145.149), mix.DryMassKg, 0.001);
        Assert.Equal(2.883, mix.FreeWaterKg, 0.001);
    }

    [Fact]
    public void What_goes_in_comes_out_and_the_volume_turns_round()
    {
        Gen.Select(AnyMix, Gen.Double[0.01, 50], Gen.Double[0.3, 20])
            .Sample(
                (kind, powder, ratio) =>
                {
                    var mix = Mix.FromPowder(kind, powder, ratio);
                    Assert.Equal(mix.PowderKg + mix.WaterKg, mix.DryMassKg + mix.FreeWaterKg, 1e-9 * mix.WetMassKg);
                    Assert.True(mix.FreeWaterKg >= 0 && mix.Porosity is >= 0 and < 1);
                    Assert.InRange(mix.AdiabaticPeakC!.Value, mix.AdiabaticPeakRangeC![0], mix.AdiabaticPeakRangeC[1]);
                    Assert.Equal(powder, Mix.FromVolume(kind, mix.SlurryVolumeM3, ratio).PowderKg, 1e-9 * powder);
                }
            );
    }

    [Fact]
    public void More_powder_makes_a_denser_slurry_and_a_denser_cast()
    {
        Gen.Select(AnyMix, Gen.Double[0.5, 5], Gen.Double[1.01, 2])
            .Sample(
                (kind, ratio, more) =>
                {
                    var (thin, rich) = (Mix.FromPowder(kind, 1, ratio), Mix.FromPowder(kind, 1, ratio * more));
                    Assert.True(rich.SlurryDensityKgM3 > thin.SlurryDensityKgM3);
                    Assert.True(rich.DryDensityKgM3 > thin.DryDensityKgM3);
                }
            );
    }

    [Fact]
    public void Powder_beyond_what_the_water_can_bind_stays_powder()
    {
        var mix = Mix.FromPowder(CastMixes.Plaster, 10, 10);
        Assert.True(mix.PowderRich);
        Assert.Equal(0, mix.FreeWaterKg);
        Assert.Equal(11, mix.DryMassKg, 1e-12);
        // Half a kilogram more water would set more powder and so make more heat.
        Assert.True(Mix.FromPowder(CastMixes.Plaster, 10, 10 / 1.5).AdiabaticPeakC > mix.AdiabaticPeakC);
        Assert.False(Mix.FromPowder(CastMixes.Plaster, 10, 5).PowderRich);
    }

    [Fact]
    public void A_mix_of_unknown_heat_has_no_peak()
    {
        var own = CastMixes.FromOwn(
            new Stillwall.Projects.OwnMix
            {
                PowderDensityKgM3 = 2700,
                BoundWater = 0.1,
                ModulusPa = 5e9,
            }
        );
        var mix = Mix.FromPowder(own, 1, 2);
        Assert.Null(mix.AdiabaticPeakC);
        Assert.Null(mix.AdiabaticPeakRangeC);
        Assert.InRange(mix.Porosity, 0.1, 0.9);
    }

    [Fact]
    public void A_mix_is_written_with_the_keys_of_its_document()
    {
        var text = JsonSerializer.Serialize(Mix.FromVolume(CastMixes.Plaster, 0.001, 1.5), SnakeCase);
        foreach (
            var key in (string[])
                [
                    "powder_kg",
                    "water_kg",
                    "slurry_volume_m3",
                    "slurry_density_kg_m3",
                    "wet_mass_kg",
                    "dry_mass_kg",
                    "free_water_kg",
                    "dry_density_kg_m3",
                    "porosity",
                    "adiabatic_peak_c",
                    "adiabatic_peak_range_c",
                ]
        )
        {
            Assert.Contains($"\"{key}\":", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_powder_and_no_water_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Mix.FromPowder(CastMixes.Plaster, 0, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mix.FromVolume(CastMixes.Plaster, 0.001, double.PositiveInfinity));
    }
}
