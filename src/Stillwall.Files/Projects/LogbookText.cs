using System.Text;
using System.Text.Encodings.Web;

namespace Stillwall.Files.Projects;

/// <summary>Adds an entry to the logbook in the text of a project file and keeps every other byte as it is.</summary>
public static class LogbookText
{
    /// <summary>Adds an entry at the end of the logbook, which is made where there is none.</summary>
    /// <param name="json">Text of the project file.</param>
    /// <param name="entry">Keys and values of the entry, each a text, in order.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">The text is not a project file, or its logbook is no list.</exception>
    public static string Append(string json, IReadOnlyList<(string Key, string Value)> entry)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(entry);
        var written = $"{{ {string.Join(", ", entry.Select(e => $"{Quoted(e.Key)}: {Quoted(e.Value)}"))} }}";
        var bom = json.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var text = Encoding.UTF8.GetBytes(json[bom.Length..]);
        if (PositionedJson.Parse(text).Root is not JsonBlock { Entries: [_, ..] } block)
        {
            throw new ArgumentException("is not a project file", nameof(json));
        }

        return bom + block.Find("logbook") switch
        {
            null => Spliced(text, block.Entries[^1].Value.End, $",{Gap(text, block.Entries[^1].Start)}\"logbook\": [ {written} ]"),
            { Value: JsonList { Items: [.., var last] } } => Spliced(text, last.End, $",{Gap(text, last.Start)}{written}"),
            { Value: JsonList empty } => Spliced(text, empty.Start + 1, $" {written} "),
            _ => throw new ArgumentException("logbook is no list", nameof(json)),
        };
    }

    // The white space before a piece, so that the next one is set off in the same way.
    private static string Gap(byte[] text, int start)
    {
        var from = start;
        while (from > 0 && text[from - 1] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
        {
            from--;
        }

        return from == start ? " " : Encoding.UTF8.GetString(text, from, start - from);
    }

    private static string Spliced(byte[] text, int at, string put) => Encoding.UTF8.GetString(text, 0, at) + put + Encoding.UTF8.GetString(text, at, text.Length - at);

    private static string Quoted(string text) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(text)}\"";
}
