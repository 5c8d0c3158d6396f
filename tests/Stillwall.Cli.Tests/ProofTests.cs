using System.Text.Json;
using Stillwall.Files.Audio;

namespace Stillwall.Cli.Tests;

/// <summary>The verbs <c>signal</c> and <c>prove</c>.</summary>
public sealed class ProofTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("16", "44100")]
    [InlineData("24", "48000")]
    [InlineData("float", "96000")]
    public void A_signal_is_a_file_of_the_wanted_kind_and_length(string samples, string rate)
    {
        foreach (var kind in new[] { "sweep", "tone", "noise", "pulses", "levels" })
        {
            var ran = desk.Run("signal", kind, "--out", "x.wav", "--samples", samples, "--rate", rate, "--seconds", "2", "--level", "-6 dB");
            Assert.Equal(0, ran.ExitCode);
            Assert.StartsWith("Caution", ran.Error, StringComparison.Ordinal);
            var sound = WavReader.Read(File.ReadAllBytes(desk.PathTo("x.wav"))).Recording!;
            Assert.Equal(2, sound.DurationS);
            Assert.Equal(rate, $"{sound.RateHz}");
            Assert.InRange(sound.Channels[0].Max(Math.Abs), 0.49, 0.5013);
            Assert.InRange(Math.Abs(sound.Channels[0][0]) + Math.Abs(sound.Channels[0][^1]), 0, 0.01);
        }
    }

    [Fact]
    public void The_document_of_an_impedance_has_the_keys_that_scripts_rely_on()
    {
        ProofSounds.Impedance(desk, "z.wav");
        ProofSounds.Alone(desk, "alone.wav");
        var json = desk.Run("prove", "impedance", "z.wav", "--reference", "10 ohm", "--alone", "alone.wav", "--json").Json;
        (string Key, double Value)[] keys =
        [
            ("resonance_hz", 30),
            ("q_mechanical", 5.5),
            ("q_electrical", 0.475),
            ("q_total", 0.4372),
            ("dc_resistance_ohm", 3.55),
            ("inductance_h", 1.2e-3),
            ("peak_ohm", 44.65),
        ];
        Assert.All(
            keys,
            k =>
            {
                Assert.Equal(1, json.GetProperty(k.Key).GetDouble() / k.Value, 0.015);
                Assert.InRange(json.GetProperty("uncertainty").GetProperty(k.Key).GetDouble(), 1e-12, 0.03 * k.Value);
            }
        );
        Assert.True(json.GetProperty("curve").GetArrayLength() > 100);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("cabinet").ValueKind);
        Assert.Equal(("doubts", 0), (json.EnumerateObject().Last().Name, json.GetProperty("doubts").GetArrayLength()));
    }

    [Fact]
    public void What_is_doubtful_says_so_first_and_is_kept_at_a_second_asking_alone()
    {
        ProofSounds.Impedance(desk, "z.wav", creep: 0.1);
        ProofSounds.Alone(desk, "alone.wav");
        string[] proof = ["prove", "impedance", "z.wav", "--reference", "10 ohm", "--alone", "alone.wav"];
        string[] kept = [.. proof, "--project", "reading-room", "--keep"];
        var before = File.ReadAllText(desk.PathTo("reading-room/stillwall.json"));

        Assert.StartsWith("Doubtful: the suspension creeps", desk.Run(proof).Output, StringComparison.Ordinal);
        Assert.Equal(1, desk.Run([.. proof, "--json"]).Json.GetProperty("doubts").GetArrayLength());
        var refused = desk.Run(kept);
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("--keep: nothing was written", refused.Error, StringComparison.Ordinal);
        Assert.Contains("--despite-doubts writes them all the same", refused.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(desk.PathTo("reading-room/stillwall.json")));
        Assert.Equal(0, desk.Run([.. kept, "--despite-doubts"]).ExitCode);
        Assert.Contains("\"system_q\"", File.ReadAllText(desk.PathTo("reading-room/stillwall.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sweep_gives_a_table_and_the_keys_that_scripts_rely_on()
    {
        ProofSounds.Sweep(desk);
        var ran = desk.Run("prove", "sweep", "heard.wav", "--played", "sweep.wav", "--csv", "-");
        Assert.Equal(["frequency_hz", "magnitude_db"], ran.Lines[0].Split(',')[..2]);
        Assert.Equal(0, ran.Rows.Where(r => r[0] is >= 100 and <= 200).Average(r => r[1]), 1e-9);
        Assert.Equal(24, ran.Rows.Count(r => r[0] is >= 40 and < 80.0 * 0.998));
        var json = desk.Run("prove", "sweep", "heard.wav", "--played", "sweep.wav", "--json").Json;
        Assert.Equal(0.8, json.GetProperty("delay_s").GetDouble(), 2e-3);
        Assert.InRange(json.GetProperty("harmonic_distortion").GetDouble(), 0, 0.01);
        Assert.True(json.GetProperty("signal_to_noise_db").GetDouble() > 40);
        Assert.Equal(
            12,
            desk.Run("prove", "sweep", "heard.wav", "--played", "sweep.wav", "--csv", "-", "--points-per-octave", "12")
                .Rows.Count(r => r[0] is >= 40 and < 80.0 * 0.998)
        );
    }

    [Fact]
    public void A_tap_test_has_the_keys_that_scripts_rely_on_and_compares_two_bars()
    {
        ProofSounds.Taps(desk);
        string[] tap = ["prove", "tap", "taps.wav", "--length", "160mm", "--width", "40mm", "--thickness", "40mm", "--mass"];
        var one = desk.Run([.. tap, "268.8g", "--json"]);
        Assert.Equal(1, one.Json.GetProperty("frequency_hz").GetDouble() / 2500, 1e-3);
        Assert.Equal(1, one.Json.GetProperty("youngs_modulus_pa").GetDouble() / 3.5671e9, 6e-3);
        Assert.Equal(1, one.Json.GetProperty("loss_factor").GetDouble() / 0.01, 0.02);
        Assert.InRange(one.Json.GetProperty("uncertainty").GetProperty("youngs_modulus_pa").GetDouble(), 1e7, 1e8);
        desk.Write("one.json", one.Output);
        var other = desk.Run([.. tap, "300g", "--against", "one.json", "--json"]).Json.GetProperty("against");
        Assert.True(other[0].GetProperty("is_beyond_noise").GetBoolean());
        Assert.False(other[1].GetProperty("is_beyond_noise").GetBoolean());
        desk.Write("no.json", "{}");
        Assert.Equal(2, desk.Run([.. tap, "300g", "--against", "no.json"]).ExitCode);
    }

    [Fact]
    public void What_is_kept_counts_from_then_on_and_the_logbook_tells_it()
    {
        ProofSounds.Impedance(desk, "z.wav", 49);
        ProofSounds.Taps(desk);
        ProofSounds.Wall(desk);
        var text = File.ReadAllText(desk.Project);
        Assert.Equal(0, desk.Run("prove", "impedance", "z.wav", "--reference", "10 ohm", "--project", "reading-room").ExitCode);
        Assert.Equal(text, File.ReadAllText(desk.Project));
        string[] to = ["--project", "reading-room", "--keep", "--log", "2026-11-30", "--json"];
        Assert.Equal(0, desk.Run(["prove", "impedance", "z.wav", "--reference", "10 ohm", .. to]).ExitCode);
        Assert.Equal(
            0,
            desk.Run(["prove", "tap", "taps.wav", "--length", "160mm", "--width", "40mm", "--thickness", "40mm", "--mass", "268.8g", .. to]).ExitCode
        );
        Assert.Equal(0, desk.Run(["prove", "hold", "--seconds", "2", .. to]).ExitCode);
        Assert.Equal(0, desk.Run(["prove", "wall", "here.wav", "there.wav", .. to]).ExitCode);
        var project = JsonDocument.Parse(File.ReadAllText(desk.Project)).RootElement;
        Assert.Equal(
            ["core_density", "core_loss_factor", "core_modulus", "leak_resistance", "party_wall", "system_q", "system_resonance"],
            project.GetProperty("measured").EnumerateObject().Select(p => p.Name).Where(n => n != "note").Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            ["impedance", "tap", "hold", "party wall"],
            project.GetProperty("logbook").EnumerateArray().Select(e => e.GetProperty("kind").GetString()).TakeLast(4)
        );
        var findings = desk.Run("appraise", "reading-room", "--json")
            .Json.GetProperty("findings")
            .EnumerateArray()
            .Where(f => f.GetProperty("stage").GetString() == "Proof")
            .ToDictionary(f => f.GetProperty("topic").GetString()!, f => f.GetProperty("verdict").GetString());
        Assert.NotEqual("unknown", findings["resonance as designed"]);
        Assert.NotEqual("unknown", findings["Q as designed"]);
        Assert.NotEqual("unknown", findings["core as assumed"]);
        Assert.Equal("unknown", findings["no rattle"]);
        Assert.Equal("unknown", findings["polarity matches the main speakers"]);
        ProofSounds.Pulses(desk, "cabinet.wav", 1);
        ProofSounds.Pulses(desk, "main.wav", -1);
        Assert.Equal(2, desk.Run(["prove", "polarity", "cabinet.wav", .. to]).ExitCode);
        Assert.Equal(0, desk.Run(["prove", "polarity", "cabinet.wav", "--against", "main.wav", .. to]).ExitCode);
        Assert.Equal("opposite", JsonDocument.Parse(File.ReadAllText(desk.Project)).RootElement.GetProperty("measured").GetProperty("polarity").GetString());
        Assert.Equal(
            "fails",
            desk.Run("appraise", "reading-room", "--json")
                .Json.GetProperty("findings")
                .EnumerateArray()
                .Single(f => f.GetProperty("id").GetString() == "proof/polarity-matches-the-main-speakers")
                .GetProperty("verdict")
                .GetString()
        );
        Assert.Equal(0, desk.Run("prove", "rattle", "--none", "--project", "reading-room", "--log", "2026-12-01").ExitCode);
        Assert.Equal(
            "holds",
            desk.Run("appraise", "reading-room", "--json")
                .Json.GetProperty("findings")
                .EnumerateArray()
                .Single(f => f.GetProperty("id").GetString() == "proof/no-rattle")
                .GetProperty("verdict")
                .GetString()
        );
    }

    [Fact]
    public void The_weighings_of_an_exact_decay_give_its_end()
    {
        // 7.6 kg + 2.4 kg·e^(−t/12 d); 5 % of 7.6 kg is left after 12·ln(2.4/0.38) = 22.1 days.
        var rows = Enumerable
            .Range(0, 8)
            .Select(i => i * 4)
            .Select(t => FormattableString.Invariant($"{new DateOnly(2026, 11, 16).AddDays(t):yyyy-MM-dd},{7.6 + (2.4 * Math.Exp(-t / 12.0)):R}"));
        desk.Write("w.csv", "date,mass_kg\n" + string.Join('\n', rows) + "\n");
        var json = desk.Run("prove", "weight", "w.csv", "--json").Json;
        Assert.Equal(7.6, json.GetProperty("dry_mass_kg").GetDouble(), 1e-3);
        Assert.Equal(12, json.GetProperty("time_constant_days").GetDouble(), 1e-2);
        Assert.Equal("2026-12-09", json.GetProperty("ready_date").GetString());
        Assert.Equal(JsonValueKind.Null, json.GetProperty("stoichiometric_dry_mass_kg").ValueKind);
        Assert.InRange(
            desk.Run("prove", "weight", "w.csv", "--json", "--project", "reading-room").Json.GetProperty("stoichiometric_dry_mass_kg").GetDouble(),
            5,
            15
        );
    }

    [Fact]
    public void A_hold_test_outside_the_stopwatch_is_a_bound()
    {
        string Bound(string seconds) =>
            desk.Run("prove", "hold", "--seconds", seconds, "--project", "reading-room", "--json").Json.GetProperty("bound").GetString()!;
        Assert.Equal(("at most", "none", "at least"), (Bound("0.2"), Bound("2"), Bound("9")));
        Assert.Equal(2, desk.Run("prove", "hold", "--seconds", "0.2", "--project", "reading-room", "--keep").ExitCode);
    }

    [Fact]
    public void A_part_without_a_name_is_no_answer_that_nothing_rattled()
    {
        var ran = desk.Run("prove", "rattle", "--heard", " ", "--project", "reading-room", "--log", "2026-12-01");
        Assert.Equal((2, "--heard is empty; the part that rattled, or --none\n"), (ran.ExitCode, ran.Error));
    }

    // A free driver is no cabinet: its resonance is not the cabinet's.
    [Fact]
    public void A_driver_measured_with_a_mass_is_kept_as_the_project_s_driver()
    {
        ProofSounds.Impedance(desk, "free.wav");
        ProofSounds.Impedance(desk, "loaded.wav", 30 / Math.Sqrt(2));
        var ran = desk.Run(
            [
                .. new[] { "prove", "impedance", "free.wav", "--reference", "10 ohm", "--with-mass", "loaded.wav", "--mass", "40 g", "--sd", "214 cm2" },
                .. new[] { "--project", "reading-room", "--keep", "--driver", "driver.json" },
            ]
        );
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        var project = JsonDocument.Parse(File.ReadAllText(desk.Project)).RootElement;
        Assert.Equal("Dunlin 8, measured", project.GetProperty("driver").GetProperty("name").GetString());
        Assert.False(project.GetProperty("measured").TryGetProperty("system_resonance", out _));
        Assert.Contains("driver: Dunlin 8 → ", ran.Output, StringComparison.Ordinal);
        Assert.Equal(
            project.GetProperty("driver").GetProperty("fs").GetString(),
            JsonDocument.Parse(File.ReadAllText(desk.PathTo("driver.json"))).RootElement.GetProperty("fs").GetString()
        );
    }

    [Fact]
    public void Bad_sounds_are_told_in_one_line_each_and_nothing_is_written()
    {
        ProofSounds.Impedance(desk, "z.wav", 49);
        var whole = File.ReadAllBytes(desk.PathTo("z.wav"));
        var text = File.ReadAllText(desk.Project);
        foreach (var length in new[] { 0, 3, 11, 12, 20, 30, 43, 44 })
        {
            File.WriteAllBytes(desk.PathTo("bad.wav"), whole[..length]);
            foreach (
                string[] verb in new string[][]
                {
                    ["impedance", "bad.wav", "--reference", "10 ohm"],
                    ["sweep", "bad.wav", "--played", "z.wav"],
                    ["wall", "bad.wav", "z.wav"],
                    ["polarity", "bad.wav"],
                }
            )
            {
                var ran = desk.Run(["prove", .. verb, "--project", "reading-room"]);
                Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
                Assert.Single(ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
                Assert.StartsWith("bad.wav: ", ran.Error, StringComparison.Ordinal);
            }
        }

        Assert.Equal(text, File.ReadAllText(desk.Project));
        File.WriteAllBytes(desk.PathTo("cut.wav"), whole[..(whole.Length / 2)]);
        Assert.StartsWith("warning: cut.wav: is cut off", desk.Run("prove", "impedance", "cut.wav", "--reference", "10 ohm").Error, StringComparison.Ordinal);
    }
}
