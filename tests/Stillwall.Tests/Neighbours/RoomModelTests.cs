using System.Numerics;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Tests.Neighbours;

public class RoomModelTests
{
    private static readonly Gen<RoomGeometry> AnyRoom =
        from width in Gen.Double[2, 7]
        from length in Gen.Double[2, 7]
        from height in Gen.Double[2, 4]
        from decay in Gen.Double[0.2, 2]
        from pressure in Gen.Double[0.2, 4]
        from at in Gen.Double[0, 1].Array[6]
        select new RoomGeometry(
            width,
            length,
            height,
            decay,
            pressure,
            new Place(at[0] * width, at[1] * length, at[2] * height),
            new Place(at[3] * width, at[4] * length, at[5] * height)
        );

    [Fact]
    public void The_seat_agrees_with_the_waveguide_form_of_the_Greens_function_within_a_hundredth_of_a_decibel()
    {
        var stated = QuietData.Cases("room", "room-cases.json")[0];
        double[] List(string key) => [.. stated.GetProperty(key).EnumerateArray().Select(e => e.GetDouble())];
        var (size, source, seat) = (List("size_m"), List("source_m"), List("receiver_m"));
        var room = RoomModel.Of(
            new RoomGeometry(
                size[0],
                size[1],
                size[2],
                stated.GetProperty("t60_s").GetDouble(),
                stated.GetProperty("pressure_decay_s").GetDouble(),
                new Place(source[0], source[1], source[2]),
                new Place(seat[0], seat[1], seat[2])
            ),
            QuietData.Air
        );
        var curve = RoomCurve.Of(room, stated.GetProperty("volume_velocity_m3_s").GetDouble());
        var reference = QuietData.Numbers("room", "study.csv");

        Assert.Equal(96, curve.Count);
        foreach (var (point, row) in curve.Zip(reference))
        {
            Assert.Equal(row[0], point.FrequencyHz);
            Assert.Equal(row[2], point.SplDb, 0.0005);
            Assert.Equal(0, Math.IEEERemainder(point.PhaseDeg - row[3], 360), 0.005);
        }
    }

    [Theory]
    [InlineData(0.4, 0.35, 0.25, 2.2, 2.9, 1.1)]
    [InlineData(0.4, 0.35, 0.5, 2.2, 2.9, 0.5)]
    [InlineData(0.4, 0.35, 0.5, 0.4, 2.9, 0.5)]
    [InlineData(0, 0, 0, 3.2, 3.9, 2.5)]
    [InlineData(0, 0, 0, 0, 0, 2.5)]
    [InlineData(1.6, 1.3, 1.25, 1.6, 2, 1.25)]
    public void The_seat_agrees_with_the_plain_sum_over_all_modes(double x0, double y0, double z0, double x, double y, double z)
    {
        var geometry = QuietData.ReadingRoom with { Cabinet = new Place(x0, y0, z0), Seat = new Place(x, y, z) };
        var room = RoomModel.Of(geometry, QuietData.Air);
        foreach (var f in new[] { 12.0, 31, 43.9, 60, 88, 120, 163, 200 })
        {
            var (plain, seat) = (PlainSum(geometry, f).Seat, room.SeatPressurePa(f, 1));
            Assert.Equal(0, 20 * Math.Log10(((seat - plain).Magnitude / plain.Magnitude) + 1), 0.001);
        }
    }

    [Fact]
    public void The_mean_of_the_room_agrees_with_the_plain_sum_over_all_modes()
    {
        foreach (var cabinet in new[] { new Place(0.4, 0.35, 0.25), new Place(0, 0, 0), new Place(1.6, 1.9, 1.2) })
        {
            var geometry = QuietData.ReadingRoom with { Cabinet = cabinet };
            var room = RoomModel.Of(geometry, QuietData.Air);
            foreach (var f in new[] { 12.0, 31, 43.9, 60, 88, 120, 163, 200, 250 })
            {
                Assert.Equal(20 * Math.Log10(PlainSum(geometry, f).Mean), 20 * Math.Log10(room.MeanPressurePa(f, 1)), 0.005);
            }
        }
    }

