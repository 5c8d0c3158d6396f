using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>How much lower the box could play by Linkwitz transform at the everyday level, before something stops it.</summary>
/// <param name="F0Hz">The box as it is, Hz.</param>
/// <param name="Q">Its Q.</param>
/// <param name="FpHz">Lowest corner that can be wished for, Hz.</param>
/// <param name="PoleQ">Its Q.</param>
/// <param name="BoostDb">Boost far below both corners, dB.</param>
/// <param name="StoppedBy">What stops it: <c>neighbour</c>, <c>amplifier</c>, <c>excursion</c>, or <c>search</c> where nothing does down to 20 Hz.</param>
public sealed record BassExtension(
    [property: ComputedBy("bass-extension", "box.system_resonance_hz", "quiet.bands[].over_db", "quiet.headroom.excursion_db")] double F0Hz,
    [property: ComputedBy("bass-extension", "box.system_q")] double Q,
    [property: ComputedBy("bass-extension", "box.system_resonance_hz", "quiet.bands[].over_db", "quiet.headroom.excursion_db", "quiet.headroom.amplifier_db")]
        double FpHz,
    [property: ComputedBy("bass-extension", "box.system_resonance_hz")] double PoleQ,
    [property: ComputedBy("bass-extension", "box.system_resonance_hz", "quiet.extension.fp_hz")] double BoostDb,
    string StoppedBy
)
{
    // The lowest band that is judged (our choice); lower, nothing would hold it back but the cone.
    private const double LowestHz = 20;

    /// <summary>The lowest corner, behind the sections of an equaliser.</summary>
    internal static BassExtension? Of(EqualiserCase trial, IReadOnlyList<EqualiserSection> sections, double boxHz, double boxQ)
    {
        EqualiserStage[] stages = [.. sections.Select(s => EqualiserStage.Of(s.Kind, s.F0Hz, s.Q, s.GainDb, s.FpHz ?? 0, s.PoleQ ?? 1)), default];
        string? Stop(double fp)
        {
            stages[^1] = EqualiserStage.Of(SectionKind.Transform, boxHz, boxQ, 0, fp, Analogue.ButterworthQ);
            var (effect, left) = (trial.Of(stages), trial.HeadroomOfLast());
            return effect.OverDb > 0 ? "neighbour"
                : left?.ExcursionDb < 0 ? "excursion"
                : left?.AmplifierDb < 0 ? "amplifier"
                : null;
        }

        // Every figure rises as the corner falls: halving finds where the first one stops it.
        var (low, high) = (LowestHz, boxHz);
        if (boxHz <= LowestHz || sections.Any(s => s.Kind is SectionKind.Transform or SectionKind.Highpass) || Stop(boxHz) is not null)
        {
            return null;
        }

        if (Stop(low) is not { } stop)
        {
            return new(boxHz, boxQ, low, Analogue.ButterworthQ, 40 * Math.Log10(boxHz / low), "search");
        }

        while (high - low > 1e-6 * high)
        {
            var middle = Math.Sqrt(low * high);
            var now = Stop(middle);
            (low, high, stop) = now is null ? (low, middle, stop) : (middle, high, now);
        }

        return high > 0.97 * boxHz ? null : new(boxHz, boxQ, high, Analogue.ButterworthQ, 40 * Math.Log10(boxHz / high), stop);
    }
}
