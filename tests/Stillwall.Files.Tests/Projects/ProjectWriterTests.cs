using CsCheck;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Projects;

public class ProjectWriterTests
{
    private static readonly string DemoText = File.ReadAllText(TestData.Demo("stillwall.json"));

    [Fact]
    public void What_was_written_is_read_back_as_it_was() =>
        Models.AnyProject.Sample(
            project =>
            {
                var text = ProjectWriter.Write(project);
                var reading = ProjectReader.Read(text);

                Assert.Empty(reading.Faults);
                Models.AssertSame(project, reading.Project);
                Assert.Equal(text, ProjectWriter.Write(reading.Project!));
            },
            iter: 300
        );

    [Fact]
    public void The_smallest_project_is_one_key() => Assert.Equal("{\n  \"stillwall\": 1\n}\n", ProjectWriter.Write(new Project { FormatVersion = 1 }));

    [Fact]
    public void A_default_is_left_out_and_what_differs_is_not()
    {
        var text = ProjectWriter.Write(
            new Project
            {
                FormatVersion = 1,
                Name = "Größe \"A\"",
                Brief = new Brief
                {
                    Aim = new Aim
                    {
                        LowestHz = 32,
                        SystemQ = 0.707,
                        SystemQTolerance = 0.1,
                    },
                },
                Stock =
                [
                    new Stock
                    {
                        Item = "glue",
                        Amount = new Amount(1, Dimension.Count),
                        BestBefore = new DateOnly(2027, 3, 1),
                    },
                ],
            }
        );

        Assert.Equal(
            """
            {
              "stillwall": 1,
              "name": "Größe \"A\"",
              "brief": {
                "aim": {
                  "lowest": "32 Hz",
                  "system_q_tolerance": 0.1
                }
              },
              "stock": [
                {
                  "item": "glue",
                  "amount": "1 pc",
                  "best_before": "2027-03-01"
                }
              ]
            }

            """,
            text
        );
    }

    [Theory]
    [InlineData("cabinet.core", "14 mm", "\"core\": \"12 mm\"", "\"core\": \"14 mm\"")]
    [InlineData("brief.aim.system_q", "0.8", "\"system_q\": 0.707", "\"system_q\": 0.8")]
    [InlineData("driver", "Wren 5", "\"driver\": \"Dunlin 8\"", "\"driver\": \"Wren 5\"")]
    [InlineData("brief.room.seat_at", "2 m,2.9 m, 1.1 m", "\"seat_at\": [\"2.2 m\", \"2.9 m\", \"1.1 m\"]", "\"seat_at\": [\"2 m\", \"2.9 m\", \"1.1 m\"]")]
    [InlineData(
        "cabinet.driver_count",
        "2",
        "\"accents\": { \"rings\": 3, \"ratio\": 1.4 }",
        "\"accents\": { \"rings\": 3, \"ratio\": 1.4 },\n    \"driver_count\": 2"
    )]
    [InlineData("limits.tilt", "12°", "\"heat_margin\": \"10 K\" }", "\"heat_margin\": \"10 K\", \"tilt\": \"12°\" }")]
    [InlineData("cabinet.port.length", "120 mm", "\"ratio\": 1.4 }", "\"ratio\": 1.4 },\n    \"port\": { \"length\": \"120 mm\" }")]
    [InlineData("name", "a \"b\"", "\"name\": \"Reading-room cabinet\"", "\"name\": \"a \\\"b\\\"\"")]
    public void One_value_changes_and_every_other_byte_stays(string key, string stated, string before, string after) =>
        Assert.Equal(DemoText.Replace(before, after, StringComparison.Ordinal), ProjectTextEditor.SetStated(DemoText, key, stated));

    [Theory]
    [InlineData("cabinet.accents.rings", "\"accents\": { \"rings\": 3, \"ratio\": 1.4 }", "\"accents\": { \"ratio\": 1.4 }")]
    [InlineData("cabinet.accents.ratio", "\"accents\": { \"rings\": 3, \"ratio\": 1.4 }", "\"accents\": { \"rings\": 3 }")]
    [InlineData("brief.air.pressure", "\"temperature\": \"20 degC\", \"pressure\": \"101325 Pa\"", "\"temperature\": \"20 degC\"")]
    public void One_value_is_taken_out_and_every_other_byte_stays(string key, string before, string after)
    {
        Assert.Contains(before, DemoText, StringComparison.Ordinal);
        Assert.Equal(DemoText.Replace(before, after, StringComparison.Ordinal), ProjectTextEditor.Remove(DemoText, key));
    }

    [Theory]
    [InlineData("{ \"stillwall\": 1, \"cabinet\": { \"leak\": { \"gap\": \"0.1 mm\" } } }", "cabinet.leak.gap", "{ \"stillwall\": 1 }")]
    [InlineData("{ \"a\": { \"b\": 1 }, \"c\": 2 }", "a.b", "{ \"c\": 2 }")]
    [InlineData("{ \"stock\": [ { \"item\": \"x\" }, { \"item\": \"y\" } ] }", "stock[0]", "{ \"stock\": [ { \"item\": \"y\" } ] }")]
    [InlineData("{ \"a\": 1, \"stock\": [ { \"item\": \"x\" } ] }", "stock[0]", "{ \"a\": 1 }")]
    [InlineData("{ \"stock\": [ { \"item\": \"x\", \"note\": \"n\" } ] }", "stock[0].note", "{ \"stock\": [ { \"item\": \"x\" } ] }")]
    public void What_is_left_empty_goes_with_it(string before, string key, string after) => Assert.Equal(after, ProjectTextEditor.Remove(before, key));

