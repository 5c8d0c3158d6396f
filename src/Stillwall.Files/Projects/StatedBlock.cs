namespace Stillwall.Files.Projects;

/// <summary>What stands under a key that is no plain value: a block of keys, or a list of blocks.</summary>
/// <param name="EntryCount">How many entries the list has; null where it is no list.</param>
/// <param name="ValueCount">How many values stand in it, notes not counted.</param>
public sealed record StatedBlock(int? EntryCount, int ValueCount)
{
    /// <summary>Looks at what a key holds.</summary>
    /// <param name="json">Text of a project file.</param>
    /// <param name="dottedKey">Keys from the root, joined by points; an entry of a list by its index from 0.</param>
    /// <returns>The block; null where the key holds a plain value, or is not stated.</returns>
    /// <exception cref="ArgumentException">The text is not a JSON object.</exception>
    public static StatedBlock? Of(string json, string dottedKey) =>
        ProjectTextEditor.Find(json, dottedKey) switch
        {
            JsonBlock block => new StatedBlock(null, Values(block)),
            JsonList list when list.Items.All(item => item is JsonBlock) => new StatedBlock(list.Items.Count, list.Items.Sum(Values)),
            _ => null,
        };

    private static int Values(JsonPiece piece) =>
        piece is JsonBlock block ? block.Entries.Where(e => e.Key != "note").Sum(e => Values(e.Value))
        : piece is JsonList { Items: [JsonBlock, ..] } list ? list.Items.Sum(Values)
        : 1;
}
