namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the neighbour stage.</summary>
internal static class QuietFormulas
{
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "room-seat",
            "Pressure in a rigid rectangular room",
            "p = jωρU/V · Σ ε ψ(seat) ψ(source)/(k_n² − k²), k = (ω − jδ)/c",
            "Kuttruff 2000, chapter 3",
            "0.01 dB of the Green's function in waveguide form; real rooms differ by several decibel"
        ),
        new(
            "seat-over-mean",
            "Level at the seat over the room's mean",
            "10 log10 |p(seat)|²/mean |p|² at one frequency",
            "Kuttruff 2000, chapter 3",
            "furniture and light walls move the nulls"
        ),
        new(
            "place-gain",
            "What other places gain over the present ones",
            "10 log10 Σ|p(seat)|²/Σ mean |p|² there, less the same as they are now; third-octaves from 20 Hz to the crossover, five frequencies each, a "
                + "source that is flat in the half space",
            "Kuttruff 2000, chapter 3; what is summed is our choice",
            "differences under 1 dB mean nothing in a real room"
        ),
        new(
            "unevenness",
            "Unevenness of the bass at the seat",
            "standard deviation of the third-octaves from 20 Hz to the crossover, a source that is flat in the half space",
            "Kuttruff 2000, chapter 3; the measure is our choice",
            "differences under 1 dB mean nothing in a real room"
        ),
        new(
            "seat-band",
            "Level at the seat in a third-octave",
            "10 log10 mean |programme · low-pass · U · p/U|² + one gain for all bands",
            "band edges IEC 61260-1:2014; the common gain is our choice",
            "bands add up to the everyday level exactly; 15 frequencies a band"
        ),
        new(
            "room-mean-band",
            "Mean level of the listening room for the same drive",
            "mean |p|² = |ωρU/V|² Σ ε ψ(source)²/|k_n² − k²|²",
            "Kuttruff 2000, chapter 3 (orthogonality of the modes)",
            "0.005 dB of a plain sum over the modes, carried to infinity"
        ),
        new(
            "wall-reduction",
            "Sound reduction of the party wall",
            "third-octaves from 50 Hz, or octave values 63, 125, 250 Hz, straight over log f; 6 dB per octave below; leaves by mass law or mass, air, "
                + "mass; other paths added as energy",
            "Bies, Hansen and Howard 2018, table 7.6 and Eq. 7.40; ISO 717-1:2020, annex E; ISO 12354-1:2017, annex L; interpolation and slope are our "
                + "choice; measured: L1 − L2 + 10 log10(S/A2), ISO 16283-1:2014",
            "see the uncertainty"
        ),
        new(
            "neighbour-level",
            "Level in the neighbour's room",
            "L2 = L1 − R + 10 log10(S/A2), A2 = 0.16 V2/T2",
            "ISO 16283-1:2014; ISO 12354-1:2017",
            "its own band; no basis below the first mode of either room"
        ),
        new(
            "wall-uncertainty",
            "Uncertainty of the level behind the wall",
            "1.96 σ; half of it for a measured wall",
            "ISO 12999-1:2020, situation A, 50 Hz and up; 8 dB below 50 Hz and the half are our choice",
            "95 % band"
        ),
        new(
            "limit-curve",
            "Curve that the level is held against",
            "curve + allowance",
            "ISO 226:2023 or ISO 226:2003 threshold, FoHMFS 2014:13 (all living rooms), others from memory as marked, or as stated",
            "as printed; thresholds of people scatter by 5 to 6 dB (from memory)"
        ),
        new("over-curve", "Level over the curve", "L2 − curve", "definition", "the level's own"),
        new(
            "weighted-neighbour",
            "Weighted level next door",
            "10 log10 Σ 10^((L2 + A)/10), or with C",
            "IEC 61672-1:2013, annex E",
            "as the bands; what other rooms add is not in it"
        ),
        new(
            "weighted-doubt",
            "Uncertainty of the weighted level",
            "the same sum with every band at the end of its doubt, less the sum",
            "our choice: the bands are off together",
            "on the wide side"
        ),
        new(
            "quiet-hours",
            "Quiet hours",
            "every band moves with the level at the seat; greatest level over the curve of those hours",
            "arithmetic on the everyday bands",
            "the band of the wall"
        ),
        new(
            "polite-level",
            "Loudest polite level",
            "everyday level − greatest level over the curve",
            "our choice",
            "the greatest uncertainty of the bands judged"
        ),
        new(
            "polite-level-worst",
            "Loudest polite level if the wall is at its worst",
            "everyday level − greatest of (level over the curve + half its band)",
            "our choice",
            "the band is counted in"
        ),
        new(
            "first-band",
            "Band that goes over the curve first",
            "the band with the greatest level over the curve",
            "definition",
            "a neighbouring band may come first, as the band of the forecast allows"
        ),
        new(
            "polite-high-pass",
            "Plain high-pass that makes the everyday level polite",
            "lowest second-order Butterworth corner with nothing over curve or limit",
            "W3C 2021, Audio EQ Cookbook",
            "corner to one part in a million"
        ),
        new(
            "polite-equaliser",
            "Equaliser that makes the everyday level polite",
            "of high-passes, shelf, up to two cuts and Linkwitz transform, the sections that leave nothing over and lose the least of what is audible at "
                + "the seat, never more than the plain high-pass",
            "sections W3C 2021, Audio EQ Cookbook; search and measure are our choice",
            "a search: a little less may be lost by other settings"
        ),
        new(
            "audible-loss",
            "What the seat loses of what is audible",
            "Σ a · min(loss, a)/Σ a, a = level above the threshold in each band",
            "threshold ISO 226:2023; the measure is our choice",
            "as the bands"
        ),
        new(
            "bass-extension",
            "Lowest corner by Linkwitz transform",
            "lowest Butterworth corner at which neighbour, excursion and amplifier still have room at the everyday level",
            "our own algebra, the quotient of two high-passes; the search is our choice",
            "as crest and wall: rough"
        ),
        new(
            "headroom",
            "Headroom at the everyday level",
            "20 log10(limit/(rms × crest)), the whole programme's voltage or excursion",
            "definition; crest from memory",
            "3 dB: records differ"
        ),
        new(
            "polite-level-equalised",
            "Loudest polite level with the equaliser",
            "everyday level − greatest level over the curve behind the equaliser",
            "our choice",
            "the greatest uncertainty of the bands judged"
        ),
        new("seat-loss", "What the seat loses to the equaliser", "10 log10 Σ seat power / Σ seat power behind the equaliser", "definition", "as the bands"),
        new("lowest-room-mode", "Lowest mode of the listening room", "c/(2 · longest side)", "Kuttruff 2000, chapter 3", "exact for rigid walls"),
        new(
            "wall-basis",
            "Where the formula for the wall begins to have a basis",
            "the higher of c/(2 · longest side) here and c/(2 · ∛V) next door",
            "Kuttruff 2000, chapter 3; the cube stands for the unknown shape (our choice)",
            "an upper bound for the neighbour's room"
        ),
        new("weighted-level", "Weighted level of the bass", "10 log10 Σ 10^((L + A)/10)", "IEC 61672-1:2013, annex E", "0.1 dB"),
        new("cone-reaction", "Reaction of the cone on the cabinet", "F = Mms ω² x", "elementary: Newton's third law", "exact"),
        new(
            "transmissibility",
            "Force passed on by the feet",
            "foot force/reaction of a rigid body that sways and rocks; T = √[(1 + η²)/((1 − r²)² + η²)] where only the mass is known",
            "Beranek and Vér 2006 (from memory)",
            "stiff floor"
        ),
        new(
            "floor-force",
            "Force into the floor",
            "T Mms ω² x along the cone's axis; 20 log10 T against rigid feet",
            "Beranek and Vér 2006 (from memory)",
            "stiff floor"
        ),
        new(
            "feet-resonance",
            "Resonance on the feet",
            "lower root of sway and rocking; √(k/M)/(2π) where only the mass is known",
            "rigid body on springs (from memory); mass taken as even",
            "a tenth: the mass is not even"
        ),
        new(
            "rocking",
            "Rocking on the feet",
            "upper root of det([K − Mω², Kh; Kh, Kh² + Kv(b/2)² − Jω²]) = 0",
            "rigid body on springs (from memory); mass taken as even, J = M(d² + h²)/12",
            "a tenth"
        ),
        new("friction", "Hold of the cabinet on the floor", "μ M g", "Coulomb; coefficients from memory", "friction scatters by half"),
        new(
            "joining-seat",
            "Sum with the main speakers at the seat",
            "box and main speakers as small sources in the room; least span of third-octaves from half to twice the crossover",
            "Kuttruff 2000, chapter 3; measure and search are our choice",
            "advice: several decibels near the modes"
        ),
        new(
            "joining",
            "Sum with the main speakers",
            "box · low-pass + delayed main speakers · high-pass; least ripple from half to twice the crossover",
            "Small 1972, JAES 20(10); Linkwitz 1976 (from memory); search is our choice",
            "free field"
        ),
    ];
}