    // A note is the maker's own: it goes when it or its block is taken out, and by nothing else.
    [Theory]
    [InlineData(
        "{ \"stillwall\": 1, \"cabinet\": { \"leak\": { \"gap\": \"0.1 mm\", \"note\": \"n\" } } }",
        "cabinet.leak.gap",
        "{ \"stillwall\": 1, \"cabinet\": { \"leak\": { \"note\": \"n\" } } }"
    )]
    [InlineData("{ \"stillwall\": 1, \"cabinet\": { \"leak\": { \"note\": \"n\" } } }", "cabinet.leak.note", "{ \"stillwall\": 1 }")]
    [InlineData("{ \"stillwall\": 1, \"cabinet\": { \"leak\": { \"note\": \"n\" } } }", "cabinet.leak", "{ \"stillwall\": 1 }")]
    public void A_note_stays_when_the_last_value_beside_it_is_taken_out(string before, string key, string after) =>
        Assert.Equal(after, ProjectTextEditor.Remove(before, key));

    [Fact]
    public void What_is_not_stated_cannot_be_taken_out()
    {
        Assert.Contains(
            "cabinet.port.length",
            Assert.Throws<ArgumentException>(() => ProjectTextEditor.Remove(DemoText, "cabinet.port.length")).Message,
            StringComparison.Ordinal
        );
        Assert.Throws<ArgumentException>(() => ProjectTextEditor.Remove(DemoText, "stock[99]"));
        Assert.Throws<ArgumentException>(() => ProjectTextEditor.Remove("[]", "name"));
    }

    [Fact]
    public void An_entry_is_added_changed_and_taken_out_again()
    {
        var before = ProjectReader.Read(DemoText).Project!;
        var count = before.Prices!.Count;
        var added = ProjectTextEditor.Append(DemoText, "prices", [("item", "tea"), ("price", "2.5"), ("per", "50 g")]);
        var price = ProjectReader.Read(added).Project!.Prices![count];
        Assert.Equal(("tea", 2.5, 0.05), (price.Item, price.Cost, price.Per.Value));
        var changed = ProjectTextEditor.SetStated(added, $"prices[{count}].price", "3");
        Assert.Equal(3, ProjectReader.Read(changed).Project!.Prices![count].Cost);
        Assert.Equal(3.0, ProjectKeys.Get(ProjectReader.Read(changed).Project!, $"prices[{count}].price"));
        Assert.Equal(DemoText, ProjectTextEditor.Remove(changed, $"prices[{count}]"));
        Assert.Equal(
            "{ \"stillwall\": 1, \"logbook\": [ { \"date\": \"2026-11-16\", \"kind\": \"weigh-in\" } ] }",
            ProjectTextEditor.Append("{ \"stillwall\": 1 }", "logbook", [("date", "2026-11-16"), ("kind", "weigh-in")])
        );
        Assert.Null(ProjectKeys.Find("stock[0]x"));
        Assert.Null(ProjectKeys.Find("cabinet[0].core"));
        Assert.Null(ProjectKeys.Get(before, "prices[999].price"));
    }

    [Fact]
    public void A_changed_text_reads_as_the_changed_project() =>
        Gen.Int[0, Settable.Length - 1]
            .Sample(i =>
            {
                var (key, stated) = Settable[i];
                var project = ProjectReader.Read(DemoText).Project!;

                Models.AssertSame(ProjectKeys.With(project, key, stated), ProjectReader.Read(ProjectTextEditor.SetStated(DemoText, key, stated)).Project);
            });

    [Theory]
    [InlineData("{}", "{ \"stillwall\": 1 }")]
    [InlineData("{\r\n\t\"name\": \"x\"\r\n}", "{\r\n\t\"name\": \"x\",\r\n\t\"stillwall\": 1\r\n}")]
    [InlineData("{\"name\":\"x\"}", "{\"name\":\"x\", \"stillwall\": 1}")]
    [InlineData("\uFEFF{ \"stillwall\" : 0 }\n\n", "\uFEFF{ \"stillwall\" : 1 }\n\n")]
    public void A_key_is_put_in_the_way_its_neighbours_stand(string before, string after) =>
        Assert.Equal(after, ProjectTextEditor.Set(before, "stillwall", "1", bareNumber: true));

    [Theory]
    [InlineData("{", "name", "x", false)]
    [InlineData("[]", "name", "x", false)]
    [InlineData("{ \"driver\": \"Wren 5\" }", "driver.fs", "30 Hz", false)]
    [InlineData("{}", "budget", "much", true)]
    [InlineData("{}", "budget", "1, \"name\": 2", true)]
    public void What_cannot_be_changed_is_the_callers_mistake(string json, string key, string value, bool bare) =>
        Assert.Throws<ArgumentException>(() => ProjectTextEditor.Set(json, key, value, bare));

    private static readonly (string Key, string Stated)[] Settable =
    [
        ("cabinet.core", "14 mm"),
        ("cabinet.braces", "2"),
        ("budget", "300.5"),
        ("pour_date", "2027-01-02"),
        ("brief.neighbour.allowance", "-3 dB"),
        ("measured.leak_resistance", "210000"),
        ("brief.everyday.spectrum", "0 dB,1 dB,2 dB,3 dB,4 dB,5 dB,6 dB,7 dB,8 dB,-9 dB"),
        ("limits.tilt", "0.2 rad"),
        ("note", "x"),
        ("driver", "Heron 10"),
    ];
}
