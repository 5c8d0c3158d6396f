using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Projects;

public class ProjectReaderTests
{
    private static readonly byte[] Demo = File.ReadAllBytes(TestData.Demo("stillwall.json"));

    [Fact]
    public void The_demo_has_no_fault_and_says_what_it_says()
    {
        var project = Good(Demo);

        Assert.Equal("Reading-room cabinet", project.Name);
        Assert.Equal(new DateOnly(2026, 11, 14), project.PourDate);
        Assert.Equal(0.256, project.Brief.Printer?.BuildWidthM);
        Assert.Equal(12, project.Brief.Printer?.Flow);
        Assert.Equal([2.2, 2.9, 1.1], project.Brief.Room!.SeatAtM!);
        Assert.Equal("Dunlin 8", project.Driver?.Name);
        Assert.Equal(0.012, project.Cabinet?.CoreM);
        Assert.Equal(9000, project.Cabinet?.Feet?.StiffnessNPerM);
        Assert.Equal(4, project.Materials?.Cast?.HoldDownKg);
        Assert.Equal(new Amount(6, Dimension.Mass), project.Stock!.Single(entry => entry.Item == "cast powder").Amount);
        Assert.Equal(4.1e9, project.Measured.CoreModulusPa);
        Assert.Equal(0.29, project.Logbook[0].MassKg);
    }

    [Fact]
    public void A_byte_order_mark_changes_nothing() => Models.AssertSame(Good(Demo), Good([0xEF, 0xBB, 0xBF, .. Demo]));

    [Fact]
    public void The_order_of_the_keys_changes_nothing() =>
        Gen.Int[0, int.MaxValue]
            .Sample(
                seed => Models.AssertSame(Good(Demo), Good(Encoding.UTF8.GetBytes(Shuffled(JsonNode.Parse(Demo)!, new Random(seed)).ToJsonString()))),
                iter: 20
            );

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_language_of_the_machine_changes_nothing(string culture)
    {
        var (expected, text) = (Good(Demo), ProjectWriter.Write(Good(Demo)));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);

            Models.AssertSame(expected, Good(Demo));
            Assert.Equal(text, ProjectWriter.Write(expected));
            Assert.Equal(
                "stillwall.json:1: budget: -1 is out of range; 0 to 1000000",
                ProjectReader.Read("{\"stillwall\":1,\"budget\":-1}").Faults[0].ToString()
            );
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_ready_box_needs_no_walls() => Assert.Equal(0.024, Good("""{ "stillwall": 1, "cabinet": { "net_volume": "24 L" } }"""u8).Cabinet?.NetVolumeM3);

    [Fact]
    public void A_driver_may_be_written_in_place_with_inch_and_typographic_units()
    {
        var sheet = Good(
            """
            { "stillwall": 1, "driver": {
                "name": "Own", "re": "3.55 Ω", "sd": "33.17 in²", "bl": "12.1 T·m", "mms": "2.69 oz", "cms": "0.42 mm/N", "rms": "3.4 kg/s" } }
            """u8
        ).Driver?.Sheet;

        Assert.NotNull(sheet);
        Assert.Equal(3.55, sheet.ReOhm);
        Assert.Equal(0.0214, sheet.SdM2!.Value, 1e-5);
        Assert.Equal(12.1, sheet.BlTM);
        Assert.Equal(0.0763, sheet.MmsKg!.Value, 1e-4);
    }

    [Fact]
    public void A_leak_may_be_a_bare_number_or_carry_its_unit() =>
        Assert.Equal(
            Good("""{ "stillwall": 1, "cabinet": { "leak": { "resistance": 210000 } } }"""u8),
            Good("""{ "stillwall": 1, "cabinet": { "leak": { "resistance": "2.1e5 Pa s/m3" } } }"""u8)
        );

    [Fact]
    public void The_address_of_a_schema_is_ignored_whatever_it_is() => Good("""{ "$schema": 7, "stillwall": 1 }"""u8);

