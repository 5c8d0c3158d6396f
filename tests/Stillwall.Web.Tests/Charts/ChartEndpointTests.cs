using System.Globalization;
using System.Net;
using Stillwall.Figures;

namespace Stillwall.Web.Tests.Charts;

/// <summary>Charts as files, by real requests.</summary>
public sealed class ChartEndpointTests : IClassFixture<Page>
{
    private readonly Page page;

    public ChartEndpointTests(Page page)
    {
        this.page = page;
        Assert.NotNull(page.Workshop.Current().Project);
    }

    [Fact]
    public async Task The_numbers_are_those_of_the_library_to_the_last_digit()
    {
        using var client = page.Client();
        var lines = (await client.GetStringAsync("/files/reading-room/charts/how-far.csv", TestContext.Current.CancellationToken)).TrimEnd('\n').Split('\n');
        var main = ResponseCharts.HowFar(Demo.Facts)!.Series.Single(s => s.Role == StyleRole.Main).Points;
        Assert.Equal("frequency_hz,excursion_of_the_cone_one_way_peak_mm", lines[0]);
        Assert.Equal(
            main.SelectMany(p => new[] { p.X, p.Y }),
            lines.Skip(1).SelectMany(l => l.Split(',')).Select(c => double.Parse(c, CultureInfo.InvariantCulture))
        );
    }

    [Fact]
    public async Task The_former_state_is_in_the_files_in_pencil_where_it_is_asked_for()
    {
        var project = page.Workshop.Current().Project!;
        Assert.Empty(project.Set(this, [("cabinet.outside.depth", "280 mm")], "less deep"));
        try
        {
            using var client = page.Client();
            async Task<string> Got(string file) =>
                await client.GetStringAsync(new Uri($"/files/reading-room/charts/{file}", UriKind.Relative), TestContext.Current.CancellationToken);
            var lines = (await Got("how-far.csv?former=1")).TrimEnd('\n').Split('\n');
            Assert.Equal("frequency_hz,excursion_of_the_cone_one_way_peak_mm,before_mm", lines[0]);
            double[] Column(int i) => [.. lines.Skip(1).Select(l => double.Parse(l.Split(',')[i], CultureInfo.InvariantCulture))];
            Assert.Equal(ResponseCharts.HowFar(Demo.Shallower)!.Series.Single(s => s.Role == StyleRole.Main).Points.Select(p => p.Y), Column(1));
            Assert.Equal(ResponseCharts.HowFar(Demo.Facts)!.Series.Single(s => s.Role == StyleRole.Main).Points.Select(p => p.Y), Column(2));
            Assert.DoesNotContain("before", await Got("how-far.csv"), StringComparison.Ordinal);
            Assert.NotEqual(await Got("how-low.svg"), await Got("how-low.svg?former=1"));
        }
        finally
        {
            project.Undo(this);
        }
    }

    [Theory]
    [InlineData("how-low.svg", "image/svg+xml", "<svg")]
    [InlineData("how-low.svg?theme=dark", "image/svg+xml", "#1D2327")]
    [InlineData("neighbour.csv", "text/csv", "third_octave_hz,level_in_the_neighbour_s_room_db,band_low_db,band_high_db")]
    [InlineData("what-the-amplifier-feels.png", "image/png", "PNG")]
    public async Task Each_kind_of_file_is_what_it_says(string file, string kind, string holds)
    {
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri($"/files/reading-room/charts/{file}", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal((HttpStatusCode.OK, kind), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        Assert.Contains(
            holds,
            System.Text.Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("no-such-chart.svg")]
    [InlineData("how-low.exe")]
    [InlineData("..%2f..%2fstillwall.json")]
    public async Task What_is_not_there_is_not_found(string file)
    {
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri($"/files/reading-room/charts/{file}", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Scripts_and_fonts_are_served_by_the_page_itself_and_are_small()
    {
        using var client = page.Client();
        var sum = 0L;
        foreach (var file in new[] { "chart.js", "chart.css", "viewer.css", "fonts.css" })
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, $"/client/{file}");
            request.Headers.AcceptEncoding.ParseAdd("gzip");
            using var answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.Equal((HttpStatusCode.OK, "gzip"), (answer.StatusCode, answer.Content.Headers.ContentEncoding.SingleOrDefault()));
            sum += (await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length;
        }

        var css = await client.GetStringAsync("/client/fonts.css", TestContext.Current.CancellationToken);
        Assert.DoesNotContain("http", css, StringComparison.OrdinalIgnoreCase);
        var fonts = css.Split("url(").Skip(1).Select(u => u.Split(')')[0]).ToList();
        Assert.Equal(5, fonts.Count);
        foreach (var font in fonts)
        {
            sum += (await client.GetByteArrayAsync($"/client/{font}", TestContext.Current.CancellationToken)).Length;
        }

        // A sixth of the page's 1.2 MB; charts, styles and fonts together are about 120 kB.
        Assert.InRange(sum, 50_000, 200_000);
    }
}
