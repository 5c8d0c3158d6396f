using Stillwall.Cabinets;
using Stillwall.Numerics;

namespace Stillwall.Appraisals.Ranking;

/// <summary>The candidates, the best first.</summary>
/// <param name="Drivers">One line for each candidate.</param>
public sealed record RankedDrivers(IReadOnlyList<RankedDriver> Drivers);

/// <summary>How one candidate does in this cabinet.</summary>
/// <param name="Name">Name of the driver.</param>
/// <param name="Verdict">The worst of the checks that could be made; unknown only where none could.</param>
/// <param name="Reasons">One sentence for each check that fails, then for each that is tight.</param>
/// <param name="ReasonIds">Ids of the findings that the reasons are of, in the same order.</param>
/// <param name="Unjudged">Topics of the checks that could not be made.</param>
/// <param name="SystemResonanceHz">Resonance of the closed system, Hz; null where not known.</param>
/// <param name="SystemQ">Total Q of the closed system, lossless; null where not known.</param>
/// <param name="F3Hz">f3, the frequency 3 dB below the passband, Hz; null where not known.</param>
/// <param name="F10Hz">f10, the frequency 10 dB below the passband, Hz; null where not known.</param>
/// <param name="MaxSplAtLowestDb">Greatest level at the lowest note, half space, at the listening distance, dB; null where not known.</param>
/// <param name="LimitedByAtLowest">What limits the level there: <c>excursion</c>, <c>coil</c> or <c>amplifier</c>; null where not known.</param>
/// <param name="Price">Price in the project's currency; null where not stated.</param>
/// <param name="Front">Whether it does not fail and no driver that costs less or the same is louder; false where price or level is not known.</param>
public sealed record RankedDriver(
    string Name,
    Verdict Verdict,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<string> ReasonIds,
    IReadOnlyList<string> Unjudged,
    [property: ComputedBy("system-resonance", "box.effective_volume_m3")] double? SystemResonanceHz,
    [property: ComputedBy("system-q", "box.effective_volume_m3")] double? SystemQ,
    [property: ComputedBy("f3", "box.system_resonance_hz", "box.system_q")] double? F3Hz,
    [property: ComputedBy("f10", "box.system_resonance_hz", "box.system_q")] double? F10Hz,
    [property: ComputedBy("maximum-level", "box.effective_volume_m3")] double? MaxSplAtLowestDb,
    LimitedBy? LimitedByAtLowest,
    double? Price,
    bool Front
);
