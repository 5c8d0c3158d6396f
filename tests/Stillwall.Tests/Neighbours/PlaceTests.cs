using System.Numerics;
using CsCheck;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Tests.Neighbours;

public class PlaceTests
{
    private static readonly RoomGeometry Room = QuietData.ReadingRoom;

    [Fact]
    public void The_even_pressure_of_a_small_room_is_that_of_a_closed_vessel()
    {
        // One litre of peak displacement into 30 m³: ρc²·ΔV/V = 4.727 Pa peak, 104.46 dB rms (worked from the gas law; ρc² = 141 800 Pa).
        const double hertz = 3,
            volume = 30;
        var velocity = 2 * Math.PI * hertz * 0.001 / Math.Sqrt(2);
        var half = 20 * Math.Log10(hertz * QuietData.Air.DensityKgM3 * velocity / 2 / 20e-6);
        Assert.Equal(104.46, half + PressureZone.GainDb(hertz, volume, 2, QuietData.Air), 0.01);
    }

    [Fact]
    public void Far_below_the_first_mode_the_full_sum_is_the_even_pressure()
    {
        // An airtight room at a third of its lowest mode's frequency squared is a ninth of itself off; at 4 Hz of 44 under a hundredth.
        var tight = RoomModel.Of(Room with { PressureDecayTimeS = 1000 }, QuietData.Air);
        Assert.Equal(RoomCurve.SeatOverHalfSpaceDb(tight, 4, 2), PressureZone.GainDb(4, Room.VolumeM3, 2, QuietData.Air), 0.15);
    }

