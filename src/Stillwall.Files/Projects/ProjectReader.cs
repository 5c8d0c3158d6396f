using System.Globalization;
using System.Text;
using System.Text.Json;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>What came of reading a project file.</summary>
/// <param name="Project">The project; null when there is any fault.</param>
/// <param name="Faults">Everything that is wrong with the file, in the order of its lines.</param>
public sealed record ProjectReading(Project? Project, IReadOnlyList<Fault> Faults);

/// <summary>Reads <c>stillwall.json</c>: strict JSON, every fault in one pass.</summary>
public static class ProjectReader
{
    /// <summary>Most faults that are told one by one.</summary>
    public const int MostFaults = 1000;

    /// <summary>Version of the file format that is read.</summary>
    public const int FormatVersion = 1;

    private static readonly byte[] Bom = [0xEF, 0xBB, 0xBF];

    /// <summary>Reads a project from the bytes of its file.</summary>
    /// <param name="bytes">UTF-8, with or without a byte order mark, at most 4 MB.</param>
    /// <param name="file">Name of the file, for the faults.</param>
    /// <returns>The project, or what is wrong.</returns>
    public static ProjectReading Read(ReadOnlySpan<byte> bytes, string file = "stillwall.json")
    {
        var (root, wrong) = PositionedJson.Parse(bytes.StartsWith(Bom) ? bytes[3..] : bytes);
        if (wrong is not null)
        {
            return new ProjectReading(null, [new Fault(file, wrong.Line, "$", wrong.Message)]);
        }

        if (root is not JsonBlock block)
        {
            return new ProjectReading(null, [new Fault(file, root!.Line, "$", "is not a block of keys; one JSON object { … }")]);
        }

        return NewerVersion(block) is { } newer
            ? new ProjectReading(
                null,
                [
                    new Fault(
                        file,
                        newer.Line,
                        "stillwall",
                        $"was written by a newer version, format {newer.Text}; format {FormatVersion.ToString(CultureInfo.InvariantCulture)}"
                    ),
                ]
            )
            : new Mapping(file, block).Reading();
    }

