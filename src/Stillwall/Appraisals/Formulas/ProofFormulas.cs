namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of what is read out of recordings.</summary>
internal static class ProofFormulas
{
    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "impedance-fit",
            "Impedance from two voltages",
            "H = mean(S*V)/mean|S|², Z = R·H/(1 − H); coil, resonance, Qms and Qes by weighted least squares on H; 1/Qt = 1/Qms + 1/Qes",
            "Bendat and Piersol 2010 (from memory); weights and limits are our choice",
            "0.1 % without noise, else the band beside the figure; the resistor's own tolerance comes on top"
        ),
        new(
            "measured-rolloff",
            "Roll-off by the measured resonance and Q",
            "second-order high-pass of fc and Qtc, f3 and f10; its peak",
            "Small 1972, JAES 20(10) (from memory)",
            "as resonance and Q"
        ),
        new(
            "measured-air",
            "Effective volume by measurement",
            "effective volume by least squares on the impedance curve, moving mass and suspension as stated; divided by the net volume: the fill factor",
            "network of Small 1972, JAES 20(10) (from memory); the fit is our own",
            "5 % in the driver's fs is 10 % and more in the volume"
        ),
        new(
            "measured-vas",
            "Suspension and moving mass by two recordings",
            "added mass: Mms = m/((fs/f')² − 1), Vas = ρc²Sd²/((2πfs)²·Mms); known box: Vas = V·(fc·Qec/(fs·Qes) − 1)",
            "Small 1972, JAES 20(5), and Small 1972, JAES 20(10) (from memory)",
            "twice the error of the ratio of resonances and more; mass, volume and area as stated"
        ),
        new(
            "measured-force-factor",
            "Force factor by measurement",
            "Bl = √(2πfs·Mms·Re/Qes)",
            "Small 1972, JAES 20(5) (from memory)",
            "half the error of the moving mass"
        ),
        new(
            "wall-difference",
            "Level difference through the party wall",
            "D = L1 − L2 in each third-octave, the background taken off L2",
            "ISO 16283-1:2014 (the background's correction from memory)",
            "the band beside it by length; a place in a room is worth several decibels below 50 Hz"
        ),
        new(
            "tap-frequency",
            "First bending mode of the bar",
            "each tap as one decaying sinusoid: slope of the phase of its envelope/2π; mean of the taps that count",
            "our choice of method",
            "0.1 % of computed bars, else the band beside the figure"
        ),
        new(
            "tap-modulus",
            "Young's modulus of the bar",
            "E = 0.9465 · (m f²/b) · (L³/t³) · T1, T1 for shear and rotary inertia",
            "ASTM E1876-15 (the full T1 from memory)",
            "0.4 % of an exact beam up to t/L = 0.25; the caliper counts three times"
        ),
        new(
            "tap-loss",
            "Loss factor of the bar",
            "decrement/π: slope of the logarithm of the envelope/(π f)",
            "ASTM E1876-15 (from memory)",
            "an upper bound, for the supports take some"
        ),
        new("tap-density", "Density of the bar", "mass/(length × width × thickness)", "elementary", "the scales' and the caliper's"),
        new(
            "sweep-delay",
            "How much later it arrived",
            "place of the greatest value of the deconvolved answer",
            "Farina 2000 (from memory)",
            "one sample, and the latency of the sound card in it"
        ),
        new(
            "sweep-harmonics",
            "Harmonics of the sweep",
            "root of the energies of harmonics two to five over the first, each found by its lead L·ln k",
            "Farina 2000 (from memory)",
            "no lower than the noise"
        ),
        new(
            "sweep-clock",
            "What two clocks may change",
            "greatest change of a point from 20 to 400 Hz where the arrival is moved by ±1e-4·L·ln(f/f1)",
            "law of the sweep: Farina 2000 (from memory); 100 ppm: common practice, no source",
            "a tenth of itself"
        ),
        new(
            "drive-bound",
            "How far a sweep may drive the cabinet",
            "greatest excursion for one volt at 101 frequencies of the sweep; voltage = Xmax over that, level there in half space at 1 m",
            "network of Small 1972, JAES 20(10) (from memory); steady sines, our choice",
            "as the data sheet's Xmax"
        ),
        new(
            "sweep-noise",
            "Signal above the noise",
            "energy of the answer over that of a part of the same length in which nothing of the signal can be",
            "our choice",
            "a decibel"
        ),
    ];
}
