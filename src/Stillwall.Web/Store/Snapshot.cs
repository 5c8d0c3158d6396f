using System.Text.Json;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Web.Store;

/// <summary>One state of a project: its two texts, what they say, and what is computed from them. It never changes.</summary>
internal sealed class Snapshot
{
    private readonly Lazy<Plan> plan;
    private readonly Lazy<HashSet<string>> stated;

    private Snapshot(string text, Project project, DriverTable? table, string? tableText, string what)
    {
        (Text, Project, Table, TableText, What) = (text, project, table, tableText, what);
        Candidates = [.. (table?.Rows ?? []).Where(r => r.Faults.Count == 0).Select(r => r.Sheet)];
        plan = new(() => new Plan(Project, Candidates));
        stated = new(() => StatedIn(text));
    }

    /// <summary>Text of the project file.</summary>
    internal string Text { get; }

    /// <summary>What it states.</summary>
    internal Project Project { get; }

    /// <summary>The table of drivers with its faults; null where none is stated or there.</summary>
    internal DriverTable? Table { get; }

    internal string? TableText { get; }

    /// <summary>The change that led here, in a few words.</summary>
    internal string What { get; }

    /// <summary>Drivers that can be chosen.</summary>
    internal IReadOnlyList<DriverSheet> Candidates { get; }

    /// <summary>Everything computed, once for all who look at this state.</summary>
    internal Plan Plan => plan.Value;

    /// <summary>Whether it has been computed already.</summary>
    internal bool IsComputed => plan.IsValueCreated && plan.Value.IsReady;

    /// <summary>Whether the file itself states a key; else its default holds.</summary>
    internal bool States(string key) => stated.Value.Contains(key);

    /// <summary>Reads a state from its texts.</summary>
    /// <param name="tableText">Text of the table of drivers; null where there is none.</param>
    internal static (Snapshot? State, IReadOnlyList<Fault> Faults) Read(string text, string? tableText, string what)
    {
        var reading = ProjectReader.Read(text);
        if (reading.Project is not { } project)
        {
            return (null, reading.Faults);
        }

        var table = tableText is null ? null : DriverTable.Read(tableText, project.Drivers ?? "drivers.csv");
        return (new Snapshot(text, project, table, tableText, what), []);
    }

    /// <summary>A state with another project text and the same table.</summary>
    internal (Snapshot? State, IReadOnlyList<Fault> Faults) With(string text, string what)
    {
        var reading = ProjectReader.Read(text);
        return reading.Project is { } project ? (new Snapshot(text, project, Table, TableText, what), []) : (null, reading.Faults);
    }

    private static HashSet<string> StatedIn(string text)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        using var document = JsonDocument.Parse(text.TrimStart('\uFEFF'));
        Gather(document.RootElement, "", keys);
        return keys;
    }

    private static void Gather(JsonElement block, string before, HashSet<string> keys)
    {
        foreach (var entry in block.EnumerateObject())
        {
            var key = before + entry.Name;
            keys.Add(key);
            if (entry.Value.ValueKind == JsonValueKind.Object)
            {
                Gather(entry.Value, key + ".", keys);
            }
            else if (entry.Value.ValueKind == JsonValueKind.Array)
            {
                foreach (var (i, item) in entry.Value.EnumerateArray().Index().Where(e => e.Item.ValueKind == JsonValueKind.Object))
                {
                    Gather(item, $"{key}[{i}].", keys);
                }
            }
        }
    }
}
