namespace Stillwall.Projects;

/// <summary>What skins and core are made of.</summary>
public sealed record Materials : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Plastic of the skins.</summary>
    [OneOf("pla", "petg", "asa", "abs", "own")]
    public string? Skin { get => Told(field); init; }

    /// <summary>Figures of a plastic of one's own.</summary>
    public OwnSkin? SkinOwn { get => Told(field); init; }

    /// <summary>The mix between the skins, and how it is handled.</summary>
    public Cast? Cast { get => Told(field); init; }
}

/// <summary>Figures of a plastic of one's own.</summary>
public sealed record OwnSkin : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Density, kg/m³.</summary>
    [Within(100, 10000)]
    public required double DensityKgM3 { get => Told(field); init; }

    /// <summary>Young's modulus at room temperature, Pa.</summary>
    [Within(1e6, 1e12)]
    public required double ModulusPa { get => Told(field); init; }

    /// <summary>Poisson's ratio.</summary>
    [Within(0, 0.49), DefaultFrom("a middle of the known plastics, our choice")]
    public double Poisson { get => Told(field); init; } = 0.38;

    /// <summary>Temperature at which it gives way under load, °C.</summary>
    [Within(0, 500)]
    public required double SofteningC { get => Told(field); init; }

    /// <summary>Bending strength across layers, Pa.</summary>
    [Within(1e5, 1e10)]
    public required double StrengthPa { get => Told(field); init; }
}

/// <summary>The mix between the skins, and how it is handled.</summary>
public sealed record Cast : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Kind of mix.</summary>
    [OneOf("plaster", "hard-gypsum", "gypsum-binder", "sand-plaster", "cement-grout", "own")]
    public string? Mix { get => Told(field); init; }

    /// <summary>Figures of a mix of one's own.</summary>
    public OwnMix? Own { get => Told(field); init; }

    /// <summary>Mass of powder for one of water; the mix's usual ratio where absent.</summary>
    [Within(0.3, 20), DefaultFrom("the mix’s usual ratio")]
    public double? PowderPerWater { get => Told(field); init; }

    /// <summary>Temperature of the mixing water, °C; the room's where absent.</summary>
    [Within(1, 60), DefaultFrom("the room’s temperature")]
    public double? WaterTemperatureC { get => Told(field); init; }

    /// <summary>Time from the first water until the mix no longer pours, s.</summary>
    [Within(30, 36000), DefaultFrom("the mix’s usual pot life")]
    public double? PotLifeS { get => Told(field); init; }

    /// <summary>Volume of the mixing bucket, m³.</summary>
    [Within(1e-4, 0.5)]
    public double? BucketM3 { get => Told(field); init; }

    /// <summary>Time the powder soaks, s.</summary>
    [Within(0, 3600), DefaultFrom("common practice, no source")]
    public double SoakS { get => Told(field); init; } = 120;

    /// <summary>Time of stirring, s.</summary>
    [Within(0, 3600), DefaultFrom("common practice, no source")]
    public double StirS { get => Told(field); init; } = 60;

    /// <summary>How fast it is poured, m³/s.</summary>
    [Within(1e-6, 0.01), DefaultFrom("our choice")]
    public double PourRateM3S { get => Told(field); init; } = 2e-3 / 60;

    /// <summary>People at the pour.</summary>
    [Within(1, 20), DefaultFrom("one")]
    public int People { get => Told(field); init; } = 1;

    /// <summary>Weight laid or clamped on the inner sleeve until the first lift has set, kg.</summary>
    [Within(0, 500)]
    public double? HoldDownKg { get => Told(field); init; }

    /// <summary>Largest grain in the mix, m; the mix's own where absent.</summary>
    [Within(0, 0.05), DefaultFrom("the mix’s own grain")]
    public double? GrainM { get => Told(field); init; }
}

/// <summary>Figures of a mix of one's own.</summary>
public sealed record OwnMix : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Density of the powder's grains, kg/m³.</summary>
    [Within(500, 10000)]
    public required double PowderDensityKgM3 { get => Told(field); init; }

    /// <summary>Water bound in setting per mass of powder.</summary>
    [Within(0, 1)]
    public required double BoundWater { get => Told(field); init; }

    /// <summary>Heat of setting per mass of powder, J/kg.</summary>
    [Within(0, 1e6)]
    public double? HeatJKg { get => Told(field); init; }

    /// <summary>Young's modulus when set and dry, Pa.</summary>
    [Within(1e7, 1e12)]
    public required double ModulusPa { get => Told(field); init; }

    /// <summary>Poisson's ratio.</summary>
    [Within(0, 0.49), DefaultFrom("set gypsum, from memory")]
    public double Poisson { get => Told(field); init; } = 0.2;

    /// <summary>Loss factor.</summary>
    [Within(1e-5, 1), DefaultFrom("a middle of the known mixes, our choice")]
    public double LossFactor { get => Told(field); init; } = 0.01;
}
