using System.Numerics;
using MathNet.Numerics.IntegralTransforms;

namespace Stillwall.Numerics;

/// <summary>Discrete Fourier transforms of real signals, without scaling forward and with 1/n backward.</summary>
/// <remarks>Source: MathNet.Numerics does the work; two real signals in one complex transform: our own algebra.</remarks>
internal static class FourierTransform
{
    /// <summary>The next power of two.</summary>
    /// <param name="count">A count, 1 to 2^30.</param>
    public static int PowerOfTwo(int count)
    {
        Require.Within(count, 1, 1 << 30, nameof(count));
        return (int)BitOperations.RoundUpToPowerOf2((uint)count);
    }

    /// <summary>Transforms two real signals at once.</summary>
    /// <param name="length">Length of the transform, a power of two, not below either signal's.</param>
    /// <returns>The lower half of each spectrum, from 0 to the middle, length/2 + 1 values.</returns>
    public static (Complex[] One, Complex[] Two) Pair(ReadOnlySpan<double> one, ReadOnlySpan<double> two, int length)
    {
        Require.Within(length, Math.Max(one.Length, two.Length), 1 << 30, nameof(length));
        var packed = new Complex[length];
        for (var i = 0; i < length; i++)
        {
            packed[i] = new Complex(i < one.Length ? one[i] : 0, i < two.Length ? two[i] : 0);
        }

        Fourier.Forward(packed, FourierOptions.NoScaling);
        var (first, second) = (new Complex[(length / 2) + 1], new Complex[(length / 2) + 1]);
        for (var k = 0; k < first.Length; k++)
        {
            var (a, b) = (packed[k], Complex.Conjugate(packed[k == 0 ? 0 : length - k]));
            first[k] = (a + b) / 2;
            second[k] = (a - b) / new Complex(0, 2);
        }

        return (first, second);
    }

    /// <summary>The real signal of a spectrum.</summary>
    /// <returns>The signal, 2·(count − 1) samples.</returns>
    public static double[] Signal(IReadOnlyList<Complex> half)
    {
        ArgumentNullException.ThrowIfNull(half);
        Require.Within(half.Count, 2, 1 << 29, nameof(half), "values");
        // Even and odd samples as real and imaginary parts of one transform of half the length.
        var n = half.Count - 1;
        var packed = new Complex[n];
        for (var k = 0; k < n; k++)
        {
            var (low, high) = (half[k], Complex.Conjugate(half[n - k]));
            var odd = (low - high) * Complex.FromPolarCoordinates(1, Math.PI * k / n);
            packed[k] = (low + high + Complex.ImaginaryOne * odd) / 2;
        }

        Fourier.Inverse(packed, FourierOptions.AsymmetricScaling);
        var signal = new double[2 * n];
        for (var i = 0; i < n; i++)
        {
            (signal[2 * i], signal[2 * i + 1]) = (packed[i].Real, packed[i].Imaginary);
        }

        return signal;
    }
}
