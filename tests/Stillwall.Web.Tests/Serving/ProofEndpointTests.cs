using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using Stillwall.Appraisals.Explaining;
using Stillwall.Files.Projects;
using Stillwall.Web.Proving;
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
        Assert.Equal(["measured.system_resonance", "measured.system_q"], outcome.Kept.Select(m => m.Key));
    }

    [Fact]
    public async Task Taps_give_the_modulus_of_the_standards_formula()
    {
        // ASTM E1876-15 for 2500 Hz: 3.5671 GPa (recomputed by hand).
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
        var points = json.GetProperty("points")
            .EnumerateArray()
            .ToDictionary(p => p.GetProperty("frequency_hz").GetDouble(), p => p.GetProperty("magnitude_db").GetDouble());
        // The second-order high-pass of a closed box, less its mean from 100 to 200 Hz as the measured one is.
        var zero = points.Keys.Where(f => f is >= 100 and <= 200).Average(Level);
        Assert.All(points.Where(p => p.Key is >= 20 and <= 400), p => Assert.Equal(Level(p.Key) - zero, p.Value, 0.3));
    }

    // Two files in one request, their names and lengths beside them. The right channel is 3 % weaker in both: taken out, the resistance is right;
    // left in, it is off by 4 %.
    [Fact]
    public async Task The_resistor_alone_takes_the_channels_difference_out()
    {
        var (z, alone) = (Sounds.Impedance(Sounds.ResonanceHz, 9, 0.7826, 0.97), Sounds.Alone(0.97));
        var without = await Proved("impedance?reference=10+ohm", z);
        Assert.InRange(without.GetProperty("dc_resistance_ohm").GetDouble(), 3.2, 3.45);
        var json = await Proved($"impedance?reference=10+ohm&parts=recording:{z.Length},alone:{alone.Length}", [.. z, .. alone]);
        Assert.Equal(1, json.GetProperty("dc_resistance_ohm").GetDouble() / 3.55, 0.005);
        Assert.Equal(1, json.GetProperty("q_total").GetDouble() / Sounds.Q, 0.015);
    }

    // Small 1972: with 30 Hz free and the moving mass doubled, fs/√2; Vas = ρc²Sd²/((2πfs)²·m) with 1.2041 kg/m³ and 343.2 m/s (20 °C, from memory).
    [Fact]
    public async Task An_added_mass_gives_the_driver_and_keeping_it_states_it()
    {
        page.Reset();
        var (free, loaded) = (Sounds.Impedance(30, 5.5, 0.475), Sounds.Impedance(30 / Math.Sqrt(2), 5.5 * Math.Sqrt(2), 0.475 * Math.Sqrt(2)));
        var driver = (
            await Proved($"driver?reference=10+ohm&added=40+g&sd=214+cm2&parts=recording:{free.Length},mass:{loaded.Length}", [.. free, .. loaded])
        ).GetProperty("driver");
        var vas = 1.2041 * 343.2 * 343.2 * 0.0214 * 0.0214 / (Math.Pow(2 * Math.PI * 30, 2) * 0.040);
        Assert.Equal(1, driver.GetProperty("vas_m3").GetDouble() / vas, 0.02);
        Assert.Equal(1, driver.GetProperty("mms_kg").GetDouble() / 0.040, 0.02);
        var open = page.Workshop.Opened("reading-room")!;
        var outcome = open.Proofs.Of("driver")!;
        Assert.False(outcome.IsIn(open.Now.Project, open.Now.Text));
        Assert.Empty(open.Edit(this, new([.. outcome.Keys], text => outcome.WrittenInto(text, isKept: true, new DateOnly(2026, 12, 1))), "kept"));
        var sheet = open.Now.Plan.Facts.Sheet!;
        Assert.Equal(("Dunlin 8, measured", 0.012, 0.186), (sheet.Name, sheet.XmaxM!.Value, sheet.CutoutM!.Value));
        Assert.Equal(1, sheet.FsHz!.Value / 30, 0.01);
        Assert.True(outcome.IsIn(open.Now.Project, open.Now.Text));
        Assert.Equal(("impedance", "driver"), (open.Now.Project.Logbook[^1].Kind, open.Now.Project.Logbook[^1].Part));
        page.Reset();
    }

    [Fact]
    public async Task A_known_box_gives_the_suspensions_volume()
    {
        // Small 1972: Vas of 24 L on 12 L raises the resonance by √3, and both Qs with it.
        var (free, boxed) = (Sounds.Impedance(30, 5.5, 0.475), Sounds.Impedance(30 * Math.Sqrt(3), 5.5 * Math.Sqrt(3), 0.475 * Math.Sqrt(3)));
        var driver = (
            await Proved($"driver?reference=10+ohm&volume=12+L&sd=214+cm2&parts=recording:{free.Length},box:{boxed.Length}", [.. free, .. boxed])
        ).GetProperty("driver");
        Assert.Equal(1, driver.GetProperty("vas_m3").GetDouble() / 0.024, 0.02);
    }

    // Exponents of the closed forms: ASTM E1876-15 (E ∝ m f²/b, and L³/t³·T1 depends on t/L alone), Z ∝ R, IEC 60268-5:2003 (Vas ∝ Sd²/Mms, Bl ∝ √(Mms Re)),
    // a leak that empties in the time told.
    [Fact]
    public async Task What_one_per_cent_does_to_a_recording_s_figure_is_the_exponent_of_its_formula()
    {
        _ = await Proved("tap?length=160mm&width=40mm&thickness=40mm&mass=268.8g", Sounds.Taps());
        Assert.Equal(
            (2, 1, -1),
            (Effect("tap", "Young's modulus", "frequency_hz"), Effect("tap", "Young's modulus", "mass_kg"), Effect("tap", "Young's modulus", "width_m"))
        );
        Assert.InRange(Effect("tap", "Young's modulus", "length_m"), 1.5, 3);
        Assert.Equal(0, Effect("tap", "Young's modulus", "length_m") + Effect("tap", "Young's modulus", "thickness_m"), 0.01);
        Assert.Equal(-1, Effect("tap", "density", "thickness_m"));
        Assert.DoesNotContain(Told("tap", "loss factor, its supports in it").Inputs, i => i.Sensitivity is not null);

        byte[] free = Sounds.Impedance(30, 5.5, 0.475),
            loaded = Sounds.Impedance(30 / Math.Sqrt(2), 5.5 * Math.Sqrt(2), 0.475 * Math.Sqrt(2));
        _ = await Proved($"driver?reference=10+ohm&added=40+g&sd=214+cm2&parts=recording:{free.Length},mass:{loaded.Length}", [.. free, .. loaded]);
        Assert.Equal(
            (1, -1, 0.5),
            (Effect("driver", "moving mass", "added"), Effect("driver", "Vas", "added"), Effect("driver", "force factor", "added"))
        );
        Assert.Equal(
            (0, 2, 0, 0.5),
            (
                Effect("driver", "moving mass", "sd_m2"),
                Effect("driver", "Vas", "sd_m2"),
                Effect("driver", "force factor", "sd_m2"),
                Effect("driver", "force factor", "reference_ohm")
            )
        );

        _ = await Proved("impedance?reference=10+ohm", Sounds.Impedance());
        Assert.Equal((1, 0), (Effect("impedance", "f3 (−3 dB)", "resonance_hz"), Effect("impedance", "resonance", "reference_ohm")));

        // Small 1972: V = Vas/α with α = (fc/fs)² − 1, so V ∝ Vas and d ln V/d ln fs = 2(1 + α)/α.
        double OfFill(string key) => Told("impedance", "fill factor, if the driver is as stated").Inputs.Single(i => i.Key == key).Sensitivity!.Value;
        var ratio = Math.Pow(Sounds.ResonanceHz / 30, 2);
        Assert.Equal(2 * ratio / (ratio - 1), OfFill("driver.fs"), 0.02);
        Assert.Equal(1, OfFill("driver.vas"), 1e-3);

        var hold = ProofReader.Read("hold", name => name == "seconds" ? "2 s" : null, page.Workshop.Opened("reading-room")!.Now.Plan.Facts);
        Assert.All(hold.Figures, f => Assert.Equal(1, f.Why!().Inputs.Single(i => i.Key == "recording.seconds").Sensitivity!.Value, 1e-3));
    }

    // The same recording read anew with a resistor that is one per cent greater.
    [Fact]
    public async Task A_greater_resistor_moves_an_impedance_by_what_was_told()
    {
        var one = await Proved("impedance?reference=10+ohm", Sounds.Impedance());
        double[] told =
        [
            Effect("impedance", "coil's resistance", "reference_ohm"),
            Effect("impedance", "resonance", "reference_ohm"),
            Effect("impedance", "Q, total", "reference_ohm"),
        ];
        var other = await Proved("impedance?reference=10.1+ohm", Sounds.Impedance());
        string[] keys = ["dc_resistance_ohm", "resonance_hz", "q_total"];
        Assert.All(
            keys.Zip(told),
            p => Assert.Equal(1 + (0.01 * p.Second), other.GetProperty(p.First).GetDouble() / one.GetProperty(p.First).GetDouble(), 2e-5)
        );
    }

    private Explanation Told(string proof, string figure) =>
        page.Workshop.Opened("reading-room")!.Proofs.Of(proof)!.Figures.Single(f => f.Name == figure).Why!();

    // To three digits, for a central difference over one per cent.
    private double Effect(string proof, string figure, string key) =>
        Math.Round(Told(proof, figure).Inputs.FirstOrDefault(i => i.Key == $"recording.{key}")?.Sensitivity ?? double.NaN, 3);

    [Fact]
    public async Task Both_sides_of_a_wall_give_ten_differences_that_may_be_kept()
    {
        byte[] here = Sounds.Noise(0.5),
            there = Sounds.Noise(0.025),
            quiet = Sounds.Noise(0.0001, 4);
        var json = await Proved($"wall?parts=recording:{here.Length},there:{there.Length},background:{quiet.Length}", [.. here, .. there, .. quiet]);

        // A twentieth: 26.02 dB.
        Assert.All(json.GetProperty("bands").EnumerateArray(), b => Assert.Equal(26.02, b.GetProperty("difference_db").GetDouble(), 0.1));
        var outcome = page.Workshop.Opened("reading-room")!.Proofs.Of("wall")!;
        Assert.Equal(("measured.party_wall", 10), (outcome.Kept.Single().Key, outcome.Kept.Single().Stated.Split(',').Length));
        Assert.All(outcome.Figures, f => Assert.Equal("dB", f.Why!().Unit));
        await RefusedInOneLine($"wall?parts=recording:{there.Length},there:{here.Length}", [.. there, .. here], HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData(1, 1, "same")]
    [InlineData(1, -1, "opposite")]
    [InlineData(-1, -1, "same")]
    public async Task Two_cones_push_the_same_way_or_not(double one, double other, string way)
    {
        byte[] cabinet = Sounds.Pulses(one),
            main = Sounds.Pulses(other);
        var json = await Proved($"polarity?parts=recording:{cabinet.Length},main:{main.Length}", [.. cabinet, .. main]);
        Assert.Equal((one > 0, one * other > 0), (json.GetProperty("is_positive").GetBoolean(), json.GetProperty("is_same").GetBoolean()));
        Assert.Equal([("measured.polarity", way)], page.Workshop.Opened("reading-room")!.Proofs.Of("polarity")!.Kept);
        _ = await Proved("polarity", cabinet);
        Assert.Empty(page.Workshop.Opened("reading-room")!.Proofs.Of("polarity")!.Kept);
    }

    // The mean of a recording and itself is the recording; the count tells that both were taken.
    [Fact]
    public async Task Sweeps_are_averaged_in_one_request_and_with_those_before()
    {
        using var client = page.Client();
        var heard = Sounds.Heard(await client.GetByteArrayAsync(new Uri("/files/reading-room/signals/sweep.wav", UriKind.Relative), Stop));
        var once = await Proved("sweep?at=near", heard);
        string Count() => page.Workshop.Opened("reading-room")!.Proofs.Of("sweep")!.Figures[^1].Text;
        Assert.Equal("1", Count());
        var twice = await Proved($"sweep?at=near&parts=recording:{heard.Length},recording:{heard.Length}", [.. heard, .. heard]);
        Assert.Equal("2", Count());
        Assert.Equal(once.GetProperty("points").ToString(), twice.GetProperty("points").ToString());
        _ = await Proved("sweep?at=near&average=1", heard);
        Assert.Equal("3", Count());
        _ = await Proved("sweep?at=seat&average=1", heard);
        Assert.Equal("1", Count());
    }

    [Theory]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("png", "image/png")]
    [InlineData("csv", "text/csv")]
    public async Task The_charts_of_a_proof_are_had_as_files(string kind, string type)
    {
        _ = await Proved("impedance?reference=10+ohm", Sounds.Impedance());
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri($"/files/reading-room/charts/proof-impedance.{kind}", UriKind.Relative), Stop);
        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.True((await answer.Content.ReadAsByteArrayAsync(Stop)).Length > 500);
    }

    [Theory]
    [InlineData("slow", 60)]
    [InlineData("pulses", 4)]
    [InlineData("noise", 30)]
    public async Task The_signals_of_the_other_proofs_are_there(string name, double seconds)
    {
        using var client = page.Client();
        var sound = Stillwall
            .Files.Audio.WavReader.Read(await client.GetByteArrayAsync(new Uri($"/files/reading-room/signals/{name}.wav", UriKind.Relative), Stop))
            .Recording!;
        Assert.Equal((48000, seconds), (sound.RateHz, Math.Round(sound.DurationS)));
        Assert.Equal(-12, 20 * Math.Log10(sound.Channels[0].Max(Math.Abs)), 0.1);
    }

    [Theory]
    [InlineData("parts=recording:10")]
    [InlineData("parts=recording:x")]
    [InlineData("parts=recording:999999999")]
    [InlineData("parts=recording")]
    [InlineData("parts=there:0")]
    public async Task Parts_that_do_not_fit_are_refused(string parts) => await RefusedInOneLine($"wall?{parts}", Sounds.Taps(), HttpStatusCode.BadRequest);

    [Theory]
    [InlineData("impedance")]
    [InlineData("driver?reference=10+ohm&sd=214+cm2")]
    [InlineData("driver?reference=10+ohm&added=10+g")]
    [InlineData("wall")]
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
