using System.Numerics;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Tests.Neighbours;

public class QuietModelTests
{
    private static readonly RoomModel Room = RoomModel.Of(QuietData.ReadingRoom, QuietData.Air);
    private static readonly QuietInputs Case = QuietData.Inputs(Room);

    [Fact]
    public void The_bands_add_up_to_the_everyday_level() =>
        Gen.Select(Gen.Double[30, 110], Programme, Gen.Bool)
            .Sample(
                (level, programme, inRoom) =>
                {
                    var quiet = QuietModel.Of(
                        QuietData.Inputs(inRoom ? Room : null) with
                        {
                            Everyday = new Everyday { LevelDb = level, Programme = programme },
                        }
                    );
                    Assert.Equal(level, ThirdOctaves.SumDb(quiet.Bands.Select(b => b.SeatDb!.Value)), 1e-9);
                },
                iter: 30
            );

    [Fact]
    public void Every_band_obeys_the_standards_formula_through_the_wall()
    {
        // A2 = 0.16 · 36/0.5 = 11.52 m²; 10 log10(8/11.52) = −1.5836 dB.
        foreach (var (band, row) in QuietModel.Of(Case).Bands.Zip(QuietData.Numbers("hearing", "threshold.csv")))
        {
            Assert.Equal(row[0], band.BandHz);
            Assert.Equal(band.SourceRoomDb!.Value - band.ReductionDb!.Value - 1.5836, band.NeighbourDb!.Value, 0.0001);
            Assert.Equal(row[1], band.CurveDb!.Value);
            Assert.Equal(band.NeighbourDb.Value - row[1], band.OverDb!.Value, 1e-9);
        }
    }

    [Fact]
    public void The_uncertainty_is_the_standards_deviation_for_95_percent()
    {
        foreach (var (band, row) in QuietModel.Of(Case).Bands.Zip(QuietData.Numbers("partition", "deviation.csv")))
        {
            Assert.Equal(1.96 * row[1], band.UncertaintyDb!.Value, 1e-9);
        }
    }

    [Fact]
    public void A_band_has_the_mean_power_of_ten_times_as_many_frequencies_within_a_tenth_of_a_decibel()
    {
        // The same chain written out plainly, at 150 frequencies a band: gain and shape must both come out.
        var spectrum = Programmes.SpectrumDb("music")!;
        var powers = ThirdOctaves
            .Bands.Select(
                (band, i) =>
                {
                    var points = Enumerable.Range(0, 150).Select(p => band.LowerHz * Math.Pow(10, (p + 0.5) / 1500)).ToArray();
                    double Mean(Func<double, double> pressure) =>
                        points.Average(f => Math.Pow(pressure(f) * (QuietData.ClosedBox(f) * Analogue.FourthOrderLowPass(f, 95)).Magnitude, 2))
                        * Math.Pow(10, spectrum[i] / 10);
                    return (Seat: Mean(f => Room.SeatPressurePa(f, 1).Magnitude), Mean: Mean(f => Room.MeanPressurePa(f, 1)));
                }
            )
            .ToArray();
        var gain = Math.Pow(10, 6.2) / powers.Sum(p => p.Seat);
        foreach (var (band, power) in QuietModel.Of(Case).Bands.Zip(powers))
        {
            Assert.Equal(10 * Math.Log10(gain * power.Seat), band.SeatDb!.Value, 0.1);
            Assert.Equal(10 * Math.Log10(gain * power.Mean), band.SourceRoomDb!.Value, 0.1);
        }
    }

    [Fact]
    public void The_half_space_gives_what_hand_work_gives()
    {
        // U ∝ 1/f on top of no box at all, pink, crossover far above: every band alike, 62 − 10 log10(10) = 52 dB.
        var quiet = QuietModel.Of(
            QuietData.Inputs() with
            {
                Everyday = new Everyday { LevelDb = 62, Programme = "pink" },
                CrossoverHz = 1000,
                VolumeVelocityM3S = f => new Complex(0, -0.01 / f),
            }
        );
        Assert.All(quiet.Bands, band => Assert.Equal(52, band.SeatDb!.Value, 0.01));
        Assert.All(quiet.Bands, band => Assert.Equal(band.SeatDb, band.SourceRoomDb));
        Assert.Null(quiet.LowestRoomModeHz);
    }

