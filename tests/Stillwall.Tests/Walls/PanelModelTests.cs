using System.Text.Json;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class PanelModelTests
{
    private static readonly JsonSerializerOptions SnakeCase = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    private static readonly Gen<Layer> AnyLayer = Gen.Select(
        Gen.Double[0.001, 0.03],
        Gen.Double[1e9, 2e10],
        Gen.Double[0, 0.45],
        Gen.Double[500, 3000],
        (t, e, nu, rho) => new Layer(t, e, nu, rho)
    );

    [Fact]
    public void A_single_layer_has_the_stiffness_of_a_thin_plate()
    {
        // Eh³/(12(1 − ν²)): steel, 4 mm, 210 GPa, 0.3 → 1230.77 N·m (Leissa 1969, definition of D).
        Layer[] steel = [new(0.004, 210e9, 0.3, 7850)];
        Assert.Equal(1230.769, Laminate.Bonded(steel).StiffnessNm, 1e-3);
        Assert.Equal(Laminate.Bonded(steel).StiffnessNm, Laminate.Slipping(steel).StiffnessNm, 1e-9);
    }

    [Fact]
    public void Cutting_a_layer_into_bonded_slices_changes_nothing_and_two_slipping_halves_keep_a_quarter()
    {
        Gen.Select(AnyLayer, Gen.Double[0.1, 0.9])
            .Sample(
                (whole, share) =>
                {
                    Layer[] cut = [whole with { ThicknessM = share * whole.ThicknessM }, whole with { ThicknessM = (1 - share) * whole.ThicknessM }];
                    Layer[] halves = [whole with { ThicknessM = whole.ThicknessM / 2 }, whole with { ThicknessM = whole.ThicknessM / 2 }];
                    var bonded = Laminate.Bonded([whole]).StiffnessNm;
                    Assert.Equal(bonded, Laminate.Bonded(cut).StiffnessNm, 1e-9 * bonded);
                    Assert.Equal(bonded / 4, Laminate.Slipping(halves).StiffnessNm, 1e-9 * bonded);
                }
            );
    }

    [Fact]
    public void A_symmetric_stack_turns_about_its_middle()
    {
        Gen.Select(AnyLayer, AnyLayer)
            .Sample((skin, core) => Assert.Equal(skin.ThicknessM + core.ThicknessM / 2, Laminate.NeutralPlaneM([skin, core, skin]), 1e-9));
    }

    [Fact]
    public void Slipping_never_beats_bonded_and_a_thicker_core_is_always_stiffer()
    {
        Gen.Select(AnyLayer.List[1, 4], Gen.Double[1.01, 2])
            .Sample(
                (layers, more) =>
                {
                    Assert.True(Laminate.Slipping(layers).StiffnessNm <= Laminate.Bonded(layers).StiffnessNm * (1 + 1e-12));
                    Layer[] thicker = [layers[0] with { ThicknessM = layers[0].ThicknessM * more }, .. layers.Skip(1)];
                    Assert.True(Laminate.Bonded(thicker).StiffnessNm > Laminate.Bonded(layers).StiffnessNm);
                    Assert.True(Laminate.SurfaceDensityKgM2(thicker) > Laminate.SurfaceDensityKgM2(layers));
                }
            );
    }

    [Fact]
    public void The_loss_factor_of_a_stack_lies_between_those_of_its_layers()
    {
        Layer[] layers = [new(0.002, 2e9, 0.38, 1270, 0.03), new(0.012, 4.5e9, 0.2, 1150, 0.012), new(0.002, 2e9, 0.38, 1270, 0.03)];
        Assert.InRange(Laminate.Bonded(layers).LossFactor, 0.012, 0.03);
        Assert.True(Laminate.Slipping(layers).LossFactor < Laminate.Bonded(layers).LossFactor);
    }

    [Theory]
    [InlineData("thin-square-clamped", 0.002)]
    [InlineData("plain-cast-clamped", 0.015)]
    [InlineData("skins-and-cast-clamped", 0.015)]
    [InlineData("skins-and-cast-supported", 0.015)]
    [InlineData("printed-only-clamped", 0.015)]
    public void Panels_agree_with_solid_elements(string name, double tolerance)
    {
        var solid = PlateData.Solid(name);
        var panel = PanelModel.Solve(solid.Layers, solid.LengthM, solid.WidthM, solid.Edges);
        Assert.All(solid.ModesHz.Zip(panel.Bonded.ModesHz), pair => Assert.Equal(pair.First, pair.Second, tolerance * pair.First));
        Assert.Equal(solid.CentreDeflectionMPerPa, panel.Bonded.CentreDeflectionMPerPa, 2 * tolerance * solid.CentreDeflectionMPerPa);
    }

    // A thin panel falls back on the thin plate, which is itself held to tables: no locking.
    [Theory]
    [InlineData(PanelEdges.Clamped)]
    [InlineData(PanelEdges.Supported)]
    public void A_thin_panel_is_a_thin_plate(PanelEdges edges)
    {
        Layer[] sheet = [new(0.001, 2e9, 0.38, 1270)];
        var panel = PanelModel.Solve(sheet, 0.3, 0.2, edges).Bonded;
        var (factors, stiffness) = (ThinPlate.Factors(1.5, edges), Laminate.Bonded(sheet).StiffnessNm);
        var rate = Math.Sqrt(stiffness / Laminate.SurfaceDensityKgM2(sheet)) / (2 * Math.PI * 0.09);
        Assert.All(factors.FrequencyFactors.Zip(panel.ModesHz), pair => Assert.Equal(pair.First * rate, pair.Second, 1e-3 * pair.Second));
        Assert.Equal(factors.CentreFactor * Math.Pow(0.3, 4) / stiffness, panel.CentreDeflectionMPerPa, 1e-3 * panel.CentreDeflectionMPerPa);
        Assert.Equal(factors.MeanFactor * Math.Pow(0.3, 4) / stiffness, panel.MeanDeflectionMPerPa, 1e-3 * panel.MeanDeflectionMPerPa);
    }

    [Fact]
    public void Shear_only_ever_lowers_a_mode_and_adds_to_the_deflection()
    {
        Gen.Select(AnyLayer, Gen.Double[0.15, 0.5], Gen.Double[0.15, 0.5])
            .Sample(
                (layer, width, height) =>
                {
                    foreach (var edges in Enum.GetValues<PanelEdges>())
                    {
                        var panel = PanelModel.Solve([layer], width, height, edges).Bonded;
                        var (factors, stiffness) = (ThinPlate.Factors(width / height, edges), Laminate.Bonded([layer]).StiffnessNm);
                        var rate = Math.Sqrt(stiffness / (layer.DensityKgM3 * layer.ThicknessM)) / (2 * Math.PI * width * width);
                        Assert.All(factors.FrequencyFactors.Zip(panel.ModesHz), pair => Assert.True(pair.Second <= pair.First * rate * 1.0001));
                        Assert.True(panel.MeanDeflectionMPerPa >= factors.MeanFactor * Math.Pow(width, 4) / stiffness * 0.9999);
                    }
                },
                iter: 20
            );
    }

    [Fact]
    public void The_first_mode_alone_is_the_first_of_six() =>
        Gen.Select(AnyLayer, Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5], Gen.Enum<PanelEdges>())
            .Sample(
                (layer, width, height, edges) =>
                {
                    var (bending, mass) = (Laminate.Bonded([layer]), Laminate.SurfaceDensityKgM2([layer]));
                    var (first, mean) = ShearPlate.First(bending, mass, width, height, edges);
                    var all = ShearPlate.Solve(bending, mass, width, height, edges);
                    Assert.Equal(all.ModesHz[0], first, 1e-9 * first);
                    Assert.Equal(all.MeanDeflectionMPerPa, mean, 1e-9 * mean);
                },
                iter: 40
            );

    [Fact]
    public void Turning_a_panel_by_a_right_angle_changes_nothing()
    {
        Gen.Select(AnyLayer, Gen.Double[0.15, 0.5], Gen.Double[0.15, 0.5])
            .Sample(
                (layer, width, height) =>
                {
                    var (one, turned) = (
                        PanelModel.Solve([layer], width, height, PanelEdges.Supported),
                        PanelModel.Solve([layer], height, width, PanelEdges.Supported)
                    );
                    Assert.All(one.Bonded.ModesHz.Zip(turned.Bonded.ModesHz), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * pair.First));
                },
                iter: 10
            );
    }

    // One layer: 5/6·Gt (Reissner 1945). Stiff faces on a soft core: G·d²/c, d from the middle of one face to that of the other (Allen 1969, from memory).
    [Fact]
    public void Shear_stiffness_has_its_two_known_limits()
    {
        Layer one = new(0.02, 4e9, 0.2, 1150);
        Assert.Equal(5.0 / 6 * 4e9 / 2.4 * 0.02, Laminate.Bonded([one]).ShearNPerM, 1);
        Layer face = new(0.001, 70e9, 0.3, 2700),
            soft = new(0.02, 130e6, 0.3, 100);
        var expected = 130e6 / 2.6 * 0.021 * 0.021 / 0.02;
        Assert.Equal(expected, Laminate.Bonded([face, soft, face]).ShearNPerM, 0.01 * expected);
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

    // Order convergence: the demo's side wall by the same process carried to 16 × 16 polynomials, run once for this check; 12 × 12 are used. First
    // six modes and the middle's deflection, layers bonded.
    [Theory]
    [InlineData(PanelEdges.Clamped, 4.022160095e-9, 732.75, 1166.07, 1695.36, 1863.91, 2071.08, 2693.36)]
    [InlineData(PanelEdges.Supported, 1.376215012e-8, 391.80, 778.06, 1160.37, 1413.42, 1517.06, 2113.11)]
    public void More_polynomials_change_the_modes_by_less_than_a_thousandth(PanelEdges edges, double deflection, params double[] modes)
    {
        var core = CoreMaterial.Dry(
            CastMixes.Plaster,
            Stillwall.Pours.Mix.FromPowder(CastMixes.Plaster, 1, CastMixes.Plaster.PowderPerWaterRatio).DryDensityKgM3
        );
        var skin = Layer.Of(0.002, SkinMaterials.Petg);
        var panel = PanelModel.Solve([skin, Layer.Of(0.012, core), skin], 0.298, 0.212, edges).Bonded;
        Assert.All(modes.Zip(panel.ModesHz), m => Assert.Equal(1, m.Second / m.First, 1e-3));
        Assert.Equal(1, panel.CentreDeflectionMPerPa / deflection, 1.5e-3);
    }
}