    // Deep, long, huge, hidden: told in short lines, never thrown.
    [Fact]
    public void Hostile_files_give_faults_of_one_short_line()
    {
        string[] hostile =
        [
            new('[', 100_000),
            string.Concat(Enumerable.Repeat("{\"brief\":", 5_000)),
            "{\"stillwall\":1,\"name\":\"" + new string('x', 5_000_000) + "\"}",
            "{\"stillwall\":1,\"name\":\"" + new string('x', 3_000_000) + "\"}",
            "{\"stillwall\":1,\"" + new string('k', 3_000_000) + "\":1}",
            "{\"stillwall\":1e308,\"budget\":1e309}",
            "{\"stillwall\":-1e999}",
            "{\"stillwall\":1,\"budget\":1e309,\"brief\":{\"aim\":{\"lowest\":\"1e308 kHz\",\"level\":\"" + new string('9', 100_000) + " dB\"}}}",
            "{\"stillwall\":1,\"name\":\"\\u0000\\u001b[31m\\u2028\\u202e\",\"\\u0000\\n\\u2029\":1,\"currency\":\"\\u0007\",\"display_units\":\"\\u202eme\"}",
            "{\"stillwall\":1,\"display_units\":\"" + string.Concat(Enumerable.Repeat("😀", 100)) + "\"}",
            "{\"stillwall\":1,\"prices\":[" + string.Join(',', Enumerable.Repeat("1", 100_000)) + "]}",
            "{\"stillwall\":1," + string.Join(',', Enumerable.Range(0, 100_000).Select(i => $"\"k{i}\":1")) + "}",
            "\0\0\0\0",
            "\u2028",
        ];

        Assert.All(
            hostile,
            text =>
            {
                var reading = ProjectReader.Read(text);
                Assert.Null(reading.Project);
                Assert.NotEmpty(reading.Faults);
                Assert.InRange(reading.Faults.Count, 1, ProjectReader.MostFaults + 1);
                Assert.All(reading.Faults.Select(f => f.ToString()), AssertOneShortLine);
            }
        );
    }

    [Fact]
    public void Any_bytes_at_all_give_a_project_or_faults() =>
        Gen
            .Byte.Array[0, 200]
            .Sample(bytes =>
            {
                var reading = ProjectReader.Read(bytes);
                Assert.Null(reading.Project);
                Assert.All(reading.Faults.Select(f => f.ToString()), AssertOneShortLine);
            });

    [Fact]
    public void One_changed_byte_in_the_demo_gives_a_project_or_faults() =>
        Gen.Select(Gen.Int[0, Demo.Length - 1], Gen.Byte)
            .Sample(
                (at, put) =>
                {
                    var changed = Demo.ToArray();
                    changed[at] = put;
                    var reading = ProjectReader.Read(changed);
                    Assert.Equal(reading.Project is null, reading.Faults.Count > 0);
                    Assert.All(reading.Faults.Select(f => f.ToString()), AssertOneShortLine);
                }
            );

    [Fact]
    public void A_fault_fits_its_line_whatever_its_parts() =>
        Gen.Select(Gen.String[0, 400], Gen.Int[1, 9_999_999], Gen.String[0, 400], Gen.String[0, 400])
            .Sample((file, line, path, message) => AssertOneShortLine(new Fault(file, line, path, message).ToString()));

    private static void AssertOneShortLine(string line)
    {
        Assert.InRange(line.Length, 1, Fault.LongestLine);
        Assert.DoesNotContain(line, c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\u202e');
        Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line.Replace("\uFFFD", "", StringComparison.Ordinal))));
    }

    private static Project Good(ReadOnlySpan<byte> bytes)
    {
        var reading = ProjectReader.Read(bytes);
        Assert.Empty(reading.Faults);
        return reading.Project!;
    }

    private static JsonNode Shuffled(JsonNode node, Random random)
    {
        if (node is not JsonObject block)
        {
            return node.DeepClone();
        }

        var entries = block.ToArray();
        random.Shuffle(entries);
        return new JsonObject(entries.Select(e => KeyValuePair.Create(e.Key, e.Value is null ? null : (JsonNode?)Shuffled(e.Value, random))));
    }
}
