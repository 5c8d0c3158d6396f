using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Impedances;

/// <summary>Impedance of a coil that moves a resonator: Re, Le, beside them a lossy inductance where there is one, and the resonance.</summary>
/// <param name="DcResistanceOhm">Re, ohm.</param>
/// <param name="ResonanceHz">Resonance, Hz.</param>
/// <param name="MechanicalQ">Q with the coil's circuit open.</param>
/// <param name="MotionalOhm">What the motion adds at the resonance, ohm.</param>
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
    /// <summary>Electrical Q.</summary>
    public double ElectricalQ => MechanicalQ * DcResistanceOhm / MotionalOhm;

    /// <summary>Total Q.</summary>
    public double TotalQ => MechanicalQ * ElectricalQ / (MechanicalQ + ElectricalQ);

    /// <summary>Impedance at one frequency.</summary>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>Impedance, ohm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency that is not positive.</exception>
    /// <remarks>
    /// Model: Re + jωLe + (jωLe2 ∥ Re2) + Res·(jx/Qms)/(1 − x² + jx/Qms), x = f/f0. Validity: small signals; closed box or free air. Source: Small
    /// 1972, JAES 20(5), for the resonance; Vanderkooy 1989 for lossy coils (both from memory).
    /// Accuracy: exact for the lumped circuit.
    /// </remarks>
    public Complex AtOhm(double frequencyHz)
    {
        Require.Positive(frequencyHz);
        var (omega, x) = (2 * Math.PI * frequencyHz, frequencyHz / ResonanceHz);
        var lossy = new Complex(0, omega * LossyInductanceH);
        var motion = new Complex(0, x / MechanicalQ);
        return new Complex(DcResistanceOhm, omega * InductanceH)
            + (LossOhm > 0 ? lossy * LossOhm / (lossy + LossOhm) : 0)
            + (MotionalOhm * motion / (1 - (x * x) + motion));
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
    /// Model: Qes = Qms·Re/Res; the inductance is that at low frequencies, Le + Le2. Source: Small 1972, JAES 20(5) (from memory). Accuracy: exact.
    /// </remarks>
    public ImpedanceFigures Figures() =>
        new(
            ResonanceHz: ResonanceHz,
            QMechanical: MechanicalQ,
            QElectrical: ElectricalQ,
            QTotal: TotalQ,
            DcResistanceOhm: DcResistanceOhm,
            InductanceH: InductanceH + LossyInductanceH,
            PeakOhm: PeakOhm()
        );
}