    [Fact]
    public void The_mean_of_the_room_is_the_mean_of_the_pressures_found_all_over_it()
    {
        // Seats on a grid offset from the walls: a second way to the same figure that uses the seat's sum alone.
        foreach (var f in new[] { 30.0, 55, 90 })
        {
            var cells = RoomCells(12, 14, 9).ToArray();
            var sum = cells.Average(seat =>
                Math.Pow(RoomModel.Of(QuietData.ReadingRoom with { Seat = seat }, QuietData.Air).SeatPressurePa(f, 1).Magnitude, 2)
            );
            Assert.Equal(10 * Math.Log10(sum), 20 * Math.Log10(RoomModel.Of(QuietData.ReadingRoom, QuietData.Air).MeanPressurePa(f, 1)), 0.1);
        }
    }

    [Fact]
    public void Far_below_the_first_mode_the_room_is_a_spring_of_air()
    {
        // Five by four by two and a half metres at 2 Hz, no loss: p = ρc²U/(jωV), Kuttruff; 1 litre peak in 30 m³ is 104.46 dB.
        var geometry = new RoomGeometry(5, 4, 2.5, 0.5, 1000, new Place(0.5, 0.5, 0.5), new Place(3, 2, 1.2));
        var velocity = 2 * Math.PI * 0.5 * 1e-3 / Math.Sqrt(2);
        var room = RoomModel.Of(geometry with { WidthM = 3, LengthM = 4, HeightM = 2.5, Seat = new Place(1.5, 2, 1.25) }, QuietData.Air);
        Assert.Equal(104.46, 20 * Math.Log10(room.SeatPressurePa(0.5, velocity).Magnitude / 20e-6), 0.02);

        var own = RoomModel.Of(geometry, QuietData.Air).MeanPressurePa(2, 1);
        Assert.Equal(20 * Math.Log10(QuietData.Air.BulkModulusPa / (4 * Math.PI * 50)), 20 * Math.Log10(own), 0.05);

        // With the room's own decay on the uniform mode some 7 dB of it would be lost.
        var shared = RoomModel.Of(geometry with { PressureDecayTimeS = 0.5 }, QuietData.Air).MeanPressurePa(2, 1);
        Assert.InRange(20 * Math.Log10(own / shared), 6, 8);
    }

    [Theory]
    [InlineData(1, 0, 0, 34.32)]
    [InlineData(0, 1, 0, 42.90)]
    [InlineData(1, 1, 0, 54.94)]
    [InlineData(0, 0, 1, 68.64)]
    [InlineData(1, 0, 1, 76.74)]
    [InlineData(2, 1, 0, 80.94)]
    [InlineData(1, 1, 1, 87.92)]
    public void Modes_lie_where_the_formula_for_the_rigid_rectangle_puts_them(int x, int y, int z, double expectedHz)
    {
        var room = RoomModel.Of(new RoomGeometry(5, 4, 2.5, 0.5, 2, new Place(1, 1, 1), new Place(2, 2, 2)), QuietData.Air);
        Assert.Equal(expectedHz, room.ModeHz(x, y, z), 0.005);
        Assert.True(room.LowestModeHz <= room.ModeHz(x, y, z));
    }

    [Fact]
    public void A_printed_tangential_mode_is_met() =>
        // Long, Architectural Acoustics, 2nd edition, table 8.1: 7 × 5 × 3 m, (1,1,0) at 42.4 Hz, air of 344 to 345 m/s.
        Assert.Equal(
            42.4,
            RoomModel
                .Of(new RoomGeometry(7, 5, 3, 1, 1, new Place(1, 1, 1), new Place(2, 2, 2)), QuietData.Air with { SpeedOfSoundMS = 344.5 })
                .ModeHz(1, 1, 0),
            0.1
        );

    [Fact]
    public void Source_and_seat_may_be_swapped() =>
        Gen.Select(AnyRoom, Gen.Double[10, 200])
            .Sample(
                (geometry, f) =>
                {
                    var there = RoomModel.Of(geometry, Air.Reference).SeatPressurePa(f, 1);
                    var back = RoomModel.Of(geometry with { Cabinet = geometry.Seat, Seat = geometry.Cabinet }, Air.Reference).SeatPressurePa(f, 1);
                    Assert.Equal(0, (there - back).Magnitude / there.Magnitude, 1e-6);
                },
                iter: 200
            );

