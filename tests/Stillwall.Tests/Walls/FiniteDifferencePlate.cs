using MathNet.Numerics.LinearAlgebra;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

/// <summary>An even load on a thin plate of unit width by finite differences: nothing in common with the library's way.</summary>
internal static class FiniteDifferencePlate
{
    internal static (double Centre, double Mean) Solve(PanelEdges edges, double ratio, int cells)
    {
        var (h, k) = (1.0 / cells, 1.0 / (ratio * cells));
        var inner = cells - 1;
        var matrix = Matrix<double>.Build.Sparse(inner * inner, inner * inner);
        var second = (double[])[1, -2, 1];
        var fourth = (double[])[1, -4, 6, -4, 1];
        for (var i = 0; i < inner; i++)
        {
            for (var j = 0; j < inner; j++)
            {
                for (var d = -2; d <= 2; d++)
                {
                    Add(matrix, inner, edges, (i, j), (i + d, j), fourth[d + 2] / Math.Pow(h, 4));
                    Add(matrix, inner, edges, (i, j), (i, j + d), fourth[d + 2] / Math.Pow(k, 4));
                }

                for (var d = -1; d <= 1; d++)
                {
                    for (var e = -1; e <= 1; e++)
                    {
                        Add(matrix, inner, edges, (i, j), (i + d, j + e), 2 * second[d + 1] * second[e + 1] / (h * h * k * k));
                    }
                }
            }
        }

        var shape = Matrix<double>.Build.DenseOfMatrix(matrix).LU().Solve(Vector<double>.Build.Dense(inner * inner, 1));
        return (shape[inner / 2 * inner + inner / 2], shape.Sum() / (cells * cells));
    }

    // A node on the edge is at rest; one beyond it mirrors the first inside: alike where clamped, opposite where supported.
    private static void Add(Matrix<double> matrix, int inner, PanelEdges edges, (int I, int J) row, (int I, int J) column, double value)
    {
        var sign = 1.0;
        var (i, j) = column;
        foreach (var beyond in (bool[])[i < -1 || i > inner, j < -1 || j > inner])
        {
            sign *= beyond && edges == PanelEdges.Supported ? -1 : 1;
        }

        i =
            i < -1 ? 0
            : i > inner ? inner - 1
            : i;
        j =
            j < -1 ? 0
            : j > inner ? inner - 1
            : j;
        if (i >= 0 && i < inner && j >= 0 && j < inner)
        {
            matrix[row.I * inner + row.J, i * inner + j] += sign * value;
        }
    }
}
