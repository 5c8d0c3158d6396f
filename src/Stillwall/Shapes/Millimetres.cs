using Stillwall.Numerics;

namespace Stillwall.Shapes;

/// <summary>
/// Where the units of length meet: sections are drawn in millimetres, on a grid of micrometres; what is stated and what is computed is in metres. Nothing else
/// turns one into the other.
/// </summary>
internal static class Millimetres
{
    internal const double MicrometresPerMillimetre = 1000,
        MillimetresPerMetre = 1e3,
        MetresPerMillimetre = 1e-3,
        SquareMetresPerSquareMillimetre = 1e-6,
        CubicMetresPerCubicMillimetre = 1e-9,
        CubicMillimetresPerCubicMetre = 1e9,
        MetresPerMicrometre = 1e-6;

    private const double FarthestMm = 100_000;

    /// <summary>A drawn length in metres.</summary>
    internal static double InMetres(this double millimetres) => millimetres * MetresPerMillimetre;

    /// <summary>A drawn area in square metres.</summary>
    internal static double InSquareMetres(this double squareMillimetres) => squareMillimetres * SquareMetresPerSquareMillimetre;

    /// <summary>A drawn volume in cubic metres.</summary>
    internal static double InCubicMetres(this double cubicMillimetres) => cubicMillimetres * CubicMetresPerCubicMillimetre;

    /// <summary>A stated or computed length as it is drawn, mm.</summary>
    internal static double InMillimetres(this double metres) => metres * MillimetresPerMetre;

    /// <summary>A stated or computed volume as it is drawn, mm³.</summary>
    internal static double InCubicMillimetres(this double cubicMetres) => cubicMetres * CubicMillimetresPerCubicMetre;

    /// <summary>Whole millimetres in metres, to the double nearest to the decimal.</summary>
    internal static double Whole(int millimetres) => millimetres / MillimetresPerMetre;

    /// <summary>A coordinate on the grid as it is drawn, mm.</summary>
    internal static double OffGrid(this int micrometres) => micrometres / MicrometresPerMillimetre;

    /// <summary>A drawn length on the grid, µm.</summary>
    internal static int OnGrid(double millimetres, string name)
    {
        Require.Within(millimetres, -FarthestMm, FarthestMm, name, "mm");
        return (int)Math.Round(millimetres * MicrometresPerMillimetre);
    }
}
