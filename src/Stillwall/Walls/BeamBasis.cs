using MathNet.Numerics.LinearAlgebra;

namespace Stillwall.Walls;

/// <summary>Polynomials on −1 … 1 that vanish with their slope at both ends, turned into the shapes of a clamped beam.</summary>
/// <remarks>
/// φₖ with φₖ″ = Pₖ (Legendre), k ≥ 2, is the boundary factor (1 − x²)² times a polynomial of degree k − 2, and its integrals are closed forms in the
/// orthogonality of the Pₖ. The combinations that make ∫φφ the unit matrix and ∫φ″φ″ diagonal are taken as basis: a plate's matrix is then nearly diagonal.
/// </remarks>
internal sealed class BeamBasis
{
    internal const int Count = 6;

    private BeamBasis(int parity)
    {
        var mass = Matrix<double>.Build.Dense(Count, Count);
        var slope = Matrix<double>.Build.Dense(Count, Count);
        for (var i = 0; i < Count; i++)
        {
            for (var j = Math.Max(0, i - 2); j <= Math.Min(Count - 1, i + 2); j++)
            {
                mass[i, j] = Product(Value(Degree(i, parity)), Value(Degree(j, parity)));
                slope[i, j] = Product(Slope(Degree(i, parity)), Slope(Degree(j, parity)));
            }
        }

        var evd = mass.Evd(Symmetricity.Symmetric);
        var turn = evd.EigenVectors * Matrix<double>.Build.DenseOfDiagonalVector(evd.EigenValues.Map(v => 1 / Math.Sqrt(v.Real)));
        Bending = [.. evd.EigenValues.Select(v => 1 / v.Real)];
        Slopes = turn.TransposeThisAndMultiply(slope) * turn;
        Integrals = turn.TransposeThisAndMultiply(Vector<double>.Build.Dense(Count, i => IntegralOf(Degree(i, parity))));
        Middles = turn.TransposeThisAndMultiply(Vector<double>.Build.Dense(Count, i => MiddleOf(Degree(i, parity))));
    }

    internal static BeamBasis Even { get; } = new(0);

    internal static BeamBasis Odd { get; } = new(1);

    /// <summary>∫φ″φ″, diagonal.</summary>
    internal IReadOnlyList<double> Bending { get; }

    /// <summary>∫φ′φ′.</summary>
    internal Matrix<double> Slopes { get; }

    /// <summary>∫φ.</summary>
    internal Vector<double> Integrals { get; }

    /// <summary>φ(0).</summary>
    internal Vector<double> Middles { get; }

    private static int Degree(int index, int parity) => 2 + parity + 2 * index;

    private static double Scale(int k) => Math.Sqrt((2 * k + 1) / 2.0);

    // Coefficients over Legendre polynomials: (degree, coefficient).
    private static (int Degree, double Value)[] Value(int k)
    {
        var (below, above) = (1.0 / ((2 * k + 1) * (2 * k - 1)), 1.0 / ((2 * k + 1) * (2 * k + 3)));
        return [(k - 2, Scale(k) * below), (k, -Scale(k) * (below + above)), (k + 2, Scale(k) * above)];
    }

    private static (int Degree, double Value)[] Slope(int k) => [(k - 1, -Scale(k) / (2 * k + 1)), (k + 1, Scale(k) / (2 * k + 1))];

    private static double Product((int Degree, double Value)[] one, (int Degree, double Value)[] other)
    {
        var sum = 0.0;
        foreach (var (degree, value) in one)
        {
            sum += value * other.Where(o => o.Degree == degree).Sum(o => o.Value) * 2 / (2 * degree + 1);
        }

        return sum;
    }

    private static double IntegralOf(int k) => 2 * Value(k).Where(v => v.Degree == 0).Sum(v => v.Value);

    private static double MiddleOf(int k) => Value(k).Sum(v => v.Value * LegendreAtZero(v.Degree));

    private static double LegendreAtZero(int degree)
    {
        if (degree % 2 == 1)
        {
            return 0;
        }

        var value = 1.0;
        for (var n = 2; n <= degree; n += 2)
        {
            value *= -(n - 1) / (double)n;
        }

        return value;
    }
}
