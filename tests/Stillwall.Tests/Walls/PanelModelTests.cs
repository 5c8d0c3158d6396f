using System.Text.Json;
using CsCheck;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class PanelModelTests
{
    private static readonly JsonSerializerOptions SnakeCase = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    private static readonly Gen<Layer> AnyLayer =
        Gen.Select(Gen.Double[0.001, 0.03], Gen.Double[1e9, 2e10], Gen.Double[0, 0.45], Gen.Double[500, 3000], (t, e, nu, rho) => new Layer(t, e, nu, rho));

    [Fact]
    public void A_single_layer_has_the_stiffness_of_the_textbook()
    {
        // Eh³/(12(1 − ν²)): steel, 4 mm, 210 GPa, 0.3 → 1230.77 N·m (Leissa, NASA SP-160, definition of D).
        Layer[] steel = [new(0.004, 210e9, 0.3, 7850)];
        Assert.Equal(1230.769, Laminate.Bonded(steel).StiffnessNm, 1e-3);
        Assert.Equal(Laminate.Bonded(steel).StiffnessNm, Laminate.Slipping(steel).StiffnessNm, 1e-9);
    }

    [Fact]
    public void Cutting_a_layer_into_bonded_slices_changes_nothing_and_two_slipping_halves_keep_a_quarter()
    {
        Gen.Select(AnyLayer, Gen.Double[0.1, 0.9]).Sample((whole, share) =>
        {
            Layer[] cut = [whole with { ThicknessM = share * whole.ThicknessM }, whole with { ThicknessM = (1 - share) * whole.ThicknessM }];
            Layer[] halves = [whole with { ThicknessM = whole.ThicknessM / 2 }, whole with { ThicknessM = whole.ThicknessM / 2 }];
            var bonded = Laminate.Bonded([whole]).StiffnessNm;
            Assert.Equal(bonded, Laminate.Bonded(cut).StiffnessNm, 1e-9 * bonded);
            Assert.Equal(bonded / 4, Laminate.Slipping(halves).StiffnessNm, 1e-9 * bonded);
        });
    }

    [Fact]
    public void A_symmetric_stack_turns_about_its_middle()
    {
        Gen.Select(AnyLayer, AnyLayer).Sample((skin, core) =>
            Assert.Equal(skin.ThicknessM + core.ThicknessM / 2, Laminate.NeutralPlaneM([skin, core, skin]), 1e-9));
    }

    [Fact]
    public void Slipping_never_beats_bonded_and_a_thicker_core_is_always_stiffer()
    {
        Gen.Select(AnyLayer.List[1, 4], Gen.Double[1.01, 2]).Sample((layers, more) =>
        {
            Assert.True(Laminate.Slipping(layers).StiffnessNm <= Laminate.Bonded(layers).StiffnessNm * (1 + 1e-12));
            Layer[] thicker = [layers[0] with { ThicknessM = layers[0].ThicknessM * more }, .. layers.Skip(1)];
            Assert.True(Laminate.Bonded(thicker).StiffnessNm > Laminate.Bonded(layers).StiffnessNm);
            Assert.True(Laminate.SurfaceDensityKgM2(thicker) > Laminate.SurfaceDensityKgM2(layers));
        });
    }

    [Fact]
    public void The_loss_factor_of_a_stack_lies_between_those_of_its_layers()
    {
        Layer[] layers = [new(0.002, 2e9, 0.38, 1270, 0.03), new(0.012, 4.5e9, 0.2, 1150, 0.012), new(0.002, 2e9, 0.38, 1270, 0.03)];
        Assert.InRange(Laminate.Bonded(layers).LossFactor, 0.012, 0.03);
        Assert.True(Laminate.Slipping(layers).LossFactor < Laminate.Bonded(layers).LossFactor);
    }

    [Fact]
    public void The_thin_square_plate_agrees_with_solid_elements()
    {
        var solid = PlateData.Solid("thin-square-clamped");
        var panel = PanelModel.Solve(solid.Layers, solid.LengthM, solid.WidthM, solid.Edges);
        Assert.All(solid.ModesHz.Zip(panel.Bonded.ModesHz), pair => Assert.Equal(pair.First, pair.Second, 0.005 * pair.First));
        Assert.Equal(solid.CentreDeflectionMPerPa, panel.Bonded.CentreDeflectionMPerPa, 0.005 * solid.CentreDeflectionMPerPa);
    }

    // Thick walls: a thin plate lies above solid elements because it knows no shear; the size of the gap is recorded here.
    [Theory]
    [InlineData("plain-cast-clamped", 0.08)]
    [InlineData("skins-and-cast-clamped", 0.09)]
    [InlineData("skins-and-cast-supported", 0.075)]
    [InlineData("printed-only-clamped", 0.01)]
    public void Thick_walls_lie_above_solid_elements_by_what_shear_takes(string name, double gap)
    {
        var solid = PlateData.Solid(name);
        var first = PanelModel.Solve(solid.Layers, solid.LengthM, solid.WidthM, solid.Edges).Bonded.ModesHz[0];
        Assert.InRange(first / solid.ModesHz[0], 1, 1 + gap);
    }

    [Fact]
    public void A_panel_is_written_with_the_keys_of_its_document()
    {
        var text = JsonSerializer.Serialize(PanelModel.Solve([new Layer(0.01, 4e9, 0.2, 1150)], 0.3, 0.2, PanelEdges.Clamped), SnakeCase);
        foreach (var key in (string[])["bonded", "slipping", "modes_hz", "centre_deflection_m_per_pa", "mean_deflection_m_per_pa", "surface_density_kg_m2"])
        {
            Assert.Contains($"\"{key}\":", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_panel_without_layers_or_with_a_hole_for_a_size_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PanelModel.Solve([], 0.3, 0.2, PanelEdges.Clamped));
        Assert.Throws<ArgumentOutOfRangeException>(() => PanelModel.Solve([new Layer(0.01, 4e9, 0.2, 1150)], 0, 0.2, PanelEdges.Clamped));
        Assert.Throws<ArgumentOutOfRangeException>(() => Laminate.Bonded([new Layer(0.01, 4e9, 0.6, 1150)]));
    }
}
