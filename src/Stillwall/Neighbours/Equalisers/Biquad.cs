using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>One digital second-order section, H(z) = (b0 + b1 z⁻¹ + b2 z⁻²)/(1 + a1 z⁻¹ + a2 z⁻²).</summary>
public sealed record Biquad
{
    private Biquad(double rateHz, double b0, double b1, double b2, double a0, double a1, double a2) =>
        (RateHz, B, A) = (rateHz, [b0 / a0, b1 / a0, b2 / a0], [1, a1 / a0, a2 / a0]);

    /// <summary>Sampling rate the coefficients are for, Hz.</summary>
    public double RateHz { get; }

    /// <summary>Numerator in powers of z⁻¹.</summary>
    public IReadOnlyList<double> B { get; }

    /// <summary>Denominator in powers of z⁻¹; the first is 1.</summary>
    public IReadOnlyList<double> A { get; }

    /// <summary>Second-order high-pass.</summary>
    /// <param name="f0Hz">Corner, above 0 Hz and below half the rate.</param>
    /// <param name="q">Q, above 0.</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, prewarped at f0. Validity: double precision, f0 down to 1e-5 of the rate. Source: W3C 2021, HPF.
    /// Accuracy: 0.001 dB of SciPy.
    /// </remarks>
    public static Biquad HighPass(double f0Hz, double q, double rateHz)
    {
        var (cosine, alpha) = Angle(f0Hz, q, rateHz);
        return new(rateHz: rateHz, b0: (1 + cosine) / 2, b1: -(1 + cosine), b2: (1 + cosine) / 2, a0: 1 + alpha, a1: -2 * cosine, a2: 1 - alpha);
    }

    /// <summary>Second-order low-pass.</summary>
    /// <param name="f0Hz">Corner, above 0 Hz and below half the rate.</param>
    /// <param name="q">Q, above 0.</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, prewarped at f0. Validity: double precision, f0 down to 1e-5 of the rate. Source: W3C 2021, LPF.
    /// Accuracy: 0.001 dB of SciPy.
    /// </remarks>
    public static Biquad LowPass(double f0Hz, double q, double rateHz)
    {
        var (cosine, alpha) = Angle(f0Hz, q, rateHz);

        // 1 − cos ω0 as 2 sin²(ω0/2): at low corners the difference of two numbers near 1 would lose digits.
        var half = Math.Sin(Math.PI * f0Hz / rateHz);
        return new(rateHz: rateHz, b0: half * half, b1: 2 * half * half, b2: half * half, a0: 1 + alpha, a1: -2 * cosine, a2: 1 - alpha);
    }

    /// <summary>Peak or dip.</summary>
    /// <param name="f0Hz">Middle, above 0 Hz and below half the rate.</param>
    /// <param name="gainDb">Gain in the middle, −60 to 60 dB.</param>
    /// <param name="q">Q, above 0, in the cookbook's sense: the poles have A·Q with A = 10^(gain/40).</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, prewarped at f0. Validity: double precision, f0 down to 1e-5 of the rate. Source: W3C 2021, peakingEQ. Accuracy: 0.001 dB of
    /// SciPy.
    /// </remarks>
    public static Biquad Peaking(double f0Hz, double gainDb, double q, double rateHz)
    {
        var (cosine, alpha) = Angle(f0Hz, q, rateHz);
        var a = Amplitude(gainDb);
        return new(rateHz: rateHz, b0: 1 + (alpha * a), b1: -2 * cosine, b2: 1 - (alpha * a), a0: 1 + (alpha / a), a1: -2 * cosine, a2: 1 - (alpha / a));
    }

    /// <summary>Shelf below a frequency.</summary>
    /// <param name="f0Hz">Middle of the slope, above 0 Hz and below half the rate.</param>
    /// <param name="gainDb">Gain far below, −60 to 60 dB.</param>
    /// <param name="q">Q, above 0; see <see cref="ShelfQ"/> for the one that a slope gives.</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, prewarped at f0. Validity: double precision, f0 down to 1e-5 of the rate. Source: W3C 2021, lowShelf. Accuracy: 0.001 dB of
    /// SciPy.
    /// </remarks>
    public static Biquad LowShelf(double f0Hz, double gainDb, double q, double rateHz) => Shelf(f0Hz, gainDb, q, rateHz, 1);

    /// <summary>Shelf above a frequency.</summary>
    /// <param name="f0Hz">Middle of the slope, above 0 Hz and below half the rate.</param>
    /// <param name="gainDb">Gain far above, −60 to 60 dB.</param>
    /// <param name="q">Q, above 0; see <see cref="ShelfQ"/> for the one that a slope gives.</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, prewarped at f0. Validity: double precision, f0 down to 1e-5 of the rate. Source: W3C 2021, highShelf. Accuracy: mirror of
    /// the low shelf.
    /// </remarks>
    public static Biquad HighShelf(double f0Hz, double gainDb, double q, double rateHz) => Shelf(f0Hz, gainDb, q, rateHz, -1);

