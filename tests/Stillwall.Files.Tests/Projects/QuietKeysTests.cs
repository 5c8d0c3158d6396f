using System.Text;
using System.Text.Json;
using Stillwall.Appraisals;
using Stillwall.Files.Json;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Projects;

/// <summary>The keys of neighbour, hours, main speakers and feet: read, refused in one line, and appraised to finite numbers whatever they say.</summary>
public sealed class QuietKeysTests
{
    [Fact]
    public void Everything_that_may_be_stated_of_the_neighbour_is_read()
    {
        var project = Read(
            """
            { "stillwall": 1, "brief": {
                "main_speakers": { "left_at": ["0.5 m", "0.2 m", "1 m"], "right_at": ["2.5 m", "0.2 m", "1 m"] },
                "everyday": { "level": "62 dB", "crest": "13 dB", "programme": "deep-music",
                  "quiet_hours": { "from": 22, "to": 6.5, "level": "50 dB", "curve": "audibility-nl-1999", "a_weighted_limit": "20 dB" } },
                "neighbour": { "partition": "two-leaves", "leaf": "12 kg/m2", "second_leaf": "2.5 lb/ft2", "gap": "75 mm",
                  "flanking": "45 dB", "a_weighted_limit": "25 dB", "c_weighted_limit": "50 dB" } },
              "cabinet": { "feet": { "stiffness": "9 kN/m", "vertical_stiffness": "40 kN/m" } } }
            """
        ).Project!;
        Assert.True(
            project.Brief.Everyday
                is
            {
                CrestDb: 13,
                Programme: "deep-music",
                QuietHours: { FromHours: 22, ToHours: 6.5, LevelDb: 50, AWeightedLimitDb: 20, Curve: "audibility-nl-1999" }
            }
        );
        Assert.True(
            project.Brief.Neighbour
                is { LeafKgM2: 12, SecondLeafKgM2: > 12.2 and < 12.21, GapM: 0.075, FlankingDb: 45, AWeightedLimitDb: 25, CWeightedLimitDb: 50 }
        );
        Assert.Equal([0.5, 0.2, 1], project.Brief.MainSpeakers!.LeftAtM!);
        Assert.Equal(40e3, project.Cabinet!.Feet!.VerticalStiffnessNPerM);
    }

    [Theory]
    [InlineData("""{ "neighbour": { "partition": "one-leaf" } }""", "brief.neighbour.partition: is \"one-leaf\" but leaf is not stated")]
    [InlineData("""{ "neighbour": { "partition": "two-leaves", "leaf": "12 kg/m2", "second_leaf": "12 kg/m2" } }""", "but gap is not stated")]
    [InlineData("""{ "neighbour": { "leaf": "12 kg/m3" } }""", "brief.neighbour.leaf: \"12 kg/m3\" has the wrong unit")]
    [InlineData("""{ "everyday": { "quiet_hours": { "from": "22 h" } } }""", "brief.everyday.quiet_hours.from")]
    [InlineData("""{ "room": { "width": "3 m" }, "main_speakers": { "left_at": ["4 m", "0 m", "0 m"] } }""", "brief.main_speakers.left_at[0]")]
    public void What_cannot_be_is_refused_in_one_line(string brief, string said) =>
        Assert.Contains(
            Read($"{{ \"stillwall\": 1, \"brief\": {brief} }}").Faults,
            fault => fault.ToString().Contains(said, StringComparison.Ordinal) && !fault.ToString().Contains('\n', StringComparison.Ordinal)
        );

    [Fact]
    public void Whatever_is_stated_of_them_is_appraised_to_finite_numbers()
    {
        var draw = new SeededGenerator(11);
        double Between(double least, double greatest) => least + ((greatest - least) * draw.Next());
        string OneOf(IReadOnlyList<string> words) => words[(int)(draw.Next() * words.Count)];
        double? Maybe(double least, double greatest) => draw.Next() < 0.5 ? Between(least, greatest) : null;
        var (partitions, curves, programmes) = (Words(typeof(Neighbour), "partition"), Words(typeof(Neighbour), "curve"), Words(typeof(Everyday), "programme"));
        for (var i = 0; i < 40; i++)
        {
            var demo = DemoProject.Project;
            var project = demo with
            {
                Brief = demo.Brief with
                {
                    Everyday = new Everyday
                    {
                        LevelDb = Between(0, 130),
                        Programme = OneOf(programmes),
                        Hours = Maybe(0, 24),
                        CrestDb = Maybe(3, 40),
                        QuietHours = new QuietHours
                        {
                            LevelDb = Maybe(0, 130),
                            Curve = OneOf(curves),
                            AWeightedLimitDb = Maybe(-50, 130),
                            CWeightedLimitDb = Maybe(-50, 130),
                        },
                    },
                    Neighbour = demo.Brief.Neighbour! with
                    {
                        Partition = OneOf(partitions),
                        Curve = draw.Next() < 0.8 ? OneOf(curves) : null,
                        LeafKgM2 = Between(1, 3000),
                        SecondLeafKgM2 = Between(1, 3000),
                        GapM = Between(0.001, 2),
                        FlankingDb = Maybe(10, 120),
                        AWeightedLimitDb = Maybe(-50, 130),
                        CWeightedLimitDb = Maybe(-50, 130),
                    },
                },
                Cabinet = demo.Cabinet! with
                {
                    Feet = new Feet
                    {
                        Kind = FeetKind.Pads,
                        StiffnessNPerM = Between(10, 1e6),
                        VerticalStiffnessNPerM = Maybe(10, 1e7),
                    },
                },
            };

            // The writer refuses every number that is not finite.
            var (facts, text) = (new Facts(project, DemoDrivers.All), ResultJson.Write(Appraisal.WithoutRemedies(project, DemoDrivers.All)));
            Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(text).RootElement.ValueKind);
            Assert.True(EqualiserReport.Of(facts.Quiet) is not { } report || ResultJson.Write(report).Length > 0);
            Assert.True(facts.Quiet.LoudestPoliteLevelWithEqualiserDb is not { } with || with >= facts.Quiet.LoudestPoliteLevelDb);
        }
    }

    [Fact]
    public void A_wall_s_table_is_read_with_and_without_a_header()
    {
        var read = ReductionTable.Read(Encoding.UTF8.GetBytes("\uFEFFband_hz,reduction_db\r\n100,30.5\r\n\r\n31.5, 12 \r\n"));
        Assert.Empty(read.Faults);
        Assert.Equal([(100, 30.5), (31.5, 12)], read.ReductionDb.Select(p => (p.Key, p.Value)));
        Assert.Equal(["1: \"\" is no sound reduction; −50 to 150, in dB"], ReductionTable.Read("100\n"u8.ToArray()).Faults);
    }

    private static IReadOnlyList<string> Words(Type block, string key) => [.. ModelBlock.Of(block).Find(key)!.Words.Where(word => word != "own")];

    private static ProjectReading Read(string text) => ProjectReader.Read(Encoding.UTF8.GetBytes(text), "stillwall.json");
}
