using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using Stillwall.Numerics;

namespace Stillwall.Projects;

/// <summary>What sort of value a key of the project file takes.</summary>
internal enum FieldKind
{
    /// <summary>A number with its unit, in a string.</summary>
    Quantity,

    /// <summary>A bare number.</summary>
    Number,

    /// <summary>A bare whole number.</summary>
    Whole,

    /// <summary>A text, perhaps one of a few words.</summary>
    Text,

    /// <summary>A date, yyyy-mm-dd.</summary>
    Date,

    /// <summary>An amount with a unit of the maker's choice.</summary>
    Amount,

    /// <summary>A list of quantities with their units.</summary>
    Quantities,

    /// <summary>A block of its own keys.</summary>
    Block,

    /// <summary>A list of blocks.</summary>
    Blocks,

    /// <summary>A driver: a candidate's name or a block.</summary>
    Driver,
}

/// <summary>One key of a block of the project file, read off a property of the stated model.</summary>
/// <param name="Dimension">Kind of quantity; none where it is not one.</param>
/// <param name="Required">Whether the block makes no sense without it.</param>
internal sealed record ModelField(string Key, PropertyInfo Property, FieldKind Kind, Dimension Dimension, bool Required)
{
    /// <summary>Accepted span in SI, or null where every value is accepted.</summary>
    public WithinAttribute? Span { get; } = Property.GetCustomAttribute<WithinAttribute>();

    /// <summary>Accepted words, or empty where every text is accepted.</summary>
    public IReadOnlyList<string> Words { get; } =
        Property.GetCustomAttribute<OneOfAttribute>()?.Words ?? (EnumOf(Property) is { } words ? EnumWords.All(words, '-') : []);

    /// <summary>Where the default comes from, or what stands in for a value that is not stated; null where nothing does.</summary>
    public string? DefaultFrom { get; } = Property.GetCustomAttribute<DefaultFromAttribute>()?.Text;

    /// <summary>Number of entries a list must have, or null.</summary>
    public int? Count { get; } = Property.GetCustomAttribute<CountAttribute>()?.Count;

    /// <summary>Column of the drivers' table, or null.</summary>
    public ColumnAttribute? Column { get; } = Property.GetCustomAttribute<ColumnAttribute>();

    /// <summary>The block that this key holds, or each entry of its list; null for plain values.</summary>
    public ModelBlock? Block =>
        Kind switch
        {
            FieldKind.Block => ModelBlock.Of(Property.PropertyType),
            FieldKind.Blocks => ModelBlock.Of(Property.PropertyType.GetGenericArguments()[0]),
            FieldKind.Driver => ModelBlock.Of(typeof(DriverSheet)),
            _ => null,
        };

    /// <summary>The value that a record has for this key, as the file has it: a closed set by its word.</summary>
    internal object? Get(object record) => Property.GetValue(record) is var value && value is Enum word ? word.Word('-') : value;

    /// <summary>Sets the value of a record that is being made.</summary>
    internal void Set(object made, object? value) =>
        Property.SetValue(made, value is string word && EnumOf(Property) is { } words ? Enum.GetValues(words).GetValue(Index(word)) : value);

    private int Index(string word) => Words.Index().First(w => w.Item == word).Index;

    private static Type? EnumOf(PropertyInfo property) =>
        (Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType) is { IsEnum: true } type ? type : null;

