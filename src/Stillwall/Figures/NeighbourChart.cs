using Stillwall.Appraisals;
using Stillwall.Neighbours;

namespace Stillwall.Figures;

/// <summary>The neighbour question as bars against a curve.</summary>
public static class NeighbourChart
{
    // A band reaches a twentieth of a decade to either side of its exact middle (IEC 61260-1, base ten).
    private static readonly double HalfBand = Math.Pow(10, 0.05);

    /// <summary>What the neighbour gets in each third-octave, against the curve.</summary>
    /// <param name="quiet">The neighbour question.</param>
    /// <returns>The chart; null where no band is known.</returns>
    /// <remarks>Model: the neighbour question's own numbers. Validity: as its. Source: our choice of picture. Accuracy: as its.</remarks>
    public static Chart? Of(Quiet quiet)
    {
        ArgumentNullException.ThrowIfNull(quiet);
        var bands = quiet.Bands.Where(b => b.NeighbourDb is not null).ToList();
        if (bands.Count == 0)
        {
            return null;
        }

        var ends = bands
            .SelectMany(b => new[] { b.NeighbourDb - (b.UncertaintyDb ?? 0), b.NeighbourDb + (b.UncertaintyDb ?? 0), b.CurveDb })
            .OfType<double>()
            .ToList();
        var up = Axes.Linear("level in the neighbour's room", "dB", Math.Max(ends.Min() - 3, ends.Max() - 90), ends.Max() + 4);
        var across = new ChartAxis(
            "third-octave",
            "Hz",
            true,
            MiddleHz(bands[0]) / HalfBand / 1.04,
            MiddleHz(bands[^1]) * HalfBand * 1.04,
            [.. bands.Select(MiddleHz)]
        )
        {
            TickLabels = [.. bands.Select(b => Show.Number(b.BandHz))],
        };
        var doubtful = bands.Where(b => b.UncertaintyDb is not null).ToList();
        return new Chart(
            Name: "neighbour",
            Title: "What does the neighbour hear?",
            Answer: Answer(quiet),
            AnswerFrom: "quiet/neighbour-at-the-everyday-level",
            Across: across,
            Up: up,
            Series:
            [
                new ChartSeries(
                    "in the neighbour's room",
                    StyleRole.Main,
                    SeriesShape.Bars,
                    [.. bands.Select(b => new ChartPoint(MiddleHz(b), b.NeighbourDb!.Value))]
                ),
                new ChartSeries(
                    "nineteen in twenty such walls lie here",
                    StyleRole.Band,
                    SeriesShape.Strokes,
                    [.. doubtful.Select(b => new ChartPoint(MiddleHz(b), b.NeighbourDb!.Value - b.UncertaintyDb!.Value))]
                )
                {
                    UpperPoints = [.. doubtful.Select(b => new ChartPoint(MiddleHz(b), b.NeighbourDb!.Value + b.UncertaintyDb!.Value))],
                },
            ],
            Limits: Curve(bands, up),
            Landmarks: [],
            Rules: [],
            Table: new ChartTable(
                ["third-octave, Hz", "seat, dB", "wall, dB", "neighbour, dB", "doubt, dB", "curve, dB", "over, dB"],
                [
                    .. quiet.Bands.Select(b =>
                        new[]
                        {
                            Show.Number(b.BandHz),
                            Cell(b.SeatDb),
                            Cell(b.ReductionDb),
                            Cell(b.NeighbourDb),
                            Cell(b.UncertaintyDb),
                            Cell(b.CurveDb),
                            Cell(b.OverDb),
                        }
                    ),
                ]
            )
        );
    }

    private static IReadOnlyList<ChartLimit> Curve(List<QuietBand> bands, ChartAxis up)
    {
        var edge = bands
            .Where(b => b.CurveDb is not null)
            .SelectMany(b => new ChartPoint[] { new(MiddleHz(b) / HalfBand, b.CurveDb!.Value), new(MiddleHz(b) * HalfBand, b.CurveDb!.Value) })
            .ToList();
        return edge.Count == 0 ? [] : [Axes.Along("louder than the curve", edge, true, up)];
    }

    // Nominal bands are rounded: 31.5 Hz stands for 31.62 Hz.
    private static double MiddleHz(QuietBand band) => Math.Pow(10, Math.Round(10 * Math.Log10(band.BandHz)) / 10);

    private static string Answer(Quiet quiet)
    {
        if (quiet.Bands.Where(b => b.OverDb is not null).MaxBy(b => b.OverDb) is not { OverDb: { } over } worst)
        {
            return "No curve is stated, so nothing is said of how much is too much.";
        }

        var said =
            over > 0
                ? $"The band at {Show.Frequency(worst.BandHz)} is {Show.Level(over)} over the curve"
                : $"Every band stays under the curve, the nearest at {Show.Frequency(worst.BandHz)} by {Show.Level(-over)}";
        return quiet.LoudestPoliteLevelDb is { } polite ? $"{said}; the loudest polite level is {Show.Level(polite)}." : $"{said}.";
    }

    private static string Cell(double? value) => value is { } v ? Show.Number(Math.Round(v, 1), 4) : "";
}
