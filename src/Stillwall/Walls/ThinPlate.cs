using MathNet.Numerics.LinearAlgebra;
using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>How a panel is held all round.</summary>
public enum PanelEdges
{
    /// <summary>Deflection and both rotations are zero on the edge.</summary>
    Clamped,

    /// <summary>Only the deflection is zero on the edge.</summary>
    Supported,
}

/// <summary>What a rectangular thin plate does, freed of its size and stiffness.</summary>
/// <param name="FrequencyFactors">First six ω·a²·√(m/D), ascending, twins listed twice; a is the width.</param>
/// <param name="CentreFactor">Deflection in the middle under unit pressure, over a⁴/D.</param>
/// <param name="MeanFactor">Mean deflection under unit pressure, over a⁴/D.</param>
public sealed record PlateFactors(IReadOnlyList<double> FrequencyFactors, double CentreFactor, double MeanFactor);

/// <summary>Thin rectangular plates, clamped or supported all round.</summary>
public static class ThinPlate
{
    /// <summary>Modes that are returned.</summary>
    public const int Modes = 6;

    private const int Terms = 50;

    // Beyond these a plate bends as a strip across its shorter side.
    private const double LeastRatio = 0.02,
        GreatestRatio = 50;

    /// <summary>Frequencies and deflections of a plate by its proportions alone.</summary>
    /// <param name="widthOverHeightRatio">Width over height, clamped 0.02 to 50, supported 1e-6 to 1e6; the figures are checked from 0.125 to 8.</param>
    /// <param name="edges">How it is held.</param>
    /// <returns>The dimensionless figures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range.</exception>
    /// <remarks>
    /// Model: Kirchhoff plate without shear or in-plane load. Supported: Navier's series. Clamped: Rayleigh–Ritz on 12 × 12 polynomials with the
    /// boundary factor (1 − x²)² in each direction.
    /// Validity: thickness below a twentieth of the shorter side; thicker plates vibrate lower (<see cref="ShearPlate"/>): 7 % for a wall of a tenth
    /// of its side. Source: Leissa 1969; Timoshenko and Woinowsky-Krieger 1959, tables 8 and 35.
    /// Accuracy: within 1e-4 of converged values for ratios of 0.4 to 2.5, within 0.15 % of Leissa's table.
    /// </remarks>
    public static PlateFactors Factors(double widthOverHeightRatio, PanelEdges edges)
    {
        var (least, greatest) = edges == PanelEdges.Clamped ? (LeastRatio, GreatestRatio) : (1e-6, 1e6);
        Require.Within(widthOverHeightRatio, least, greatest, nameof(widthOverHeightRatio));
        return edges == PanelEdges.Clamped ? Clamped(widthOverHeightRatio) : Supported(widthOverHeightRatio);
    }

    private static PlateFactors Supported(double ratio)
    {
        // A seventh half wave either way lies above the six shorter ones in the same row.
        var squares = new List<double>();
        for (var m = 1; m <= Modes; m++)
        {
            for (var n = 1; n <= Modes; n++)
            {
                squares.Add(m * m + n * n * ratio * ratio);
            }
        }

        squares.Sort();
        var strip = Math.Clamp(ratio, LeastRatio, GreatestRatio);
        var (centre, mean) = Navier(strip);
        var shorter = Math.Pow(Math.Min(1, strip / ratio), 4);
        return new PlateFactors([.. squares.Take(Modes).Select(s => Math.PI * Math.PI * s)], centre * shorter, mean * shorter);
    }

    private static (double Centre, double Mean) Navier(double ratio)
    {
        double centre = 0,
            mean = 0;
        for (var m = 1; m < 2 * Terms; m += 2)
        {
            for (var n = 1; n < 2 * Terms; n += 2)
            {
                var stiffness = Math.Pow(Math.PI, 4) * Math.Pow(m * m + n * n * ratio * ratio, 2);
                var amplitude = 16 / (Math.PI * Math.PI * m * n) / stiffness;
                centre += amplitude * ((m + n) % 4 == 2 ? 1 : -1);
                mean += amplitude * 4 / (Math.PI * Math.PI * m * n);
            }
        }

        return (centre, mean);
    }

    private static PlateFactors Clamped(double ratio)
    {
        var squares = new List<double>();
        foreach (var across in (BeamBasis[])[BeamBasis.Even, BeamBasis.Odd])
        {
            foreach (var along in (BeamBasis[])[BeamBasis.Even, BeamBasis.Odd])
            {
                squares.AddRange(Stiffness(across, along, ratio).Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real));
            }
        }

        squares.Sort();
        var (centre, mean) = Deflection(ratio);
        return new PlateFactors([.. squares.Take(Modes).Select(Math.Sqrt)], centre, mean);
    }

    // Over D/a⁴, on shapes of unit mass.
    private static Matrix<double> Stiffness(BeamBasis across, BeamBasis along, double ratio)
    {
        const int Count = BeamBasis.Count;
        var square = ratio * ratio;
        return Matrix<double>.Build.Dense(
            Count * Count,
            Count * Count,
            (row, column) =>
            {
                var (i, j, k, l) = (row / Count, row % Count, column / Count, column % Count);
                var own = row == column ? across.Bending[i] + square * square * along.Bending[j] : 0;
                return 16 * (own + 2 * square * across.Slopes[i, k] * along.Slopes[j, l]);
            }
        );
    }

    private static (double Centre, double Mean) Deflection(double ratio)
    {
        const int Count = BeamBasis.Count;
        var even = BeamBasis.Even;
        var load = Vector<double>.Build.Dense(Count * Count, n => even.Integrals[n / Count] * even.Integrals[n % Count]);
        var middle = Vector<double>.Build.Dense(Count * Count, n => even.Middles[n / Count] * even.Middles[n % Count]);
        var shape = Stiffness(even, even, ratio).Cholesky().Solve(load);
        return (shape * middle, shape * load / 4);
    }
}
