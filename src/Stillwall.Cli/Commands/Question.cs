using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Stillwall.Files.Projects;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary>One question of <c>start</c>.</summary>
/// <param name="Ask">What is asked.</param>
/// <param name="Keys">Keys that the answer states.</param>
/// <param name="Between">What stands between the values of several keys.</param>
/// <param name="Read">Turns an answer into a text for each key; a message where that cannot be done.</param>
internal sealed partial record Question(string Ask, IReadOnlyList<string> Keys, string Between, Func<string, IReadOnlyList<string>, Reading> Read)
{
    private static readonly IReadOnlyList<string> Mixes = [.. CastMixes.All.Select(m => m.Name)];

    /// <summary>The questions, in the order of the job.</summary>
    internal static IReadOnlyList<Question> All { get; } =
    [
        new("name of the cabinet", ["name"], "", Whole),
        new("printer: build width x depth x height", ["brief.printer.build_width", "brief.printer.build_depth", "brief.printer.build_height"], " x ", Sizes),
        new("spot for the cabinet: width x height x depth", ["brief.spot.width", "brief.spot.height", "brief.spot.depth"], " x ", Sizes),
        new("lowest note it is to play", ["brief.aim.lowest"], "", Whole),
        new("how loud that note, and from how far", ["brief.aim.level", "brief.aim.distance"], " at ", Several),
        new("amplifier: power, and the load it is stated for", ["brief.amplifier.power", "brief.amplifier.rated_load"], " into ", Several),
        new("wall to the neighbour", ["brief.neighbour.partition"], "", Wall) { Choices = Partitions.Names },
        new("everyday level of the bass at your seat", ["brief.everyday.level"], "", Whole),
        new("cast at hand, and how much powder", ["materials.cast.mix", PowderAtHand], ", ", Cast) { Choices = Mixes },
    ];

    /// <summary>Stands for the stock of cast powder, which is in a list and has no key of its own.</summary>
    internal const string PowderAtHand = "stock: cast powder";

    /// <summary>The words that may be answered; empty where any will do.</summary>
    internal IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>What the project states now, in the words of its file.</summary>
    internal string Now(string text)
    {
        using var document = JsonDocument.Parse(text);
        return string.Join(
            Between,
            Keys.Select(key =>
                key == PowderAtHand
                    ? PowderLine().Match(text).Groups[2].Value
                    : key.Split('.').Aggregate(document.RootElement, (at, k) => at.GetProperty(k)).ToString()
            )
        );
    }

    /// <summary>The project's text with the answer in it, and the keys it states; a message where the answer will not do.</summary>
    internal (string Text, IReadOnlyList<string> Answered, string? Fault) Answer(string text, string answer)
    {
        var read = Read(answer, Keys);
        if (read.Fault is { } fault)
        {
            return (text, [], fault);
        }

        var isOtherCast = read.Values.Any(v => v.Key == Keys[0] && v.Key == "materials.cast.mix" && v.Stated != Now(text).Split(Between)[0]);
        var changed = read.Values.Aggregate(
            isOtherCast ? Unmeasured(text) : text,
            (at, v) => v.Key == PowderAtHand ? Stocked(at, v.Stated) : ProjectTextEditor.SetStated(at, v.Key, v.Stated)
        );
        return ProjectReader.Read(changed).Faults is [var first, ..] ? (text, [], first.Message) : (changed, [.. read.Values.Select(v => v.Key)], null);
    }

    private static Reading Whole(string answer, IReadOnlyList<string> keys) => new([(keys[0], answer)]);

    private static Reading Wall(string answer, IReadOnlyList<string> keys) =>
        Partitions.Names.Contains(Hyphened(answer)) ? new([(keys[0], Hyphened(answer))]) : NotAbove(Hyphened(answer), Partitions.Names);

    private static Reading NotAbove(string word, IReadOnlyList<string> words) =>
        Reading.Of($"\"{Shortened(word)}\" is not known{NearestWord.Suggest(word, words)}; one of the words above");

    private static string Shortened(string word) => word.Length > 40 ? word[..39] + "…" : word;

