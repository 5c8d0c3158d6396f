namespace Stillwall.Projects;

/// <summary>Units in which people are shown sizes.</summary>
public enum DisplayUnits
{
    /// <summary>Millimetres, kilograms, degrees Celsius.</summary>
    Metric,

    /// <summary>Inches, pounds, degrees Fahrenheit.</summary>
    Inch,
}

/// <summary>Everything that is stated about one cabinet: the contents of <c>stillwall.json</c>. Nothing computed is stored here.</summary>
/// <remarks>
/// A property's name gives its key and unit: <c>BuildWidthM</c> is the key <c>build_width</c>, a length held in metres.
/// A property without a unit suffix is a bare number, a word or a block. Null means "not stated": what needs it is then unknown.
/// </remarks>
public sealed record Project : Stated
{
    /// <summary>Address of the JSON Schema, for editors; read and ignored.</summary>
    [Key("$schema")]
    public string? Schema { get => Told(field); init; }

    /// <summary>Version of the file format; this version of the library reads 1.</summary>
    [Key("stillwall"), Within(1, 1)]
    public required int FormatVersion { get => Told(field); init; }

    /// <summary>What the maker calls the cabinet.</summary>
    [DefaultFrom("our choice")]
    public string Name { get => Told(field); init; } = "untitled cabinet";

    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Currency of every price, as a word or code.</summary>
    [DefaultFrom("our choice")]
    public string Currency { get => Told(field); init; } = "EUR";

    /// <summary>What the build may cost, in <see cref="Currency"/>.</summary>
    [Within(0, 1e6)]
    public double? Budget { get => Told(field); init; }

    /// <summary>Units in which people are shown sizes.</summary>
    [DefaultFrom("SI")]
    public DisplayUnits DisplayUnits { get => Told(field); init; } = DisplayUnits.Metric;

    /// <summary>The day on which the core is to be poured.</summary>
    public DateOnly? PourDate { get => Told(field); init; }

    /// <summary>What is asked of the cabinet.</summary>
    public Brief Brief { get => Told(field); init; } = new();

    /// <summary>File name of the candidate drivers, relative to the project folder.</summary>
    public string? Drivers { get => Told(field); init; }

    /// <summary>The chosen driver: the name of a candidate, or a data sheet of its own.</summary>
    public DriverChoice? Driver { get => Told(field); init; }

    /// <summary>The cabinet as it is drawn.</summary>
    public Cabinet? Cabinet { get => Told(field); init; }

    /// <summary>What skins and core are made of.</summary>
    public Materials? Materials { get => Told(field); init; }

    /// <summary>Limits the maker has changed from their defaults.</summary>
    public Limits Limits { get => Told(field); init; } = new();

    /// <summary>What things cost.</summary>
    public IReadOnlyList<Price>? Prices { get => Told(field); init; }

    /// <summary>What is on the shelf.</summary>
    public IReadOnlyList<Stock>? Stock { get => Told(field); init; }

    /// <summary>What was found out by measuring; it beats what was assumed.</summary>
    public Measured Measured { get => Told(field); init; } = new();

    /// <summary>Dated entries: attempts, weigh-ins, actual masses.</summary>
    public IReadOnlyList<LogEntry> Logbook { get => Told(field); init; } = [];
}

/// <summary>The driver as chosen in the project file: a candidate's name or a data sheet written in place.</summary>
/// <param name="Name">Name of a row of the candidates; null when <paramref name="Sheet"/> is given.</param>
/// <param name="Sheet">Data sheet written in place; null when <paramref name="Name"/> is given.</param>
public sealed record DriverChoice(string? Name, DriverSheet? Sheet);
