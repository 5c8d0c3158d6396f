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
    /// <summary>Its kind.</summary>
    internal PartKind? Kind { get; init; }

    /// <summary>How far behind the front face its centre of mass lies, mm; null for what is not part of the cabinet.</summary>
    internal double? CentreMm { get; init; }
}

/// <summary>What the printing takes altogether.</summary>
/// <param name="FilamentKg">Mass of all parts, kg.</param>
/// <param name="FilamentToHaveKg">Mass to have on the shelf, waste counted, kg.</param>
/// <param name="PrintSeconds">Least printing time of all parts, s.</param>
/// <param name="LongestPrintSeconds">Least printing time of the part that takes longest, s.</param>
/// <param name="HonestPrintSeconds">What printing really takes, from and to, s.</param>
/// <param name="Spools">Spools of 1 kg to have.</param>
/// <param name="Pieces">Number of things to print.</param>
public sealed record PrintTotals(
    [property: ComputedBy("filament", "parts[].mass_kg")] double? FilamentKg,
    [property: ComputedBy("filament-to-have", "print.filament_kg")] double? FilamentToHaveKg,
    [property: ComputedBy("print-time", "parts[].print_seconds")] double? PrintSeconds,
    [property: ComputedBy("print-time", "parts[].print_seconds")] double? LongestPrintSeconds,
    [property: ComputedBy("print-time-honest", "print.print_seconds")] IReadOnlyList<double>? HonestPrintSeconds,
    [property: ComputedBy("spools", "print.filament_to_have_kg")] int? Spools,
    [property: ComputedBy("pieces")] int? Pieces
);
