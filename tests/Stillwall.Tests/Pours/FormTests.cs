using CsCheck;
using Stillwall.Materials;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class FormTests
{
    // Liquid head, ACI 347-04: slurry of 1572 and grout of 2100 kg/m³.
    [Theory]
    [InlineData(1572, 0.2, 3080)]
    [InlineData(1572, 0.5, 7710)]
    [InlineData(2100, 0.2, 4120)]
    [InlineData(2100, 0.5, 10300)]
    public void The_form_pressure_is_the_head_of_a_liquid(double density, double head, double expectedPa)
    {
        Assert.Equal(expectedPa, FormPressure.AtDepthPa(density, head), 6.0);
    }

    // Elementary beam theory, worked by hand: PETG of 2 GPa and 0.38, 60 mm clear, 2.4 mm thick, 6 kPa.
    [Fact]
    public void A_printed_strip_bulges_as_worked_by_hand()
    {
        var figures = SkinBulge.Skin(6000, 0.060, 0.062, 0.0024, 2e9, 0.38);
        Assert.Equal(0.0752e-3, figures.BulgeM, 0.00006e-3);
        Assert.Equal(1.875e6, figures.StressPa, 1);
        Assert.Equal(372, figures.TieLoadNPerM, 1e-9);
    }

    [Fact]
    public void A_bay_as_wide_as_the_closed_form_of_a_clamped_strip_allows_just_reaches_the_limit()
    {
        Gen.Select(Gen.Double[500, 20000], Gen.Double[1e-5, 1e-3], Gen.Double[0.0008, 0.005])
            .Sample(
                (pressure, limit, thickness) =>
                {
                    var stiffness = 1e9 * Math.Pow(thickness, 3) / (12 * (1 - 0.38 * 0.38));
                    var bay = Math.Pow(384 * stiffness * limit / pressure, 0.25);
                    Assert.Equal(limit, SkinBulge.Skin(pressure, bay, bay, thickness, 1e9, 0.38).BulgeM, 1e-9 * limit);
                }
            );
    }

    // wL⁴/(384EI) for a web of 2 × 16 mm over 200 mm, 3 kPa on a pitch of 40 mm: w = 120 N/m, I = 6.8267e-10 m⁴, E = 1 GPa → 0.7324 mm.
    [Fact]
    public void An_untied_strut_bends_as_a_beam_and_five_times_as_far_when_its_ends_turn()
    {
        var strut = SkinBulge.UntiedStrut(3000, 0.040, 0.200, 0.002, 0.016, 1e9);
        Assert.Equal(0.7324e-3, strut.ClampedM, 0.0001e-3);
        Assert.Equal(5 * strut.ClampedM, strut.SupportedM, 1e-12);
    }

    [Fact]
    public void Lifts_never_stand_higher_than_the_skins_bear_and_one_fewer_would()
    {
        Gen.Select(Gen.Double[0.05, 0.6], Gen.Double[0.03, 0.7])
            .Sample(
                (height, bears) =>
                {
                    var lifts = FormPressure.Lifts(height, bears);
                    Assert.True(height / lifts <= bears * (1 + 1e-8));
                    Assert.True(lifts == 1 || height / (lifts - 1) > bears);
                }
            );
    }

    // Archimedes: ten litres under 1600 kg/m³ carry 16 kg.
    [Fact]
    public void A_sleeve_floats_by_what_it_displaces_less_what_holds_it_down()
    {
        Assert.Equal(15 * 9.80665, FormPressure.UpliftN(1600, 0.010, 1), 1e-9);
        Assert.Equal(0, FormPressure.UpliftN(1600, 0.010, 1, 15), 1e-9);
    }

    [Fact]
    public void A_coarse_mix_wants_room_for_four_grains()
    {
        Assert.Equal(0.006, Flow.WantedPassageM(0.006, 0.001));
        Assert.Equal(0.008, Flow.WantedPassageM(0.006, 0.002));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FormPressure.AtDepthPa(1600, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SkinBulge.Skin(6000, 0.06, 0.05, 0.0024, 2e9, 0.38));
        Assert.Throws<ArgumentOutOfRangeException>(() => SkinBulge.Skin(6000, 0.06, 0.07, 0.0024, 2e9, 0.5));
    }

    [Fact]
    public void Every_hot_skin_is_softer_than_a_cold_one() => Assert.All(SkinMaterials.All, m => Assert.InRange(m.HotModulusPa / m.ModulusPa, 0.1, 0.99));
}
