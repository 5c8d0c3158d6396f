using System.Globalization;
using System.Text.Json;

namespace Stillwall.Cli.Tests;

/// <summary>Tables of numbers: columns, rows, and agreement with independently solved cases.</summary>
public sealed class CsvTests : IDisposable
{
    private const string CurveColumns =
        "frequency_hz,spl_db,phase_deg,excursion_peak_mm,box_pressure_pa_rms,impedance_ohm,impedance_phase_deg,group_delay_ms,max_spl_db";

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Curves_have_their_columns_and_81_rows_from_10_Hz_to_1_kHz()
    {
        var ran = desk.Run("curves", "reading-room", "--csv", "-");

        Assert.Equal(CurveColumns, ran.Lines[0]);
        Assert.Equal(81, ran.Rows.Length);
        Assert.Equal((10, 1000), (ran.Rows[0][0], ran.Rows[^1][0]));
        Assert.All(ran.Rows.Index(), row => Assert.Equal(10 * Math.Pow(10, row.Index / 40.0), row.Item[0], 9));
    }

    [Fact]
    public void Twice_the_points_per_decade_contain_the_same_points()
    {
        var forty = desk.Run("curves", "reading-room", "--csv", "-").Lines;
        var eighty = desk.Run("curves", "reading-room", "--csv", "-", "--points-per-decade", "80").Lines;

        Assert.Equal(161, eighty.Length - 1);
        Assert.Equal(forty[1], eighty[1]);
        Assert.Equal(forty[^1], eighty[^1]);
    }

    [Fact]
    public void Ten_times_the_voltage_is_20_dB_more_and_leaves_impedance_and_greatest_level()
    {
        var one = desk.Run("curves", "reading-room", "--csv", "-", "--volts", "1").Rows;
        var ten = desk.Run("curves", "reading-room", "--csv", "-", "--volts", "10").Rows;

        Assert.All(
            one.Zip(ten),
            pair =>
            {
                Assert.Equal(pair.First[1] + 20, pair.Second[1], 9);
                Assert.Equal(pair.First[3] * 10, pair.Second[3], 9);
                Assert.Equal(pair.First[5], pair.Second[5], 9);
                Assert.Equal(pair.First[8], pair.Second[8], 9);
            }
        );
    }

    [Theory]
    [InlineData("cabinet.port", "{ \"diameter\": \"60 mm\", \"length\": \"200 mm\" }", ",port_speed_m_s")]
    [InlineData(
        "cabinet.passive_radiator",
        "{ \"sd\": \"214 cm2\", \"mms\": \"150 g\", \"cms\": \"0.4 mm/N\", \"rms\": \"2 kg/s\" }",
        ",radiator_excursion_mm"
    )]
    public void A_port_or_a_passive_radiator_adds_its_column(string key, string block, string column)
    {
        desk.State(key, block);
        var ran = desk.Run("curves", "reading-room", "--csv", "-");

        Assert.Equal(CurveColumns + column, ran.Lines[0]);
        Assert.All(ran.Rows, row => Assert.True(row[^1] > 0));
    }

