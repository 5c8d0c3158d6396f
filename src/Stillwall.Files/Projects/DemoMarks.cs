using System.Text.Json;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>Remarks in the blocks of a project file that say which of their values are still the demo's.</summary>
public static class DemoMarks
{
    private const string Opening = "still the demo's: ",
        Closed = "every value of this block is yours";

    private static readonly string[] NoValues = ["$schema", "stillwall", "note", "name", "display_units"];

    // What a maker should replace first, by the block whose remark says that it is still to be done.
    private static readonly (string Block, string What)[] InTurn =
    [
        ("brief.room", "brief.room: its size, where the cabinet stands and where you sit"),
        ("brief.neighbour", "brief.neighbour: area of the wall, size of the room behind it"),
        ("brief.main_speakers", "brief.main_speakers: where your main speakers stop in the bass"),
        ("", "driver, and the candidates in drivers.csv: all invented"),
        ("cabinet.outside", "cabinet.outside: a size for your spot and printer"),
        ("", "prices, stock, budget, pour_date: what things cost, what you have, when you pour"),
        ("measured", "measured, logbook: found out on the demo's test pieces, not on yours"),
    ];

    /// <summary>What is to be replaced first among the blocks that still carry the remark.</summary>
    /// <param name="marks">The blocks with their keys.</param>
    /// <returns>What to replace, the most pressing first.</returns>
    public static IEnumerable<string> ReplaceFirst(IReadOnlyList<(string Block, IReadOnlyList<string> Keys)> marks) =>
        InTurn.Where(r => marks.Any(m => m.Block == r.Block)).Select(r => r.What);

    /// <summary>Puts the remark into every block that has a value nobody has answered.</summary>
    /// <param name="text">Text of a project file made from the demo.</param>
    /// <param name="answered">Keys that were answered.</param>
    /// <returns>The text with its remarks.</returns>
    public static string Put(string text, IReadOnlyCollection<string> answered)
    {
        ArgumentNullException.ThrowIfNull(answered);
        using var document = JsonDocument.Parse(text);
        foreach (var (block, keys) in BlocksOf(document.RootElement, ""))
        {
            var open = keys.Where(key => !answered.Contains(Joined(block, key))).ToList();
            text = open.Count == 0 ? text : ProjectTextEditor.Set(text, Joined(block, "note"), Opening + string.Join(", ", open), bareNumber: false);
        }

        return text;
    }

    /// <summary>The blocks that carry the remark, with the keys it names; the root's own name is empty.</summary>
    /// <param name="project">The project.</param>
    /// <returns>Name of each block and the keys.</returns>
    public static IReadOnlyList<(string Block, IReadOnlyList<string> Keys)> Of(Project project) =>
        [.. ModelBlocks("", ModelBlock.Root).Select(block => (block, (IReadOnlyList<string>)KeysIn(NoteOf(project, block)))).Where(b => b.Item2.Count > 0)];

    /// <summary>Takes keys out of their blocks' remarks, since their values are the maker's own from now on.</summary>
    /// <param name="text">Text of the project file.</param>
    /// <param name="project">The project that it states, before the change.</param>
    /// <param name="keys">Keys that were changed.</param>
    /// <returns>The text with the remarks brought up to date.</returns>
    public static string Without(string text, Project project, IEnumerable<string> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        foreach (var (block, marked) in Of(project))
        {
            var left = marked.Where(key => !keys.Contains(Joined(block, key))).ToList();
            text =
                left.Count == marked.Count
                    ? text
                    : ProjectTextEditor.Set(text, Joined(block, "note"), left.Count == 0 ? Closed : Opening + string.Join(", ", left), bareNumber: false);
        }

        return text;
    }

    private static string? NoteOf(Project project, string block) => ProjectKeys.Get(project, Joined(block, "note")) as string;

    private static string[] KeysIn(string? note) =>
        note?.StartsWith(Opening, StringComparison.Ordinal) == true ? note[Opening.Length..].Split(", ", StringSplitOptions.RemoveEmptyEntries) : [];

    private static string Joined(string block, string key) => block.Length == 0 ? key : $"{block}.{key}";

    // A list counts as one value of the block that it stands in.
    private static IEnumerable<(string Block, IReadOnlyList<string> Keys)> BlocksOf(JsonElement block, string name)
    {
        var values = block.EnumerateObject().Where(p => p.Value.ValueKind != JsonValueKind.Object && !NoValues.Contains(p.Name)).Select(p => p.Name).ToList();
        return block
            .EnumerateObject()
            .Where(p => p.Value.ValueKind == JsonValueKind.Object)
            .SelectMany(p => BlocksOf(p.Value, Joined(name, p.Name)))
            .Prepend((name, values));
    }

    private static IEnumerable<string> ModelBlocks(string name, ModelBlock block) =>
        block.Fields.Where(f => f.Kind == FieldKind.Block).SelectMany(f => ModelBlocks(Joined(name, f.Key), f.Block!)).Prepend(name);
}
