using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class WallCurveTests
{
    private static readonly Layer[] Sheet = [new(0.001, 2e9, 0.3, 1270)];

    // A thin supported plate: mode (m, n), both odd, gives way by 64ab/(π⁴m²n²·m″ω²), ω = π²(m²/a² + n²/b²)√(D/m″). Source: Navier's series,
    // Timoshenko and Woinowsky-Krieger 1959, § 28, as modes.
    [Fact]
    public void A_thin_supported_panel_gives_way_by_the_modes_of_Naviers_series()
    {
        const double Width = 0.3,
            Height = 0.2;
        var (bending, mass) = (Laminate.Bonded(Sheet), Laminate.SurfaceDensityKgM2(Sheet));
        var modes = ShearPlate.PressureModes(bending, mass, Width, Height, PanelEdges.Supported);
        var series = new[] { (1, 1), (3, 1), (1, 3), (5, 1) }
            .Select(mn =>
            {
                var (m, n) = mn;
                var omega = Math.PI * Math.PI * (m * m / Width / Width + n * n / Height / Height) * Math.Sqrt(bending.StiffnessNm / mass);
                return (Hz: omega / (2 * Math.PI), Volume: 64 * Width * Height / (Math.Pow(Math.PI, 4) * m * m * n * n * mass * omega * omega));
            })
            .OrderBy(s => s.Hz)
            .ToList();
        Assert.All(
            series.Zip(modes),
            pair =>
            {
                Assert.Equal(pair.First.Hz, pair.Second.FirstModeHz, 3e-3 * pair.First.Hz);
                Assert.Equal(pair.First.Volume, pair.Second.VolumePerPressureM3PerPa, 0.02 * pair.First.Volume);
            }
        );
    }

    [Theory]
    [InlineData(PanelEdges.Clamped)]
    [InlineData(PanelEdges.Supported)]
    public void At_rest_the_modes_give_way_as_the_panel_does(PanelEdges edges)
    {
        var (bending, mass) = (Laminate.Bonded(Sheet), Laminate.SurfaceDensityKgM2(Sheet));
        var hold = PlateHold.OfBraces(1, 2e9, 1270, 0.006, 0.028);
        var whole = ShearPlate.Solve(bending, mass, 0.3, 0.2, edges, hold);
        var modes = ShearPlate.PressureModes(bending, mass, 0.3, 0.2, edges, hold);
        Assert.Equal(0.06 * whole.MeanDeflectionMPerPa, modes.Sum(m => m.VolumePerPressureM3PerPa), 1e-6 * 0.06 * whole.MeanDeflectionMPerPa);
        Assert.Contains(whole.ModesHz, f => Math.Abs(f - modes[0].FirstModeHz) < 1e-6 * f);
        Assert.Equal(whole.ModesHz[0], ShearPlate.First(bending, mass, 0.3, 0.2, edges, hold).FirstModeHz, 1e-6 * whole.ModesHz[0]);
    }

    // Two equal panels: 3.01 dB more by power, 6.02 dB in step; one panel is itself.
    [Fact]
    public void Equal_panels_add_by_power_and_in_step()
    {
        IReadOnlyList<WallMotion> panel = [new(1e-11, 300, 0.02), new(1e-12, 900, 0.02)];
        var two = WallCurve.Of([panel, panel], 8e-8, 20);
        Assert.All(
            two,
            p =>
            {
                Assert.Equal(p.PanelsDb[0] + 3.0103, p.PowerSumDb, 1e-3);
                Assert.Equal(p.PanelsDb[0] + 6.0206, p.WorstPhaseDb, 1e-3);
                Assert.Equal(WallSound.TotalDb(panel, 8e-8, p.FrequencyHz), p.PanelsDb[1], 1e-9);
            }
        );
        Assert.Equal(20, two[0].FrequencyHz);
        Assert.Equal(1000, two[^1].FrequencyHz);
        Assert.Equal(300, two.MaxBy(p => p.PowerSumDb)!.FrequencyHz, 20.0);
        Assert.Throws<ArgumentException>(() => WallCurve.Of([], 8e-8));
    }

    // Far below its mode a front moves by what pushes it: p·V, less the cone's share times (f/f₀)². Source: balance of forces on the cone.
    [Theory]
    [InlineData(20, 0.9)]
    [InlineData(40, 0.6)]
    [InlineData(80, 0.6)]
    public void Over_the_cones_own_resonance_its_mass_rules_the_front(double frequencyHz, double ratio)
    {
        WallMotion front = new(1e-11, 1e5, 0.01, 0.4e-11);
        Assert.Equal(20 * Math.Log10(ratio * 1e-11 / 8e-8), WallSound.TotalDb([front], 8e-8, frequencyHz, 40), 1e-3);
        Assert.Equal(20 * Math.Log10(1e-11 / 8e-8), WallSound.TotalDb([front], 8e-8, frequencyHz), 1e-3);
    }

    // A closed box's own stiffness: f₀² = fs²·Vas/V (Small, JAES 20(10) 1972): 30 Hz, 24 L in 14.34 L with 76.17 g on 214 cm².
    [Fact]
    public void The_cone_on_the_enclosed_air_rings_where_Smalls_ratio_says() =>
        Assert.Equal(30 * Math.Sqrt(24 / 14.34), WallSound.ConeOnAirHz(0.07617, 0.0214, 14.34e-3 / (1.2041 * 343.2 * 343.2)), 0.05);
}
