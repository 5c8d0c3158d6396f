using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class RoundHoleTests
{
    private const double Side = 0.4;
    private static readonly Layer[] Sheet = [new(0.001, 2e9, 0.3, 1270)];
    private static readonly BendingStiffness Bending = Laminate.Bonded(Sheet);
    private static readonly double Mass = Laminate.SurfaceDensityKgM2(Sheet);

    public static TheoryData<double, double, double, double, double> Holes =>
        [
            .. PlateData
                .Rows("hole.csv")
                .Select(r => (PlateData.Number(r[0]), PlateData.Number(r[1]), PlateData.Number(r[2]), PlateData.Number(r[3]), PlateData.Number(r[4]))),
        ];

    // A supported thin square with a round hole in its middle, a mass spread along its rim: frequency factor ωa²√(ρh/D) and mean deflection over
    // pa⁴/D, solved by Morley's plate elements.
    [Theory]
    [MemberData(nameof(Holes))]
    public void A_panel_with_a_hole_agrees_with_plate_elements(
        double holeOverSide,
        double rimMassRatio,
        double frequencyFactor,
        double meanFactor,
        double rimFactor
    )
    {
        var radius = holeOverSide * Side / 2;
        var hold = new PlateHold(0, [], new RoundHole(radius, radius, rimMassRatio * Mass * Side * Side, 0.02));
        var (first, mean) = ShearPlate.First(Bending, Mass, Side, Side, PanelEdges.Supported, hold);
        var expected = frequencyFactor * Math.Sqrt(Bending.StiffnessNm / Mass) / (2 * Math.PI * Side * Side);
        Assert.Equal(expected, first, 0.025 * expected);
        Assert.Equal(meanFactor * Math.Pow(Side, 4) / Bending.StiffnessNm, mean, 0.04 * mean);
        var byCone = ShearPlate.PressureModes(Bending, Mass, Side, Side, PanelEdges.Supported, hold).Sum(m => m.VolumePerConeM3PerPa);
        Assert.Equal(rimFactor * 0.02 * Math.Pow(Side, 4) / Bending.StiffnessNm, byCone, 0.05 * byCone);
    }

    [Fact]
    public void A_pinhole_changes_little_and_modes_add_up_to_the_rest()
    {
        var (bare, pinhole) = (
            ShearPlate.First(Bending, Mass, Side, 0.3, PanelEdges.Supported),
            ShearPlate.First(Bending, Mass, Side, 0.3, PanelEdges.Supported, new PlateHold(0, [], new RoundHole(1e-4, 1e-4, 0)))
        );
        Assert.Equal(bare.FirstModeHz, pinhole.FirstModeHz, 1e-3 * bare.FirstModeHz);
        var hold = new PlateHold(0, [], new RoundHole(0.09, 0.1, 0.5));
        var modes = ShearPlate.PressureModes(Bending, Mass, Side, 0.3, PanelEdges.Supported, hold);
        var (first, mean) = ShearPlate.First(Bending, Mass, Side, 0.3, PanelEdges.Supported, hold);
        Assert.Equal(first, modes[0].FirstModeHz, 1e-6 * first);
        Assert.Equal(mean * Side * 0.3, modes.Sum(m => m.VolumePerPressureM3PerPa), 1e-6 * mean * Side * 0.3);
    }

    [Fact]
    public void Holes_that_leave_no_panel_and_holes_with_braces_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ShearPlate.First(Bending, Mass, 0.2, 0.3, PanelEdges.Supported, new PlateHold(0, [], new RoundHole(0.098, 0.099, 0)))
        );
        Assert.Throws<ArgumentException>(() =>
            ShearPlate.First(
                Bending,
                Mass,
                0.2,
                0.3,
                PanelEdges.Supported,
                PlateHold.OfBraces(1, 2e9, 1270, 0.006, 0.028) with
                {
                    Hole = new RoundHole(0.05, 0.05, 0),
                }
            )
        );
        Assert.Throws<ArgumentException>(() =>
            ShearPlate.Solve(Bending, Mass, 0.2, 0.3, PanelEdges.Supported, new PlateHold(0, [], new RoundHole(0.05, 0.05, 0)))
        );
    }
}
