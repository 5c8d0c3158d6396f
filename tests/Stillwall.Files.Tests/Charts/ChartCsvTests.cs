using System.Globalization;
using Stillwall.Figures;
using Stillwall.Files.Charts;

namespace Stillwall.Files.Tests.Charts;

/// <summary>The points of a chart as a table of numbers.</summary>
public sealed class ChartCsvTests
{
    private static readonly ChartAxis Across = new("frequency", "Hz", true, 10, 100, [10, 100]),
        Up = new("level, rms", "dB", false, 0, 100, [0, 100]);

    [Fact]
    public void Runs_of_one_line_are_one_column_and_a_point_they_share_stands_once()
    {
        var chart = Of(
            Across,
            Line("below", StyleRole.Main, (10, 70.125), (20, 80)),
            Line("above", StyleRole.Main, (20, 80), (40, 85)),
            Line("at the seat", StyleRole.Second, (10, 60), (30, 65))
        );
        Assert.Equal("frequency_hz,level_rms_db,at_the_seat_db\n10,70.125,60\n20,80,\n30,,65\n40,85,\n", ChartCsv.Write(chart));
    }

    [Fact]
    public void A_band_has_two_columns_and_a_pencil_line_one()
    {
        var band = Line("", StyleRole.Band, (10, 1), (20, 2)) with { UpperPoints = [new(10, 3), new(20, 4)] };
        var chart = Of(Across, band, Line("before", StyleRole.Pencil, (10, 9), (20, 9)), Line("now", StyleRole.Main, (10, 2), (20, 3)));
        Assert.Equal("frequency_hz,level_rms_db,before_db,band_low_db,band_high_db\n10,2,9,1,3\n20,3,9,2,4\n", ChartCsv.Write(chart));
    }

    [Fact]
    public void A_chart_of_points_gives_its_landmarks()
    {
        var chart = Of(Across with { Label = "price", Unit = "EUR", IsLogarithmic = false }) with
        {
            Landmarks = [new(new(84, 97.1), "Dunlin 8"), new(new(60, 91.2), "Wren 6")],
        };
        Assert.Equal("price_eur,level_rms_db\n60,91.2\n84,97.1\n", ChartCsv.Write(chart));
    }

    [Fact]
    public void Numbers_are_written_the_same_in_every_country()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("frequency_hz,level_rms_db\n10.5,70.125\n", ChartCsv.Write(Of(Across, Line("now", StyleRole.Main, (10.5, 70.125)))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static ChartSeries Line(string name, StyleRole role, params (double X, double Y)[] points) =>
        new(name, role, SeriesShape.Line, [.. points.Select(p => new ChartPoint(p.X, p.Y))]);

    private static Chart Of(ChartAxis across, params ChartSeries[] series) =>
        new("test", "Which?", "This.", "box.f10_hz", across, Up, series, [], [], [], new ChartTable([], []));
}
