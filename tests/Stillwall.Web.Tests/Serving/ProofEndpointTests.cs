using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using Stillwall.Web.Serving;

namespace Stillwall.Web.Tests.Serving;

/// <summary>The signal and the proofs by real requests. The recordings are made from closed forms, which say what must come out.</summary>
public sealed class ProofEndpointTests : IClassFixture<Page>
{
    private const string Bar = "tap?length=160mm&width=40mm&thickness=40mm&mass=268.8g";

    private readonly Page page;

    // Files are had of projects that a page has opened.
    public ProofEndpointTests(Page page)
    {
        this.page = page;
        _ = page.Workshop.Current();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_impedance_comes_back_as_it_was_made()
    {
        var json = await Proved("impedance?reference=10+ohm", Sounds.Impedance());
        Assert.Equal(1, json.GetProperty("resonance_hz").GetDouble() / Sounds.ResonanceHz, 0.015);
        Assert.Equal(1, json.GetProperty("q_total").GetDouble() / Sounds.Q, 0.015);
        Assert.Equal(1, json.GetProperty("dc_resistance_ohm").GetDouble() / 3.55, 0.015);
        var outcome = page.Workshop.Opened("reading-room")!.Proofs.Of("impedance")!;
        Assert.Equal(["computed", "measured"], outcome.Chart!.Series.Select(s => s.Name));
        Assert.Equal(["measured.system_resonance", "measured.system_q"], outcome.Measured.Select(m => m.Key));
    }

    [Fact]
    public async Task Taps_give_the_modulus_of_the_standards_formula()
    {
        // ASTM E1876 for 2500 Hz: 3.5671 GPa (recomputed by hand).
        var json = await Proved(Bar, Sounds.Taps());
        Assert.Equal(1, json.GetProperty("youngs_modulus_pa").GetDouble() / 3.5671e9, 6e-3);
        Assert.Equal(1, json.GetProperty("loss_factor").GetDouble() / 0.01, 0.02);
    }

    [Fact]
    public async Task A_recording_of_the_fetched_sweep_gives_the_shape_it_went_through()
    {
        using var client = page.Client();
        var played = await client.GetByteArrayAsync(new Uri("/files/reading-room/signals/sweep.wav", UriKind.Relative), Stop);
        var json = await Proved("sweep?at=near", Sounds.Heard(played));
        Assert.Equal(0.8, json.GetProperty("delay_s").GetDouble(), 2e-3);
        var points = json.GetProperty("points").EnumerateArray().ToDictionary(p => p.GetProperty("frequency_hz").GetDouble(), p => p.GetProperty("magnitude_db").GetDouble());
        // The second-order high-pass of a closed box, less its mean from 100 to 200 Hz as the measured one is.
        var zero = points.Keys.Where(f => f is >= 100 and <= 200).Average(Level);
        Assert.All(points.Where(p => p.Key is >= 20 and <= 400), p => Assert.Equal(Level(p.Key) - zero, p.Value, 0.3));
    }

    [Theory]
    [InlineData("impedance")]
    [InlineData("impedance?reference=10")]
    [InlineData("impedance?reference=-1+ohm")]
    [InlineData("impedance?reference=10+Hz")]
    [InlineData("tap?length=160mm&width=40mm&thickness=40mm")]
    [InlineData("tap?length=100mm&width=40mm&thickness=40mm&mass=200g")]
    [InlineData("sweep?at=roof")]
    public async Task What_is_stated_beside_it_must_make_sense(string path) => await RefusedInOneLine(path, Sounds.Taps(), HttpStatusCode.BadRequest);

    [Theory]
    [InlineData("impedance?reference=10+ohm")]
    [InlineData("sweep")]
    [InlineData(Bar)]
    public async Task Bad_files_are_told_in_one_line_each(string path)
    {
        var whole = Sounds.Impedance();
        foreach (var length in new[] { 0, 3, 11, 12, 20, 30, 43, 44 })
        {
            await RefusedInOneLine(path, whole[..length], HttpStatusCode.BadRequest);
        }

        await RefusedInOneLine(path, [.. whole[..44], .. new byte[48000]], HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task Another_kind_of_content_is_refused_so_that_no_form_can_send_it()
    {
        foreach (var kind in new[] { "text/plain", "application/x-www-form-urlencoded", "multipart/form-data" })
        {
            await RefusedInOneLine("impedance?reference=10+ohm", Sounds.Taps(), HttpStatusCode.UnsupportedMediaType, kind);
        }
    }

    [Fact]
    public async Task A_recording_past_its_own_limit_is_too_large_and_one_past_the_pages_is_not()
    {
        using var client = page.Client();
        using var large = Request("sweep", new byte[ProofEndpoints.RecordingLimit + 1], "audio/wav");
        large.Headers.ExpectContinue = true;
        using var refused = await client.SendAsync(large, Stop);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.StatusCode);
        await RefusedInOneLine("sweep", new byte[Start.BodyLimit + 1], HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData("/files/reading-room/prove/hum", 404)]
    [InlineData("/files/no-such/prove/sweep", 404)]
    public async Task An_unknown_proof_or_project_is_not_found(string path, int status)
    {
        using var client = page.Client();
        using var content = new ByteArrayContent([1]);
        content.Headers.ContentType = new MediaTypeHeaderValue("audio/wav");
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), content, Stop);
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Fact]
    public async Task Another_pages_script_is_refused()
    {
        using var client = page.Client();
        using var request = Request("sweep", Sounds.Taps(), "audio/wav");
        request.Headers.Add("Origin", "https://elsewhere.example");
        using var answer = await client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    private static double Level(double frequency)
    {
        var x = frequency / Sounds.ResonanceHz;
        return 20 * Math.Log10(x * x / Math.Sqrt(Math.Pow(1 - (x * x), 2) + Math.Pow(x / Sounds.Q, 2)));
    }

    private static HttpRequestMessage Request(string path, byte[] body, string kind)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, $"/files/reading-room/prove/{path}") { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue(kind);
        return request;
    }

    private async Task<JsonElement> Proved(string path, byte[] body)
    {
        using var client = page.Client();
        using var request = Request(path, body, "audio/wav");
        using var answer = await client.SendAsync(request, Stop);
        var text = await answer.Content.ReadAsStringAsync(Stop);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var document = JsonDocument.Parse(text);
        return document.RootElement.GetProperty("result").Clone();
    }

    private async Task RefusedInOneLine(string path, byte[] body, HttpStatusCode status, string kind = "audio/wav")
    {
        using var client = page.Client();
        using var request = Request(path, body, kind);
        using var answer = await client.SendAsync(request, Stop);
        var text = await answer.Content.ReadAsStringAsync(Stop);
        Assert.True(answer.StatusCode == status, $"{path}, {body.Length} bytes: {answer.StatusCode}, {text}");
        Assert.InRange(text.Length, 10, 300);
        Assert.DoesNotContain('\n', text);
        Assert.DoesNotContain(" at Stillwall", text, StringComparison.Ordinal);
    }
}
