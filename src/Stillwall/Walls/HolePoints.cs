using MathNet.Numerics.Integration;
using static Stillwall.Walls.EdgePolynomials;

namespace Stillwall.Walls;

/// <summary>What a plate loses by a round hole in its middle, and what stands on the rim: functions that are even in both directions, at points of a quarter.</summary>
/// <remarks>Every row is weighted by the root of its share of the area, so that sums of squares are integrals over the hole on −1 … 1.</remarks>
internal sealed class HolePoints
{
    private const int Order = 8;
    private const int Size = Count * Count;

    private readonly DenseRows curveX, curveY, curveXY, slantX, slantY, slopeX, slopeY, values;
    private readonly double[] rim;

    internal HolePoints(RoundHole hole, double scaleX, double scaleY, Func<int, EdgePolynomials> turning)
    {
        var (radii, angles) = (new GaussLegendreRule(0, hole.RadiusM, Order), new GaussLegendreRule(0, Math.PI / 2, Order));
        DenseRows Rows(int columns) => new(Order * Order, columns);
        (curveX, curveY, curveXY, slantX, slantY) = (Rows(2 * Size), Rows(2 * Size), Rows(2 * Size), Rows(2 * Size), Rows(2 * Size));
        (slopeX, slopeY, values) = (Rows(Size), Rows(Size), Rows(Size));
        rim = new double[Size];
        Push = new double[Size];
        var (w, even, odd) = (Held(0), turning(0), turning(1));
        for (var k = 0; k < Order * Order; k++)
        {
            var (radius, angle) = (radii.GetAbscissa(k / Order), angles.GetAbscissa(k % Order));
            var share = 4 * radius * radii.GetWeight(k / Order) * angles.GetWeight(k % Order) * scaleX * scaleY;
            var (x, y, root) = (radius * Math.Cos(angle) * scaleX, radius * Math.Sin(angle) * scaleY, Math.Sqrt(share));
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
                Push[i] -= share * wx[i / Count] * wy[i % Count];
            }
        }

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

        var area = Math.PI * hole.RadiusM * hole.RadiusM * scaleX * scaleY;
        for (var i = 0; i < Size; i++)
        {
            Push[i] += area * rim[i];
        }
    }

    /// <summary>What the load of an even pressure gains: none within the hole, all of that on the rim.</summary>
    internal double[] Push { get; }

    /// <summary>Rows whose squares are the mass on the rim.</summary>
    internal DenseRows RimMass { get; }

    /// <summary>Takes the hole out of the stiffness against turning, of its coupling and of the stiffness against slope.</summary>
    internal void TakeFrom(DenseRows turning, DenseRows follow, DenseRows bends, BendingStiffness own)
    {
        var (both, shear) = (curveX.Copy(), -own.ShearNPerM);
        for (var k = 0; k < both.Rows; k++)
        {
            for (var i = Size; i < 2 * Size; i++)
            {
                both[k, i] = curveY[k, i];
            }
        }

        turning.AddSquare(own.ContractionNm - own.StiffnessNm, curveX);
        turning.AddSquare(own.ContractionNm - own.StiffnessNm, curveY);
        turning.AddSquare(-own.ContractionNm, both);
        turning.AddSquare((own.ContractionNm - own.StiffnessNm) / 2, curveXY);
        turning.AddSquare(shear, slantX);
        turning.AddSquare(shear, slantY);
        follow.AddTransposedTimes(shear, slantX, slopeX);
        follow.AddTransposedTimes(shear, slantY, slopeY);
        bends.AddSquare(shear, slopeX);
        bends.AddSquare(shear, slopeY);
    }

    /// <summary>Takes the hole out of the mass, and puts on what stands on the rim.</summary>
    internal void ChangeMass(DenseRows mass, DenseRows follow, double massKgM2, double rotaryKg)
    {
        mass.AddSquare(-massKgM2, values);
        mass.AddSquare(-rotaryKg, slantX.Times(follow));
        mass.AddSquare(-rotaryKg, slantY.Times(follow));
        mass.AddSquare(1, RimMass);
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
