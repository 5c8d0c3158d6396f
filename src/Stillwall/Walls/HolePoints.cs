using MathNet.Numerics.Integration;
using static Stillwall.Walls.EdgePolynomials;

namespace Stillwall.Walls;

/// <summary>What a round hole leaves of a plate, and what stands on its rim: functions that are even in both directions, at points of a quarter.</summary>
/// <remarks>
/// Every row is weighted by the root of its share of the area, so that sums of squares are integrals over what is left, on −1 … 1, and energies cannot be negative.
/// A ten-thousandth of its stiffness, and far less of its mass, stays on every shape: those that move the hole alone then neither make the matrices singular nor ring low.
/// </remarks>
internal sealed class HolePoints
{
    private const int Order = 8, Points = 2 * Order * Order;
    private const double Ghost = 1e-4, GhostMass = 1e-8;
    private const int Size = Count * Count;

    private readonly DenseRows curveX, curveY, curveXY, slantX, slantY, slopeX, slopeY, values;
    private readonly double[] rim;

    internal HolePoints(RoundHole hole, double scaleX, double scaleY, Func<int, EdgePolynomials> turning)
    {
        DenseRows Rows(int columns) => new(Points, columns);
        (curveX, curveY, curveXY, slantX, slantY) = (Rows(2 * Size), Rows(2 * Size), Rows(2 * Size), Rows(2 * Size), Rows(2 * Size));
        (slopeX, slopeY, values) = (Rows(Size), Rows(Size), Rows(Size));
        rim = new double[Size];
        Push = new double[Size];
        var (w, even, odd) = (Held(0), turning(0), turning(1));
        foreach (var (k, (x, y, share)) in Left(hole.RadiusM, scaleX, scaleY).Index())
        {
            var root = Math.Sqrt(share);
            var (wx, wy, wxSlope, wySlope) = (w.ValuesAt(x), w.ValuesAt(y), w.SlopesAt(x), w.SlopesAt(y));
            Fill(slopeX, k, 0, root * scaleX, wxSlope, wy);
            Fill(slopeY, k, 0, root * scaleY, wx, wySlope);
            Fill(values, k, 0, root, wx, wy);
            var (ax, ay, bx, by) = (odd.ValuesAt(x), even.ValuesAt(y), even.ValuesAt(x), odd.ValuesAt(y));
            Fill(slantX, k, 0, root, ax, ay);
            Fill(slantY, k, Size, root, bx, by);
            Fill(curveX, k, 0, root * scaleX, odd.SlopesAt(x), ay);
            Fill(curveY, k, Size, root * scaleY, bx, odd.SlopesAt(y));
            Fill(curveXY, k, 0, root * scaleY, ax, even.SlopesAt(y));
            Fill(curveXY, k, Size, root * scaleX, even.SlopesAt(x), by);
            for (var i = 0; i < Size; i++)
            {
                Push[i] += share * wx[i / Count] * wy[i % Count];
            }
        }

        var angles = new GaussLegendreRule(0, Math.PI / 2, Order);
        var (rimMass, turn) = (hole.RimMassKg * scaleX * scaleY, 2 / Math.PI);
        RimMass = new DenseRows(Order, Size);
        for (var k = 0; k < Order; k++)
        {
            var (x, y) = (hole.RimRadiusM * Math.Cos(angles.GetAbscissa(k)) * scaleX, hole.RimRadiusM * Math.Sin(angles.GetAbscissa(k)) * scaleY);
            var share = angles.GetWeight(k) * turn;
            Fill(RimMass, k, 0, Math.Sqrt(share * rimMass), w.ValuesAt(x), w.ValuesAt(y));
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

    /// <summary>Adds what is left: stiffness against turning, its coupling, stiffness against slope.</summary>
    internal void AddStiffness(DenseRows turning, DenseRows follow, DenseRows bends, BendingStiffness own, double scale)
    {
        var both = curveX.Copy();
        for (var k = 0; k < Points; k++)
        {
            curveY.Row(k)[Size..].CopyTo(both.Row(k)[Size..]);
        }

        turning.AddUnit(Ghost * own.StiffnessNm * scale);
        turning.AddSquare(own.StiffnessNm - own.ContractionNm, curveX);
        turning.AddSquare(own.StiffnessNm - own.ContractionNm, curveY);
        turning.AddSquare(own.ContractionNm, both);
        turning.AddSquare((own.StiffnessNm - own.ContractionNm) / 2, curveXY);
        turning.AddSquare(own.ShearNPerM, slantX);
        turning.AddSquare(own.ShearNPerM, slantY);
        follow.AddTransposedTimes(own.ShearNPerM, slantX, slopeX);
        follow.AddTransposedTimes(own.ShearNPerM, slantY, slopeY);
        bends.AddUnit(Ghost * own.StiffnessNm * scale * scale);
        bends.AddSquare(own.ShearNPerM, slopeX);
        bends.AddSquare(own.ShearNPerM, slopeY);
    }

    /// <summary>Adds the mass of what is left, and of what stands on the rim.</summary>
    internal void AddMass(DenseRows mass, DenseRows follow, double massKgM2, double rotaryKg)
    {
        mass.AddUnit(GhostMass * massKgM2);
        mass.AddSquare(massKgM2, values);
        mass.AddSquare(rotaryKg, slantX.Times(follow));
        mass.AddSquare(rotaryKg, slantY.Times(follow));
        mass.AddSquare(1, RimMass);
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

    private static void Fill(DenseRows rows, int row, int from, double factor, double[] alongX, double[] alongY)
    {
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                rows[row, from + i * Count + j] = factor * alongX[i] * alongY[j];
            }
        }
    }
}