    // One size may stand for all sides of a printer or spot that is as wide as deep as high; a number without a unit has that of the last one.
    private static Reading Sizes(string answer, IReadOnlyList<string> keys)
    {
        var sides = Times().Split(answer.Trim());
        if (sides.Length == 1)
        {
            sides = [.. Enumerable.Repeat(sides[0], keys.Count)];
        }

        if (sides.Length != keys.Count)
        {
            return Reading.Of(
                $"\"{Shortened(answer)}\" is {sides.Length.ToString(CultureInfo.InvariantCulture)} sizes; "
                    + $"{keys.Count.ToString(CultureInfo.InvariantCulture)} of them with x between, such as 256 mm x 256 mm x 300 mm"
            );
        }

        var unit = Bare().Replace(sides[^1], "");
        return new([.. keys.Zip(sides.Select(s => Bare().Replace(s, "").Length == 0 && unit.Length > 0 ? $"{s} {unit}" : s))]);
    }

    // The later values may be left out.
    private static Reading Several(string answer, IReadOnlyList<string> keys)
    {
        var values = Joints().Split(answer.Trim());
        return values.Length <= keys.Count
            ? new([.. keys.Zip(values)])
            : Reading.Of($"\"{Shortened(answer)}\" says too much; {keys.Count.ToString(CultureInfo.InvariantCulture)} values at most");
    }

    private static Reading Cast(string answer, IReadOnlyList<string> keys)
    {
        var digit = answer.IndexOfAny([.. "0123456789"]);
        var (name, amount) = digit < 0 ? (answer, "") : (answer[..digit], answer[digit..].Trim());
        name = Hyphened(name.Trim(' ', ',', ';'));
        var values = new List<(string, string)>();
        if (name.Length > 0)
        {
            if (CastMixes.Find(name) is not { } mix)
            {
                return NotAbove(name, Mixes);
            }

            // Ratio and pot life go with the mix, until the bag says better.
            values.Add((keys[0], name));
            values.Add(("materials.cast.powder_per_water", Units.Write(mix.PowderPerWaterRatio, Dimension.None)));
            values.Add(("materials.cast.pot_life", Units.Write(mix.Times.PotLifeS, Dimension.Time)));
        }

        if (amount.Length > 0)
        {
            if (!Units.TryRead(amount, Dimension.Mass, out var kilograms, out var fault) || kilograms <= 0)
            {
                return Reading.Of(fault.Length > 0 ? fault : $"\"{Shortened(amount)}\" is out of range; more than nothing, or only the kind of cast");
            }

            values.Add((PowderAtHand, amount));
        }

        return values.Count > 0 ? new(values) : Reading.Of($"\"{Shortened(answer)}\" names no cast; such as plaster, 6 kg");
    }

    private static string Hyphened(string answer) => string.Join('-', answer.Trim().ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));

    // What was measured on the demo's test bar says nothing of another cast.
    private static string Unmeasured(string text) => MeasuredBlock().Replace(text, "$1{}", 1);

    private static string Stocked(string text, string amount) => PowderLine().Replace(text, m => $"{m.Groups[1].Value}\"{amount}\"", 1);

    [GeneratedRegex(@"(""item"": ""cast powder"", ""amount"": )""([^""]*)""", RegexOptions.CultureInvariant)]
    private static partial Regex PowderLine();

    [GeneratedRegex(@"(""measured"": )\{[^}]*\}", RegexOptions.CultureInvariant)]
    private static partial Regex MeasuredBlock();

    [GeneratedRegex("""\s*(?:[xX×*]|\bby\b)\s*""", RegexOptions.CultureInvariant)]
    private static partial Regex Times();

    [GeneratedRegex("""\s*(?:;|,\s|(?<=[A-Za-z]),|\binto\b|\bat\b|@)\s*""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Joints();

    [GeneratedRegex("""^\s*[0-9.]+\s*""", RegexOptions.CultureInvariant)]
    private static partial Regex Bare();
}

/// <summary>What an answer states, or why it will not do.</summary>
internal sealed record Reading(IReadOnlyList<(string Key, string Stated)> Values, string? Fault = null)
{
    internal static Reading Of(string fault) => new([], fault);
}
