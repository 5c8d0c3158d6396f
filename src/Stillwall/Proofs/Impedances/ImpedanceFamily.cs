namespace Stillwall.Proofs.Impedances;

/// <summary>How a coil's inductance goes.</summary>
internal enum CoilKind
{
    /// <summary>As an inductance without losses.</summary>
    Plain,

    /// <summary>As an inductance, and beside it one with a resistance across it.</summary>
    Lossy,

    /// <summary>As a power of the frequency.</summary>
    Semi,
}

/// <summary>What is known beside a recording.</summary>
/// <param name="GainDeviationRatio">Standard deviation of one channel's gain over the other's; 0 where a recording told it.</param>
/// <param name="CoilOhm">Resistance of the coil by a meter, ohm; null where it was not measured.</param>
/// <param name="CoilDeviationOhm">Its standard deviation, ohm.</param>
internal sealed record KnownBeside(double GainDeviationRatio, double? CoilOhm, double CoilDeviationOhm);

/// <summary>Kind of driver that a curve may be of, and the values that are sought for it.</summary>
/// <param name="Coil">How the coil goes.</param>
/// <param name="Creeps">Whether the suspension creeps.</param>
/// <param name="HasGain">Whether one channel may be louder than the other.</param>
internal sealed record ImpedanceFamily(CoilKind Coil, bool Creeps, bool HasGain)
{
    // Places of the values that all families have.
    private const int Common = 4;

    private int Creep => Common + (Coil == CoilKind.Plain ? 1 : Coil == CoilKind.Lossy ? 3 : 2);

    /// <summary>Number of values.</summary>
    internal int Count => Creep + (Creeps ? 1 : 0) + (HasGain ? 1 : 0);

    /// <summary>Place of the gain's logarithm, the last.</summary>
    internal int Gain => Count - 1;

    /// <summary>A model as values: logarithms of what is positive, which makes their covariance one of relative errors.</summary>
    internal double[] Packed(ImpedanceModel m, double gain)
    {
        var whole = Math.Max(1e-9, m.Figures().InductanceH);
        var loss = m.LossOhm > 0 ? m.LossOhm : 2 * m.DcResistanceOhm;
        var (power, ohm) = m.SemiInductanceOhm > 0 ? (m.SemiInductancePower, m.SemiInductanceOhm) : (0.8, whole * Math.Pow(2 * Math.PI * 500, 0.2));
        double[] common = [Math.Log(m.DcResistanceOhm), Math.Log(m.ResonanceHz), Math.Log(m.MechanicalQ), Math.Log(m.MotionalOhm)];
        double[] coil = Coil switch
        {
            CoilKind.Lossy when m.LossOhm > 0 => [Math.Log(m.InductanceH), Math.Log(m.LossyInductanceH), Math.Log(loss)],
            CoilKind.Lossy => [Math.Log(0.4 * whole), Math.Log(whole), Math.Log(loss)],
            CoilKind.Semi => [Math.Log(ohm), power],
            _ => [Math.Log(whole)],
        };
        return [.. common, .. coil, .. Creeps ? [m.CreepRatio] : Array.Empty<double>(), .. HasGain ? [Math.Log(gain)] : Array.Empty<double>()];
    }

    /// <summary>The model of values.</summary>
    internal ImpedanceModel Unpacked(IReadOnlyList<double> p)
    {
        double At(int i) => Math.Exp(Math.Clamp(p[i], -40, 40));
        var still = new ImpedanceModel(
            DcResistanceOhm: At(0),
            ResonanceHz: At(1),
            MechanicalQ: At(2),
            MotionalOhm: At(3),
            InductanceH: Coil == CoilKind.Semi ? 0 : At(Common),
            LossyInductanceH: Coil == CoilKind.Lossy ? At(Common + 1) : 0,
            LossOhm: Coil == CoilKind.Lossy ? At(Common + 2) : 0
        );
        return still with
        {
            SemiInductanceOhm = Coil == CoilKind.Semi ? At(Common) : 0,
            SemiInductancePower = Coil == CoilKind.Semi ? Math.Clamp(p[Common + 1], 0.05, 1) : 1,
            CreepRatio = Creeps ? Math.Clamp(p[Creep], -0.3, 0.3) : 0,
        };
    }

    /// <summary>Gain of the load's channel over the source's.</summary>
    internal double GainOf(IReadOnlyList<double> p) => HasGain ? Math.Exp(Math.Clamp(p[Gain], -1, 1)) : 1;
}
