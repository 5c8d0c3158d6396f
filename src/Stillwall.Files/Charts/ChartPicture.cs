using Stillwall.Figures;
using Stillwall.Numerics;

namespace Stillwall.Files.Charts;

/// <summary>Charts as pictures: SVG for paper and page, PNG for wherever SVG is not read.</summary>
public static class ChartPicture
{
    /// <summary>Width a picture has unless told otherwise, px.</summary>
    public const int WidthPx = 900;

    /// <summary>Whether this machine has a font that <see cref="Png(Chart, int, int, ChartTheme?, double)"/> can write labels with.</summary>
    public static bool HasFont => MachineFonts.Find() is not null;

    /// <summary>Height a picture has unless told otherwise, px.</summary>
    public const int HeightPx = 520;

    /// <summary>One chart as SVG.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="theme">The colours; null is ink on plaster.</param>
    /// <param name="widthPx">Width, 400 to 4000 px.</param>
    /// <param name="heightPx">Height, 300 to 4000 px.</param>
    /// <returns>The text of the file; the same chart gives the same bytes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range.</exception>
    public static string Svg(Chart chart, ChartTheme? theme = null, int widthPx = WidthPx, int heightPx = HeightPx)
    {
        ArgumentNullException.ThrowIfNull(chart);
        return Svg([chart], theme, widthPx, heightPx);
    }

    /// <summary>Several charts on one sheet as SVG, two beside each other.</summary>
    /// <param name="charts">The charts, at least one.</param>
    /// <param name="theme">The colours; null is ink on plaster.</param>
    /// <param name="widthPx">Width of each, 400 to 4000 px.</param>
    /// <param name="heightPx">Height of each, 300 to 4000 px.</param>
    /// <returns>The text of the file; the same charts give the same bytes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range, or there is no chart.</exception>
    public static string Svg(IReadOnlyList<Chart> charts, ChartTheme? theme = null, int widthPx = WidthPx, int heightPx = HeightPx)
    {
        var (marks, width, height) = Sheet(charts, theme ?? ChartTheme.Light, widthPx, heightPx);
        return SvgPainter.Of(marks, width, height, string.Join(" ", charts.Select(c => c.Title)), string.Join(" ", charts.Select(c => c.Answer)));
    }

    /// <summary>One chart as PNG.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="widthPx">Width, 400 to 4000 px.</param>
    /// <param name="heightPx">Height, 300 to 4000 px.</param>
    /// <param name="theme">The colours; null is ink on plaster.</param>
    /// <param name="scale">Pixels of the file for each px, 1 to 4.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range.</exception>
    public static byte[] Png(Chart chart, int widthPx = WidthPx, int heightPx = HeightPx, ChartTheme? theme = null, double scale = 1)
    {
        ArgumentNullException.ThrowIfNull(chart);
        return Png([chart], widthPx, heightPx, theme, scale);
    }

    /// <summary>Several charts on one sheet as PNG, two beside each other.</summary>
    /// <param name="charts">The charts, at least one.</param>
    /// <param name="widthPx">Width of each, 400 to 4000 px.</param>
    /// <param name="heightPx">Height of each, 300 to 4000 px.</param>
    /// <param name="theme">The colours; null is ink on plaster.</param>
    /// <param name="scale">Pixels of the file for each px, 1 to 4.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range, or there is no chart.</exception>
    public static byte[] Png(IReadOnlyList<Chart> charts, int widthPx = WidthPx, int heightPx = HeightPx, ChartTheme? theme = null, double scale = 1)
    {
        Require.Within(scale, 1, 4, nameof(scale));
        var (marks, width, height) = Sheet(charts, theme ?? ChartTheme.Light, widthPx, heightPx);
        return PngPainter.Of(marks, width, height, scale);
    }

    private static (IEnumerable<Mark> Marks, int Width, int Height) Sheet(IReadOnlyList<Chart> charts, ChartTheme theme, int widthPx, int heightPx)
    {
        ArgumentNullException.ThrowIfNull(charts);
        Require.Within(charts.Count, 1, 40, nameof(charts), "charts");
        Require.Within(widthPx, 400, 4000, nameof(widthPx), "px");
        Require.Within(heightPx, 300, 4000, nameof(heightPx), "px");
        var columns = Math.Min(charts.Count, 2);
        var (width, height) = (columns * widthPx, (charts.Count + columns - 1) / columns * heightPx);
        // The paper under them all: an odd number of charts leaves a corner free.
        var paper = new AreaMark([new Pixel(0, 0), new Pixel(width, 0), new Pixel(width, height), new Pixel(0, height)], theme.Sheet);
        var marks = charts.SelectMany((c, i) => ChartLayout.Of(c, widthPx, heightPx, theme, i % columns * widthPx, i / columns * heightPx));
        return (charts.Count > 1 ? marks.Prepend(paper) : marks, width, height);
    }
}
