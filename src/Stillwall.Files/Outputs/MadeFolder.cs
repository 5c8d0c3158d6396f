using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Outputs;

/// <summary>One file of a folder that verbs share.</summary>
/// <param name="Name">Its name, without a folder.</param>
/// <param name="Bytes">All of it.</param>
public sealed record MadeFile(string Name, byte[] Bytes);

/// <summary>
/// A folder that verbs write many files into. <c>made.json</c> in it says which verb wrote which file and what the file's hash is: on its next run a
/// verb takes its own old files away and leaves everybody else's, a file changed by hand among them.
/// </summary>
/// <remarks>
/// At every moment <c>made.json</c> knows every own file that is there, so a run that is broken off leaves nothing that the next one would take for
/// somebody else's.
/// </remarks>
public static class MadeFolder
{
    /// <summary>Name of the list.</summary>
    public const string ListName = "made.json";

    private const int MostNamed = 8;

    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes files beside their places, and prepares to clear away what the same verb wrote before.</summary>
    /// <param name="outputs">What the command writes.</param>
    /// <param name="folder">Full path of the folder, which is there.</param>
    /// <param name="verb">Name of the verb.</param>
    /// <param name="files">Its files.</param>
    /// <returns>
    /// Names of the files that are left where they are, since no verb wrote them as they stand; or the file that is at fault, and why: then nothing
    /// has changed.
    /// </returns>
    public static (IReadOnlyList<string> Strangers, string? File, OutputFault? Fault) Add(
        OutputSet outputs,
        string folder,
        string verb,
        IReadOnlyList<MadeFile> files
    )
    {
        ArgumentNullException.ThrowIfNull(outputs);
        ArgumentNullException.ThrowIfNull(files);
        var (strangers, named) = ((IReadOnlyList<string>)[], "");
        var fault = OutputSet.Tried(() =>
        {
            named = ListName;
            var home = FolderPath.Real(folder);
            if (outputs.Turn(home) is { } busy)
            {
                return busy;
            }

            var list = Path.Combine(home, ListName);
            if (Read(list) is not { } made)
            {
                return new OutputFault(true, "is not the list that parts and sheets keep of their files; another folder, or take that file away first");
            }

            var there = Directory
                .GetFiles(home)
                .Select(Path.GetFileName)
                .OfType<string>()
                .Where(name => name != ListName && outputs.CheckPlace(Path.Combine(home, name)) is null)
                .Order(StringComparer.Ordinal)
                .ToList();
            var own = there.ToDictionary(
                name => name,
                name =>
                    made.Where(m => m.File == name).ToList() is { Count: > 0 } known && Hash(File.ReadAllBytes(Path.Combine(home, name))) is var hash
                        ? known.FirstOrDefault(m => m.Sha256 == hash)?.Verb
                        : null
            );
            var taken = files
                .Where(f => own.TryGetValue(f.Name, out var owner) && owner != verb && !MayGo(Path.Combine(home, f.Name), f.Bytes))
                .Select(f => f.Name)
                .ToList();
            if (taken.Count > 0)
            {
                named = string.Join(", ", taken.Take(MostNamed)) + (taken.Count > MostNamed ? " …" : "");
                return new OutputFault(
                    true,
                    taken.Count == 1
                        ? $"is there and not as {verb} left it; another folder, or take it away first"
                        : $"are there and not as {verb} left them; another folder, or take them away first"
                );
            }

            strangers = [.. there.Where(name => own[name] is null && files.All(f => f.Name != name))];
            return Stage(
                outputs: outputs,
                home: home,
                verb: verb,
                files: files,
                made: made,
                old: [.. there.Where(name => own[name] == verb && files.All(f => f.Name != name))],
                named: ref named
            );
        });
        return (strangers, fault is null ? null : named, fault);
    }

    private static OutputFault? Stage(
        OutputSet outputs,
        string home,
        string verb,
        IReadOnlyList<MadeFile> files,
        IReadOnlyList<Made> made,
        IReadOnlyList<string> old,
        ref string named
    )
    {
        var list = Path.Combine(home, ListName);
        List<Made> now = [.. files.Select(f => new Made(verb, f.Name, Hash(f.Bytes))), .. made.Where(m => m.Verb != verb)];
        outputs.Draft(list, list, Written([.. now, .. made.Where(m => m.Verb == verb)]));
        foreach (var file in files)
        {
            named = file.Name;
            if (outputs.Add(Path.Combine(home, file.Name), file.Bytes, _ => true) is { } fault)
            {
                return fault;
            }
        }

        named = ListName;
        foreach (var name in old)
        {
            outputs.Remove(Path.Combine(home, name));
        }

        return outputs.Draft(list, list, Written(now));
    }

    // Nothing is lost with it: it is empty, or says the same.
    private static bool MayGo(string file, byte[] bytes) => new FileInfo(file).Length == 0 || WholeFile.Says(file, bytes);

    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static byte[] Written(IEnumerable<Made> made)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartObject();
            foreach (var verb in made.Distinct().GroupBy(m => m.Verb).OrderBy(g => g.Key, StringComparer.Ordinal))
            {
                json.WriteStartArray(verb.Key);
                foreach (var entry in verb.OrderBy(m => m.File, StringComparer.Ordinal).ThenBy(m => m.Sha256, StringComparer.Ordinal))
                {
                    json.WriteStartObject();
                    json.WriteString("file", entry.File);
                    json.WriteString("sha256", entry.Sha256);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    // Null where it is somebody else's file of that name.
    private static IReadOnlyList<Made>? Read(string list)
    {
        if (!Path.Exists(list))
        {
            return [];
        }

        if (new FileInfo(list).Length > PositionedJson.GreatestLength || PositionedJson.Parse(File.ReadAllBytes(list)).Root is not JsonBlock root)
        {
            return null;
        }

        var entries = root.Entries.SelectMany(verb => verb.Value is JsonList all ? all.Items.Select(item => Entry(verb.Key, item)) : [null]).ToList();
        return entries.Any(entry => entry is null) ? null : [.. entries.OfType<Made>()];
    }

    private static Made? Entry(string verb, JsonPiece item) =>
        item is JsonBlock { Entries.Count: 2 } block
        && block.Find("file")?.Value is JsonScalar { Type: JsonTokenType.String } file
        && block.Find("sha256")?.Value is JsonScalar { Type: JsonTokenType.String } hash
        && file.Text == Path.GetFileName(file.Text)
        && file.Text is not ("" or "." or "..")
            ? new Made(verb, file.Text, hash.Text)
            : null;

    private sealed record Made(string Verb, string File, string Sha256);
}
