using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>What it takes to close the drying holes: tape from inside while the cast is poured, a dab of sealant on each once it is dry.</summary>
internal static class HoleClosing
{
    // How far tape and dab reach past the hole on every side, thickness of the dab, bead that sealant is bought for, m (our choice).
    private const double TapeOverM = 0.010,
        DabOverM = 0.003,
        DabM = 0.001,
        BeadM = 0.006;

    /// <summary>Tape for the holes.</summary>
    /// <remarks>
    /// Model: a piece for each hole, 10 mm longer than it on either side. Validity: tape wider than the hole by as much. Source: our choice.
    /// Accuracy: a maker who tapes whole rows takes more.
    /// </remarks>
    public static double TapeM(int count, double diameterM)
    {
        Require.NotNegative(count);
        Require.NotNegative(diameterM);
        return count * (diameterM + 2 * TapeOverM);
    }

    /// <summary>Sealant for the dabs.</summary>
    /// <remarks>
    /// Model: a disc 3 mm past the hole, 1 mm thick: the cast fills the hole itself. Validity: holes that the cast has filled. Source: our choice.
    /// Accuracy: a maker lays half as much again.
    /// </remarks>
    public static double SealantM3(int count, double diameterM)
    {
        Require.NotNegative(count);
        Require.NotNegative(diameterM);
        var wide = diameterM + 2 * DabOverM;
        return count * Math.PI / 4 * wide * wide * DabM;
    }

    /// <summary>The same as a length of the bead of 6 mm that cartridges are counted in.</summary>
    /// <remarks>Model: equal volumes. Source: geometry.</remarks>
    public static double SealantBeadM(int count, double diameterM) => SealantM3(count, diameterM) / (Math.PI / 4 * BeadM * BeadM);
}