    [Fact]
    public void An_unknown_greatest_level_is_an_empty_cell()
    {
        desk.State("brief.amplifier", null);
        var ran = desk.Run("curves", "reading-room", "--csv", "-");

        Assert.Equal(0, ran.ExitCode);
        Assert.All(ran.Lines.Skip(1), line => Assert.EndsWith(",", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("driver", null, "driver")]
    [InlineData("driver", "{ \"re\": \"3.5 ohm\", \"sd\": \"214 cm2\", \"fs\": \"30 Hz\", \"qes\": 0.4, \"vas\": \"24 L\" }", "Qms of the driver (driver.qms)")]
    [InlineData("cabinet.outside", null, "outside size, skins and core of the cabinet (cabinet.outside)")]
    public void A_curve_that_cannot_be_known_names_what_is_missing(string key, string? json, string missing)
    {
        desk.State(key, json);
        Assert.Equal($"curves: not possible yet; not stated yet: {missing}\n", desk.Run("curves", "reading-room", "--csv", "-").Error);
    }

    [Fact]
    public void A_file_gets_the_same_bytes_as_standard_output()
    {
        var shown = desk.Run("curves", "reading-room", "--csv", "-").Output;
        var ran = desk.Run("curves", "reading-room", "--csv", "curves.csv");

        Assert.Equal("curves.csv: 81 rows\n", ran.Output);
        Assert.Equal(shown, File.ReadAllText(desk.PathTo("curves.csv")));
        Assert.DoesNotContain('\r', shown);
    }

    [Fact]
    public void The_room_has_96_rows_and_agrees_with_the_waveguide_form()
    {
        // Case "study" of tests/data/room; its README names the solver.
        using var cases = JsonDocument.Parse(File.ReadAllText(Repository.Data("room/room-cases.json")));
        var room = cases.RootElement[0];
        desk.Write("study/stillwall.json", StudyProject(room));
        var expected = Numbers("room/study.csv");

        var ran = desk.Run("room", "study", "--csv", "-", "--volume-velocity", room.GetProperty("volume_velocity_m3_s").GetRawText());

        Assert.Equal("frequency_hz,spl_db,phase_deg", ran.Lines[0]);
        Assert.Equal(96, ran.Rows.Length);
        Assert.All(
            ran.Rows.Zip(expected),
            pair =>
            {
                Assert.Equal(pair.Second[0], pair.First[0]);
                Assert.InRange(pair.First[1] - pair.Second[2], -0.02, 0.02);
            }
        );
    }

    [Theory]
    [InlineData("highpass-30-q0707", "highpass --f0 30Hz")]
    [InlineData("lowshelf-60-minus6", "lowshelf --f0 60Hz --gain -6dB --slope 1")]
    [InlineData("peaking-45-minus8-q2", "peaking --f0 45Hz --gain -8dB --q 2")]
    public void A_filter_agrees_with_the_independently_computed_response(string file, string words)
    {
        var expected = Numbers($"filters/{file}.csv");
        var ran = desk.Run([.. $"filter {words}".Split(' '), "--csv", "-", "--frequencies", Repository.Data($"filters/{file}.csv")]);

        Assert.Equal("frequency_hz,magnitude_db,phase_deg", ran.Lines[0]);
        Assert.Equal(expected.Length, ran.Rows.Length);
        Assert.All(
            ran.Rows.Zip(expected),
            pair =>
            {
                Assert.Equal(pair.Second[0], pair.First[0]);
                Assert.InRange(pair.First[1] - pair.Second[1], -0.01, 0.01);
            }
        );
    }

    [Fact]
    public void A_transform_that_wishes_for_what_is_there_changes_nothing()
    {
        var ran = desk.Run("filter", "transform", "--f0", "52Hz", "--q", "0.9", "--fp", "52Hz", "--qp", "0.9", "--csv", "-");
        Assert.All(ran.Rows, row => Assert.Equal(0, row[1], 9));
    }

    [Fact]
    public void A_thin_square_plate_agrees_with_the_solid_elements()
    {
        // Case "thin-square-clamped" of tests/data/plates: 400 mm of steel, 4 mm thick.
        var expected = File.ReadAllLines(Repository.Data("plates/plates.csv"))
            .Single(l => l.StartsWith("thin-square-clamped,", StringComparison.Ordinal))
            .Split(',')[1..7]
            .Select(Number)
            .ToArray();
        var modes = desk.Run("panel", "--layers", "4:210e9:0.3:7850", "--size", "400mmx400mm", "--edges", "clamped", "--json")
            .Json.GetProperty("bonded")
            .GetProperty("modes_hz")
            .EnumerateArray()
            .Select(m => m.GetDouble())
            .ToArray();

        Assert.All(modes.Zip(expected), pair => Assert.InRange(pair.First / pair.Second, 0.99, 1.01));
    }

    [Theory]
    [InlineData("2mm:petg,12mm:plaster,2mm:petg", "330mmx210mm", "13inx210mm")]
    public void Sizes_may_be_in_any_unit(string layers, string metric, string mixed)
    {
        // 13 in are 330.2 mm: nearly, and not quite, the same panel.
        double First(string size) =>
            desk.Run("panel", "--layers", layers, "--size", size, "--json").Json.GetProperty("bonded").GetProperty("modes_hz")[0].GetDouble();
        Assert.InRange(First(metric) / First(mixed), 1.0000001, 1.001);
    }

    [Fact]
    public void Six_kilograms_of_plaster_at_three_to_two_take_four_of_water()
    {
        // Common practice, no source: 6 kg at 1.5:1 takes 4 kg of water. Stoichiometry: 1.1862 kg dry for each kilogram of powder (145.149 and 172.171 g/mol).
        var mix = desk.Run("mix", "--powder", "6kg", "--powder-per-water", "1.5", "--mix", "plaster", "--json").Json;

        Assert.Equal(4, mix.GetProperty("water_kg").GetDouble(), 12);
        Assert.InRange(mix.GetProperty("dry_mass_kg").GetDouble(), 6 * 172.171 / 145.149 - 0.001, 6 * 172.171 / 145.149 + 0.001);
        Assert.Equal(10, mix.GetProperty("wet_mass_kg").GetDouble(), 12);
    }

    [Fact]
    public void A_volume_of_slurry_comes_back_from_its_powder()
    {
        var byVolume = desk.Run("mix", "--volume", "4L", "--powder-per-water", "1.7", "--json").Json;
        var powder = byVolume.GetProperty("powder_kg").GetDouble().ToString("R", CultureInfo.InvariantCulture);
        var byPowder = desk.Run("mix", "--powder", $"{powder} kg", "--powder-per-water", "1.7", "--json").Json;

        Assert.Equal(0.004, byPowder.GetProperty("slurry_volume_m3").GetDouble(), 12);
    }

    private static double[][] Numbers(string file) =>
        [.. File.ReadAllLines(Repository.Data(file)).Skip(1).Where(l => l.Length > 0).Select(l => l.Split(',').Select(Number).ToArray())];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string StudyProject(JsonElement room)
    {
        string[] Places(string key) => [.. room.GetProperty(key).EnumerateArray().Select(v => $"\"{v.GetRawText()} m\"")];
        var size = Places("size_m");
        return $$"""
            { "stillwall": 1, "brief": { "room": {
              "width": {{size[0]}}, "length": {{size[1]}}, "height": {{size[2]}},
              "decay_time": "{{room.GetProperty("t60_s").GetRawText()}} s", "pressure_decay_time": "{{room.GetProperty("pressure_decay_s").GetRawText()}} s",
              "cabinet_at": [{{string.Join(", ", Places("source_m"))}}], "seat_at": [{{string.Join(", ", Places("receiver_m"))}}] } } }
            """;
    }
}
