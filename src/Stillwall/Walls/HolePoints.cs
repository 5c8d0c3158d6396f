using MathNet.Numerics.Integration;
using static Stillwall.Walls.EdgePolynomials;

namespace Stillwall.Walls;

/// <summary>What a round hole leaves of a plate, and what stands on its rim: functions that are even in both directions, at points of a quarter.</summary>
/// <remarks>
/// Every row of points is weighted by the root of its share of the area, so that sums of squares are integrals over what is left, on −1 … 1. They are
/// taken once for all states of a wall. A ten-thousandth of its stiffness, and far less of its mass, stays on every shape: those that move the hole
/// alone then neither make the matrices singular nor ring low.
/// </remarks>
internal sealed class HolePoints
{
    private const int Order = 8,
        Points = 2 * Order * Order;
    private const double Ghost = 1e-4,
        GhostMass = 1e-8;
    private const int Size = Count * Count;

    private readonly DenseRows bend = new(2 * Size, 2 * Size),
        twist = new(2 * Size, 2 * Size),
        slant = new(2 * Size, 2 * Size),
        meet = new(2 * Size, Size),
        slopes = new(Size, Size),
        masses = new(Size, Size);
    private readonly double[] rim;

    internal HolePoints(RoundHole hole, double scaleX, double scaleY, Func<int, EdgePolynomials> turning)
    {
        rim = new double[Size];
        Push = new double[Size];
        var w = Held(0);
        AddIntegrals(hole.RadiusM, scaleX, scaleY, w, turning(0), turning(1));
        var angles = new GaussLegendreRule(0, Math.PI / 2, Order);
        var (rimMass, turn) = (hole.RimMassKg * scaleX * scaleY, 2 / Math.PI);
        RimMass = new DenseRows(Order, Size);
        for (var k = 0; k < Order; k++)
        {
            var (x, y) = (hole.RimRadiusM * Math.Cos(angles.GetAbscissa(k)) * scaleX, hole.RimRadiusM * Math.Sin(angles.GetAbscissa(k)) * scaleY);
            var share = angles.GetWeight(k) * turn;
            Fill(RimMass, k, Math.Sqrt(share * rimMass), w.ValuesAt(x), w.ValuesAt(y));
            for (var i = 0; i < Size; i++)
            {
                rim[i] += share * w.ValuesAt(x)[i / Count] * w.ValuesAt(y)[i % Count];
            }
        }

        ConePush = [.. rim.Select(r => r * hole.ConeM2 * scaleX * scaleY)];
        var area = Math.PI * hole.RadiusM * hole.RadiusM * scaleX * scaleY;
        for (var i = 0; i < Size; i++)
        {
            Push[i] += area * rim[i];
        }
    }

    /// <summary>The load of an even pressure: what meets the hole pushes on the rim.</summary>
    internal double[] Push { get; }

    /// <summary>The load of an even pressure on the cone, which pushes on the rim.</summary>
    internal double[] ConePush { get; }

    /// <summary>Rows whose squares are the mass on the rim.</summary>
    internal DenseRows RimMass { get; }

    /// <summary>Adds what is left: stiffness against turning, of which the upper half counts, its coupling, stiffness against slope.</summary>
    internal void AddStiffness(DenseRows turning, DenseRows follow, DenseRows bends, BendingStiffness own, double scale)
    {
        turning.AddUnit(Ghost * own.StiffnessNm * scale);
        turning.AddBlock(row: 0, column: 0, factor: own.StiffnessNm, other: bend, otherRow: 0, otherColumn: 0, size: Size);
        turning.AddBlock(row: Size, column: Size, factor: own.StiffnessNm, other: bend, otherRow: Size, otherColumn: Size, size: Size);
        turning.AddBlock(row: 0, column: Size, factor: own.ContractionNm, other: bend, otherRow: 0, otherColumn: Size, size: Size);
        turning.Add((own.StiffnessNm - own.ContractionNm) / 2, twist);
        turning.Add(own.ShearNPerM, slant);
        follow.Add(own.ShearNPerM, meet);
        bends.AddUnit(Ghost * own.StiffnessNm * scale * scale);
        bends.Add(own.ShearNPerM, slopes);
    }