    /// <summary>Q of the shelf that has a given slope.</summary>
    /// <param name="gainDb">Gain of the shelf, −60 to 60 dB.</param>
    /// <param name="slope">Slope, above 0; 1 is the steepest that stays monotonic.</param>
    /// <returns>Q.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or a slope too steep for the gain.</exception>
    /// <remarks>
    /// Model: 1/Q² = (A + 1/A)(1/S − 1) + 2. Validity: S up to 1, a little more at small gains. Source: W3C 2021.
    /// Accuracy: exact.
    /// </remarks>
    public static double ShelfQ(double gainDb, double slope)
    {
        Require.Positive(slope);
        var a = Amplitude(gainDb);
        var squared = ((a + (1 / a)) * ((1 / slope) - 1)) + 2;
        var steepest = (a + (1 / a)) / (a + (1 / a) - 2);
        Require.Within(slope, 0, squared > 0 ? slope : steepest, nameof(slope));
        return 1 / Math.Sqrt(squared);
    }

    /// <summary>Pole–zero replacement: takes a second-order roll-off away and puts another in its place.</summary>
    /// <param name="f0Hz">Corner of the box as it is (zeros), above 0 Hz and below half the rate.</param>
    /// <param name="q0">Q of the box as it is, above 0.</param>
    /// <param name="fpHz">Corner as wished (poles), above 0 Hz and below half the rate.</param>
    /// <param name="qp">Q as wished, above 0.</param>
    /// <param name="rateHz">Sampling rate, above 0 Hz.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: bilinear, zeros and poles each prewarped at their own corner: with t = tan(πf/rate), 1 + t/Q + t², 2t² − 2, 1 − t/Q + t². Validity:
    /// corners far below half the rate.
    /// Source: <see cref="Analogue.Transform"/>. Accuracy: within 0.05 dB of the analogue target below 200 Hz at 48 kHz.
    /// </remarks>
    public static Biquad Transform(double f0Hz, double q0, double fpHz, double qp, double rateHz)
    {
        Angle(f0Hz, q0, rateHz);
        Angle(fpHz, qp, rateHz);
        var (zero, pole) = (Math.Tan(Math.PI * f0Hz / rateHz), Math.Tan(Math.PI * fpHz / rateHz));
        return new(
            rateHz: rateHz,
            b0: 1 + (zero / q0) + (zero * zero),
            b1: 2 * ((zero * zero) - 1),
            b2: 1 - (zero / q0) + (zero * zero),
            a0: 1 + (pole / qp) + (pole * pole),
            a1: 2 * ((pole * pole) - 1),
            a2: 1 - (pole / qp) + (pole * pole)
        );
    }

    /// <summary>Complex response at a frequency.</summary>
    /// <param name="frequencyHz">Frequency, 0 Hz to half the rate.</param>
    /// <returns>Response.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency outside its range.</exception>
    public Complex Response(double frequencyHz)
    {
        Require.Within(frequencyHz, 0, RateHz / 2, nameof(frequencyHz), "Hz");
        return At(B, frequencyHz) / At(A, frequencyHz);
    }

    /// <summary>Level of the response at a frequency.</summary>
    /// <param name="frequencyHz">Frequency, 0 Hz to half the rate.</param>
    /// <returns>Magnitude, dB; null where nothing passes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency outside its range.</exception>
    public double? MagnitudeDb(double frequencyHz) => Response(frequencyHz).Magnitude is > 0 and var magnitude ? 20 * Math.Log10(magnitude) : null;

    /// <summary>Phase of the response at a frequency.</summary>
    /// <param name="frequencyHz">Frequency, 0 Hz to half the rate.</param>
    /// <returns>Phase, −180 to 180°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency outside its range.</exception>
    public double PhaseDeg(double frequencyHz) => Response(frequencyHz).Phase * 180 / Math.PI;

    // z⁻¹ = 1 − d with d = 1 − e^(−jω) formed without cancellation: c0 + c1 z⁻¹ + c2 z⁻² = (c0+c1+c2) − (c1+2c2) d + c2 d².
    private Complex At(IReadOnlyList<double> c, double frequencyHz)
    {
        var angle = 2 * Math.PI * frequencyHz / RateHz;
        var half = Math.Sin(angle / 2);
        var d = new Complex(2 * half * half, Math.Sin(angle));
        return c[0] + c[1] + c[2] - ((c[1] + (2 * c[2])) * d) + (c[2] * d * d);
    }

    private static Biquad Shelf(double f0Hz, double gainDb, double q, double rateHz, int side)
    {
        var (cosine, alpha) = Angle(f0Hz, q, rateHz);
        var a = Amplitude(gainDb);

        // The high shelf is the low shelf with the cosine's sign turned and every odd coefficient's with it.
        var (c, k) = (side * cosine, 2 * Math.Sqrt(a) * alpha);
        return new(
            rateHz: rateHz,
            b0: a * (a + 1 - ((a - 1) * c) + k),
            b1: side * 2 * a * (a - 1 - ((a + 1) * c)),
            b2: a * (a + 1 - ((a - 1) * c) - k),
            a0: a + 1 + ((a - 1) * c) + k,
            a1: side * -2 * (a - 1 + ((a + 1) * c)),
            a2: a + 1 + ((a - 1) * c) - k
        );
    }

    private static double Amplitude(double gainDb)
    {
        Require.Within(gainDb, -60, 60, nameof(gainDb), "dB");
        return Math.Pow(10, gainDb / 40);
    }

    private static (double Cosine, double Alpha) Angle(double f0Hz, double q, double rateHz)
    {
        Require.Positive(rateHz);
        Require.Positive(f0Hz);
        Require.Positive(q);
        Require.Within(f0Hz, 0, Math.BitDecrement(rateHz / 2), nameof(f0Hz), "Hz");
        var angle = 2 * Math.PI * f0Hz / rateHz;
        return (Math.Cos(angle), Math.Sin(angle) / (2 * q));
    }
}