    [Fact]
    public void Twice_the_volume_velocity_is_six_decibels_more_everywhere() =>
        Gen.Select(AnyRoom, Gen.Double[10, 200])
            .Sample(
                (geometry, f) =>
                {
                    var room = RoomModel.Of(geometry, Air.Reference);
                    Assert.Equal(2, room.SeatPressurePa(f, 0.002).Magnitude / room.SeatPressurePa(f, 0.001).Magnitude, 1e-9);
                    Assert.Equal(2, room.MeanPressurePa(f, 0.002) / room.MeanPressurePa(f, 0.001), 1e-9);
                },
                iter: 50
            );

    [Fact]
    public void No_place_and_no_frequency_is_singular() =>
        Gen.Select(AnyRoom, Gen.Double[0.1, 400])
            .Sample(
                (geometry, f) =>
                {
                    foreach (var seat in new[] { geometry.Seat, geometry.Cabinet, geometry.Cabinet with { ZM = geometry.Seat.ZM }, new Place(0, 0, 0) })
                    {
                        var pressure = RoomModel.Of(geometry with { Seat = seat }, Air.Reference).SeatPressurePa(f, 1).Magnitude;
                        Assert.True(double.IsFinite(pressure) && pressure > 0);
                    }
                },
                iter: 100
            );

    [Fact]
    public void A_cube_with_coinciding_modes_is_finite_at_its_modes()
    {
        var room = RoomModel.Of(new RoomGeometry(3, 3, 3, 20, 20, new Place(0, 0, 0), new Place(3, 3, 3)), QuietData.Air);
        Assert.InRange(room.SeatPressurePa(57.2, 0.001).Magnitude, 0.1, 1000);
        Assert.InRange(room.MeanPressurePa(57.2, 0.001), 0.1, 1000);
    }

    [Fact]
    public void In_a_hall_the_mean_settles_at_the_diffuse_field()
    {
        // Power balance: W = ρω²|U|²/(4πc) into a field that decays at 2δ: mean p² = ρc² W/(2δV), with V the hall's volume.
        var geometry = new RoomGeometry(60, 40, 15, 1.5, 1.5, new Place(21, 13, 6), new Place(40, 30, 2));
        var corner = geometry with { Cabinet = new Place(0, 0, 0) };
        var (air, f) = (QuietData.Air, 160.0);
        var omega = 2 * Math.PI * f;
        var power = air.DensityKgM3 * omega * omega / (4 * Math.PI * air.SpeedOfSoundMS);
        var expected = air.BulkModulusPa * power / (2 * (Math.Log(1000) / 1.5) * geometry.VolumeM3);
        Assert.Equal(10 * Math.Log10(expected), 20 * Math.Log10(RoomModel.Of(geometry, air).MeanPressurePa(f, 1)), 0.05);

        // In a corner the source meets eight times the pressure and radiates eight times the power.
        Assert.Equal(10 * Math.Log10(8 * expected), 20 * Math.Log10(RoomModel.Of(corner, air).MeanPressurePa(f, 1)), 0.05);
    }

