using CsCheck;
using Stillwall.Walls;
using static Stillwall.Tests.Walls.PlateData;

namespace Stillwall.Tests.Walls;

public class ThinPlateTests
{
    // A strip on two supports: 5/384 in the middle, 1/120 in the mean, first mode π² (elementary beam theory); its ends take a share of about ratio
    // from the mean.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.005)]
    [InlineData(0.0002)]
    public void A_long_plate_bends_as_a_strip_across_its_shorter_side_whichever_way_it_lies(double ratio)
    {
        var (upright, lying) = (ThinPlate.Factors(ratio, PanelEdges.Supported), ThinPlate.Factors(1 / ratio, PanelEdges.Supported));

        Assert.Equal(Math.PI * Math.PI * (1 + ratio * ratio), upright.FrequencyFactors[0], 1e-9);
        Assert.Equal(5.0 / 384, upright.CentreFactor, 0.02 * 5 / 384);
        Assert.Equal(1.0 / 120, upright.MeanFactor, 0.02 / 120);
        Assert.Equal(upright.FrequencyFactors[0], lying.FrequencyFactors[0] * ratio * ratio, 1e-9);
        Assert.Equal(upright.CentreFactor, lying.CentreFactor / Math.Pow(ratio, 4), 1e-6 * upright.CentreFactor);
        Assert.Equal(upright.MeanFactor, lying.MeanFactor / Math.Pow(ratio, 4), 1e-6 * upright.MeanFactor);
    }

    [Fact]
    public void Clamped_plates_agree_with_the_converged_frequencies()
    {
        foreach (var row in Rows("clamped.csv").Where(r => r[1] == "converged"))
        {
            AssertModes(row, 1e-4);
        }
    }

    [Fact]
    public void Clamped_plates_agree_with_the_printed_table_and_lie_just_under_it()
    {
        foreach (var row in Rows("clamped.csv").Where(r => r[1] == "leissa"))
        {
            AssertModes(row, 1.5e-3);
            Assert.True(ThinPlate.Factors(Number(row[0]), PanelEdges.Clamped).FrequencyFactors[0] < Number(row[2]) + 5e-4);
        }
    }

    [Theory]
    [InlineData(1.0, 19.739, 49.348, 49.348, 78.957, 98.696, 98.696)]
    [InlineData(1.5, 32.076, 61.685, 98.696, 111.033, 128.305, 177.653)]
    public void Supported_plates_have_the_exact_frequencies(double ratio, params double[] expected)
    {
        var modes = ThinPlate.Factors(ratio, PanelEdges.Supported).FrequencyFactors;
        Assert.All(expected.Zip(modes), pair => Assert.Equal(pair.First, pair.Second, 2e-5 * pair.First));
    }

    [Fact]
    public void Centre_deflections_agree_with_the_tables_of_plates()
    {
        foreach (var row in Rows("deflection.csv"))
        {
            var ratio = 1 / Number(row[0]);
            Assert.Equal(Number(row[1]), ThinPlate.Factors(ratio, PanelEdges.Supported).CentreFactor, 6e-7);
            Assert.Equal(Number(row[2]), ThinPlate.Factors(ratio, PanelEdges.Clamped).CentreFactor, 6e-7);
        }
    }

    // The limits of a strip whose ends are far away: centre 1/384 and 5/384, mean over the span 1/720 and 1/120 (elementary beam theory).
    [Theory]
    [InlineData(PanelEdges.Clamped, 1.0 / 384, 1.0 / 720)]
    [InlineData(PanelEdges.Supported, 5.0 / 384, 1.0 / 120)]
    public void A_strippanel_is_a_strip_in_its_middle(PanelEdges edges, double centre, double mean)
    {
        var strip = ThinPlate.Factors(1.0 / 8, edges);
        Assert.Equal(centre, strip.CentreFactor, 0.01 * centre);
        Assert.InRange(strip.MeanFactor, 0.85 * mean, mean);
    }

    // A second method: thirteen-point finite differences on the whole plate, whose error falls with the square of the mesh; two meshes are extrapolated.
    [Theory]
    [InlineData(PanelEdges.Clamped, 1.0)]
    [InlineData(PanelEdges.Clamped, 0.5)]
    [InlineData(PanelEdges.Supported, 1.0)]
    [InlineData(PanelEdges.Supported, 0.5)]
    public void Mean_and_centre_agree_with_finite_differences(PanelEdges edges, double ratio)
    {
        var (coarse, fine) = (FiniteDifferencePlate.Solve(edges, ratio, 12), FiniteDifferencePlate.Solve(edges, ratio, 24));
        var factors = ThinPlate.Factors(ratio, edges);
        Assert.Equal((4 * fine.Centre - coarse.Centre) / 3, factors.CentreFactor, 3e-3 * factors.CentreFactor);
        Assert.Equal((4 * fine.Mean - coarse.Mean) / 3, factors.MeanFactor, 3e-3 * factors.MeanFactor);
    }

    [Fact]
    public void Turning_a_panel_by_a_right_angle_changes_nothing()
    {
        Gen.Double[0.2, 5]
            .Sample(
                ratio =>
                {
                    foreach (var edges in Enum.GetValues<PanelEdges>())
                    {
                        var one = ThinPlate.Factors(ratio, edges);
                        var turned = ThinPlate.Factors(1 / ratio, edges);
                        Assert.All(one.FrequencyFactors.Zip(turned.FrequencyFactors), p => Assert.Equal(p.First, p.Second * ratio * ratio, 1e-8 * p.First));
                        Assert.Equal(one.MeanFactor, turned.MeanFactor / Math.Pow(ratio, 4), 1e-8 * one.MeanFactor);
                    }
                },
                iter: 30
            );
    }

    [Fact]
    public void Clamping_the_edges_raises_every_mode_and_lowers_the_deflection()
    {
        Gen.Double[0.2, 5]
            .Sample(
                ratio =>
                {
                    var (clamped, supported) = (ThinPlate.Factors(ratio, PanelEdges.Clamped), ThinPlate.Factors(ratio, PanelEdges.Supported));
                    Assert.All(clamped.FrequencyFactors.Zip(supported.FrequencyFactors), p => Assert.True(p.First > p.Second));
                    Assert.True(clamped.CentreFactor < supported.CentreFactor);
                },
                iter: 30
            );
    }

    [Fact]
    public void A_ratio_that_makes_no_sense_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => ThinPlate.Factors(0, PanelEdges.Clamped));

    private static void AssertModes(string[] row, double tolerance)
    {
        var modes = ThinPlate.Factors(Number(row[0]), PanelEdges.Clamped).FrequencyFactors;
        Assert.All(row[2..].Select(Number).Zip(modes), pair => Assert.Equal(pair.First, pair.Second, tolerance * pair.First));
    }
}