    [Fact]
    public void Louder_everyday_is_louder_next_door_decibel_for_decibel_and_no_more_polite() =>
        Gen.Select(Gen.Double[40, 90], Gen.Double[0.1, 20])
            .Sample(
                (level, more) =>
                {
                    var (soft, loud) = (At(level), At(level + more));
                    Assert.All(soft.Bands.Zip(loud.Bands), pair => Assert.Equal(pair.First.NeighbourDb!.Value + more, pair.Second.NeighbourDb!.Value, 1e-9));
                    Assert.Equal(soft.LoudestPoliteLevelDb!.Value, loud.LoudestPoliteLevelDb!.Value, 1e-9);
                },
                iter: 30
            );

    [Fact]
    public void At_the_loudest_polite_level_the_worst_band_touches_the_curve() =>
        Gen.Double[40, 100]
            .Sample(
                level =>
                {
                    var polite = At(At(level).LoudestPoliteLevelDb!.Value);
                    Assert.Equal(0, polite.Bands.Max(b => b.OverDb!.Value), 1e-9);
                },
                iter: 20
            );

    [Fact]
    public void The_equaliser_never_lowers_the_polite_level() =>
        Gen.Select(Gen.Double[30, 110], Programme, Gen.Bool)
            .Sample(
                (level, programme, inRoom) =>
                {
                    var quiet = QuietModel.Of(
                        QuietData.Inputs(inRoom ? Room : null) with
                        {
                            Everyday = new Everyday { LevelDb = level, Programme = programme },
                        }
                    );
                    Assert.True(quiet.LoudestPoliteLevelWithEqualiserDb >= quiet.LoudestPoliteLevelDb);
                    Assert.True(quiet.SeatLossDb >= 0);
                    Assert.Equal(quiet.LoudestPoliteLevelDb >= level, quiet.Bands.All(b => b.OverDb <= 0));
                },
                iter: 60
            );

