using CsCheck;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class PlateHoldTests
{
    private static readonly Layer[] Sheet = [new(0.001, 2e9, 0.3, 1270)];
    private static readonly BendingStiffness Bending = Laminate.Bonded(Sheet);
    private static readonly double Mass = Laminate.SurfaceDensityKgM2(Sheet);

    // Between its two ends lies the elastic edge: no spring is supported, an endless spring is clamped.
    [Fact]
    public void An_elastic_edge_runs_from_supported_to_clamped()
    {
        Layer[] wall = [new(0.002, 2e9, 0.38, 1270), new(0.012, 4.1e9, 0.2, 1133), new(0.002, 2e9, 0.38, 1270)];
        var (bending, mass) = (Laminate.Bonded(wall), Laminate.SurfaceDensityKgM2(wall));
        double First(double edge) => ShearPlate.First(bending, mass, 0.3, 0.21, PanelEdges.Supported, new PlateHold(edge, [])).FirstModeHz;
        var (supported, clamped) = (
            ShearPlate.First(bending, mass, 0.3, 0.21, PanelEdges.Supported),
            ShearPlate.First(bending, mass, 0.3, 0.21, PanelEdges.Clamped)
        );
        Assert.Equal(supported.FirstModeHz, First(0), 1e-9 * supported.FirstModeHz);
        Assert.Equal(clamped.FirstModeHz, First(1e9), 2e-3 * clamped.FirstModeHz);
        var rising = new[] { 1e2, 1e3, 1e4, 1e5, 1e6 }.Select(First).ToList();
        Assert.Equal(rising.Order(), rising);
        Assert.InRange(First(bending.StiffnessNm / 0.1), supported.FirstModeHz * 1.1, clamped.FirstModeHz * 0.95);
    }

    // The middle of a long panel is a strip with springs at its ends: M = (qL²/12)/(1 + 2D/(kL)), w = 5qL⁴/(384D) − ML²/(8D). Source: slope of a beam
    // under load and end moments, elementary.
    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(5)]
    public void A_long_panel_with_elastic_edges_is_a_strip_on_springs(double springOverStrip)
    {
        const double Span = 0.1;
        var spring = springOverStrip * 2 * Bending.StiffnessNm / Span;
        var moment = Span * Span / 12 / (1 + 2 * Bending.StiffnessNm / (spring * Span));
        var strip = 5 * Math.Pow(Span, 4) / (384 * Bending.StiffnessNm) - moment * Span * Span / (8 * Bending.StiffnessNm);
        var panel = ShearPlate.Solve(Bending, Mass, 0.4, Span, PanelEdges.Supported, new PlateHold(spring, []));
        Assert.Equal(strip, panel.CentreDeflectionMPerPa, 0.015 * strip);
    }

    // A supported thin panel with one beam across its middle: its waves along the beam part, and with n half-waves along it the frequencies solve
    // 1 + (EI(nπ/b)⁴ − ω²μ)(b/2)·Σ s²/(kₘ − ω²mₘ) = 0, s = sin(mπ/2), kₘ = D((mπ/a)² + (nπ/b)²)²ab/4, mₘ = m″ab/4.
    // Source: Timoshenko's series for stiffened plates (Timoshenko and Gere, Theory of Elastic Stability, from memory), which is exact here.
    [Theory]
    [InlineData(0.05, 0.0)]
    [InlineData(0.5, 0.0)]
    [InlineData(0.0, 0.3)]
    [InlineData(0.3, 0.2)]
    public void A_brace_stiffens_and_loads_a_panel_as_the_exact_series_says(double stiffnessShare, double massShare)
    {
        const double Width = 0.4,
            Height = 0.3;
        var brace = new BraceLine(0, stiffnessShare * Bending.StiffnessNm * Width, massShare * Mass * Width);
        var first = ShearPlate.First(Bending, Mass, Width, Height, PanelEdges.Supported, new PlateHold(0, [brace])).FirstModeHz;
        Assert.Equal(FirstOfSeries(brace, Width, Height), first, 5e-3 * first);
    }

    [Fact]
    public void Braces_that_bend_little_hold_little_and_weigh()
    {
        var bare = ShearPlate.First(Bending, Mass, 0.3, 0.2, PanelEdges.Supported).FirstModeHz;
        double With(PlateHold hold) => ShearPlate.First(Bending, Mass, 0.3, 0.2, PanelEdges.Supported, hold).FirstModeHz;
        Assert.Equal(bare, With(PlateHold.OfBraces(0, 2e9, 1270, 0.006, 0.028)), 1e-9 * bare);
        Assert.True(With(new PlateHold(0, [new BraceLine(0, 0, 1)])) < bare);
        Assert.True(With(PlateHold.OfBraces(2, 2e9, 1270, 0.006, 0.028)) > With(PlateHold.OfBraces(1, 2e9, 1270, 0.006, 0.028)));
    }

    [Fact]
    public void Equal_braces_stand_at_equal_distances_and_are_as_stiff_as_a_rectangular_section()
    {
        var hold = PlateHold.OfBraces(3, 2e9, 1270, 0.006, 0.028);
        Assert.Equal([-0.5, 0, 0.5], hold.Braces.Select(b => b.PlaceRatio));
        Assert.All(hold.Braces, b => Assert.Equal(21.952, b.BendingNm2, 1e-3));
        Assert.All(hold.Braces, b => Assert.Equal(0.21336, b.MassKgM, 1e-6));
    }

    [Fact]
    public void Braces_on_one_side_alone_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ShearPlate.Solve(Bending, Mass, 0.3, 0.2, PanelEdges.Supported, new PlateHold(0, [new BraceLine(0.5, 1, 0)])));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearPlate.Solve(Bending, Mass, 0.3, 0.2, PanelEdges.Supported, new PlateHold(-1, [])));
    }

    private static double FirstOfSeries(BraceLine brace, double width, double height)
    {
        double Wave(int m) => Bending.StiffnessNm * Math.Pow(Math.Pow(m * Math.PI / width, 2) + Math.Pow(Math.PI / height, 2), 2);
        double Rest(double square) =>
            1
            + (brace.BendingNm2 * Math.Pow(Math.PI / height, 4) - square * brace.MassKgM)
                * 2
                / width
                * Enumerable.Range(0, 2000).Sum(i => 1 / (Wave(2 * i + 1) - square * Mass));
        var (low, high) = (0.0, Wave(3) / Mass * (1 - 1e-9));
        if (brace.BendingNm2 > 0 && brace.MassKgM == 0)
        {
            low = Wave(1) / Mass * (1 + 1e-9);
        }
        else if (brace.BendingNm2 == 0)
        {
            high = Wave(1) / Mass * (1 - 1e-9);
        }
        else
        {
            // Whether the brace raises or lowers the mode tells on which side of the bare one the root lies.
            var bare = Wave(1) / Mass;
            (low, high) = brace.BendingNm2 * Math.Pow(Math.PI / height, 4) > bare * brace.MassKgM ? (bare * (1 + 1e-9), high) : (low, bare * (1 - 1e-9));
        }

        var atLow = Math.Sign(Rest(low));
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Math.Sign(Rest(middle)) == atLow ? (middle, high) : (low, middle);
        }

        return Math.Sqrt(low) / (2 * Math.PI);
    }
}
