namespace Stillwall.Projects;

/// <summary>The cabinet as it is drawn: either an outside size with its wall build-up, or a ready box's net volume.</summary>
public sealed record Cabinet : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Net acoustic volume of a ready box, m³; excludes <see cref="Outside"/> and the walls.</summary>
    [Within(1e-4, 5)]
    public double? NetVolumeM3 { get => Told(field); init; }

    /// <summary>Outside size.</summary>
    public Outside? Outside { get => Told(field); init; }

    /// <summary>Thickness of the outer printed skin, m.</summary>
    [Within(0.0003, 0.05)]
    public double? OuterSkinM { get => Told(field); init; }

    /// <summary>Thickness of the cast between the skins, m; 0 is a single printed wall.</summary>
    [Within(0, 0.2)]
    public double? CoreM { get => Told(field); init; }

    /// <summary>Thickness of the inner printed skin, m.</summary>
    [Within(0.0003, 0.05)]
    public double? InnerSkinM { get => Told(field); init; }

    /// <summary>Greatest distance between struts along the wall, centre to centre, m.</summary>
    [Within(0.01, 1), DefaultFrom("our choice")]
    public double StrutPitchM { get => Told(field); init; } = 0.04;

    /// <summary>Number of window braces inside.</summary>
    [Within(0, 10), DefaultFrom("none")]
    public int Braces { get => Told(field); init; }

    /// <summary>Number of equal drivers, wired in parallel.</summary>
    [Within(1, 16), DefaultFrom("one")]
    public int DriverCount { get => Told(field); init; } = 1;

    /// <summary>Openings besides the driver's.</summary>
    public Openings? Openings { get => Told(field); init; }

    /// <summary>Fibre inside the cabinet.</summary>
    public Fill? Fill { get => Told(field); init; }

    /// <summary>The slit that is left at the joints; absent is airtight.</summary>
    public Leak? Leak { get => Told(field); init; }

    /// <summary>What the cabinet stands on.</summary>
    public Feet? Feet { get => Told(field); init; }

    /// <summary>Ornamental rings round the outside.</summary>
    public Accents? Accents { get => Told(field); init; }

    /// <summary>A port, for the comparison with a vented box.</summary>
    public Port? Port { get => Told(field); init; }

    /// <summary>A second, passive cone, for the comparison.</summary>
    public PassiveRadiator? PassiveRadiator { get => Told(field); init; }
}

/// <summary>Outside size of the cabinet: width across, depth from front to rear, height up.</summary>
public sealed record Outside : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Width (x), m.</summary>
    [Within(0.05, 2)]
    public required double WidthM { get => Told(field); init; }

    /// <summary>Depth (y), front to rear, m.</summary>
    [Within(0.05, 2)]
    public required double DepthM { get => Told(field); init; }

    /// <summary>Height (z), m.</summary>
    [Within(0.05, 2)]
    public required double HeightM { get => Told(field); init; }

    /// <summary>Outside radius of the four long edges, m.</summary>
    [Within(0, 1), DefaultFrom("square edges")]
    public double CornerRadiusM { get => Told(field); init; }
}

/// <summary>Round openings besides the driver's.</summary>
public sealed record Openings : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Diameter of the terminal opening in the rear, m.</summary>
    [Within(0, 0.5)]
    public double? TerminalM { get => Told(field); init; }

    /// <summary>Diameter of the opening the slurry goes in by, in the rear outer plate, m.</summary>
    [Within(0, 0.5)]
    public double? PourM { get => Told(field); init; }

    /// <summary>Depth of a recess for the driver's flange in the face of the front, m; absent or 0 for none: the flange then sits on the face.</summary>
    [Within(0, 0.05)]
    public double? RecessM { get => Told(field); init; }

    /// <summary>Diameter of holes in the inner sleeve's skin through which the cast dries, m; absent for none.</summary>
    [Within(0.003, 0.012)]
    public double? DryingHoleM { get => Told(field); init; }
}

