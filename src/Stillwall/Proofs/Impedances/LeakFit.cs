using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using Stillwall.Cabinets;
using Complex = System.Numerics.Complex;

namespace Stillwall.Proofs.Impedances;

/// <summary>
/// Finds air and leak of a closed box in a measured curve: a leak damps the low side of the resonance more than the high one, which no other loss
/// does.
/// </summary>
/// <param name="EffectiveVolumeM3">Air the cone feels, m³.</param>
/// <param name="VolumeBandM3">Half of its 95 % band, m³.</param>
/// <param name="LeakShare">One over the leak's Q; 0 and below is tight.</param>
/// <param name="LeakBandShare">Half of its 95 % band.</param>
internal sealed record LeakFit(double EffectiveVolumeM3, double VolumeBandM3, double LeakShare, double LeakBandShare)
{
    // Two octaves to either side of the resonance (our choice).
    private const double Reach = 4;
    private const int FewestPoints = 20;
    private const double Quantile = 1.96;

    /// <summary>Fits; null where there are too few points or nothing converges.</summary>
    /// <param name="network">The plan, whose moving mass and compliance are taken as they are.</param>
    internal static LeakFit? Of(ImpedanceResult measured, BoxNetwork network, double volumeM3)
    {
        var fc = measured.ResonanceHz;
        var points = measured.Curve.Where(p => p.FrequencyHz > fc / Reach && p.FrequencyHz < fc * Reach).ToList();
        if (points.Count < FewestPoints)
        {
            return null;
        }

        var driver = network.Driver;
        var unit = 1 / (2 * Math.PI * fc * Leakage.BoxComplianceM3Pa(volumeM3, network.Air));
        var found = points.Select(p => Complex.FromPolarCoordinates(p.ImpedanceOhm, p.ImpedancePhaseDeg * Math.PI / 180)).ToArray();
        Vector<double> Misses(Vector<double> p, Vector<double> x)
        {
            var moved = driver with { ReOhm = Math.Exp(p[0]), LeH = Math.Exp(p[1]), BlTM = Math.Exp(p[2]), RmsKgS = Math.Exp(p[3]) };
            var (admittance, compliance) = (p[5] / unit, Leakage.BoxComplianceM3Pa(Math.Exp(p[4]), network.Air));
            var miss = Vector<double>.Build.Dense(2 * points.Count);
            for (var i = 0; i < points.Count; i++)
            {
                var omega = 2 * Math.PI * points[i].FrequencyHz;
                var mechanical =
                    new Complex(moved.RmsKgS, (omega * moved.MmsKg) - (1 / (omega * moved.CmsMPerN)))
                    + (moved.SdM2 * moved.SdM2 / new Complex(admittance, omega * compliance));
                var off = Complex.Log(found[i] / (new Complex(moved.ReOhm, omega * moved.LeH) + (moved.BlTM * moved.BlTM / mechanical)));
                (miss[2 * i], miss[(2 * i) + 1]) = (off.Real, off.Imaginary);
            }

            return miss;
        }

        var start = Vector<double>.Build.Dense([
            Math.Log(measured.DcResistanceOhm),
            Math.Log(measured.InductanceH),
            Math.Log(driver.BlTM),
            Math.Log(driver.RmsKgS),
            Math.Log(volumeM3),
            0.02,
        ]);
        var count = 2 * points.Count;
        try
        {
            var objective = ObjectiveFunction.NonlinearModel(
                Misses,
                Vector<double>.Build.Dense(count, i => i),
                Vector<double>.Build.Dense(count),
                accuracyOrder: 2
            );
            var fit = new LevenbergMarquardtMinimizer(
                gradientTolerance: 1e-10,
                stepTolerance: 1e-9,
                functionTolerance: 1e-10,
                maximumIterations: 100
            ).FindMinimum(objective, start);
            var (at, errors) = (fit.MinimizingPoint, fit.StandardErrors);
            if (errors is null || at.Concat(errors).Any(v => !double.IsFinite(v)))
            {
                return null;
            }

            // The leak's Q is that of the fitted volume, not of the first guess.
            var volume = Math.Exp(at[4]);
            return new LeakFit(volume, Quantile * errors[4] * volume, at[5] * volumeM3 / volume, Quantile * errors[5] * volumeM3 / volume);
        }
        catch (Exception e) when (e is MathNet.Numerics.NonConvergenceException or OptimizationException or InvalidOperationException)
        {
            return null;
        }
    }
}
