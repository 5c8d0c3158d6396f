using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Figures;

/// <summary>The greatest level over frequency.</summary>
internal static class HowLoudChart
{
    private const double HighHz = 500;

    // Above it a room has too many modes for a sum over them to say anything of one seat.
    private const double RoomHighHz = 200;

    private static readonly double SixthOctave = Math.Pow(2, 1.0 / 6);

    internal static Chart? Of(Facts facts, BoxNetwork network)
    {
        var limits = ResponseCharts.LimitsOf(facts, network);
        var aim = facts.Project.Brief.Aim;
        var distance = aim?.DistanceM ?? 2;
        var points = Axes.FrequenciesHz(HighHz, 170)
            .Select(f => (Point: network.At(f, 1), Limit: MaximumLevel.VoltageAt(network, limits, f)))
            .Where(p => p.Limit is not null)
            .Select(p => (At: new ChartPoint(p.Point.FrequencyHz, p.Point.LevelDb(distance) + (20 * Math.Log10(p.Limit!.VoltageV))), By: p.Limit.LimitedBy))
            .ToList();
        if (points.Count == 0)
        {
            return null;
        }

        var across = Axes.Frequency(HighHz);
        var seat = Seat(facts, network, limits);
        List<ChartSeries> series = seat.Count == 0 ? [] : [new ChartSeries("at the seat, room counted", StyleRole.Second, SeriesShape.Line, seat)];
        series.AddRange(
            Runs(points).Select(run => new ChartSeries($"{Range(run.Line, points)}limited by {Show.Limit(run.By)}", StyleRole.Main, SeriesShape.Line, run.Line))
        );
        var levels = points.Select(p => p.At.Y).Concat(seat.Select(p => p.Y)).Concat(aim?.LevelDb is { } l ? [l] : []).ToList();
        var up = Axes.Linear("greatest level, rms sine", "dB", Math.Max(levels.Min() - 1, levels.Max() - 60), levels.Max() + 2);
        var table = new ChartSeries($"half space, {facts.Show.Distance(distance)}, dB", StyleRole.Main, SeriesShape.Line, [.. points.Select(p => p.At)]);
        return new Chart(
            Name: "how-loud",
            Title: "How loud?",
            Answer: Answer(facts, distance),
            AnswerFrom: "cabinet/loud-enough-and-what-gives-out-first",
            Across: across,
            Up: up,
            Series: series,
            Limits: LimitsOf(facts, across, up),
            Landmarks: Landmarks(facts, points),
            Rules: [],
            Table: ResponseCharts.Table("level", across, [table, .. series.Where(s => s.Role == StyleRole.Second)])
        )
        {
            LineFrom = "curve.max_spl_db",
        };
    }

    private static List<ChartPoint> Seat(Facts facts, BoxNetwork network, DriveLimits limits) =>
        facts.Room is not { } room
            ? []
            :
            [
                .. Axes.FrequenciesHz(RoomHighHz, 260)
                    .Select(f => new ChartPoint(
                        f,
                        MaximumLevel.LevelDb(network, limits, f)!.Value + RoomCurve.SeatOverHalfSpaceDb(room, f, 1) - facts.Limits.RoomAllowanceDb
                    )),
            ];

    // Neighbouring runs share a point, so that the line has no gap.
    private static IEnumerable<(LimitedBy By, IReadOnlyList<ChartPoint> Line)> Runs(List<(ChartPoint At, LimitedBy By)> points)
    {
        for (var from = 0; from < points.Count - 1;)
        {
            var to = from + 1;
            while (to < points.Count - 1 && points[to].By == points[from + 1].By)
            {
                to++;
            }

            var end = points[to].By == points[from + 1].By ? to : to - 1;
            yield return (points[from + 1].By, [.. points[from..(end + 1)].Select(p => p.At)]);
            from = end;
        }
    }

    // The level is wanted at one note; a third-octave about it is drawn so that it can be seen.
    private static IReadOnlyList<ChartLimit> LimitsOf(Facts facts, ChartAxis across, ChartAxis up) =>
        facts.Project.Brief.Aim is { LowestHz: { } lowest, LevelDb: { } level }
        && lowest / SixthOctave > across.Low
        && lowest * SixthOctave < across.High
        && level > up.Low
            ? [Axes.Level($"{Show.Level(level)} wanted at {Show.Frequency(lowest)}", lowest / SixthOctave, lowest * SixthOctave, level, false, up)]
            : [];

    private static IReadOnlyList<ChartLandmark> Landmarks(Facts facts, List<(ChartPoint At, LimitedBy By)> points) =>
        facts.Project.Brief.Aim?.LowestHz is not { } lowest || lowest <= points[0].At.X || lowest >= points[^1].At.X
            ? []
            :
            [
                .. facts.Box.MaxSplAtLowestDb is { } half
                    ? [new ChartLandmark(new(lowest, half), $"{Show.Level(half)} in half space")]
                    : Array.Empty<ChartLandmark>(),
                .. facts.Box.MaxSplAtSeatDb is { } seat
                    ? [new ChartLandmark(new(lowest, seat), $"{Show.Level(seat)} at the seat")]
                    : Array.Empty<ChartLandmark>(),
            ];

    private static string Range(IReadOnlyList<ChartPoint> run, List<(ChartPoint At, LimitedBy By)> points) =>
        (run[0] == points[0].At, run[^1] == points[^1].At) switch
        {
            (true, true) => "",
            (true, false) => $"below {Show.Frequency(run[^1].X)} ",
            (false, true) => $"above {Show.Frequency(run[0].X)} ",
            _ => $"{Show.Number(run[0].X)} to {Show.Frequency(run[^1].X)}: ",
        };

    private static string Answer(Facts facts, double distanceM)
    {
        if (facts.Project.Brief.Aim?.LowestHz is not { } lowest || (facts.Box.MaxSplAtSeatDb ?? facts.Box.MaxSplAtLowestDb) is not { } level)
        {
            return $"Half space at {facts.Show.Distance(distanceM)}; no lowest note is stated.";
        }

        var where = facts.Box.MaxSplAtSeatDb is null ? $"in half space at {facts.Show.Distance(distanceM)}" : "at the seat";
        var wanted = facts.Project.Brief.Aim.LevelDb is { } aim ? $"; wanted is {Show.Level(aim)}" : "";
        return $"{Show.Level(level)} {where} at {Show.Frequency(lowest)}, limited by {Show.Limit(facts.Box.LimitedByAtLowest)}{wanted}.";
    }
}
