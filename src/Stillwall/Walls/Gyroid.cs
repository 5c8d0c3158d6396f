using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>A lattice of one curved sheet that parts space into two labyrinths: the gyroid that slicers print as infill.</summary>
public static class Gyroid
{
    /// <summary>Share of solid in the lattice.</summary>
    /// <param name="cellM">Edge of the cubic cell, m, above 0.</param>
    /// <param name="sheetM">Thickness of the sheet, m, above 0 and at most 0.3 of the cell.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: 3.09 t/L − 4.19 (t/L)³: the area of the surface, 3.09 L² in a cell, times the thickness, less what curvature takes. Validity: t up to
    /// 0.3 L.
    /// Source: area of the gyroid 3.0915 (Schoen 1970, from memory); the cubic term 4π/3 is Steiner's formula with the surface's Euler number of −8 a
    /// cell. Accuracy: 1 %.
    /// </remarks>
    public static double SolidShare(double cellM, double sheetM)
    {
        Check(cellM, sheetM);
        var ratio = sheetM / cellM;
        return 3.09 * ratio - 4.19 * ratio * ratio * ratio;
    }

    /// <summary>Narrowest passage through either labyrinth.</summary>
    /// <param name="cellM">Edge of the cubic cell, m, above 0.</param>
    /// <param name="sheetM">Thickness of the sheet, m, above 0 and at most 0.3 of the cell.</param>
    /// <returns>Diameter, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: 0.42 L − t. Validity: as <see cref="SolidShare"/>. Source: from memory. Accuracy: 5 %.</remarks>
    public static double PassageM(double cellM, double sheetM)
    {
        Check(cellM, sheetM);
        return 0.42 * cellM - sheetM;
    }

    /// <summary>The lattice with cast in both its labyrinths, as one layer.</summary>
    /// <param name="thicknessM">Thickness of the layer, m, above 0.</param>
    /// <param name="solidShare">Share of plastic, 0 to 1.</param>
    /// <param name="skin">The plastic.</param>
    /// <param name="core">The cast.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: softest arrangement, 1/E = φ/Ep + (1 − φ)/Ec; density and Poisson's ratio by volume, loss factor by share of the energy. Validity: cast
    /// that fills both labyrinths and is held by the sheet.
    /// Source: lower bound of Reuss 1929 (from memory). Accuracy: a lower bound, for plastic and gypsum a tenth under the upper one.
    /// </remarks>
    public static Layer Filled(double thicknessM, double solidShare, SkinMaterial skin, CoreMaterial core)
    {
        ArgumentNullException.ThrowIfNull(skin);
        ArgumentNullException.ThrowIfNull(core);
        Require.Within(solidShare, 0, 1, nameof(solidShare));
        var (plastic, cast) = (solidShare / skin.ModulusPa, (1 - solidShare) / core.ModulusPa);
        double Mean(double one, double other) => solidShare * one + (1 - solidShare) * other;
        return new Layer(
            thicknessM,
            1 / (plastic + cast),
            Mean(skin.Poisson, core.Poisson),
            Mean(skin.DensityKgM3, core.DensityKgM3),
            (plastic * skin.LossFactor + cast * core.LossFactor) / (plastic + cast)
        );
    }

    /// <summary>The lattice with air in it, as one layer.</summary>
    /// <param name="thicknessM">Thickness of the layer, m, above 0.</param>
    /// <param name="solidShare">Share of plastic, 0 to 1.</param>
    /// <param name="skin">The plastic.</param>
    /// <returns>The layer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: E = 0.6 φ^1.3 of the plastic. Validity: shares of 0.1 to 0.4. Source: power law of sheet lattices as they are reported, both figures
    /// from memory. Accuracy: a factor of 1.5; it stays under the bound of Hashin and Shtrikman for porous solids.
    /// </remarks>
    public static Layer Empty(double thicknessM, double solidShare, SkinMaterial skin)
    {
        ArgumentNullException.ThrowIfNull(skin);
        Require.Within(solidShare, 1e-3, 1, nameof(solidShare));
        return new Layer(thicknessM, 0.6 * Math.Pow(solidShare, 1.3) * skin.ModulusPa, skin.Poisson, solidShare * skin.DensityKgM3, skin.LossFactor);
    }

    private static void Check(double cellM, double sheetM)
    {
        Require.Positive(cellM);
        Require.Positive(sheetM);
        Require.Within(sheetM, 0, 0.3 * cellM, nameof(sheetM), "m");
    }
}