    /// <summary>Reads one plain value as it stands in the file or on the command line.</summary>
    /// <param name="text">The text of the value, without quotation marks.</param>
    /// <param name="value">The value as the property holds it (one entry of it for a list), when the result is true.</param>
    /// <param name="fault">What is wrong and what is accepted, when the result is false.</param>
    public bool TryRead(string text, bool isNumber, out object? value, out string fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        value = null;
        switch (Kind)
        {
            case FieldKind.Quantity or FieldKind.Quantities when isNumber && Dimension != Dimension.AcousticResistance:
                fault = $"{Shorten(text, true)} has no unit; {Units.Accepted(Dimension)}";
                return false;
            case FieldKind.Quantity or FieldKind.Quantities when !isNumber:
                return Units.TryRead(text, Dimension, out var quantity, out fault) && Keep(quantity, out value, out fault);
            case FieldKind.Number or FieldKind.Quantity or FieldKind.Quantities:
                return ReadNumber(text, isNumber, out value, out fault);
            case FieldKind.Whole:
                return ReadWhole(text, isNumber, out value, out fault);
            case FieldKind.Amount when !isNumber:
                var read = Units.TryReadAmount(text, out var amount, out fault);
                value = amount;
                return read && Positive(amount, ref fault);
            case FieldKind.Date when DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date):
                (value, fault) = (date, "");
                return true;
            case FieldKind.Text or FieldKind.Driver when !isNumber:
                return ReadText(text, out value, out fault);
            default:
                fault = $"{Shorten(text, isNumber)} is not accepted; {Accepted}";
                return false;
        }
    }

    // A line of a fault has room for so many; the schema lists them all.
    private static string Listed(IReadOnlyList<string> words)
    {
        const int Room = 155,
            Short = 125;
        if (string.Join(", ", words).Length <= Room)
        {
            return string.Join(", ", words);
        }

        var shown = Enumerable.Range(1, words.Count).Last(n => n == 1 || string.Join(", ", words.Take(n)).Length <= Short);
        return $"{string.Join(", ", words.Take(shown))} and {(words.Count - shown).ToString(CultureInfo.InvariantCulture)} more that the schema lists";
    }

    /// <summary>What this key accepts, in words for a message.</summary>
    public string Accepted =>
        Kind switch
        {
            FieldKind.Quantity or FieldKind.Quantities => (Kind == FieldKind.Quantities ? $"a list of {Count ?? 1} entries, each " : "")
                + Units.Accepted(Dimension),
            FieldKind.Number => "a bare number",
            FieldKind.Whole => "a whole number",
            FieldKind.Date => "a date as \"2026-11-14\"",
            FieldKind.Amount => "an amount as \"6 kg\" or \"3 pc\"",
            FieldKind.Block => "a block { … }",
            FieldKind.Blocks => "a list of blocks [ { … } ]",
            FieldKind.Driver => "a driver's name or a block { … }",
            _ => Words.Count > 0 ? $"one of {Listed(Words)}" : "a text",
        };

    private const int LongestText = 200,
        LongestNote = 4000;

    private bool ReadText(string text, out object? value, out string fault)
    {
        (value, fault) = (text, "");
        if (text.Any(char.IsControl))
        {
            fault = "has a control character in it; plain text";
            return false;
        }

        var longest = Key == "note" ? LongestNote : LongestText;
        if (text.Length > longest)
        {
            fault = $"is {text.Length} characters long; at most {longest}";
            return false;
        }

        if (Key != "note" && string.IsNullOrWhiteSpace(text))
        {
            fault = $"is empty; {Accepted}";
            return false;
        }

        if (Words.Count > 0 && !Words.Contains(text))
        {
            fault = $"{Shorten(text, false)} is not known{NearestWord.Suggest(text, Words)}; one of {Listed(Words)}";
            return false;
        }

        return true;
    }

    private bool ReadNumber(string text, bool isNumber, out object? value, out string fault)
    {
        value = null;
        if (!isNumber || !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            fault = $"{Shorten(text, isNumber)} is not accepted; {Accepted}";
            return false;
        }

        return Keep(number, out value, out fault);
    }

    private bool ReadWhole(string text, bool isNumber, out object? value, out string fault)
    {
        value = null;
        if (
            !isNumber
            || !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            || number != Math.Floor(number)
            || Math.Abs(number) > 1e9
        )
        {
            fault = $"{Shorten(text, isNumber)} is not accepted; {Accepted}";
            return false;
        }

        var kept = Keep(number, out _, out fault);
        value = (int)number;
        return kept;
    }

    private bool Keep(double number, out object? value, out string fault)
    {
        value = number;
        fault = "";
        if (Span is null || (number >= Span.Least && number <= Span.Greatest))
        {
            return true;
        }

        fault =
            Span.Least == Span.Greatest
                ? $"{Units.Write(number, Dimension)} is not accepted; {Units.Write(Span.Least, Dimension)}"
                : $"{Units.Write(number, Dimension)} is out of range; {Units.Write(Span.Least, Dimension)} to {Units.Write(Span.Greatest, Dimension)}";
        return false;
    }

    private static bool Positive(Amount amount, ref string fault)
    {
        if (amount.Value is >= 0 and <= 1e6)
        {
            return true;
        }

        fault = "an amount cannot be negative or beyond all reason; 0 to 1000000";
        return false;
    }

    // A stated value as a message shows it: in quotation marks where it stood in them, cut where it is long.
    internal static string Shorten(string text, bool isNumber)
    {
        var shown = text.Length <= 40 ? text : text[..(char.IsHighSurrogate(text[39]) ? 39 : 40)] + "…";
        return isNumber ? shown : $"\"{shown}\"";
    }
}

