using Stillwall.Numerics;

namespace Stillwall.Parts;

/// <summary>One thing to print, with its figures.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="VolumeM3">Volume of plastic, m³.</param>
/// <param name="MassKg">Mass, kg; null without a skin material.</param>
/// <param name="SizeM">Size as printed: x, y on the bed, z up, m.</param>
/// <param name="Fits">Whether it fits the printer with the edge margin on all four sides; null without a printer.</param>
/// <param name="PrintSeconds">Least printing time, s; null without the printer's flow.</param>
/// <param name="InCabinet">Whether it becomes part of the cabinet, or is a mould, coupon or gauge.</param>
public sealed record PartFigures(
    string Name,
    [property: ComputedBy("part-volume")] double VolumeM3,
    [property: ComputedBy("part-mass", "parts[].volume_m3")] double? MassKg,
    [property: ComputedBy("part-size")] IReadOnlyList<double> SizeM,
    bool? Fits,
    [property: ComputedBy("print-time", "parts[].volume_m3")] double? PrintSeconds,
    bool InCabinet
)
{
    internal PartKind? Kind { get; init; }

    /// <summary>How far behind the front face its centre of mass lies, mm; null for what is not part of the cabinet.</summary>
    internal double? CentreMm { get; init; }
}

/// <summary>What the printing takes altogether; null where a part's figure is not known, or where nothing is printed.</summary>
public sealed record PrintTotals
{
    /// <summary>Mass of all parts, kg.</summary>
    [ComputedBy("filament", "parts[].mass_kg")]
    public double? FilamentKg { get; init; }

    /// <summary>Mass to have on the shelf, waste counted, kg.</summary>
    [ComputedBy("filament-to-have", "print.filament_kg")]
    public double? FilamentToHaveKg { get; init; }

    /// <summary>Least printing time of all parts, s.</summary>
    [ComputedBy("print-time", "parts[].print_seconds")]
    public double? PrintSeconds { get; init; }

    /// <summary>Least printing time of the part that takes longest, s.</summary>
    [ComputedBy("print-time", "parts[].print_seconds")]
    public double? LongestPrintSeconds { get; init; }

    /// <summary>What printing really takes, from and to, s.</summary>
    [ComputedBy("print-time-honest", "print.print_seconds")]
    public IReadOnlyList<double>? HonestPrintSeconds { get; init; }

    /// <summary>Spools of 1 kg to have.</summary>
    [ComputedBy("spools", "print.filament_to_have_kg")]
    public int? Spools { get; init; }

    /// <summary>Number of things to print.</summary>
    [ComputedBy("pieces")]
    public int? Pieces { get; init; }
}
