using System.Numerics;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Projects;
using Stillwall.Tests.Neighbours;

namespace Stillwall.Tests.Materials;

/// <summary>Walls of which more or less is known: third-octaves, one or two leaves, other paths, one number.</summary>
public class WallTests
{
    private static readonly double[] Rated = [.. QuietData.Numbers("partition", "rated.csv").Select(row => row[1])];

    [Fact]
    public void A_wall_known_in_third_octaves_is_as_printed_and_falls_by_six_decibels_an_octave_below()
    {
        foreach (var row in QuietData.Rows("partition", "thirds.csv"))
        {
            var (printed, reduction) = (row.Skip(1).Select(QuietData.Number).ToArray(), Partitions.ReductionDb(row[0])!);
            Assert.Equal(printed, reduction.Skip(4));

            // 20 Hz is four thirds of an octave under 50 Hz.
            Assert.Equal(printed[0] - 8, reduction[0], 1e-9);
        }
    }

    [Fact]
    public void The_standards_first_worked_example_has_its_printed_rating()
    {
        var rating = SoundRating.Of(Rated[3..19]);
        Assert.Equal((30, -2, -3), (rating.WeightedDb, rating.PinkTermDb, rating.TrafficTermDb));
        Assert.Equal(31.8, rating.UnfavourableSumDb, 1e-9);
        Assert.Null(rating.PinkTermFrom50HzDb);
    }

    [Fact]
    public void The_standards_second_worked_example_has_its_printed_terms_from_50_hertz()
    {
        var rating = SoundRating.Of(Rated[3..19], Rated[..3], Rated[19..]);
        Assert.Equal((-2.0, -4.0), (rating.PinkTermFrom50HzDb, rating.TrafficTermFrom50HzDb));
    }

    [Fact]
    public void The_standards_spectra_give_the_printed_sums_of_its_second_example()
    {
        // Printed 28.212 dB for spectrum 1 and 26.355 dB for spectrum 2, 50 to 5000 Hz: the whole-decibel terms above must be these less 30, rounded.
        double[] pink = [-41, -37, -34, -30, -27, -24, -22, -20, -18, -16, -14, -13, -12, -11, -10, -10, -10, -10, -10, -10, -10];
        double[] traffic = [-25, -23, -21, -20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15, -16, -18];
        Assert.Equal(28.212, SoundRating.DifferenceDb(pink, Rated), 0.001);
        Assert.Equal(26.355, SoundRating.DifferenceDb(traffic, Rated), 0.001);
    }

    [Fact]
    public void A_table_of_a_wall_gives_its_rating_and_the_row_to_state()
    {
        var table = QuietData.Numbers("partition", "rated.csv").ToDictionary(row => row[0], row => row[1]);
        var whole = RatedWall.Of(table);
        Assert.Equal((30, -2.0, 50.0), (whole.Rating!.WeightedDb, whole.Rating.PinkTermFrom50HzDb, whole.LowestKnownHz));
        Assert.Equal([18.7, 19.2, 20.0, 20.4, 16.3, 17.7], whole.ReductionDb!.Skip(4));
        Assert.Equal(18.7 - 8, whole.ReductionDb![0], 1e-9);

        // From 100 Hz alone the seven bands below fall by 2 dB each.
        var usual = RatedWall.Of(table.Where(p => p.Key >= 100).ToDictionary());
        Assert.Null(usual.Rating!.PinkTermFrom50HzDb);
        Assert.Equal(20.4 - 14, usual.ReductionDb![0], 1e-9);
        Assert.Equal(new RatedWall(null, null, null), RatedWall.Of(new Dictionary<double, double> { [200] = 30 }));
    }