    /// <summary>Adds the mass of what is left, and of what stands on the rim.</summary>
    internal void AddMass(DenseRows mass, DenseRows follow, double massKgM2, double rotaryKg)
    {
        mass.AddUnit(GhostMass * massKgM2);
        mass.Add(massKgM2, masses);
        mass.AddTransposedTimes(rotaryKg, follow, slant.Times(follow));
        mass.AddSquare(1, RimMass);
    }

    // Integrals over what is left of the products of curvatures, twists, slants and slopes: the deflection is even both ways, the rotation along x
    // odd along x, that along y odd along y.
    private void AddIntegrals(double radiusM, double scaleX, double scaleY, EdgePolynomials w, EdgePolynomials even, EdgePolynomials odd)
    {
        DenseRows Rows() => new(Points, Size);
        var (curveX, curveY, twistX, twistY, slantX, slantY) = (Rows(), Rows(), Rows(), Rows(), Rows(), Rows());
        var (slopeX, slopeY, values) = (Rows(), Rows(), Rows());
        foreach (var (k, (x, y, share)) in Left(radiusM, scaleX, scaleY).Index())
        {
            var root = Math.Sqrt(share);
            var (wx, wy) = (w.ValuesAt(x), w.ValuesAt(y));
            var (ax, ay, bx, by) = (odd.ValuesAt(x), even.ValuesAt(y), even.ValuesAt(x), odd.ValuesAt(y));
            Fill(slopeX, k, root * scaleX, w.SlopesAt(x), wy);
            Fill(slopeY, k, root * scaleY, wx, w.SlopesAt(y));
            Fill(values, k, root, wx, wy);
            Fill(slantX, k, root, ax, ay);
            Fill(slantY, k, root, bx, by);
            Fill(curveX, k, root * scaleX, odd.SlopesAt(x), ay);
            Fill(curveY, k, root * scaleY, bx, odd.SlopesAt(y));
            Fill(twistX, k, root * scaleY, ax, even.SlopesAt(y));
            Fill(twistY, k, root * scaleX, even.SlopesAt(x), by);
            for (var i = 0; i < Size; i++)
            {
                Push[i] += share * wx[i / Count] * wy[i % Count];
            }
        }

        foreach (var (sums, alongX, alongY) in new[] { (bend, curveX, curveY), (twist, twistX, twistY) })
        {
            sums.AddProduct(0, 0, alongX, alongX);
            sums.AddProduct(0, Size, alongX, alongY);
            sums.AddProduct(Size, Size, alongY, alongY);
        }

        slant.AddProduct(0, 0, slantX, slantX);
        slant.AddProduct(Size, Size, slantY, slantY);
        meet.AddProduct(0, 0, slantX, slopeX);
        meet.AddProduct(Size, 0, slantY, slopeY);
        slopes.AddProduct(0, 0, slopeX, slopeX);
        slopes.AddProduct(0, 0, slopeY, slopeY);
        masses.AddProduct(0, 0, values, values);
    }

    // Points along rays from the hole to the edge, the rays on either side of the corner's, each with its share of the area.
    private static IEnumerable<(double X, double Y, double Share)> Left(double radiusM, double scaleX, double scaleY)
    {
        var corner = Math.Atan2(scaleX, scaleY);
        foreach (var (from, to) in ((double, double)[])[(0, corner), (corner, Math.PI / 2)])
        {
            var angles = new GaussLegendreRule(from, to, Order);
            for (var i = 0; i < Order; i++)
            {
                var (cos, sin) = (Math.Cos(angles.GetAbscissa(i)) * scaleX, Math.Sin(angles.GetAbscissa(i)) * scaleY);
                var radii = new GaussLegendreRule(radiusM, 1 / Math.Max(cos, sin), Order);
                for (var j = 0; j < Order; j++)
                {
                    var radius = radii.GetAbscissa(j);
                    yield return (radius * cos, radius * sin, 4 * radius * radii.GetWeight(j) * angles.GetWeight(i) * scaleX * scaleY);
                }
            }
        }
    }

    private static void Fill(DenseRows rows, int row, double factor, double[] alongX, double[] alongY)
    {
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                rows[row, i * Count + j] = factor * alongX[i] * alongY[j];
            }
        }
    }
}
