namespace Stillwall.Walls;

/// <summary>Orthonormal polynomials of one parity on −1 … 1, held as coefficients over Legendre polynomials, so that every integral is a sum.</summary>
/// <remarks>Held: (1 − x²) times a polynomial, from Pₖ − Pₖ₋₂, k ≥ 2, made orthonormal. Free: Pₖ, orthonormal as they are.</remarks>
internal sealed class EdgePolynomials
{
    internal const int Count = 6;
    private const int Length = 2 * Count + 2;

    private static readonly EdgePolynomials[] HeldByParity = [MakeHeld(0), MakeHeld(1)];
    private static readonly EdgePolynomials[] FreeByParity = [MakeFree(0), MakeFree(1)];

    private EdgePolynomials(DenseRows values, DenseRows slopes)
    {
        (Values, Slopes) = (values, slopes);
        Integrals = [.. Enumerable.Range(0, Count).Select(i => 2 * values[i, 0])];
        Middles = [.. Enumerable.Range(0, Count).Select(i => Enumerable.Range(0, Length).Sum(n => values[i, n] * LegendreAtZero(n)))];
    }

    /// <summary>Coefficients of the polynomials, one row each.</summary>
    internal DenseRows Values { get; }

    /// <summary>Coefficients of their slopes.</summary>
    internal DenseRows Slopes { get; }

    /// <summary>Integrals over −1 … 1.</summary>
    internal IReadOnlyList<double> Integrals { get; }

    /// <summary>Values at 0.</summary>
    internal IReadOnlyList<double> Middles { get; }

    /// <summary>Polynomials that vanish at both ends; parity 0 is even, 1 odd.</summary>
    internal static EdgePolynomials Held(int parity) => HeldByParity[parity];

    /// <summary>Polynomials without a condition at the ends; parity 0 is even, 1 odd.</summary>
    internal static EdgePolynomials Free(int parity) => FreeByParity[parity];

    /// <summary>The polynomials at one place, −1 … 1.</summary>
    internal double[] ValuesAt(double place) => At(Values, place);

    /// <summary>Their slopes at one place, −1 … 1.</summary>
    internal double[] SlopesAt(double place) => At(Slopes, place);

    /// <summary>Products of the polynomials' values at one place, −1 … 1.</summary>
    internal DenseRows Squares(double place)
    {
        var (values, result) = (ValuesAt(place), new DenseRows(Count, Count));
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                result[i, j] = values[i] * values[j];
            }
        }

        return result;
    }

    private static double[] At(DenseRows rows, double place)
    {
        Span<double> legendre = stackalloc double[Length];
        (legendre[0], legendre[1]) = (1, place);
        for (var n = 1; n + 1 < Length; n++)
        {
            legendre[n + 1] = ((2 * n + 1) * place * legendre[n] - n * legendre[n - 1]) / (n + 1);
        }

        var values = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            for (var n = 0; n < Length; n++)
            {
                values[i] += rows[i, n] * legendre[n];
            }
        }

        return values;
    }

    private static EdgePolynomials MakeHeld(int parity)
    {
        var (values, slopes) = (new DenseRows(Count, Length), new DenseRows(Count, Length));
        for (var i = 0; i < Count; i++)
        {
            var k = 2 + parity + 2 * i;
            (values[i, k], values[i, k - 2], slopes[i, k - 1]) = (1, -1, 2 * k - 1);
        }

        var mass = DenseRows.Product(values, values);
        mass.Factorise();
        mass.SolveForward(values);
        mass.SolveForward(slopes);
        return new EdgePolynomials(values, slopes);
    }

    private static EdgePolynomials MakeFree(int parity)
    {
        var (values, slopes) = (new DenseRows(Count, Length), new DenseRows(Count, Length));
        for (var i = 0; i < Count; i++)
        {
            var k = parity + 2 * i;
            var scale = Math.Sqrt((2 * k + 1) / 2.0);
            values[i, k] = scale;
            for (var j = k - 1; j >= 0; j -= 2)
            {
                slopes[i, j] = (2 * j + 1) * scale;
            }
        }

        return new EdgePolynomials(values, slopes);
    }

    private static double LegendreAtZero(int degree)
    {
        var value = degree % 2 == 0 ? 1.0 : 0;
        for (var n = 2; n <= degree; n += 2)
        {
            value *= -(n - 1) / (double)n;
        }

        return value;
    }
}
