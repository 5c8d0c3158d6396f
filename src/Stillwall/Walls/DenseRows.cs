using System.Numerics;
using System.Runtime.InteropServices;

namespace Stillwall.Walls;

/// <summary>A small full matrix, row by row, with the few operations that plates need.</summary>
/// <remarks>Every operation adds a multiple of one row to another, element by element: quick, and the same bits on every processor.</remarks>
internal sealed class DenseRows(int rows, int columns)
{
    private readonly double[] cells = new double[rows * columns];

    internal int Rows { get; } = rows;

    internal int Columns { get; } = columns;

    internal double this[int row, int column]
    {
        get => cells[row * Columns + column];
        set => cells[row * Columns + column] = value;
    }

    internal Span<double> Row(int row) => cells.AsSpan(row * Columns, Columns);

    /// <summary>Integrals of products of two families of functions, given by coefficients over Legendre polynomials.</summary>
    internal static DenseRows Product(DenseRows one, DenseRows other)
    {
        var result = new DenseRows(one.Rows, other.Rows);
        for (var i = 0; i < one.Rows; i++)
        {
            for (var j = 0; j < other.Rows; j++)
            {
                var sum = 0.0;
                for (var n = 0; n < one.Columns; n++)
                {
                    sum += one[i, n] * other[j, n] * 2 / (2 * n + 1);
                }

                result[i, j] = sum;
            }
        }

        return result;
    }

    /// <summary>Adds a multiple of the Kronecker product of two matrices, from a cell on.</summary>
    internal void AddKronecker(int row, int column, double factor, DenseRows one, DenseRows other)
    {
        for (var i = 0; i < one.Rows; i++)
        {
            for (var k = 0; k < one.Columns; k++)
            {
                for (var j = 0; j < other.Rows; j++)
                {
                    AddTo(Row(row + i * other.Rows + j).Slice(column + k * other.Columns, other.Columns), factor * one[i, k], other.Row(j));
                }
            }
        }
    }

    /// <summary>Adds a multiple of a matrix of the same size.</summary>
    internal void Add(double factor, DenseRows other) => AddTo(cells, factor, other.cells);

    /// <summary>Adds a multiple of a square block of a matrix, from a cell on.</summary>
    internal void AddBlock(int row, int column, double factor, DenseRows other, int otherRow, int otherColumn, int size)
    {
        for (var i = 0; i < size; i++)
        {
            AddTo(Row(row + i).Slice(column, size), factor, other.Row(otherRow + i).Slice(otherColumn, size));
        }
    }

    /// <summary>Adds AᵀB, from a cell on.</summary>
    internal void AddProduct(int row, int column, DenseRows a, DenseRows b)
    {
        for (var k = 0; k < a.Rows; k++)
        {
            for (var i = 0; i < a.Columns; i++)
            {
                AddTo(Row(row + i).Slice(column, b.Columns), a[k, i], b.Row(k));
            }
        }
    }

    /// <summary>Adds a multiple of the unit matrix.</summary>
    internal void AddUnit(double factor)
    {
        for (var i = 0; i < Rows; i++)
        {
            this[i, i] += factor;
        }
    }

    /// <summary>Adds a multiple of AᵀA.</summary>
    internal void AddSquare(double factor, DenseRows a)
    {
        for (var k = 0; k < a.Rows; k++)
        {
            for (var i = 0; i < Rows; i++)
            {
                AddTo(Row(i), factor * a[k, i], a.Row(k));
            }
        }
    }

    /// <summary>Adds a multiple of AᵀB.</summary>
    internal void AddTransposedTimes(double factor, DenseRows a, DenseRows b)
    {
        for (var k = 0; k < a.Rows; k++)
        {
            for (var i = 0; i < Rows; i++)
            {
                AddTo(Row(i), factor * a[k, i], b.Row(k));
            }
        }
    }

    /// <summary>AB.</summary>
    internal DenseRows Times(DenseRows b)
    {
        var result = new DenseRows(Rows, b.Columns);
        for (var i = 0; i < Rows; i++)
        {
            for (var k = 0; k < Columns; k++)
            {
                AddTo(result.Row(i), this[i, k], b.Row(k));
            }
        }

        return result;
    }

    /// <summary>Turns a symmetric positive matrix, of which the upper half counts, into U with UᵀU; what lies below is left as it was.</summary>
    internal void Factorise()
    {
        for (var k = 0; k < Rows; k++)
        {
            var own = Row(k)[k..];
            var scale = 1 / Math.Sqrt(own[0]);
            foreach (ref var cell in own)
            {
                cell *= scale;
            }

            for (var i = k + 1; i < Rows; i++)
            {
                AddTo(Row(i)[i..], -own[i - k], own[(i - k)..]);
            }
        }
    }

    /// <summary>Solves UᵀY = B in place of B, this being U.</summary>
    internal void SolveForward(DenseRows right)
    {
        for (var k = 0; k < Rows; k++)
        {
            Scale(right.Row(k), 1 / this[k, k]);
            for (var i = k + 1; i < Rows; i++)
            {
                AddTo(right.Row(i), -this[k, i], right.Row(k));
            }
        }
    }

    /// <summary>Solves UX = Y in place of Y, this being U.</summary>
    internal void SolveBackward(DenseRows right)
    {
        for (var k = Rows - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < Rows; j++)
            {
                AddTo(right.Row(k), -this[k, j], right.Row(j));
            }

            Scale(right.Row(k), 1 / this[k, k]);
        }
    }

    internal DenseRows Transposed()
    {
        var result = new DenseRows(Columns, Rows);
        for (var i = 0; i < Rows; i++)
        {
            for (var j = 0; j < Columns; j++)
            {
                result[j, i] = this[i, j];
            }
        }

        return result;
    }

    internal DenseRows Copy()
    {
        var result = new DenseRows(Rows, Columns);
        cells.CopyTo(result.cells.AsSpan());
        return result;
    }

    /// <summary>The cells column by column, symmetric in the mean, as the eigensolver takes them.</summary>
    internal double[] Symmetric()
    {
        var result = new double[Rows * Rows];
        for (var i = 0; i < Rows; i++)
        {
            for (var j = 0; j < Rows; j++)
            {
                result[j * Rows + i] = (this[i, j] + this[j, i]) / 2;
            }
        }

        return result;
    }

    private static void Scale(Span<double> row, double factor)
    {
        foreach (ref var cell in row)
        {
            cell *= factor;
        }
    }

    private static void AddTo(Span<double> row, double factor, ReadOnlySpan<double> other)
    {
        if (factor == 0)
        {
            return;
        }

        var wide = MemoryMarshal.Cast<double, Vector<double>>(row);
        var wideOther = MemoryMarshal.Cast<double, Vector<double>>(other);
        var times = new Vector<double>(factor);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] += times * wideOther[i];
        }

        for (var i = wide.Length * Vector<double>.Count; i < row.Length; i++)
        {
            row[i] += factor * other[i];
        }
    }
}
