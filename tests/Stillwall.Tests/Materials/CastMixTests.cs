using CsCheck;
using Stillwall.Materials;
using Stillwall.Projects;
using Stillwall.Tests.Pours;

namespace Stillwall.Tests.Materials;

public class CastMixTests
{
    private const double KilogramForcePerSquareCentimetrePa = 98066.5;

    // Glass Tips 2009, whose author is unknown.
    [Fact]
    public void Strength_of_gypsum_is_within_ten_percent_of_the_transcribed_table()
    {
        foreach (var row in GypsumRow.All.Where(r => r.StrengthLow is not null))
        {
            var strength = CoreMaterial.Dry(CastMixes.Plaster, row.DryComputed).CompressivePa!.Value / KilogramForcePerSquareCentimetrePa;
            Assert.InRange(strength, 0.9 * row.StrengthLow!.Value, 1.1 * row.StrengthHigh!.Value);
        }
    }

    // Hopkins 2007, table A2: cL² ρ (1 − ν²) of plaster at 650 kg/m³, 1610 m/s, 0.2.
    [Fact]
    public void Light_plaster_is_as_stiff_as_the_handbook_says()
    {
        var expected = 1610.0 * 1610 * 650 * (1 - 0.2 * 0.2);
        Assert.Equal(expected, CoreMaterial.Dry(CastMixes.Plaster, 650).ModulusPa, 0.03 * expected);
    }

    // The same table: mortar 1600 kg/m³ and 2450 m/s, screed 2000 and 3250, concrete 2200 and 3800.
    [Theory]
    [InlineData(1600, 2450)]
    [InlineData(2000, 3250)]
    [InlineData(2200, 3800)]
    public void Cement_is_as_stiff_as_the_handbook_says(double density, double speed)
    {
        var expected = speed * speed * density * (1 - 0.2 * 0.2);
        Assert.Equal(expected, CoreMaterial.Dry(CastMixes.CementGrout, density).ModulusPa, 0.06 * expected);
    }

    [Fact]
    public void Plaster_at_the_usual_ratio_has_four_to_four_and_a_half_gigapascals_and_halves_when_wet()
    {
        var mix = Stillwall.Pours.Mix.FromPowder(CastMixes.Plaster, 1, 1.5);
        var dry = CoreMaterial.Dry(CastMixes.Plaster, mix.DryDensityKgM3);
        Assert.InRange(dry.ModulusPa, 4.0e9, 4.5e9);
        Assert.Equal(dry.ModulusPa / 2, dry.Wet(CastMixes.Plaster, mix.SlurryDensityKgM3).ModulusPa, 1);
        Assert.InRange(3e9, 0.99 * dry.ModulusLowPa, dry.ModulusPa);
        Assert.InRange(7e9, dry.ModulusPa, 1.02 * dry.ModulusHighPa);
    }

    // 1.5 × 18.015 g of water on 145.149 g of hemihydrate.
    [Fact]
    public void The_bound_water_is_that_of_the_reaction() => Assert.Equal(172.171 / 145.149 - 1, CastMixes.HemihydrateBoundRatio, 1e-4);

    [Fact]
    public void Denser_cast_is_stiffer_and_stronger()
    {
        Gen.Select(Gen.Int[0, 4], Gen.Double[800, 1900], Gen.Double[1.01, 1.3])
            .Sample(
                (kind, density, more) =>
                {
                    var (light, dense) = (CoreMaterial.Dry(CastMixes.All[kind], density), CoreMaterial.Dry(CastMixes.All[kind], density * more));
                    Assert.True(dense.ModulusPa > light.ModulusPa && dense.CompressivePa > light.CompressivePa);
                    Assert.True(light.ModulusLowPa < light.ModulusPa && light.ModulusPa < light.ModulusHighPa);
                }
            );
    }

    [Fact]
    public void What_was_measured_beats_what_was_assumed()
    {
        var assumed = CoreMaterial.Dry(CastMixes.Plaster, 1130);
        var known = assumed.With(new Measured { CoreModulusPa = 4.1e9, CoreLossFactor = 0.02 });
        Assert.Equal((4.1e9, 4.1e9, 4.1e9, 0.02, 1130), (known.ModulusPa, known.ModulusLowPa, known.ModulusHighPa, known.LossFactor, known.DensityKgM3));
        Assert.Equal(assumed, assumed.With(null));
        Assert.Equal(1200, assumed.With(new Measured { CoreDensityKgM3 = 1200 }).DensityKgM3);
    }

    [Fact]
    public void Every_word_of_the_project_file_is_a_known_material()
    {
        foreach (var word in ModelBlock.Of(typeof(Cast)).Find("mix")!.Words.Where(w => w != "own"))
        {
            Assert.Equal(word, CastMixes.Of(new Cast { Mix = word })!.Name);
        }

        foreach (var word in ModelBlock.Of(typeof(Stillwall.Projects.Materials)).Find("skin")!.Words.Where(w => w != "own"))
        {
            Assert.Equal(word, SkinMaterials.Of(new Stillwall.Projects.Materials { Skin = word })!.Name);
        }
    }

    [Fact]
    public void A_stated_ratio_pot_life_and_grain_take_the_place_of_the_usual_ones()
    {
        var mix = CastMixes.Of(
            new Cast
            {
                Mix = "plaster",
                PowderPerWater = 1.8,
                PotLifeS = 1200,
                GrainM = 0.001,
            }
        )!;
        Assert.Equal((1.8, 1200, 0.001), (mix.PowderPerWaterRatio, mix.Times.PotLifeS, mix.GrainM));
        Assert.Equal(2 * CastMixes.Plaster.Times.FinalSetS, mix.Times.FinalSetS, 1e-9);
    }

    [Fact]
    public void Figures_of_ones_own_are_kept_and_absent_ones_are_unknown()
    {
        var skin = SkinMaterials.FromOwn(
            new OwnSkin
            {
                DensityKgM3 = 1100,
                ModulusPa = 1e9,
                SofteningC = 75,
                StrengthPa = 3e7,
            }
        );
        Assert.Equal((1100, 1e9, 75, 3e7), (skin.DensityKgM3, skin.ModulusPa, skin.SofteningC, skin.StrengthPa));
        Assert.Null(SkinMaterials.Of(null));
        Assert.Null(SkinMaterials.Of(new Stillwall.Projects.Materials { Skin = "own" }));
        Assert.Null(CastMixes.Of(new Cast { Mix = "own" }));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CastMixes.FromOwn(
                new OwnMix
                {
                    PowderDensityKgM3 = 0,
                    BoundWater = 0,
                    ModulusPa = 1e9,
                }
            )
        );
    }

    // Deflection temperatures from memory of data sheets.
    [Fact]
    public void Plastics_soften_in_their_known_order()
    {
        Assert.Equal([53, 67, 90, 90], SkinMaterials.All.Select(m => m.SofteningC));
    }
}