    /// <summary>Reads a project from a text.</summary>
    /// <param name="text">The text of the file.</param>
    /// <param name="file">Name of the file, for the faults.</param>
    /// <returns>The project, or what is wrong.</returns>
    public static ProjectReading Read(string text, string file = "stillwall.json")
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(Encoding.UTF8.GetBytes(text), file);
    }

    private static JsonScalar? NewerVersion(JsonBlock root) =>
        root.Find("stillwall")?.Value is JsonScalar { Type: JsonTokenType.Number } version
        && double.TryParse(version.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && number > FormatVersion
            ? version
            : null;

    // One reading: the faults gather here, nothing outlives it.
    private sealed class Mapping(string file, JsonBlock root)
    {
        private readonly List<Fault> faults = [];
        private readonly HashSet<string> unread = new(StringComparer.Ordinal);
        private int untold;

        internal ProjectReading Reading()
        {
            var project = (Project)Block(ModelBlock.Root, root, "");
            foreach (var (path, message) in ProjectChecks.Of(project, unread).ToList())
            {
                Add(LineOf(path), path, message);
            }

            var sorted = faults.OrderBy(f => f.Line).ToList();
            if (untold > 0)
            {
                sorted.Add(new Fault(file, root.Line, "$", $"has {untold.ToString(CultureInfo.InvariantCulture)} more faults; a file with fewer"));
            }

            return new ProjectReading(sorted.Count == 0 ? project : null, sorted);
        }

        private object Block(ModelBlock model, JsonBlock block, string path)
        {
            var values = new List<(ModelField, object?)>();
            var seen = new HashSet<string>(StringComparer.Ordinal);
            var meant = new HashSet<string>(StringComparer.Ordinal);
            foreach (var entry in block.Entries)
            {
                var at = path.Length == 0 ? entry.Key : $"{path}.{entry.Key}";
                if (!seen.Add(entry.Key))
                {
                    Add(entry.Line, at, "stands here twice; each key once");
                }
                else if (model.Find(entry.Key) is not { } field)
                {
                    Unknown(model, entry, at, path, meant);
                }
                else if (field.Key != "$schema" && Value(field, entry.Value, at) is { } value)
                {
                    values.Add((field, value));
                }
                else if (field.Key == "$schema" && entry.Value is JsonScalar { Type: JsonTokenType.String, Text.Length: <= 200 } address)
                {
                    values.Add((field, address.Text));
                }
            }

            foreach (var field in model.Fields.Where(f => f.Required && !seen.Contains(f.Key) && !meant.Contains(f.Key)))
            {
                Add(block.Line, path.Length == 0 ? field.Key : $"{path}.{field.Key}", $"is missing; {field.Accepted}");
            }

            return model.Build(values);
        }

        private void Unknown(ModelBlock model, JsonEntry entry, string at, string path, HashSet<string> meant)
        {
            var nearest = faults.Count < MostFaults ? NearestWord.Of(entry.Key, model.Fields.Select(f => f.Key)) : null;
            Add(
                entry.Line,
                at,
                $"is not a known key{NearestWord.Suggest(entry.Key, nearest)}; one of "
                    + $"{string.Join(", ", model.Fields.Select(f => f.Key).Where(k => k != "$schema"))}"
            );
            if (nearest is not null && meant.Add(nearest))
            {
                // The mistyped key stands for the one it was meant to be: that one is not told as missing besides.
                unread.Add(path.Length == 0 ? nearest : $"{path}.{nearest}");
            }
        }

        private object? Value(ModelField field, JsonPiece piece, string path) =>
            piece switch
            {
                JsonScalar { Type: JsonTokenType.Null } => Refuse(piece, path, "null is not accepted; leave the key out"),
                JsonBlock block when field.Kind == FieldKind.Block => Block(field.Block!, block, path),
                JsonBlock block when field.Kind == FieldKind.Driver => new DriverChoice(null, (DriverSheet)Block(field.Block!, block, path)),
                JsonList list when field.Kind == FieldKind.Blocks => Blocks(field, list, path),
                JsonList list when field.Kind == FieldKind.Quantities => Quantities(field, list, path),
                JsonScalar scalar when field.Kind == FieldKind.Quantities => Refuse(scalar, path, $"{Shown(scalar)} is not a list; {field.Accepted}"),
                JsonScalar scalar => Scalar(field, scalar, path),
                JsonList => Refuse(piece, path, $"a list is not accepted; {field.Accepted}"),
                _ => Refuse(piece, path, $"a block is not accepted; {field.Accepted}"),
            };

        private object? Scalar(ModelField field, JsonScalar scalar, string path)
        {
            if (scalar.Type is JsonTokenType.True or JsonTokenType.False)
            {
                return Refuse(scalar, path, $"{scalar.Text} is not accepted; {field.Accepted}");
            }

            if (!field.TryRead(scalar.Text, scalar.Type == JsonTokenType.Number, out var value, out var fault))
            {
                return Refuse(scalar, path, fault);
            }

            return field.Kind == FieldKind.Driver ? new DriverChoice((string)value!, null) : value;
        }

        private object? Quantities(ModelField field, JsonList list, string path)
        {
            if (field.Count is { } count && count != list.Items.Count)
            {
                return Refuse(list, path, $"has {list.Items.Count.ToString(CultureInfo.InvariantCulture)} entries; {field.Accepted}");
            }

            var values = list
                .Items.Select((item, i) => (item, at: Indexed(path, i)))
                .Select(entry =>
                    entry.item switch
                    {
                        JsonScalar { Type: JsonTokenType.Null } => Refuse(entry.item, entry.at, $"null is not accepted; {Units.Accepted(field.Dimension)}"),
                        JsonScalar scalar => Scalar(field, scalar, entry.at),
                        _ => Refuse(entry.item, entry.at, $"a bracket is not accepted; {Units.Accepted(field.Dimension)}"),
                    }
                )
                .ToList();
            return values.Contains(null) ? null : values.Select(v => (double)v!).ToArray();
        }

        private Array? Blocks(ModelField field, JsonList list, string path)
        {
            var records = list
                .Items.Select(
                    (item, i) =>
                        item is JsonBlock block
                            ? Block(field.Block!, block, Indexed(path, i))
                            : Refuse(item, Indexed(path, i), $"{(item is JsonScalar scalar ? Shown(scalar) : "a list")} is not accepted; a block {{ … }}")
                )
                .ToList();
            if (records.Contains(null))
            {
                return null;
            }

            var typed = Array.CreateInstance(field.Block!.Type, records.Count);
            for (var i = 0; i < records.Count; i++)
            {
                typed.SetValue(records[i], i);
            }

            return typed;
        }

        private object? Refuse(JsonPiece piece, string path, string message)
        {
            Add(piece.Line, path, message);
            return null;
        }

        private void Add(int line, string path, string message)
        {
            unread.Add(path);
            if (faults.Count >= MostFaults)
            {
                untold++;
                return;
            }

            faults.Add(new Fault(file, line, path, message));
        }

        // The line of a path, or of the innermost block on the way to it that is there.
        private int LineOf(string path)
        {
            JsonPiece at = root;
            var line = root.Line;
            foreach (var part in path.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.'))
            {
                if (at is JsonList list && int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < list.Items.Count)
                {
                    (at, line) = (list.Items[index], list.Items[index].Line);
                }
                else if (at is JsonBlock block && block.Find(part) is { } entry)
                {
                    (at, line) = (entry.Value, entry.Line);
                }
                else
                {
                    break;
                }
            }

            return line;
        }

        private static string Indexed(string path, int index) => $"{path}[{index.ToString(CultureInfo.InvariantCulture)}]";

        private static string Shown(JsonScalar scalar)
        {
            var text = scalar.Text.Length > 40 ? string.Concat(scalar.Text.AsSpan(0, 40), "…") : scalar.Text;
            return scalar.Type == JsonTokenType.String ? $"\"{text}\"" : text;
        }
    }
}
