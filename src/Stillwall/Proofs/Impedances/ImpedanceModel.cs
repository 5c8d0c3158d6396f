using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Impedances;

/// <summary>Impedance of a coil that moves a resonator: its resistance, its inductance with what losses it has, and the resonance.</summary>
/// <param name="DcResistanceOhm">Re, ohm.</param>
/// <param name="ResonanceHz">Resonance, Hz.</param>
/// <param name="MechanicalQ">Q with the coil's circuit open, without what creep takes.</param>
/// <param name="MotionalOhm">What the motion adds at the resonance without creep, ohm.</param>
/// <param name="InductanceH">Le, H.</param>
/// <param name="LossyInductanceH">Inductance with losses beside it, H; 0 where there is none.</param>
/// <param name="LossOhm">Resistance beside the lossy inductance, ohm; 0 where there is none.</param>
public sealed record ImpedanceModel(
    double DcResistanceOhm,
    double ResonanceHz,
    double MechanicalQ,
    double MotionalOhm,
    double InductanceH,
    double LossyInductanceH = 0,
    double LossOhm = 0
)
{
    /// <summary>Where the inductance of a coil that goes as a power of the frequency is told, Hz (our choice).</summary>
    public const double InductanceAtHz = 1000;

    /// <summary>Magnitude of a semi-inductance at 1 rad/s, K of K·(jω)ⁿ, ohm; 0 where there is none.</summary>
    public double SemiInductanceOhm { get; init; }

    /// <summary>Its power n, ½ for eddy currents in a thick pole to 1 for a coil without losses.</summary>
    public double SemiInductancePower { get; init; } = 1;

    /// <summary>How much the suspension gives more for each decade down in frequency, a share of its compliance; 0 without creep.</summary>
    public double CreepRatio { get; init; }

    /// <summary>Electrical Q.</summary>
    public double ElectricalQ => MechanicalQ * DcResistanceOhm / MotionalOhm;

    /// <summary>Total Q, without what creep takes.</summary>
    public double TotalQ => MechanicalQ * ElectricalQ / (MechanicalQ + ElectricalQ);

    /// <summary>Q with the coil's circuit open at the resonance, with what creep takes there.</summary>
    public double CreepingMechanicalQ => MechanicalQ / (1 + MechanicalQ * (1 / (Complex.ImaginaryOne * Give(1))).Real);

    /// <summary>Impedance at one frequency.</summary>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>Impedance, ohm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency that is not positive.</exception>
    /// <remarks>
    /// Model: Re + jωLe + (jωLe2 ∥ Re2) + K(jω)ⁿ + Res/(1 + jxQms + Qms/(jx·c)), x = f/f0; c = 1 − λ·log10(jx) is how the suspension creeps.
    /// Validity: small signals; closed box or free air. Source: Small 1972, JAES 20(5), for the resonance; Vanderkooy 1989 and Leach 2002 for lossy
    /// coils, Knudsen 1993 for creep (all from memory). Accuracy: exact for the lumped circuit.
    /// </remarks>
    public Complex AtOhm(double frequencyHz)
    {
        Require.Positive(frequencyHz);
        var (omega, x) = (2 * Math.PI * frequencyHz, frequencyHz / ResonanceHz);
        var lossy = new Complex(0, omega * LossyInductanceH);
        var semi =
            SemiInductanceOhm > 0
                ? Complex.FromPolarCoordinates(SemiInductanceOhm * Math.Pow(omega, SemiInductancePower), SemiInductancePower * Math.PI / 2)
                : Complex.Zero;
        var coil = new Complex(DcResistanceOhm, omega * InductanceH) + (LossOhm > 0 ? lossy * LossOhm / (lossy + LossOhm) : 0) + semi;
        if (CreepRatio != 0)
        {
            var jx = new Complex(0, x);
            return coil + (MotionalOhm / (1 + (MechanicalQ * (jx + (1 / (jx * Give(x)))))));
        }

        var motion = new Complex(0, x / MechanicalQ);
        return coil + (MotionalOhm * motion / (1 - (x * x) + motion));
    }

    /// <summary>Greatest magnitude about the resonance.</summary>
    /// <returns>Magnitude, ohm.</returns>
    /// <remarks>
    /// Model: the greatest of 401 frequencies within a tenth of the resonance. Validity: a peak that is narrower. Source: our choice. Accuracy: 0.01
    /// %.
    /// </remarks>
    public double PeakOhm() => Enumerable.Range(0, 401).Max(i => AtOhm(ResonanceHz * (0.9 + (0.0005 * i))).Magnitude);

    /// <summary>The model's figures.</summary>
    /// <returns>The figures.</returns>
    /// <remarks>
    /// Model: Qes = Qms·Re/Res; the inductance is that at low frequencies, Le + Le2, and at 1 kHz, Im(Z)/ω, for a coil that goes as a power of the
    /// frequency. Source: Small 1972, JAES 20(5) (from memory). Accuracy: exact.
    /// </remarks>
    public ImpedanceFigures Figures() =>
        new(
            ResonanceHz: ResonanceHz,
            QMechanical: MechanicalQ,
            QElectrical: ElectricalQ,
            QTotal: TotalQ,
            DcResistanceOhm: DcResistanceOhm,
            InductanceH: InductanceH + LossyInductanceH + SemiInductanceH,
            PeakOhm: PeakOhm()
        );

    private double SemiInductanceH =>
        SemiInductanceOhm * Math.Pow(2 * Math.PI * InductanceAtHz, SemiInductancePower - 1) * Math.Sin(SemiInductancePower * Math.PI / 2);

    // The suspension's compliance over that at the resonance.
    private Complex Give(double x) => 1 - (CreepRatio * new Complex(Math.Log10(x), Math.PI / 2 / Math.Log(10)));
}