/// <summary>One block of the project file: its keys, in the order of the stated model.</summary>
internal sealed class ModelBlock
{
    private static readonly ConditionalWeakTable<Type, ModelBlock> Known = [];

    private ModelBlock(Type type)
    {
        Type = type;
        Fields = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite).Select(FieldOf)];
        Defaults = Activator.CreateInstance(type)!;
    }

    /// <summary>The record that holds the block.</summary>
    public Type Type { get; }

    /// <summary>Its keys, in order.</summary>
    public IReadOnlyList<ModelField> Fields { get; }

    /// <summary>A record of which nothing was stated.</summary>
    public object Defaults { get; }

    /// <summary>The block of the whole project file.</summary>
    public static ModelBlock Root => Of(typeof(Project));

    /// <summary>The block that a record of the stated model holds.</summary>
    public static ModelBlock Of(Type type) => Known.GetValue(type, t => new ModelBlock(t));

    /// <summary>Finds a key.</summary>
    /// <returns>The field, or null where the block has no such key.</returns>
    public ModelField? Find(string key) => Fields.FirstOrDefault(f => f.Key == key);

    /// <summary>Makes a record with its defaults, then sets the values that were stated.</summary>
    public object Build(IEnumerable<(ModelField Field, object? Value)> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var made = Activator.CreateInstance(Type)!;
        foreach (var (field, value) in values)
        {
            field.Set(made, value);
        }

        return made;
    }

    /// <summary>A copy of a record of this block with one value changed.</summary>
    public object With(object record, ModelField field, object? value)
    {
        ArgumentNullException.ThrowIfNull(field);
        return Build(Fields.Select(f => (f, f == field ? value : f.Get(record))));
    }

    private static ModelField FieldOf(PropertyInfo property)
    {
        var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        var (stem, dimension) = UnitSuffix.Split(property.Name);
        var kind = type switch
        {
            _ when type == typeof(double) => dimension == Dimension.None ? FieldKind.Number : FieldKind.Quantity,
            _ when type == typeof(int) => FieldKind.Whole,
            _ when type == typeof(string) || type.IsEnum => FieldKind.Text,
            _ when type == typeof(DateOnly) => FieldKind.Date,
            _ when type == typeof(Amount) => FieldKind.Amount,
            _ when type == typeof(DriverChoice) => FieldKind.Driver,
            _ when type == typeof(IReadOnlyList<double>) => FieldKind.Quantities,
            _ when type.IsGenericType => FieldKind.Blocks,
            _ => FieldKind.Block,
        };
        var isNumeric = kind is FieldKind.Quantity or FieldKind.Quantities;
        var named = property.GetCustomAttribute<KeyAttribute>()?.Key ?? UnderscoreNames.Of(isNumeric ? stem : property.Name);
        return new ModelField(
            named,
            property,
            kind,
            isNumeric ? dimension : Dimension.None,
            property.GetCustomAttribute<RequiredMemberAttribute>() is not null
        );
    }
}