    [Fact]
    public void Below_its_corner_a_small_room_adds_twelve_decibels_for_each_octave() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[0.5, 5])
            .Sample(
                (volume, distance) =>
                {
                    var corner = PressureZone.CornerHz(volume, distance, QuietData.Air);
                    Assert.Equal(0, PressureZone.GainDb(corner, volume, distance, QuietData.Air), 1e-9);
                    Assert.Equal(40 * Math.Log10(2), PressureZone.GainDb(corner / 2, volume, distance, QuietData.Air), 1e-9);
                }
            );

    [Fact]
    public void The_best_places_are_the_best_of_all_that_can_be_listed_by_hand()
    {
        // The same figure by the plain definition, over every seat of the grid: one metre apart, 0.6 m from the walls of 3.2 × 3.9 m gives 2, 3 steps.
        var options = new PlaceOptions
        {
            MovesCabinet = false,
            StepM = 1,
            HighestHz = 63,
        };
        var report = PlaceSearch.Of(Room, QuietData.Air, options, 20, null, TestContext.Current.CancellationToken);
        double[] xs = [0.6, 1.6, 2.6],
            ys = [0.6, 1.5, 2.4, 3.3];
        var byHand = ys.SelectMany(y => xs.Select(x => Room with { Seat = Room.Seat with { XM = x, YM = y } }))
            .Where(g => Math.Sqrt(Math.Pow(g.Seat.XM - 0.4, 2) + Math.Pow(g.Seat.YM - 0.35, 2) + Math.Pow(1.1 - 0.25, 2)) >= 1)
            .Select(SeatOverMeanDb)
            .OrderDescending()
            .ToList();
        Assert.Equal(byHand.Count, report.TriedCount);
        Assert.Equal(byHand.Distinct(new Near()).Count(), report.Loudest.Count);
        Assert.Equal(byHand[0], report.Loudest[0].SeatOverMeanDb, 1e-9);
        Assert.Equal(SeatOverMeanDb(Room), report.Now.SeatOverMeanDb, 1e-9);
        Assert.Equal(SeatOverMeanDb(Room), PlaceSearch.At(Room, QuietData.Air, 63).SeatOverMeanDb, 1e-9);
        Assert.Equal(byHand[0] - SeatOverMeanDb(Room), new PlaceGain(report.Loudest[0], report.Now).GainDb, 1e-9);
        Assert.Equal(report.Loudest[0], PlaceSearch.At(Room with { Cabinet = report.Loudest[0].Cabinet, Seat = report.Loudest[0].Seat }, QuietData.Air, 63));
        Assert.All(report.Loudest.Zip(report.Loudest.Skip(1)), pair => Assert.True(pair.First.SeatOverMeanDb >= pair.Second.SeatOverMeanDb));
        Assert.All(report.Evenest.Zip(report.Evenest.Skip(1)), pair => Assert.True(pair.First.UnevennessDb <= pair.Second.UnevennessDb));
    }

    [Fact]
    public void What_may_not_be_moved_stays()
    {
        var standing = PlaceSearch.Of(Room, QuietData.Air, new PlaceOptions { MovesCabinet = false, StepM = 0.8 }, stop: TestContext.Current.CancellationToken);
        Assert.All(standing.Loudest.Concat(standing.Evenest), choice => Assert.Equal(Room.Cabinet, choice.Cabinet));
        var sitting = PlaceSearch.Of(Room, QuietData.Air, new PlaceOptions { MovesSeat = false, StepM = 0.8 }, stop: TestContext.Current.CancellationToken);
        Assert.All(sitting.Loudest.Concat(sitting.Evenest), choice => Assert.Equal(Room.Seat, choice.Seat));
        Assert.True(sitting.Loudest[0].SeatOverMeanDb > sitting.Now.SeatOverMeanDb);
        Assert.True(sitting.Evenest[0].UnevennessDb < sitting.Now.UnevennessDb);
    }

    [Fact]
    public void A_search_tells_how_far_it_is_and_can_be_stopped()
    {
        var told = new Told();
        PlaceSearch.Of(Room, QuietData.Air, new PlaceOptions { StepM = 1.5 }, 5, told, TestContext.Current.CancellationToken);
        Assert.Equal(1, told.Shares[^1]);
        Assert.Equal(told.Shares.Order(), told.Shares);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => PlaceSearch.Of(Room, QuietData.Air, new PlaceOptions(), 5, null, stop.Token));
    }

    [Fact]
    public void A_map_has_the_levels_of_its_cells()
    {
        var model = RoomModel.Of(Room, QuietData.Air);
        var map = RoomMap.Of(model, 45, 0.001, 39);
        Assert.Equal((39, 32), (map.LevelsDb.Count, map.LevelsDb[0].Count));
        var there = RoomModel.Of(Room with { Seat = new Place(20.5 * 0.1, 10.5 * 0.1, 1.1) }, QuietData.Air);
        Assert.Equal(20 * Math.Log10(there.SeatPressurePa(45, 0.001).Magnitude / 20e-6), map.LevelsDb[10][20], 1e-6);
        Assert.Equal(20 * Math.Log10(model.MeanPressurePa(45, 0.001) / 20e-6), map.MeanDb, 1e-9);
        Assert.Equal(20 * Math.Log10(model.SeatPressurePa(45, 0.001).Magnitude / model.MeanPressurePa(45, 0.001)), map.SeatOverMeanDb, 1e-9);
    }

    [Fact]
    public void A_curve_in_steps_of_one_hertz_passes_through_the_one_in_steps_of_two()
    {
        var model = RoomModel.Of(Room, QuietData.Air);
        var fine = RoomCurve.Of(model, 0.001, 1);
        Assert.Equal(191, fine.Count);
        Assert.Equal(RoomCurve.Of(model, 0.001), fine.Where((_, i) => i % 2 == 0));
    }

    private static double SeatOverMeanDb(RoomGeometry geometry)
    {
        var model = RoomModel.Of(geometry, QuietData.Air);
        var points = ThirdOctaves
            .Bands.TakeWhile(band => band.NominalHz <= 63)
            .SelectMany(band => Enumerable.Range(0, 5).Select(i => band.LowerHz * Math.Pow(10, (i + 0.5) / 50)))
            .ToList();
        return 10
            * Math.Log10(
                points.Sum(f => Math.Pow(model.SeatPressurePa(f, new Complex(1 / f, 0)).Magnitude, 2))
                    / points.Sum(f => Math.Pow(model.MeanPressurePa(f, 1 / f), 2))
            );
    }

    private sealed class Near : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-6;

        public int GetHashCode(double value) => 0;
    }

    private sealed class Told : IProgress<double>
    {
        internal List<double> Shares { get; } = [];

        public void Report(double value) => Shares.Add(value);
    }
}
