using System.Text.Json;
using Json.Schema;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Projects;

/// <summary>The schema as JsonSchema.Net, a validator of its own, understands it.</summary>
public class ProjectSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(ProjectSchema.Write());

    [Fact]
    public void The_demo_is_valid() => Assert.True(IsValid(File.ReadAllText(TestData.Demo("stillwall.json"))));

    [Fact]
    public void What_the_writer_writes_is_valid() => Models.AnyProject.Sample(project => Assert.True(IsValid(ProjectWriter.Write(project))), iter: 50);

    [Theory]
    [InlineData("""{ "name": "no version" }""")]
    [InlineData("""{ "stillwall": 2 }""")]
    [InlineData("""{ "stillwall": 1, "bugdet": 3 }""")]
    [InlineData("""{ "stillwall": 1, "budget": null }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "core": 12 } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "core": "12 kg" } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "core": "1,2 mm" } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "braces": 1.5 } }""")]
    [InlineData("""{ "stillwall": 1, "display_units": "metrik" }""")]
    [InlineData("""{ "stillwall": 1, "pour_date": "14.11.2026" }""")]
    [InlineData("""{ "stillwall": 1, "brief": { "room": { "seat_at": ["1 m", "2 m"] } } }""")]
    [InlineData("""{ "stillwall": 1, "stock": [ { "item": "glue" } ] }""")]
    [InlineData("""{ "stillwall": 1, "driver": { "fs": "30" } }""")]
    public void A_broken_project_is_not_valid_and_the_reader_agrees(string json)
    {
        Assert.False(IsValid(json));
        Assert.NotEmpty(ProjectReader.Read(json).Faults);
    }

    [Theory]
    [InlineData("""{ "stillwall": 1, "cabinet": { "core": " 1.2e1 mm " } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "core": "0.5\"" } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "net_volume": "1.1ft³" } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "leak": { "resistance": 210000 } } }""")]
    [InlineData("""{ "stillwall": 1, "cabinet": { "leak": { "resistance": "210000 Pa·s/m³" } } }""")]
    [InlineData("""{ "stillwall": 1, "limits": { "wall_to_cone": "−30 dB" } }""")]
    [InlineData("""{ "stillwall": 1, "driver": { "re": "4 Ω" } }""")]
    public void A_quantity_is_valid_however_it_is_typed_and_the_reader_agrees(string json)
    {
        Assert.True(IsValid(json));
        Assert.Empty(ProjectReader.Read(json).Faults);
    }

    [Fact]
    public void Every_key_says_what_is_accepted()
    {
        using var schema = JsonDocument.Parse(ProjectSchema.Write());
        var root = schema.RootElement;
        var blocks = root.GetProperty("$defs").EnumerateObject().Select(d => d.Value).Append(root).Where(b => b.TryGetProperty("properties", out _)).ToList();

        Assert.Equal(31, blocks.Count);
        Assert.All(blocks.SelectMany(b => b.GetProperty("properties").EnumerateObject()), p =>
            Assert.NotEmpty(p.Value.GetProperty("description").GetString()!)
        );
        Assert.Equal(
            "a number with mm, m, cm, um, in, \", ft, 0 mm to 200 mm",
            root.GetProperty("$defs").GetProperty("cabinet").GetProperty("properties").GetProperty("core").GetProperty("description").GetString()
        );
    }

    [Fact]
    public void The_schema_knows_every_key_of_the_model() =>
        Assert.Equal(
            ModelBlock.Root.Fields.Select(f => f.Key),
            JsonDocument.Parse(ProjectSchema.Write()).RootElement.GetProperty("properties").EnumerateObject().Select(p => p.Name)
        );

    private static bool IsValid(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
