using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Tests.Neighbours;

/// <summary>Limits of one's own, other curves, and the quiet hours.</summary>
public class QuietLimitTests
{
    private static readonly QuietInputs Case = QuietData.Inputs(RoomModel.Of(QuietData.ReadingRoom, QuietData.Air));

    [Fact]
    public void The_former_threshold_differs_from_the_present_one_at_20_hertz_alone()
    {
        // ISO 226:2003, table of Tf: 78.5 dB at 20 Hz; the edition of 2023 has 78.1 dB there and the same elsewhere.
        var (former, present) = (LimitCurves.LevelDb("hearing-threshold-2003")!, LimitCurves.LevelDb("hearing-threshold")!);
        Assert.Equal(78.5, former[0]);
        Assert.Equal(present.Skip(1), former.Skip(1));
    }

    [Fact]
    public void A_curve_whose_publication_was_not_seen_says_so()
    {
        Assert.Equal(
            ["night-rooms-fi-2003", "night-rooms-uk-2005", "audibility-nl-1999", "threshold-de-1997"],
            LimitCurves.All.Where(c => c.IsFromMemory).Select(c => c.Name)
        );
        Assert.All(LimitCurves.All, c => Assert.Equal(10, c.LevelDb.Count));
        Assert.Equal(ModelBlock.Of(typeof(Neighbour)).Find("curve")!.Words, [.. LimitCurves.Names, "own"]);
        Assert.Equal(ModelBlock.Of(typeof(QuietHours)).Find("curve")!.Words, [.. LimitCurves.Names, "own"]);
    }

    [Fact]
    public void The_night_curve_from_memory_is_the_seen_one_rounded()
    {
        // Two ways to one figure: from 31.5 Hz the British curve is said to be the Swedish one, 41.5 rounded to 42; at 20 and 25 Hz the threshold
        // less 5 dB, rounded.
        var (seen, recalled) = (LimitCurves.LevelDb("night-rooms-se-2014")!, LimitCurves.LevelDb("night-rooms-uk-2005")!);
        Assert.All(seen.Zip(recalled).Skip(2), pair => Assert.Equal(pair.First!.Value, pair.Second!.Value, 0.5));
        Assert.All(LimitCurves.LevelDb("hearing-threshold-2003")!.Zip(recalled).Take(2), pair => Assert.Equal(pair.First!.Value - 5, pair.Second!.Value, 0.5));
    }

    [Theory]
    [InlineData("A")]
    [InlineData("C")]
    public void A_weighted_limit_is_held_against_the_sum_of_the_weighted_bands(string weighting)
    {
        var neighbour = QuietData.BrickWall with
        {
            Curve = null,
            AWeightedLimitDb = weighting == "A" ? 5 : null,
            CWeightedLimitDb = weighting == "C" ? 5 : null,
        };
        var quiet = QuietModel.Of(Case with { Neighbour = neighbour });
        var limit = Assert.Single(quiet.WeightedLimits);

        // IEC 61672-1:2013, table 3: the printed weightings at the exact frequencies.
        var printed = QuietData
            .Numbers("hearing", "weightings.csv")
            .Where(row => row[0] > 18 && row[0] < 170)
            .Select(row => row[weighting == "A" ? 1 : 2])
            .ToList();
        Assert.Equal(10, printed.Count);
        var sum = 10 * Math.Log10(quiet.Bands.Zip(printed).Sum(pair => Math.Pow(10, (pair.First.NeighbourDb!.Value + pair.Second) / 10)));
        Assert.Equal(sum, limit.NeighbourDb, 0.06);
        Assert.Equal(limit.NeighbourDb - 5, limit.OverDb, 1e-9);
        Assert.Equal(62 - limit.OverDb, quiet.LoudestPoliteLevelDb!.Value, 1e-9);
        Assert.Empty(quiet.Missing);
    }

    [Fact]
    public void Of_curve_and_limit_the_stricter_counts()
    {
        var curve = QuietModel.Of(Case).LoudestPoliteLevelDb!.Value;
        Assert.Equal(curve, QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { AWeightedLimitDb = 90 } }).LoudestPoliteLevelDb!.Value, 1e-9);
        Assert.True(QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { AWeightedLimitDb = -20 } }).LoudestPoliteLevelDb < curve);
    }

    [Fact]
    public void In_the_quiet_hours_every_band_is_softer_by_as_much_as_the_seat()
    {
        var hours = new QuietHours
        {
            LevelDb = 50,
            Curve = "night-rooms-se-2014",
            AllowanceDb = -3,
        };
        var quiet = QuietModel.Of(Case with { Everyday = Case.Everyday! with { QuietHours = hours } });
        var curve = QuietData.Rows("hearing", "night.csv").Select(row => QuietData.Number(row[1])).ToList();
        var over = quiet.Bands.Zip(curve).Where(pair => !double.IsNaN(pair.Second)).Max(pair => pair.First.NeighbourDb!.Value - 12 - (pair.Second - 3));
        Assert.Equal(over, quiet.QuietHours!.OverDb, 1e-9);
        Assert.Equal(50 - over, quiet.QuietHours.LoudestPoliteLevelDb, 1e-9);

        // The same question asked of a whole day at that level.
        var allDay = QuietModel.Of(
            Case with
            {
                Everyday = new Everyday { LevelDb = 50, Programme = "music" },
                Neighbour = QuietData.BrickWall with { Curve = "night-rooms-se-2014", AllowanceDb = -3 },
            }
        );
        Assert.Equal(allDay.LoudestPoliteLevelDb!.Value, quiet.QuietHours.LoudestPoliteLevelDb, 1e-9);
    }

    [Fact]
    public void Quiet_hours_that_say_nothing_ask_nothing()
    {
        Assert.Null(QuietModel.Of(Case with { Everyday = Case.Everyday! with { QuietHours = new QuietHours() } }).QuietHours);
        Assert.Null(QuietModel.Of(Case with { Neighbour = null, Everyday = Case.Everyday! with { QuietHours = new QuietHours { LevelDb = 50 } } }).QuietHours);
    }

    [Fact]
    public void The_wall_has_a_basis_from_the_higher_of_the_two_first_modes()
    {
        // 36 m³ as a cube has sides of 3.302 m: 343.2/(2 · 3.302) = 51.97 Hz; the reading room's longest side of 3.9 m gives 44 Hz.
        Assert.Equal(51.97, QuietModel.Of(Case).WallBasisFromHz!.Value, 0.01);
        Assert.Equal(44, QuietModel.Of(Case with { Neighbour = QuietData.BrickWall with { RoomVolumeM3 = 500 } }).WallBasisFromHz!.Value, 0.01);
        Assert.Null(QuietModel.Of(Case with { PartyWallDb = new double[10] }).WallBasisFromHz);
    }
}