    [Fact]
    public void A_wall_that_is_the_reference_itself_is_rated_by_what_it_may_fall_short()
    {
        // Two decibels up it falls short by 2 in each of sixteen bands: 32 dB, just within; so 52 + 2.
        double[] reference = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];
        Gen.Int[-20, 40].Sample(up => Assert.Equal(54 + up, SoundRating.Of([.. reference.Select(r => r + up)]).WeightedDb));
    }

    [Fact]
    public void Two_leaves_without_a_gap_are_one_of_both_masses() =>
        Gen.Select(Gen.Double[20, 160], Gen.Double[5, 300], Gen.Double[5, 300])
            .Sample(
                (f, first, second) =>
                    Assert.Equal(
                        Partitions.MassLawDb(f, first + second, QuietData.Air, 0),
                        -10 * Math.Log10(Leaves.TransmissionRatio(f, first, second, 1e-9, QuietData.Air)),
                        1e-4
                    )
            );

    [Fact]
    public void Two_leaves_let_most_through_where_worked_examples_resonate()
    {
        foreach (var row in QuietData.Numbers("partition", "worked.csv"))
        {
            var greatest = Enumerable.Range(200, 1400).Select(i => i / 10.0).MaxBy(f => Leaves.TransmissionRatio(f, row[0], row[1], row[2], Air.Reference));
            Assert.Equal(row[3], greatest, 3.0);
            Assert.InRange(Leaves.TransmissionRatio(greatest, row[0], row[1], row[2], Air.Reference), 0.9, 1 + 1e-9);
        }
    }

    [Fact]
    public void The_chain_of_leaf_air_and_leaf_agrees_with_waves_matched_at_each_face()
    {
        // A second way: amplitudes of waves to and fro in front, between and behind, from continuity of velocity and the leaves' inertia.
        Gen.Select(Gen.Double[20, 160], Gen.Double[5, 100], Gen.Double[5, 100], Gen.Double[0.02, 0.3])
            .Sample(
                (f, first, second, gap) =>
                {
                    var (omega, z) = (2 * Math.PI * f, QuietData.Air.DensityKgM3 * QuietData.Air.SpeedOfSoundMS);
                    var late = Complex.Exp(-Complex.ImaginaryOne * omega * gap / QuietData.Air.SpeedOfSoundMS);

                    // Behind: velocity v, pressure z v. Between at the far face: pressure p = z v + jω m2 v, so forward (p + z v)/2 and backward (p − z v)/2.
                    var p = z + (Complex.ImaginaryOne * omega * second);
                    var (forward, backward) = ((p + z) / 2 / late, (p - z) / 2 * late);
                    var (near, velocity) = (forward + backward, (forward - backward) / z);
                    var front = near + (Complex.ImaginaryOne * omega * first * velocity);
                    var incident = (front + (z * velocity)) / 2;
                    Assert.Equal(Math.Pow(z / incident.Magnitude, 2), Leaves.TransmissionRatio(f, first, second, gap, QuietData.Air), 1e-9);
                }
            );
    }

    [Fact]
    public void Another_path_of_the_same_reduction_costs_three_decibels() =>
        Gen.Double[10, 90]
            .Sample(reduction =>
            {
                Assert.Equal(reduction - (10 * Math.Log10(2)), Partitions.WithFlankingDb(reduction, reduction), 1e-9);
                Assert.Equal(reduction, Partitions.WithFlankingDb(reduction, reduction + 60), 1e-5);
            });

    [Fact]
    public void By_its_mass_alone_a_brick_wall_promises_up_to_eight_decibels_more_than_the_published_one()
    {
        // Bies, Hansen and Howard 2018, table 7.6: brick plastered, 480 kg/m², 34 dB in the octave of 63 Hz.
        var wall = PartyWall.Of(new Neighbour { Partition = "one-leaf", LeafKgM2 = 480 }, null);
        Assert.InRange(wall.ReductionDb![5] - 34, 0, 8);
        Assert.Equal(wall.ReductionDb[4] + 6, wall.ReductionDb[7], 0.1);
    }

    [Fact]
    public void Other_paths_hold_back_a_good_wall_but_not_a_measured_one()
    {
        var (bare, flanked) = (Of(QuietData.BrickWall), Of(QuietData.BrickWall with { FlankingDb = 30 }));
        Assert.All(bare.Zip(flanked), pair => Assert.True(pair.Second < pair.First && pair.Second < 30));
        double[] measured = [30, 30, 30, 30, 30, 30, 30, 30, 30, 30];
        Assert.Equal(measured, PartyWall.Of(QuietData.BrickWall with { FlankingDb = 20 }, measured).DifferenceDb!);

        static IReadOnlyList<double> Of(Neighbour neighbour) => PartyWall.Of(neighbour, null).ReductionDb!;
    }

    [Fact]
    public void A_wall_known_by_its_mass_alone_leaves_more_doubt()
    {
        var doubt = PartyWall
            .Of(QuietData.BrickWall with { Partition = "two-leaves", LeafKgM2 = 140, SecondLeafKgM2 = 140, GapM = 0.075 }, null)
            .UncertaintyDb!;
        Assert.All(doubt.Zip(PartyWall.Of(QuietData.BrickWall, null).UncertaintyDb!), pair => Assert.True(pair.First >= pair.Second));
        Assert.True(doubt[9] > 11);
    }
}
