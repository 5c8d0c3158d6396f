using System.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>
/// The sum over all modes of ε ψ(seat) ψ(source)/(V (k_n² − k²)). Two indices are summed; the third, along the axis on which source and seat are
/// farthest apart, is closed: Σ ε cos(nπx/L) cos(nπx₀/L)/((nπ/L)² + γ²) = L cosh γx₁ cosh γ(L−x₂)/(γ sinh γL) with x₁ ≤ x₂.
/// Each term then falls as e^(−γ(x₂−x₁)). It rests on the cosine series Gradshteyn and Ryzhik 1.445.2 (from memory); the tests sum the modes plainly.
/// </summary>
internal sealed class SeatSum
{
    // A term that is smaller than e^-18 of its neighbours is left out.
    private const double FallOff = 18;

    // Cone and seat count as at least this far apart, and a hundredth of a hall's mean side (our choice: the cone is no point), so that the sum is
    // finite everywhere.
    private const double LeastSeparationM = 0.2;
    private const double LeastShare = 0.01;

    // Terms far above the highest wave number change so smoothly with k² that a polynomial through seven points of k² holds their sum to 1e-5 of itself.
    private const int Nodes = 7;

    private readonly double size;
    private readonly double near;
    private readonly double far;
    private readonly double reach;
    private readonly (double Squared, double Weight)[] terms;
    private readonly double[] nodes;
    private readonly double[] tails;

    public SeatSum(RoomGeometry room, double highest)
    {
        var (sizes, source, seat) = (room.SizesM, room.Cabinet.CoordinatesM, room.Seat.CoordinatesM);
        var axis = Enumerable.Range(0, 3).MaxBy(i => Math.Abs(source[i] - seat[i]));
        var (second, third) = ((axis + 1) % 3, (axis + 2) % 3);
        size = sizes[axis];
        (near, far) = Apart(
            Math.Min(source[axis], seat[axis]),
            Math.Max(source[axis], seat[axis]),
            size,
            Math.Max(LeastSeparationM, LeastShare * Math.Cbrt(room.VolumeM3))
        );

        reach = FallOff / (far - near) * (FallOff / (far - near));
        var limit = (highest * highest) + reach;
        var alone = 2 * highest * highest;
        terms =
        [
            .. Transverse(
                    sizeA: sizes[second],
                    sourceA: source[second],
                    seatA: seat[second],
                    sizeB: sizes[third],
                    sourceB: source[third],
                    seatB: seat[third],
                    from: 0,
                    to: Math.Min(limit, alone)
                )
                .OrderBy(term => term.Squared),
        ];
        nodes = [.. Enumerable.Range(0, Nodes).Select(i => highest * highest / 2 * (1 - Math.Cos(Math.PI * (i + 0.5) / Nodes)))];
        tails = new double[Nodes];
        foreach (
            var (squared, weight) in Transverse(
                sizeA: sizes[second],
                sourceA: source[second],
                seatA: seat[second],
                sizeB: sizes[third],
                sourceB: source[third],
                seatB: seat[third],
                from: Math.Min(limit, alone),
                to: limit
            )
        )
        {
            for (var i = 0; i < Nodes; i++)
            {
                tails[i] += weight * Closed(Math.Sqrt(squared - nodes[i]));
            }
        }
    }

    /// <summary>The sum at a squared wave number, 1/m.</summary>
    public Complex At(Complex kSquared)
    {
        var sum = Tail(kSquared);
        foreach (var (squared, weight) in terms)
        {
            if (squared - kSquared.Real > reach)
            {
                break;
            }

            sum += weight * Closed(Complex.Sqrt(squared - kSquared));
        }

        return sum;
    }

    private static (double Near, double Far) Apart(double near, double far, double size, double least)
    {
        var missing = Math.Min(least, size / 2) - (far - near);
        if (missing <= 0)
        {
            return (near, far);
        }

        // Widened to both sides alike, so that source and seat may still be swapped.
        var shift = Math.Clamp(0, (missing / 2) - near, size - far - (missing / 2));
        return (near - (missing / 2) + shift, far + (missing / 2) + shift);
    }

    private static IEnumerable<(double Squared, double Weight)> Transverse(
        double sizeA,
        double sourceA,
        double seatA,
        double sizeB,
        double sourceB,
        double seatB,
        double from,
        double to
    )
    {
        for (var a = 0; Square(a, sizeA) < to; a++)
        {
            var along = Weight(a, sizeA, sourceA, seatA);
            var left = Square(a, sizeA);
            var first = left >= from ? 0 : (int)Math.Ceiling(Math.Sqrt(from - left) * sizeB / Math.PI);
            for (var b = first; left + Square(b, sizeB) < to; b++)
            {
                if (left + Square(b, sizeB) >= from)
                {
                    yield return (left + Square(b, sizeB), along * Weight(b, sizeB, sourceB, seatB));
                }
            }
        }
    }

    private static double Square(int index, double size) => index * Math.PI / size * (index * Math.PI / size);

    private static double Weight(int index, double size, double source, double seat) =>
        (index == 0 ? 1 : 2) * Math.Cos(index * Math.PI * source / size) * Math.Cos(index * Math.PI * seat / size) / size;

    // The closed sum over L; written in falling exponentials, which cannot overflow.
    private Complex Closed(Complex gamma) =>
        Complex.Exp(-gamma * (far - near))
        * (1 + Complex.Exp(-2 * gamma * near))
        * (1 + Complex.Exp(-2 * gamma * (size - far)))
        / (2 * gamma * (1 - Complex.Exp(-2 * gamma * size)));

    private double Closed(double gamma) =>
        Math.Exp(-gamma * (far - near))
        * (1 + Math.Exp(-2 * gamma * near))
        * (1 + Math.Exp(-2 * gamma * (size - far)))
        / (2 * gamma * (1 - Math.Exp(-2 * gamma * size)));

    private Complex Tail(Complex kSquared)
    {
        var sum = Complex.Zero;
        for (var i = 0; i < Nodes; i++)
        {
            var basis = Complex.One;
            for (var j = 0; j < Nodes; j++)
            {
                basis *= j == i ? 1 : (kSquared - nodes[j]) / (nodes[i] - nodes[j]);
            }

            sum += tails[i] * basis;
        }

        return sum;
    }
}
