namespace Stillwall.Projects;

/// <summary>What something costs.</summary>
public sealed record Price : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Name of the item, as in the supplies list.</summary>
    public required string Item { get => Told(field); init; }

    /// <summary>Price of <see cref="Per"/>, in the project's currency.</summary>
    [Key("price"), Within(0, 1e6)]
    public required double Cost { get => Told(field); init; }

    /// <summary>What the price buys; one piece where absent.</summary>
    [DefaultFrom("one piece")]
    public Amount Per { get => Told(field); init; } = new(1, Dimension.Count);
}

/// <summary>What is on the shelf.</summary>
public sealed record Stock : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Name of the item, as in the supplies list.</summary>
    public required string Item { get => Told(field); init; }

    /// <summary>How much of it there is.</summary>
    public required Amount Amount { get => Told(field); init; }

    /// <summary>Last day on which it is good.</summary>
    public DateOnly? BestBefore { get => Told(field); init; }
}

/// <summary>An amount of something: a number and what kind of quantity it is.</summary>
/// <param name="Value">The amount in SI: pieces, kg, m, m² or m³.</param>
/// <param name="Dimension">Kind of quantity: count, mass, length, area or volume.</param>
public sealed record Amount(double Value, Dimension Dimension);

/// <summary>Which way the cabinet pushes first, beside the main speakers.</summary>
public enum Polarity
{
    /// <summary>Their way.</summary>
    Same,

    /// <summary>Against them.</summary>
    Opposite,
}

/// <summary>What was found out by measuring; it beats what was assumed.</summary>
public sealed record Measured : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Young's modulus of the core by the tap test, Pa.</summary>
    [Within(1e7, 1e12)]
    public double? CoreModulusPa { get => Told(field); init; }

    /// <summary>Loss factor of the core by the tap test.</summary>
    [Within(1e-5, 1)]
    public double? CoreLossFactor { get => Told(field); init; }

    /// <summary>Dry density of the core by the test bar, kg/m³.</summary>
    [Within(100, 10000)]
    public double? CoreDensityKgM3 { get => Told(field); init; }

    /// <summary>Resonance of the finished cabinet, Hz.</summary>
    [Within(5, 2000)]
    public double? SystemResonanceHz { get => Told(field); init; }

    /// <summary>Total Q of the finished cabinet.</summary>
    [Within(0.05, 20)]
    public double? SystemQ { get => Told(field); init; }

    /// <summary>Fill factor implied by the finished cabinet's resonance.</summary>
    [Within(0.8, 1.5)]
    public double? FillFactor { get => Told(field); init; }

    /// <summary>Acoustic resistance of the leak, Pa·s/m³.</summary>
    [Within(1, 1e12)]
    public double? LeakResistancePaSM3 { get => Told(field); init; }

    /// <summary>Level difference through the party wall in the ten third-octaves 20 to 160 Hz, dB.</summary>
    [Within(-20, 120), Count(10)]
    public IReadOnlyList<double>? PartyWallDb { get => Told(field); init; }

    /// <summary>Whether the cabinet's first push goes the way of the main speakers', as wired and set.</summary>
    public Polarity? Polarity { get => Told(field); init; }
}

/// <summary>One dated entry of the logbook.</summary>
public sealed record LogEntry : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Day of the entry.</summary>
    public required DateOnly Date { get => Told(field); init; }

    /// <summary>What it records: <c>weigh-in</c>, <c>attempt</c>, <c>actual</c> or a word of the maker's.</summary>
    public required string Kind { get => Told(field); init; }

    /// <summary>The part it is about.</summary>
    public string? Part { get => Told(field); init; }

    /// <summary>Mass on the scales, kg.</summary>
    [Within(0, 1000)]
    public double? MassKg { get => Told(field); init; }

    /// <summary>Time it took, s.</summary>
    [Within(0, 1e9)]
    public double? DurationS { get => Told(field); init; }

    /// <summary>What it cost, in the project's currency.</summary>
    [Within(0, 1e6)]
    public double? Cost { get => Told(field); init; }
}