/// <summary>Fibre inside the cabinet, by mass or by its known effect.</summary>
public sealed record Fill : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Mass of the fibre, kg.</summary>
    [Within(0, 50)]
    public double? MassKg { get => Told(field); init; }

    /// <summary>Factor by which the box seems larger, where it is known.</summary>
    [Within(1, 1.4)]
    public double? Factor { get => Told(field); init; }
}

/// <summary>What leaks: a slit by its size, or a resistance that was measured.</summary>
public sealed record Leak : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Width of the slit, m.</summary>
    [Within(1e-6, 0.0002)]
    public double? GapM { get => Told(field); init; }

    /// <summary>Length of the slit along the joint, m.</summary>
    [Within(1e-4, 20)]
    public double? LengthM { get => Told(field); init; }

    /// <summary>Depth of the slit along the flow, m.</summary>
    [Within(1e-4, 0.5)]
    public double? DepthM { get => Told(field); init; }

    /// <summary>Acoustic resistance of the leak, Pa·s/m³.</summary>
    [Within(1, 1e12)]
    public double? ResistancePaSM3 { get => Told(field); init; }
}

/// <summary>Kinds of feet.</summary>
public enum FeetKind
{
    /// <summary>Hard: force goes through.</summary>
    Spikes,

    /// <summary>Soft: a spring.</summary>
    Pads,
}

/// <summary>What the cabinet stands on.</summary>
public sealed record Feet : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Kind of feet.</summary>
    [DefaultFrom("our choice")]
    public FeetKind Kind { get => Told(field); init; } = FeetKind.Pads;

    /// <summary>Stiffness of all feet together in the cone's direction, N/m.</summary>
    [Within(10, 1e9)]
    public double? StiffnessNPerM { get => Told(field); init; }

    /// <summary>Stiffness of all feet together up and down, N/m; four times the other where absent.</summary>
    [Within(10, 1e10)]
    public double? VerticalStiffnessNPerM { get => Told(field); init; }
}

/// <summary>Ornamental rings round the outside.</summary>
public sealed record Accents : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Number of rings.</summary>
    [Within(0, 20), DefaultFrom("none")]
    public int Rings { get => Told(field); init; }

    /// <summary>Ratio of one distance between rings to the next.</summary>
    [Within(0.25, 4), DefaultFrom("even spacing")]
    public double Ratio { get => Told(field); init; } = 1;
}

/// <summary>A port: acoustic length, end corrections included.</summary>
public sealed record Port : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Area of one port, m².</summary>
    [Within(1e-5, 0.5)]
    public double? AreaM2 { get => Told(field); init; }

    /// <summary>Diameter of one round port, m.</summary>
    [Within(0.003, 0.8)]
    public double? DiameterM { get => Told(field); init; }

    /// <summary>Acoustic length, end corrections included, m.</summary>
    [Within(0.001, 5)]
    public double? LengthM { get => Told(field); init; }

    /// <summary>Number of equal ports.</summary>
    [Within(1, 8), DefaultFrom("one")]
    public int Count { get => Told(field); init; } = 1;

    /// <summary>Acoustic resistance of all ports together, Pa·s/m³.</summary>
    [Within(0, 1e9), DefaultFrom("none")]
    public double ResistancePaSM3 { get => Told(field); init; }
}

/// <summary>A second, passive cone.</summary>
public sealed record PassiveRadiator : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Area, m².</summary>
    [Within(1e-4, 1)]
    public required double SdM2 { get => Told(field); init; }

    /// <summary>Moving mass, kg.</summary>
    [Within(1e-4, 10)]
    public required double MmsKg { get => Told(field); init; }

    /// <summary>Compliance, m/N.</summary>
    [Within(1e-6, 0.1)]
    public required double CmsMPerN { get => Told(field); init; }

    /// <summary>Mechanical resistance, kg/s.</summary>
    [Within(1e-3, 1000)]
    public required double RmsKgS { get => Told(field); init; }

    /// <summary>Greatest excursion, one way, peak, m.</summary>
    [Within(1e-5, 0.2)]
    public double? XmaxM { get => Told(field); init; }
}
