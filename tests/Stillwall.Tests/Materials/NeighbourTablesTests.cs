using CsCheck;
using Stillwall.Materials;
using Stillwall.Tests.Neighbours;

namespace Stillwall.Tests.Materials;

public class NeighbourTablesTests
{
    [Fact]
    public void Third_octaves_have_the_edges_of_the_standards_example()
    {
        // IEC 61260-1:2014: the 50 Hz band is 44.6684 / 50.1187 / 56.2341 Hz.
        var band = ThirdOctaves.Bands.Single(b => b.NominalHz == 50);
        Assert.Equal(44.6684, band.LowerHz, 5e-5);
        Assert.Equal(50.1187, band.CentreHz, 5e-5);
        Assert.Equal(56.2341, band.UpperHz, 5e-5);
        Assert.Equal(0.230768, (band.UpperHz - band.LowerHz) / band.CentreHz, 5e-7);
    }

    [Fact]
    public void Third_octaves_meet_edge_to_edge_from_20_to_160_hertz()
    {
        Assert.Equal([20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160], ThirdOctaves.Bands.Select(b => b.NominalHz));
        foreach (var (lower, upper) in ThirdOctaves.Bands.Zip(ThirdOctaves.Bands.Skip(1)))
        {
            Assert.Equal(lower.UpperHz, upper.LowerHz, 1e-9);
        }
    }

    [Fact]
    public void The_frequencies_of_a_band_lie_within_it_evenly_over_its_logarithm()
    {
        foreach (var band in ThirdOctaves.Bands)
        {
            var points = ThirdOctaves.FrequenciesHz(band, 15);
            Assert.Equal(15, points.Count);
            Assert.All(points, f => Assert.InRange(f, band.LowerHz, band.UpperHz));
            Assert.Equal(band.CentreHz, points[7], 1e-9);
            Assert.Equal(Math.Log(band.UpperHz / band.LowerHz) / 15, Math.Log(points[1] / points[0]), 1e-12);
        }
    }

    [Fact]
    public void Two_equal_levels_are_three_decibels_more() =>
        Gen.Double[-100, 150].Sample(level => Assert.Equal(level + (10 * Math.Log10(2)), ThirdOctaves.SumDb([level, level]), 1e-9));

    [Fact]
    public void Weightings_agree_with_the_standards_table_at_exact_frequencies()
    {
        foreach (var row in QuietData.Numbers("hearing", "weightings.csv"))
        {
            Assert.Equal(row[1], Weightings.ADb(row[0]), 0.06);
            Assert.Equal(row[2], Weightings.CDb(row[0]), 0.06);
        }

        Assert.Equal(0, Weightings.ADb(1000), 1e-12);
        Assert.Equal(0, Weightings.CDb(1000), 1e-12);
    }

    [Fact]
    public void A_named_wall_carries_its_published_octave_values()
    {
        var rows = QuietData.Rows("partition", "octaves.csv");
        Assert.Equal(rows.Concat(QuietData.Rows("partition", "thirds.csv")).Select(row => row[0]), Partitions.Names);
        foreach (var row in rows)
        {
            var reduction = Partitions.ReductionDb(row[0])!;
            var (at63, at125, at250) = (QuietData.Number(row[1]), QuietData.Number(row[2]), QuietData.Number(row[3]));
            Assert.Equal(at125, reduction[8], 1e-9);
            Assert.Equal(double.IsNaN(at63) ? at125 - 6 : at63, reduction[5], 1e-9);

            // A third of the octave above 125 Hz, and two octaves less a third under 63 Hz at 20 Hz: five thirds at 6 dB per octave.
            Assert.Equal(at125 + ((at250 - at125) / 3), reduction[9], 1e-9);
            Assert.Equal(Math.Max(0, reduction[5] - 10), reduction[0], 1e-9);
        }

        Assert.Null(Partitions.ReductionDb("paper"));
    }

    [Fact]
    public void The_walls_deviation_is_the_standards()
    {
        var rows = QuietData.Numbers("partition", "deviation.csv");
        Assert.Equal(rows.Select(row => row[1]), Partitions.StandardDeviationDb);
        Assert.Equal(rows.Select(row => row[0]), ThirdOctaves.Bands.Select(b => b.NominalHz));
    }

    [Fact]
    public void A_brick_leaf_has_the_mass_law_of_a_printed_problem() =>
        // Norton and Karczub 2003, problem 3.11: 231 kg/m², 63 Hz, 1.21 kg/m³, 343 m/s: 35.8 dB with 5 dB off.
        Assert.Equal(35.8, Partitions.MassLawDb(63, 231, new Air(20, 101325, 343, 1.21, 1.81e-5), 5), 0.05);

    [Fact]
    public void A_heavier_leaf_is_quieter() =>
        Gen.Select(Gen.Double[20, 160], Gen.Double[1, 1000], Gen.Double[1.01, 3])
            .Sample((f, mass, factor) => Assert.True(Partitions.MassLawDb(f, mass * factor, Air.Reference) > Partitions.MassLawDb(f, mass, Air.Reference)));

    [Fact]
    public void The_hearing_threshold_is_the_standards() =>
        Assert.Equal(QuietData.Numbers("hearing", "threshold.csv").Select(row => (double?)row[1]), LimitCurves.LevelDb("hearing-threshold")!);

    [Fact]
    public void The_night_curve_says_nothing_where_it_was_not_published()
    {
        var rows = QuietData.Rows("hearing", "night.csv").Select(row => row[1].Length == 0 ? (double?)null : QuietData.Number(row[1]));
        Assert.Equal(rows, LimitCurves.LevelDb("night-rooms-se-2014")!);
        Assert.Null(LimitCurves.LevelDb("moonlight"));
    }

    [Fact]
    public void Every_programme_has_the_energy_of_zero_decibels()
    {
        foreach (var name in Programmes.Names)
        {
            Assert.Equal(0, ThirdOctaves.SumDb(Programmes.SpectrumDb(name)!), 1e-12);
        }

        Assert.All(Programmes.SpectrumDb("pink")!, level => Assert.Equal(-10, level, 1e-12));
        Assert.Null(Programmes.SpectrumDb("silence"));
    }

    [Fact]
    public void An_own_spectrum_keeps_its_shape() =>
        Gen.Double[-200, 200]
            .Array[10]
            .Sample(levels =>
            {
                var kept = Programmes.Normalised(levels);
                Assert.Equal(0, ThirdOctaves.SumDb(kept), 1e-9);
                Assert.Equal(levels[3] - levels[0], kept[3] - kept[0], 1e-9);
            });
}
