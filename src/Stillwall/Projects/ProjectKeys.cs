using System.Collections;
using System.Globalization;

namespace Stillwall.Projects;

/// <summary>Looks up and changes one stated value by its key, such as <c>cabinet.strut_pitch</c>.</summary>
internal static class ProjectKeys
{
    /// <summary>Finds the field that a dotted key names.</summary>
    /// <param name="key">Keys from the root of the file, joined by points; an entry of a list by its index from 0, as <c>stock[1].amount</c>.</param>
    /// <returns>The field, or null where there is no such key.</returns>
    public static ModelField? Find(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var block = ModelBlock.Root;
        ModelField? field = null;
        foreach (var part in key.Split('.'))
        {
            var (name, index) = Indexed(part);
            field = block?.Find(name);
            if (field is null || (index is not null && field.Kind != FieldKind.Blocks))
            {
                return null;
            }

            block = field.Kind is FieldKind.Block or FieldKind.Driver || index is not null ? field.Block : null;
        }

        return field;
    }

    /// <summary>The stated value behind a key.</summary>
    public static object? Get(Project project, string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        object? at = project;
        foreach (var part in key.Split('.'))
        {
            if (at is null or DriverChoice { Sheet: null })
            {
                return null;
            }

            var (name, index) = Indexed(part);
            at = FieldAt(at, name, key).Get(Inside(at)!);
            at =
                index is not { } i ? at
                : at is IList list && i < list.Count ? list[i]
                : null;
        }

        return at;
    }

    /// <summary>A copy of the project with one plain value changed; missing blocks on the way are made with their defaults.</summary>
    /// <param name="key">Dotted key of a quantity, number, word or date.</param>
    /// <param name="text">The new value as it would stand in the file.</param>
    public static Project With(Project project, string key, string text)
    {
        var field = Find(key) ?? throw new ArgumentException($"{key}: no such key{NearestWord.Suggest(key, AllKeys())}", nameof(key));
        return With(project, key, Read(field, key, text));
    }

    /// <summary>Whether a value as typed stands in the file as a bare number, without quotation marks.</summary>
    /// <returns>True for numbers without a unit.</returns>
    public static bool IsBare(ModelField field, string text)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field.Kind is FieldKind.Number or FieldKind.Whole
            || (
                field.Kind == FieldKind.Quantity
                && field.Dimension == Dimension.AcousticResistance
                && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            );
    }

    /// <summary>A copy of the project with one value changed to one its property already can hold.</summary>
    /// <param name="value">The value as the property holds it: SI for quantities.</param>
    public static Project With(Project project, string key, object? value)
    {
        ArgumentNullException.ThrowIfNull(key);
        return (Project)Changed(project, key.Split('.'), 0, key, value);
    }

    /// <summary>Every dotted key of the file that does not lead through a list, in the order of the model.</summary>
    public static IEnumerable<string> AllKeys() => KeysOf(ModelBlock.Root, "");

    /// <summary>Writes the value of a key as it stands in the file.</summary>
    /// <returns>Number with unit, bare number, word or date.</returns>
    public static string Written(ModelField field, object value)
    {
        ArgumentNullException.ThrowIfNull(field);
        return value switch
        {
            double number => Units.Write(number, field.Dimension),
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Amount amount => Units.Write(amount.Value, amount.Dimension),
            _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
        };
    }

    // "stock[1]" is the second entry of the list "stock".
    private static (string Name, int? Index) Indexed(string part) =>
        part.EndsWith(']')
        && part.IndexOf('[', StringComparison.Ordinal) is > 0 and var at
        && int.TryParse(part[(at + 1)..^1], NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? (part[..at], index)
            : (part, null);

    private static object? Read(ModelField field, string key, string text)
    {
        if (field.Kind == FieldKind.Quantities)
        {
            var entries = text.Split(',').Select(entry => (double)ReadOne(field, key, entry.Trim())!).ToArray();
            return field.Count is { } count && count != entries.Length
                ? throw new ArgumentException($"{key}: {entries.Length} entries; {field.Accepted}", nameof(text))
                : entries;
        }

        var value = ReadOne(field, key, text);
        return field.Kind == FieldKind.Driver ? new DriverChoice((string)value!, null) : value;
    }

    private static object? ReadOne(ModelField field, string key, string text) =>
        field.TryRead(text, IsBare(field, text), out var value, out var fault) ? value : throw new ArgumentException($"{key}: {fault}", nameof(text));

    private static IEnumerable<string> KeysOf(ModelBlock block, string before) =>
        block.Fields.SelectMany(f =>
            f.Kind is FieldKind.Block ? KeysOf(f.Block!, before + f.Key + ".").Prepend(before + f.Key)
            : f.Kind is FieldKind.Blocks ? []
            : [before + f.Key]
        );

    private static object Changed(object record, string[] path, int at, string key, object? value)
    {
        var block = ModelBlock.Of(record.GetType());
        var field = FieldAt(record, path[at], key);
        if (at == path.Length - 1)
        {
            return block.With(record, field, value);
        }

        var below = field.Property.GetValue(record) ?? Activator.CreateInstance(field.Block?.Type ?? throw NoSuchKey(key))!;
        if (below is DriverChoice { Sheet: null } named)
        {
            throw new ArgumentException(
                $"{key}: the driver is the candidate \"{named.Name}\"; a data sheet written in place, or a change in the drivers' table",
                nameof(key)
            );
        }

        var changed = Changed(Inside(below), path, at + 1, key, value);
        return block.With(record, field, field.Kind == FieldKind.Driver ? new DriverChoice(null, (DriverSheet)changed) : changed);
    }

    private static object Inside(object record) => record is DriverChoice { Sheet: { } sheet } ? sheet : record;

    private static ModelField FieldAt(object record, string part, string key) => ModelBlock.Of(Inside(record).GetType()).Find(part) ?? throw NoSuchKey(key);

    private static ArgumentException NoSuchKey(string key) => new($"{key}: no such key", nameof(key));
}
