using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>Analogue prototypes of filters, as complex response over frequency.</summary>
internal static class Analogue
{
    /// <summary>Q of a second-order Butterworth section.</summary>
    public const double ButterworthQ = 0.70710678118654752440;

    /// <summary>Second-order high-pass.</summary>
    /// <remarks>
    /// Model: s²/(s² + s/Q + 1), s = jf/f0. Validity: any frequency. Source: W3C 2021, prototype HPF; also the closed box, Small 1972, JAES 20(10).
    /// </remarks>
    public static Complex HighPass(double frequencyHz, double f0Hz, double q)
    {
        var s = Normalised(frequencyHz, f0Hz, q);
        return s * s / ((s * s) + (s / q) + 1);
    }

    /// <summary>Second-order low-pass.</summary>
    /// <remarks>Model: 1/(s² + s/Q + 1), s = jf/f0. Validity: any frequency. Source: W3C 2021, prototype LPF.</remarks>
    public static Complex LowPass(double frequencyHz, double f0Hz, double q)
    {
        var s = Normalised(frequencyHz, f0Hz, q);
        return 1 / ((s * s) + (s / q) + 1);
    }

    /// <summary>Fourth-order high-pass of two Butterworth sections: −6.02 dB at the corner, in phase with its low-pass.</summary>
    /// <remarks>Model: square of the second-order Butterworth high-pass. Validity: any frequency. Source: Linkwitz 1976 (from memory).</remarks>
    public static Complex FourthOrderHighPass(double frequencyHz, double f0Hz)
    {
        var section = HighPass(frequencyHz, f0Hz, ButterworthQ);
        return section * section;
    }

    /// <summary>Fourth-order low-pass of two Butterworth sections: −6.02 dB at the corner, in phase with its high-pass.</summary>
    /// <remarks>
    /// Model: square of the second-order Butterworth low-pass. Validity: any frequency. Source: Linkwitz 1976 (from memory). Accuracy: within 0.001
    /// dB of SciPy's digital form at 48 kHz.
    /// </remarks>
    public static Complex FourthOrderLowPass(double frequencyHz, double f0Hz)
    {
        var section = LowPass(frequencyHz, f0Hz, ButterworthQ);
        return section * section;
    }

    /// <summary>Pole–zero replacement: takes a second-order roll-off away and puts another in its place.</summary>
    /// <remarks>
    /// Model: (s² + s ω0/Q0 + ω0²)/(s² + s ωp/Qp + ωp²); 40 log10(f0/fp) dB at zero frequency, 0 dB high up. Validity: a box that is a second-order
    /// high-pass. Source: our own algebra, the quotient of two high-passes.
    /// </remarks>
    public static Complex Transform(double frequencyHz, double f0Hz, double q0, double fpHz, double qp) =>
        HighPass(frequencyHz, fpHz, qp) / HighPass(frequencyHz, f0Hz, q0);

    /// <summary>Peak or dip.</summary>
    /// <param name="q">Q, above 0, in the cookbook's sense: the poles have A·Q with A = 10^(gain/40).</param>
    /// <remarks>Model: (s² + s A/Q + 1)/(s² + s/(A Q) + 1), s = jf/f0. Validity: any frequency. Source: W3C 2021, prototype peakingEQ.</remarks>
    public static Complex Peaking(double frequencyHz, double f0Hz, double gainDb, double q)
    {
        var s = Normalised(frequencyHz, f0Hz, q);
        var a = Amplitude(gainDb);
        return ((s * s) + (s * a / q) + 1) / ((s * s) + (s / (a * q)) + 1);
    }

    /// <summary>Shelf below a frequency.</summary>
    /// <remarks>Model: A (s² + s √A/Q + A)/(A s² + s √A/Q + 1), s = jf/f0. Validity: any frequency. Source: W3C 2021, prototype lowShelf.</remarks>
    public static Complex LowShelf(double frequencyHz, double f0Hz, double gainDb, double q)
    {
        var s = Normalised(frequencyHz, f0Hz, q);
        var a = Amplitude(gainDb);
        var slope = s * Math.Sqrt(a) / q;
        return a * ((s * s) + slope + a) / ((a * s * s) + slope + 1);
    }

    private static double Amplitude(double gainDb)
    {
        Require.Within(gainDb, -60, 60, nameof(gainDb), "dB");
        return Math.Pow(10, gainDb / 40);
    }

    private static Complex Normalised(double frequencyHz, double f0Hz, double q)
    {
        Require.Positive(frequencyHz);
        Require.Positive(f0Hz);
        Require.Positive(q);
        return new Complex(0, frequencyHz / f0Hz);
    }
}
