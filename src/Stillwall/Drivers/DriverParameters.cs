using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Drivers;

/// <summary>How a driver's small-signal parameters follow from one another.</summary>
public static class DriverParameters
{
    /// <summary>Compliance of the suspension from the air volume of equal compliance.</summary>
    /// <param name="vasM3">Vas at 20 °C and 101 325 Pa, m³, above 0.</param>
    /// <param name="sdM2">Area of the cone, m², above 0.</param>
    /// <returns>Cms, m/N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Cms = Vas/(ρc²Sd²) with the air that Vas refers to. Validity: small signals, a rigid cone.
    /// Source: Small 1972, JAES 20(5) (from memory); reference air our choice, 20 °C and 101 325 Pa. Accuracy: exact by definition of
    /// Vas.
    /// </remarks>
    public static double ComplianceMPerN(double vasM3, double sdM2)
    {
        Require.Positive(vasM3);
        Require.Positive(sdM2);
        return vasM3 / (Air.Reference.BulkModulusPa * sdM2 * sdM2);
    }

    /// <summary>Moving mass from resonance and compliance.</summary>
    /// <param name="fsHz">Resonance in free air, Hz, above 0.</param>
    /// <param name="cmsMPerN">Compliance, m/N, above 0.</param>
    /// <returns>Mms with the air load, kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Mms = 1/((2πfs)²Cms). Validity: small signals. Source: IEC 60268-5:2003 and Small 1972, JAES 20(5) (from memory).
    /// Accuracy: exact for the lumped model; the air load in a box differs by a few per cent from that in free air.
    /// </remarks>
    public static double MovingMassKg(double fsHz, double cmsMPerN)
    {
        Require.Positive(fsHz);
        Require.Positive(cmsMPerN);
        return 1 / (Square(2 * Math.PI * fsHz) * cmsMPerN);
    }

    /// <summary>Mechanical resistance of the suspension from its Q.</summary>
    /// <param name="fsHz">Resonance in free air, Hz, above 0.</param>
    /// <param name="mmsKg">Moving mass, kg, above 0.</param>
    /// <param name="qms">Mechanical Q, above 0.</param>
    /// <returns>Rms, kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Rms = 2πfs·Mms/Qms. Validity: small signals, loss taken as viscous. Source: Small 1972, JAES 20(5) (from memory).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double MechanicalResistanceKgS(double fsHz, double mmsKg, double qms)
    {
        Require.Positive(fsHz);
        Require.Positive(mmsKg);
        Require.Positive(qms);
        return 2 * Math.PI * fsHz * mmsKg / qms;
    }

    /// <summary>Force factor from the electrical Q.</summary>
    /// <param name="fsHz">Resonance in free air, Hz, above 0.</param>
    /// <param name="mmsKg">Moving mass, kg, above 0.</param>
    /// <param name="reOhm">Resistance of the coil, ohm, above 0.</param>
    /// <param name="qes">Electrical Q, above 0.</param>
    /// <returns>Bl, N/A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Bl = √(2πfs·Mms·Re/Qes). Validity: small signals, a source without resistance.
    /// Source: Small 1972, JAES 20(5) (from memory). Accuracy: exact for the lumped model.
    /// </remarks>
    public static double ForceFactorTM(double fsHz, double mmsKg, double reOhm, double qes)
    {
        Require.Positive(fsHz);
        Require.Positive(mmsKg);
        Require.Positive(reOhm);
        Require.Positive(qes);
        return Math.Sqrt(2 * Math.PI * fsHz * mmsKg * reOhm / qes);
    }

    /// <summary>Total Q from mechanical and electrical Q.</summary>
    /// <param name="qms">Mechanical Q, above 0.</param>
    /// <param name="qes">Electrical Q, above 0.</param>
    /// <returns>Qts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Qts = Qms·Qes/(Qms + Qes). Validity: a source without resistance. Source: Thiele 1971; Small 1972, JAES 20(5) (from memory).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double TotalQ(double qms, double qes)
    {
        Require.Positive(qms);
        Require.Positive(qes);
        return qms * qes / (qms + qes);
    }

    private static double Square(double value) => value * value;
}
