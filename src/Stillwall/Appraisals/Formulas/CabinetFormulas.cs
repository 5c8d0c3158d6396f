namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the cabinet's acoustics.</summary>
internal static class CabinetFormulas
{
    private const string Small = "Small 1972, JAES 20(10), and Small 1973, JAES 21(1) (from memory)";

    private const string Lumped = "exact for the lumped model";

    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "net-volume",
            "Net air volume",
            "inside − braces − drivers − bodies of ports and passive radiator; a stated net volume stands as it is",
            "geometry",
            "exact for the drawn shapes"
        ),
        new("effective-volume", "Effective volume", "k·(net − fibre mass/1380)", "our choice of bookkeeping", "±5 %, from the fill factor"),
        new("fill-factor", "Fill factor", "k = 1 + 0.25(1 − e^(−d/8)), d = fibre mass/net volume in kg/m³", "from memory", "±0.05"),
        new("fill-density", "Packing of the fibre", "fibre mass/net volume", "definition", "exact"),
        new("system-resonance", "Resonance of the closed system", "fc = fs√(1 + α), α = ρc²Sd²Cms/(kVb)", Small, Lumped),
        new("system-q", "Total Q of the closed system", "Qtc = Qts√(1 + α)", Small, Lumped),
        new(
            "system-q-filled",
            "Total Q with the loss of the fibre",
            "1/Q = 1/min(Qmc, 3.5) + 1/Qec",
            "Small 1972, JAES 20(10), and the limit of 3.5 (from memory)",
            "the limit may lie between 2 and 5"
        ),
        new("f3", "f3, the frequency 3 dB below the passband", "f3 = fc√{[X + √(X² + 4)]/2}, X = 1/Qtc² − 2", Small, Lumped),
        new(
            "f10",
            "f10, the frequency 10 dB below the passband",
            "f10 = fc√{[X + √(X² + 36)]/18}, X = 1/Qtc² − 2",
            "our own algebra on Small 1972, JAES 20(10) (from memory)",
            Lumped
        ),
        new("response-peak", "Rise of the response above the passband", "20 lg[Q²/√(Q² − 1/4)] for Q > 1/√2, else 0", Small, Lumped),
        new("reference-efficiency", "Reference efficiency", "η0 = (4π²/c³)·fs³·Vas/Qes", "Small 1972, JAES 20(5) (from memory)", Lumped),
        new(
            "sensitivity",
            "Level for 1 W at 1 m, half space",
            "10 lg[ρc/(2π)/(20 µPa)²] + 10 lg η0",
            "Small 1972, JAES 20(5) (from memory)",
            Lumped
        ),
        new(
            "leak-q",
            "Q of the leak",
            "Q = 2πfc·C·R, C = kVb/(ρc²), R = 12μ·depth/(length·gap³)",
            "Small 1973, JAES 21(5); Beranek 1954, 5.4 (both from memory)",
            "the gap's cube rules"
        ),
        new("hold-test", "Leak from the hold test", "R = S/(V/p0 + Vas/(ρc²))", "our own derivation", "20 % by stopwatch"),
        new(
            "air-mode",
            "Lowest mode of the air inside",
            "c/(2·largest inside length)",
            "Kuttruff 2000, chapter 3",
            "exact for rigid rectangular spaces; fibre lowers it"
        ),
        new(
            "box-network",
            "Lumped network of driver and box",
            "Z = Re + jωLe + Bl²/(Zm + Sd²Za), p = −Sd·u·Za, U = −jωC·p",
            "Beranek 1954, 3 and 8; Small 1972, JAES 20(10), and Small 1973, JAES 21(5) (from memory)",
            "0.01 dB and 0.05 % of a general circuit solver"
        ),
        new(
            "half-space-level",
            "Level into a half space at 1 m",
            "p = jωρU/(2πr)",
            "simple source in an infinite baffle, Beranek 1954, 4 (from memory)",
            "exact for a small source"
        ),
        new("group-delay", "Group delay", "−dφ/dω of the pressure", "definition", "1e-7 of the closed form"),
        new("minimum-impedance", "Lowest impedance in the range", "least |Z| of the network", "IEC 60268-5:2003 (from memory)", "1e-6 of the network"),
        new(
            "maximum-level",
            "Greatest level",
            "level at the least of Xmax, √(P·R) of the coil and √(P·R) of the amplifier",
            "our choice of limits; Small 1972, JAES 20(10) (from memory)",
            "1 to 2 dB"
        ),
        new(
            "maximum-level-at-seat",
            "Greatest level at the seat",
            "half-space maximum + room's transfer − allowance for real walls",
            "our choice",
            "several dB; a rigid room is an idea"
        ),
        new("power-needed", "Power for the wanted level", "V²/rated load at the voltage that gives the level", "IEC 60268-5:2003 (from memory)", Lumped),
        new(
            "port-print-length",
            "Length to print of a port",
            "length − (0.8488 + 0.6133)·radius",
            "8/(3π) after Rayleigh 1896; Levine and Schwinger 1948 (both from memory)",
            "a few per cent"
        ),
        new(
            "tolerance",
            "Band that nine in ten drivers fall in",
            "5 to 95 % of 1 000 draws: Cms ±20 %, Bl, Mms, Re ±5 %, Rms ±30 %",
            "our choice of spreads",
            "the ends to a twentieth of the width"
        ),
    ];
}
