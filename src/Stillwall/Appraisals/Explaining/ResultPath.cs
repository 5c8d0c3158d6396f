using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Stillwall.Numerics;

namespace Stillwall.Appraisals.Explaining;

/// <summary>A number of the appraisal, found by its path.</summary>
/// <param name="Path">The path with every line of a list by its index.</param>
internal sealed record FoundResult(string Path, double? Value, object Owner, PropertyInfo Property)
{
    /// <summary>Formula and inputs; null for a number that names its line.</summary>
    internal ComputedByAttribute? ComputedBy => Property.GetCustomAttribute<ComputedByAttribute>();
}

/// <summary>Finds numbers in the appraisal's records, by names that are those of its machine-readable form.</summary>
internal static class ResultPath
{
    // Properties that name a line of a list.
    private static readonly string[] Labels = ["Panel", "Name", "Item", "BandHz", "What"];

    private static readonly Dictionary<string, Func<Facts, object?>> Blocks = new(StringComparer.Ordinal)
    {
        ["standing"] = f => f.Standing,
        ["box"] = f => f.Box,
        ["walls"] = f => f.Walls,
        ["parts"] = f => f.Parts,
        ["pour"] = f => f.Pour,
        ["cast"] = f => f.Cast,
        ["print"] = f => f.Print,
        ["mass"] = f => f.Mass,
        ["supplies"] = f => f.Supplies,
        ["cost"] = f => f.Cost,
        ["quiet"] = f => f.Quiet,
        ["joining"] = f => f.Joining,
    };

    /// <summary>Finds a number; null where the path leads to none.</summary>
    internal static FoundResult? Find(Facts facts, string path)
    {
        var steps = Steps(path);
        if (steps is not [var first, ..] || !Blocks.TryGetValue(first, out var block))
        {
            return null;
        }

        object? at = block(facts);
        var (owner, property, concrete) = (at, (PropertyInfo?)null, new StringBuilder(first));
        foreach (var step in steps.Skip(1))
        {
            if (at is null)
            {
                return null;
            }

            if (at is IList list)
            {
                if (IndexOf(list, step) is not { } index)
                {
                    return null;
                }

                at = list[index];
                concrete.Append(CultureInfo.InvariantCulture, $"[{index}]");
                continue;
            }

            property = Array.Find(at.GetType().GetProperties(), p => UnderscoreNames.Of(p.Name) == step && p.GetIndexParameters().Length == 0);
            if (property is null)
            {
                return null;
            }

            (owner, at) = (at, property.GetValue(at));
            concrete.Append('.').Append(step);
        }

        return property is not null && IsNumber(at, property) ? new FoundResult(concrete.ToString(), Number(at), owner!, property) : null;
    }

    /// <summary>Paths of all numbers that are known, lines of lists by name where they have one.</summary>
    internal static IEnumerable<string> All(Facts facts) => Blocks.SelectMany(b => Under(b.Key, b.Value(facts)));

    private static IEnumerable<string> Under(string path, object? at)
    {
        switch (at)
        {
            case double or int:
                return [path];
            case string or bool or null or Enum:
                return [];
            case IList list:
                return list.Cast<object?>().SelectMany((item, i) => Under(path + Step(list, item, i), item));
            default:
                return at.GetType()
                    .GetProperties()
                    .Where(p => p.GetIndexParameters().Length == 0)
                    .SelectMany(p => Under($"{path}.{UnderscoreNames.Of(p.Name)}", p.GetValue(at)));
        }
    }

    private static string Step(IList list, object? item, int index) =>
        Label(item) is { } label && IndexOf(list, label) == index
            ? label.All(char.IsAsciiLetter)
                ? $".{label}"
                : $"[\"{label}\"]"
            : string.Create(CultureInfo.InvariantCulture, $"[{index}]");

    private static string? Label(object? item) =>
        Labels.Select(name => item?.GetType().GetProperty(name)?.GetValue(item)).FirstOrDefault(v => v is not null) is { } value
            ? Convert.ToString(value, CultureInfo.InvariantCulture)
            : null;

    private static int? IndexOf(IList list, string step)
    {
        for (var i = 0; i < list.Count; i++)
        {
            if (Label(list[i]) == step)
            {
                return i;
            }
        }

        return int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < list.Count ? index : null;
    }

    // The record property ends in a number, or in a list of numbers of which one is taken; an unknown number is null.
    private static bool IsNumber(object? value, PropertyInfo property) =>
        value is double or int
        || (
            value is null
            && (Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType) is var type
            && (type == typeof(double) || type == typeof(int))
        );

    /// <summary>A boxed number; null where there is none.</summary>
    internal static double? Number(object? value) => value is null ? null : Convert.ToDouble(value, CultureInfo.InvariantCulture);

    // Points and brackets part the steps; within quotation marks neither does.
    private static List<string> Steps(string path)
    {
        List<string> steps = [];
        var step = new StringBuilder();
        var (quoted, inside) = (false, false);
        foreach (var c in path)
        {
            if (c is '"' or '\'' && inside)
            {
                quoted = !quoted;
            }
            else if (!quoted && (c is '[' or ']' || (c == '.' && !inside)))
            {
                inside = c == '[';
                if (step.Length > 0)
                {
                    steps.Add(step.ToString());
                }

                step.Clear();
            }
            else
            {
                step.Append(c);
            }
        }

        if (step.Length > 0)
        {
            steps.Add(step.ToString());
        }

        return steps;
    }
}