    [Fact]
    public void Where_only_the_lowest_octave_is_too_loud_an_equaliser_just_makes_it_polite()
    {
        // A thin wall and a lenient curve but in the lowest bands: only a cut there is needed.
        var quiet = QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { Curve = "own", CurveDb = [-2, 3, 6, 90, 90, 90, 90, 90, 90, 90] } });
        Assert.True(quiet.LoudestPoliteLevelDb < 62);
        Assert.NotEmpty(quiet.Equaliser!);
        Assert.InRange(quiet.LoudestPoliteLevelWithEqualiserDb!.Value, 62, 62.1);
        Assert.InRange(quiet.SeatLossDb!.Value, 0, quiet.PlainHighPass!.SeatLossDb);
    }

    [Fact]
    public void Where_a_cut_as_deep_as_a_shelf_goes_is_not_enough_the_number_says_so()
    {
        var quiet = QuietModel.Of(
            Case with
            {
                Everyday = new Everyday { LevelDb = 130, Programme = "pink" },
            }
        );
        Assert.NotEmpty(quiet.Equaliser!);
        Assert.InRange(quiet.LoudestPoliteLevelWithEqualiserDb!.Value, quiet.LoudestPoliteLevelDb!.Value, 130);
    }

    [Fact]
    public void A_polite_level_needs_no_equaliser()
    {
        var quiet = At(20);
        Assert.Empty(quiet.Equaliser!);
        Assert.Equal(quiet.LoudestPoliteLevelDb, quiet.LoudestPoliteLevelWithEqualiserDb);
        Assert.Equal(0, quiet.SeatLossDb);
    }

    [Fact]
    public void A_heavier_wall_is_quieter()
    {
        string[] byMass = ["brick-125-plastered", "brick-255-plastered"];
        var levels = byMass.Select(name => QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { Partition = name } })).ToArray();
        Assert.All(levels[0].Bands.Zip(levels[1].Bands), pair => Assert.True(pair.First.NeighbourDb > pair.Second.NeighbourDb));
        Assert.True(levels[0].LoudestPoliteLevelDb < levels[1].LoudestPoliteLevelDb);
    }

    [Fact]
    public void An_own_wall_replaces_the_table()
    {
        double[] own = [20, 22, 24, 26, 28, 30, 32, 34, 36, 38];
        var quiet = QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { Partition = "own", ReductionDb = own } });
        Assert.Equal(own, quiet.Bands.Select(b => b.ReductionDb!.Value));
    }

    [Fact]
    public void A_measured_wall_replaces_reduction_and_room_and_leaves_less_doubt()
    {
        var measured = Enumerable.Repeat(30.0, 10).ToArray();
        var quiet = QuietModel.Of(Case with { PartyWallDb = measured });
        Assert.All(
            quiet.Bands.Zip(QuietModel.Of(Case).Bands),
            pair =>
            {
                Assert.Equal(pair.First.SourceRoomDb!.Value - 30, pair.First.NeighbourDb!.Value, 1e-9);
                Assert.Equal(30 - 1.5836, pair.First.ReductionDb!.Value, 0.0001);
                Assert.True(pair.First.UncertaintyDb < pair.Second.UncertaintyDb);
            }
        );
    }

    [Fact]
    public void A_measured_wall_needs_no_neighbouring_rooms_size()
    {
        var quiet = QuietModel.Of(
            Case with
            {
                PartyWallDb = Enumerable.Repeat(30.0, 10).ToArray(),
                Neighbour = new Neighbour { Curve = "hearing-threshold" },
            }
        );
        Assert.All(quiet.Bands, band => Assert.Null(band.ReductionDb));
        Assert.NotNull(quiet.LoudestPoliteLevelDb);
        Assert.Empty(quiet.Missing);
    }

    [Fact]
    public void An_allowance_raises_the_curve_and_the_polite_level_alike()
    {
        var (strict, lenient) = (QuietModel.Of(Case), QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { AllowanceDb = 4 } }));
        Assert.Equal(strict.LoudestPoliteLevelDb!.Value + 4, lenient.LoudestPoliteLevelDb!.Value, 1e-9);
    }

    [Fact]
    public void A_curve_judges_nothing_below_where_it_begins()
    {
        var quiet = QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { Curve = "night-rooms-se-2014" } });
        Assert.All(quiet.Bands.Take(2), band => Assert.True(band is { OverDb: null, CurveDb: null, NeighbourDb: not null }));
        Assert.NotNull(quiet.LoudestPoliteLevelDb);
    }

    [Fact]
    public void The_weighted_levels_at_the_seat_are_those_of_its_bands()
    {
        var quiet = QuietModel.Of(Case);
        var weighted = quiet.Bands.Zip(ThirdOctaves.Bands, (level, band) => level.SeatDb!.Value + Weightings.ADb(band.CentreHz));
        Assert.Equal(10 * Math.Log10(weighted.Sum(level => Math.Pow(10, level / 10))), quiet.SeatADb!.Value, 1e-9);
        Assert.InRange(quiet.SeatCDb!.Value, quiet.SeatADb.Value + 15, 62);
    }

    [Fact]
    public void Without_an_everyday_level_only_wall_and_curve_are_known()
    {
        var quiet = QuietModel.Of(Case with { Everyday = null });
        Assert.Equal(10, quiet.Bands.Count);
        Assert.All(
            quiet.Bands,
            band => Assert.True(band is { SeatDb: null, SourceRoomDb: null, NeighbourDb: null, OverDb: null, ReductionDb: not null, CurveDb: not null })
        );
        Assert.True(quiet is { LoudestPoliteLevelDb: null, Equaliser: null, LoudestPoliteLevelWithEqualiserDb: null, SeatLossDb: null, SeatADb: null });
        Assert.Equal(["brief.everyday"], quiet.Missing);
    }

    [Fact]
    public void Without_a_neighbour_seat_and_source_room_are_known()
    {
        var quiet = QuietModel.Of(Case with { Neighbour = null });
        Assert.All(
            quiet.Bands,
            band => Assert.True(band is { SeatDb: not null, SourceRoomDb: not null, NeighbourDb: null, CurveDb: null, UncertaintyDb: null })
        );
        Assert.Null(quiet.LoudestPoliteLevelDb);
        Assert.Equal(["brief.neighbour"], quiet.Missing);
    }

    [Theory]
    [InlineData("brief.aim.crossover")]
    [InlineData("driver")]
    [InlineData("brief.everyday.level")]
    [InlineData("brief.everyday.spectrum")]
    [InlineData("brief.room.width")]
    [InlineData("brief.neighbour.area")]
    [InlineData("brief.neighbour.room_volume")]
    [InlineData("brief.neighbour.decay_time")]
    [InlineData("brief.neighbour.partition")]
    [InlineData("brief.neighbour.reduction")]
    [InlineData("brief.neighbour.curve")]
    public void What_is_missing_is_named_and_the_answer_unknown(string key)
    {
        var quiet = QuietModel.Of(
            key switch
            {
                "brief.aim.crossover" => Case with { CrossoverHz = null },
                "driver" => Case with { VolumeVelocityM3S = null },
                "brief.everyday.level" => Case with { Everyday = new Everyday() },
                "brief.everyday.spectrum" => Case with
                {
                    Everyday = new Everyday { LevelDb = 62, Programme = "own" },
                },
                "brief.room.width" => Case with { Room = null },
                "brief.neighbour.area" => Case with { Neighbour = QuietData.BrickWall with { AreaM2 = null } },
                "brief.neighbour.room_volume" => Case with { Neighbour = QuietData.BrickWall with { RoomVolumeM3 = null } },
                "brief.neighbour.decay_time" => Case with { Neighbour = QuietData.BrickWall with { DecayTimeS = null } },
                "brief.neighbour.partition" => Case with { Neighbour = QuietData.BrickWall with { Partition = null } },
                "brief.neighbour.reduction" => Case with { Neighbour = QuietData.BrickWall with { Partition = "own" } },
                _ => Case with { Neighbour = QuietData.BrickWall with { Curve = null } },
            }
        );
        Assert.Equal([key], quiet.Missing);
        Assert.Null(quiet.LoudestPoliteLevelDb);
    }

    [Fact]
    public void A_cabinet_that_is_silent_has_no_level()
    {
        var quiet = QuietModel.Of(Case with { VolumeVelocityM3S = _ => Complex.Zero });
        Assert.All(quiet.Bands, band => Assert.Null(band.SeatDb));
        Assert.Equal(["driver"], quiet.Missing);
    }

    [Fact]
    public void A_projects_statements_reach_the_inputs()
    {
        var project = new Project
        {
            FormatVersion = 1,
            Brief = new Brief
            {
                Aim = new Aim { CrossoverHz = 95, DistanceM = 3 },
                Everyday = new Everyday { LevelDb = 62 },
                Neighbour = QuietData.BrickWall,
            },
            Measured = new Measured { PartyWallDb = new double[10] },
        };
        var inputs = QuietInputs.From(project, QuietData.Air, null, QuietData.ClosedBox);
        Assert.True(inputs is { CrossoverHz: 95, DistanceM: 3, Everyday.LevelDb: 62, StatedRoom: null, PartyWallDb.Count: 10 });
        Assert.Equal(QuietData.BrickWall, inputs.Neighbour);
    }

    private static Gen<string> Programme => Gen.Int[0, 3].Select(i => Programmes.Names[i]);

    private static Quiet At(double level) =>
        QuietModel.Of(
            Case with
            {
                Everyday = new Everyday { LevelDb = level, Programme = "music" },
            }
        );
}
