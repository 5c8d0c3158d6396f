using System.Numerics;
using CsCheck;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Joins;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Tests.Neighbours;

public class JoiningTests
{
    private static readonly JoiningInputs Ours = new(95, 48, 0.72, 95, 0.8);

    [Fact]
    public void Ideal_partners_join_without_a_ripple()
    {
        // Box and main speakers with their corners far away leave the all-pass of the two fourth-order halves: flat, nothing to set.
        var joining = Joining.Of(new JoiningInputs(95, 0.01, 0.707, 0.01, 0.707));
        Assert.Equal(0, joining.RippleDb, 0.001);
        Assert.Equal(0, joining.DelayS, 1e-5);
        Assert.Equal(0, joining.TrimDb, 0.01);
        Assert.False(joining.Inverted);
    }

    [Fact]
    public void The_ripple_is_half_the_span_of_the_sum_from_half_to_twice_the_crossover()
    {
        var joining = Joining.Of(Ours);
        var sums = joining.Curve.Where(p => p.FrequencyHz > 47.4 && p.FrequencyHz < 190.1).Select(p => p.SumDb).ToArray();
        Assert.Equal(49, sums.Length);
        Assert.Equal((sums.Max() - sums.Min()) / 2, joining.RippleDb, 1e-9);
    }

    [Fact]
    public void The_sum_is_that_of_pressures_with_the_main_speakers_delayed()
    {
        var joining = Joining.Of(Ours);
        foreach (var point in joining.Curve)
        {
            var s = new Complex(0, point.FrequencyHz);
            var cabinet =
                s
                * s
                / ((s * s) + (s * 48 / 0.72) + (48 * 48))
                * Analogue.FourthOrderLowPass(point.FrequencyHz, 95)
                * Math.Pow(10, joining.TrimDb / 20)
                * (joining.Inverted ? -1 : 1);
            var speakers =
                s
                * s
                / ((s * s) + (s * 95 / 0.8) + (95 * 95))
                * Analogue.FourthOrderHighPass(point.FrequencyHz, 95)
                * Complex.Exp(-s * 2 * Math.PI * joining.DelayS);
            Assert.Equal(20 * Math.Log10((cabinet + speakers).Magnitude), point.SumDb, 1e-9);
            Assert.Equal(20 * Math.Log10(cabinet.Magnitude), point.CabinetDb, 1e-9);
            Assert.Equal(20 * Math.Log10(speakers.Magnitude), point.MainSpeakersDb, 1e-9);
        }
    }

    [Fact]
    public void A_finer_grid_finds_nothing_much_better()
    {
        var joining = Joining.Of(Ours);
        var least = double.PositiveInfinity;
        for (var delay = -1.0; delay <= 1; delay += 0.02)
        {
            for (var trim = -6.0; trim <= 6; trim += 0.25)
            {
                foreach (var sign in new[] { 1, -1 })
                {
                    least = Math.Min(least, Ripple(delay / 95, trim, sign));
                }
            }
        }

        Assert.True(joining.RippleDb < least + 0.02, $"found {joining.RippleDb}, a grid finds {least}");
    }

    [Fact]
    public void Setting_something_is_never_worse_than_setting_nothing() =>
        Gen.Select(Gen.Double[60, 150], Gen.Double[25, 80], Gen.Double[0.5, 1.2], Gen.Double[40, 140], Gen.Double[0.5, 1.2])
            .Sample(
                (crossover, resonance, q, corner, mainSpeakersQ) =>
                {
                    var joining = Joining.Of(new JoiningInputs(crossover, resonance, q, corner, mainSpeakersQ));
                    var bare = joining
                        .Curve.Where(p => p.FrequencyHz > crossover * 0.499 && p.FrequencyHz < crossover * 2.001)
                        .Select(p =>
                            20
                            * Math.Log10(
                                (
                                    (Analogue.HighPass(p.FrequencyHz, resonance, q) * Analogue.FourthOrderLowPass(p.FrequencyHz, crossover))
                                    + (Analogue.HighPass(p.FrequencyHz, corner, mainSpeakersQ) * Analogue.FourthOrderHighPass(p.FrequencyHz, crossover))
                                ).Magnitude
                            )
                        )
                        .ToArray();
                    Assert.True(joining.RippleDb <= ((bare.Max() - bare.Min()) / 2) + 1e-9);
                    Assert.InRange(joining.TrimDb, -6, 6);
                    Assert.InRange(joining.DelayS, -1 / crossover, 1 / crossover);
                },
                iter: 30
            );