    [Fact]
    public void A_point_outside_the_room_is_refused_by_name()
    {
        var fault = Assert.Throws<ArgumentOutOfRangeException>(() => RoomModel.Of(QuietData.ReadingRoom with { Seat = new Place(3.3, 1, 1) }, QuietData.Air));
        Assert.Contains("Seat.XM", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_room_names_what_it_lacks()
    {
        var room = new Stillwall.Projects.Room
        {
            WidthM = 3.2,
            LengthM = 3.9,
            HeightM = 2.5,
            DecayTimeS = 0.5,
            CabinetAtM = [0.4, 0.35, 0.25],
            SeatAtM = [2.2, 2.9, 1.1],
        };
        Assert.Null(RoomGeometry.Missing(room));
        Assert.Equal(0.5, RoomGeometry.Of(room)!.PressureDecayTimeS);
        Assert.Equal("brief.room.decay_time", RoomGeometry.Missing(room with { DecayTimeS = null }));
        Assert.Equal("brief.room.seat_at", RoomGeometry.Missing(room with { SeatAtM = [3.3, 1, 1] }));
        Assert.Null(RoomGeometry.Of(room with { SeatAtM = null }));
    }

    [Fact]
    public void The_seat_in_a_room_is_held_against_the_half_space()
    {
        // 0.001 m³/s at 50 Hz, 2 m: p = ρωU/(2πr) = 1.20411 · 50 · 0.001/2 = 0.0301 Pa, 63.55 dB.
        Assert.Equal(63.55, 20 * Math.Log10(Stillwall.Cabinets.FarField.HalfSpacePressurePa(0.001, 50, 2, QuietData.Air).Magnitude / 20e-6), 0.01);
        var room = RoomModel.Of(QuietData.ReadingRoom, QuietData.Air);
        var transfer = RoomCurve.SeatOverHalfSpaceDb(room, 50, 2);
        Assert.Equal(RoomCurve.Of(room, 0.001).Single(p => p.FrequencyHz == 50).SplDb - 63.55, transfer, 0.01);
        Assert.Equal(0, RoomCurve.SeatOverHalfSpaceDb(null, 50, 2));
    }

    [Fact]
    public void A_map_shows_at_the_seats_cell_what_the_seat_hears()
    {
        var geometry = QuietData.ReadingRoom with { Seat = new Place(3.2 * 2.5 / 8, 3.9 * 6.5 / 10, 1.1) };
        var map = RoomCurve.MapDb(geometry, QuietData.Air, 44, 0.001, 8, 10);
        Assert.Equal(10, map.Count);
        Assert.Equal(20 * Math.Log10(RoomModel.Of(geometry, QuietData.Air).SeatPressurePa(44, 0.001).Magnitude / 20e-6), map[6][2], 1e-9);
    }

    private static IEnumerable<Place> RoomCells(int x, int y, int z) =>
        from i in Enumerable.Range(0, x)
        from j in Enumerable.Range(0, y)
        from k in Enumerable.Range(0, z)
        select new Place((i + 0.5) * 3.2 / x, (j + 0.5) * 3.9 / y, (k + 0.5) * 2.5 / z);

    // Every mode one by one, by the formula of Kuttruff 2000, chapter 3; nothing of the model's rearrangements.
    // For the seat the point is a ball of Gaussian density, σ = 0.08 m: outside it the field is the point's times e^(−k²σ²/2), and the sum converges fast.
    // For the mean what is left out falls as one over the highest wave number counted, so two balls of modes give the whole.
    private static (Complex Seat, double Mean) PlainSum(RoomGeometry room, double f)
    {
        const double sigma = 0.08;
        var (omega, c) = (2 * Math.PI * f, QuietData.Air.SpeedOfSoundMS);
        var (seat, inner, outer) = (Complex.Zero, 0.0, 0.0);
        double[] Cosines(double at, double size) => [.. Enumerable.Range(0, (int)(85 * size / Math.PI)).Select(n => Math.Cos(n * Math.PI * at / size))];
        var (x0, y0, z0) = (Cosines(room.Cabinet.XM, room.WidthM), Cosines(room.Cabinet.YM, room.LengthM), Cosines(room.Cabinet.ZM, room.HeightM));
        var (x, y, z) = (Cosines(room.Seat.XM, room.WidthM), Cosines(room.Seat.YM, room.LengthM), Cosines(room.Seat.ZM, room.HeightM));
        for (var i = 0; i < x.Length; i++)
        {
            for (var j = 0; j < y.Length; j++)
            {
                for (var l = 0; l < z.Length; l++)
                {
                    var delta = Math.Log(1000) / (i + j + l == 0 ? room.PressureDecayTimeS : room.DecayTimeS);
                    var k = new Complex(omega, -delta) / c;
                    var mode =
                        Math.PI
                        * Math.PI
                        * ((i * i / (room.WidthM * room.WidthM)) + (j * j / (room.LengthM * room.LengthM)) + (l * l / (room.HeightM * room.HeightM)));
                    var doubled = (i == 0 ? 1 : 2) * (j == 0 ? 1 : 2) * (l == 0 ? 1 : 2);
                    var amplitude = doubled * x0[i] * y0[j] * z0[l] / (mode - (k * k));
                    var ball = mode * sigma * sigma > 80 ? 0 : Complex.Exp(((k * k) - mode) * sigma * sigma / 2);
                    seat += amplitude * ball * (x[i] * y[j] * z[l]);
                    var power = amplitude.Magnitude * amplitude.Magnitude / doubled;
                    inner += mode <= 40 * 40 ? power : 0;
                    outer += mode <= 80 * 80 ? power : 0;
                }
            }
        }

        var scale = omega * QuietData.Air.DensityKgM3 / room.VolumeM3;
        return (Complex.ImaginaryOne * scale * seat, scale * Math.Sqrt((2 * outer) - inner));
    }
}
