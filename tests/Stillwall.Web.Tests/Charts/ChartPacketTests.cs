using System.Runtime.InteropServices;
using Stillwall.Figures;
using Stillwall.Web.Charts;

namespace Stillwall.Web.Tests.Charts;

/// <summary>What is sent to the page is the library's chart.</summary>
public sealed class ChartPacketTests
{
    [Fact]
    public void Every_point_of_every_chart_arrives_in_the_order_that_the_layout_names()
    {
        var charts = ResponseCharts.All(Demo.Facts);
        Assert.Equal(5, charts.Count);
        foreach (var chart in charts)
        {
            var packet = ChartPacket.Of(chart);
            var floats = new Queue<float>(MemoryMarshal.Cast<byte, float>(packet.Points).ToArray());
            foreach (var (series, layout) in chart.Series.Zip(packet.Layout.Series))
            {
                Assert.Equal((series.Points.Count, series.UpperPoints.Count > 0), (layout.Count, layout.HasUpper));
                Same(series.Points.Select(p => p.X), floats);
                Same(series.Points.Select(p => p.Y), floats);
                Same(series.UpperPoints.Select(p => p.Y), floats);
            }

            foreach (var points in chart.Limits.SelectMany(l => new[] { l.Edge, l.Region }))
            {
                Same(points.Select(p => p.X), floats);
                Same(points.Select(p => p.Y), floats);
            }

            Assert.Empty(floats);
        }
    }

    [Fact]
    public void The_upper_edge_of_a_band_stands_over_the_same_places_as_the_lower()
    {
        // The page takes one x for both edges.
        var bands = ResponseCharts.All(Demo.Facts).SelectMany(c => c.Series).Where(s => s.UpperPoints.Count > 0).ToList();
        Assert.NotEmpty(bands);
        Assert.All(bands, s => Assert.Equal(s.Points.Select(p => p.X), s.UpperPoints.Select(p => p.X)));
    }

    [Fact]
    public void The_runs_of_one_line_are_switched_together_and_other_lines_by_themselves()
    {
        var chart = ResponseCharts.HowLoud(Demo.Facts)!;
        var keys = chart.Series.Select(ChartPacket.KeyOf).ToList();
        Assert.True(chart.Series.Count(s => s.Role == StyleRole.Main) > 1);
        Assert.Equal(["main", "second-0"], keys.Distinct().Order());
    }

    [Fact]
    public void The_former_state_is_a_pencil_line_of_the_former_numbers()
    {
        var (now, former) = (ResponseCharts.HowFar(Demo.Facts)!, ResponseCharts.HowFar(Demo.Shallower)!);
        var combined = FormerState.Of(now, former, "before");
        var pencil = Assert.Single(combined.Series, s => s.Role == StyleRole.Pencil);
        Assert.Equal(former.Series.Single(s => s.Role == StyleRole.Main).Points, pencil.Points);
        Assert.Equal(now.Series, combined.Series.Where(s => s.Role != StyleRole.Pencil));
    }

    [Fact]
    public void Bars_keep_their_former_tops_in_pencil_over_them()
    {
        var quiet = Demo.Facts.Quiet;
        var now = NeighbourChart.Of(quiet with { Bands = [.. quiet.Bands.Select(b => b.Louder(-6))] })!;
        var pencil = FormerState.Of(now, NeighbourChart.Of(quiet), "every day").Series[^1];
        Assert.Equal((StyleRole.Pencil, SeriesShape.Line, "every day"), (pencil.Role, pencil.Shape, pencil.Name));
        Assert.Equal(
            quiet.Bands.Where(b => b.NeighbourDb is not null).SelectMany(b => new[] { b.NeighbourDb, b.NeighbourDb }),
            pencil.Points.Select(p => (double?)p.Y)
        );
    }

    [Fact]
    public void Where_nothing_moved_and_for_another_question_there_is_no_pencil_line()
    {
        var now = ResponseCharts.HowFar(Demo.Facts)!;
        Assert.Same(now, FormerState.Of(now, null, "before"));
        Assert.Same(now, FormerState.Of(now, ResponseCharts.HowFar(Demo.Of(p => p)), "before"));
        Assert.Same(now, FormerState.Of(now, ResponseCharts.HowLow(Demo.Shallower), "before"));
    }

    private static void Same(IEnumerable<double> expected, Queue<float> floats) => Assert.All(expected, value => Assert.Equal((float)value, floats.Dequeue()));
}