    [Fact]
    public void Second_order_halves_join_without_a_ripple_when_one_is_turned()
    {
        // (1 − s²)/(1 + s)² has the magnitude 1 everywhere (closed form).
        var joining = Joining.Of(new JoiningInputs(95, 0.01, 0.707, 0.01, 0.707) { LowPassOrder = 2, HighPassOrder = 2 });
        Assert.Equal(0, joining.RippleDb, 0.001);
        Assert.True(joining.Inverted);
        Assert.Equal(0, joining.TrimDb, 0.01);
    }

    [Fact]
    public void The_four_ways_are_each_at_their_best_and_sorted()
    {
        var ways = Joining.Ways(Ours);
        Assert.Equal([(2, 2), (2, 4), (4, 2), (4, 4)], ways.Select(w => (w.LowPassOrder, w.HighPassOrder)).Order());
        Assert.Equal(ways.Select(w => w.RippleDb).Order(), ways.Select(w => w.RippleDb));
        Assert.Equal(Joining.Of(Ours).RippleDb, ways.Single(w => w is { LowPassOrder: 4, HighPassOrder: 4 }).RippleDb);
        Assert.Throws<ArgumentOutOfRangeException>(() => Joining.Of(Ours with { HighPassOrder = 6 }));
    }

    [Fact]
    public void In_a_room_without_walls_near_by_the_seat_joins_as_the_free_field_does()
    {
        // A hall in which every wall is far and sound dies at once: what is left is the direct sound. Main speakers and cabinet side by side, all
        // three equally far from the seat.
        var hall = new RoomGeometry(60, 60, 60, 0.05, 0.05, new Place(30, 30, 30), new Place(30, 33, 30));
        var inputs = new JoiningInputs(95, 0.01, 0.707, 0.01, 0.707);
        var free = Joining.Of(inputs);
        var seat = SeatJoining.Of(inputs, free, hall, QuietData.Air, new Place(30, 30, 30), new Place(30, 30, 30));
        Assert.InRange(seat.RippleDb, 0, 1);
        Assert.InRange(seat.FreeFieldRippleDb, seat.RippleDb - 1e-9, 1.2);
        Assert.False(seat.Inverted);
        Assert.Equal(0, seat.TrimDb, 1.0);
    }

    [Fact]
    public void At_the_seat_the_search_is_no_worse_than_the_free_fields_setting_and_a_moved_seat_no_better_than_its_own_best()
    {
        var (left, right) = (new Place(0.6, 0.3, 1), new Place(2.6, 0.3, 1));
        var seat = SeatJoining.Of(Ours, Joining.Of(Ours), QuietData.ReadingRoom, QuietData.Air, left, right);
        Assert.True(seat.RippleDb <= seat.FreeFieldRippleDb + 1e-9);
        var moved = new[] { (-0.3, 0.0), (0.3, 0), (0, -0.3), (0, 0.3) }.Select(way =>
            QuietData.ReadingRoom with
            {
                Seat = QuietData.ReadingRoom.Seat with { XM = 2.2 + way.Item1, YM = 2.9 + way.Item2 },
            }
        );
        Assert.All(moved, there => Assert.True(SeatJoining.Of(Ours, Joining.Of(Ours), there, QuietData.Air, left, right).RippleDb <= seat.MovedRippleDb + 0.5));
    }

    [Fact]
    public void A_brief_without_main_speakers_or_crossover_has_nothing_to_join()
    {
        var brief = new Brief
        {
            Aim = new Aim { CrossoverHz = 95 },
            MainSpeakers = new MainSpeakers { CornerHz = 95, Q = 0.8 },
        };
        Assert.Equal(Ours, JoiningInputs.From(brief, 48, 0.72));
        Assert.Null(JoiningInputs.From(brief with { MainSpeakers = null }, 48, 0.72));
        Assert.Null(JoiningInputs.From(brief with { Aim = null }, 48, 0.72));
        Assert.Null(JoiningInputs.From(brief, null, 0.72));
    }

    [Fact]
    public void A_crossover_that_is_none_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Joining.Of(Ours with { CrossoverHz = 0 }));

    private static double Ripple(double delay, double trim, int sign)
    {
        var levels = Enumerable
            .Range(0, 49)
            .Select(i =>
            {
                var f = 47.5 * Math.Pow(2, i / 24.0);
                var cabinet = Analogue.HighPass(f, 48, 0.72) * Analogue.FourthOrderLowPass(f, 95) * sign * Math.Pow(10, trim / 20);
                return 20
                    * Math.Log10(
                        (
                            cabinet
                            + (Analogue.HighPass(f, 95, 0.8) * Analogue.FourthOrderHighPass(f, 95) * Complex.Exp(new Complex(0, -2 * Math.PI * f * delay)))
                        ).Magnitude
                    );
            })
            .ToArray();
        return (levels.Max() - levels.Min()) / 2;
    }
}
