namespace Stillwall.Projects;

/// <summary>The span of values that a stated quantity may take, in the SI unit its name ends in.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class WithinAttribute(double least, double greatest) : Attribute
{
    /// <summary>Least accepted value, in the SI unit of the property.</summary>
    public double Least { get; } = least;

    /// <summary>Greatest accepted value, in the SI unit of the property.</summary>
    public double Greatest { get; } = greatest;
}

/// <summary>The words that a stated text may be.</summary>
/// <param name="words">The accepted words, in the order they are shown.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class OneOfAttribute(params string[] words) : Attribute
{
    /// <summary>The accepted words, in the order they are shown.</summary>
    public IReadOnlyList<string> Words { get; } = words;
}

/// <summary>The key in the project file where it does not follow from the property's name.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class KeyAttribute(string key) : Attribute
{
    /// <summary>The key as written in the file.</summary>
    public string Key { get; } = key;
}

/// <summary>The column of <c>drivers.csv</c> that carries a value, and what one unit of it is in SI.</summary>
/// <param name="toSi">Factor from the column's unit to SI.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class ColumnAttribute(string name, double toSi = 1) : Attribute
{
    /// <summary>Header of the column.</summary>
    public string Name { get; } = name;

    /// <summary>Factor from the column's unit to SI.</summary>
    public double ToSi { get; } = toSi;
}

/// <summary>How many entries a list must have.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class CountAttribute(int count) : Attribute
{
    /// <summary>The exact number of entries.</summary>
    public int Count { get; } = count;
}

/// <summary>Where the default of a key comes from, or what stands in for it where it is not stated.</summary>
/// <param name="text">A few words, such as "our choice" or "the mix's usual ratio".</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class DefaultFromAttribute(string text) : Attribute
{
    /// <summary>A few words, such as "our choice" or "the mix's usual ratio".</summary>
    public string Text { get; } = text;
}
