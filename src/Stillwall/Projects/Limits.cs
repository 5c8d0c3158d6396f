namespace Stillwall.Projects;

/// <summary>The limits that findings are held against; each may be changed in the project file.</summary>
public sealed record Limits : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Mass one person lifts, kg (ISO 11228-1, from memory).</summary>
    [Within(0.5, 200), DefaultFrom("ISO 11228-1:2003, from memory")]
    public double LiftMassKg { get => Told(field); init; } = 25;

    /// <summary>How far a data sheet may disagree with itself, as a ratio (our choice).</summary>
    [Within(0.001, 1), DefaultFrom("our choice")]
    public double ParameterMismatch { get => Told(field); init; } = 0.10;

    /// <summary>Air behind the magnet, m (our choice).</summary>
    [Within(0, 0.2), DefaultFrom("our choice")]
    public double MagnetClearanceM { get => Told(field); init; } = 0.020;

    /// <summary>Least Q of the leak (our choice).</summary>
    [Within(1, 1000), DefaultFrom("our choice")]
    public double LeakQ { get => Told(field); init; } = 20;

    /// <summary>Least packing of the fibre, kg/m³ (common practice).</summary>
    [Within(0, 100), DefaultFrom("common practice, no source")]
    public double FillDensityLowKgM3 { get => Told(field); init; } = 4;

    /// <summary>Greatest packing of the fibre, kg/m³ (common practice).</summary>
    [Within(0, 200), DefaultFrom("common practice, no source")]
    public double FillDensityHighKgM3 { get => Told(field); init; } = 24;

    /// <summary>Lowest air mode inside over the crossover (our choice).</summary>
    [Within(0.1, 20), DefaultFrom("our choice")]
    public double AirModeRatio { get => Told(field); init; } = 2;

    /// <summary>Lowest wall mode over the crossover (our choice).</summary>
    [Within(0.1, 20), DefaultFrom("our choice")]
    public double PanelModeRatio { get => Told(field); init; } = 2;

    /// <summary>Greatest wall sound relative to the cone, dB (our choice).</summary>
    [Within(-120, 20), DefaultFrom("our choice")]
    public double WallToConeDb { get => Told(field); init; } = -30;

    /// <summary>Least keyed share of the skins away from the ends (our choice).</summary>
    [Within(0, 1), DefaultFrom("our choice")]
    public double KeyedFraction { get => Told(field); init; } = 0.10;

    /// <summary>Least safety factor of the joints (our choice).</summary>
    [Within(1, 100), DefaultFrom("our choice")]
    public double JointSafety { get => Told(field); init; } = 4;

    /// <summary>Shear strength that cast is taken to have on the area keyed into plastic, Pa (from memory); your own test replaces it.</summary>
    [Within(1e3, 1e8), DefaultFrom("from memory")]
    public double KeyedStrengthPa { get => Told(field); init; } = 0.5e6;

    /// <summary>Strength that a bed of sealant is taken to have, Pa (from memory); your own test replaces it.</summary>
    [Within(1e3, 1e8), DefaultFrom("from memory")]
    public double SealantStrengthPa { get => Told(field); init; } = 0.1e6;

    /// <summary>Least safety factor of the threaded inserts (our choice).</summary>
    [Within(1, 100), DefaultFrom("our choice")]
    public double InsertSafety { get => Told(field); init; } = 4;

    /// <summary>Force at which one of your own inserts pulled out, N; absent, the low end of what is reported for its thread (from memory).</summary>
    [Within(1, 1e5)]
    public double? InsertPullOutN { get => Told(field); init; }

    /// <summary>Torque that the driver's screws are tightened to, N·m; absent, 30 N times their diameter (our choice).</summary>
    [Within(0.01, 50)]
    public double? ScrewTorqueNM { get => Told(field); init; }

    /// <summary>Least pressure that the screws leave on the driver's gasket, Pa (soft foam, from memory).</summary>
    [Within(0, 1e7), DefaultFrom("soft foam, from memory")]
    public double GasketPressurePa { get => Told(field); init; } = 20e3;

    /// <summary>Least angle at which it tips, ° (our choice).</summary>
    [Within(0, 80), DefaultFrom("our choice")]
    public double TiltDeg { get => Told(field); init; } = 10;

    /// <summary>Greatest clear span over thickness of a skin while printing (common practice).</summary>
    [Within(1, 10000), DefaultFrom("common practice, no source")]
    public double SpanRatio { get => Told(field); init; } = 120;

    /// <summary>Greatest height over thickness of a skin while printing (common practice).</summary>
    [Within(1, 10000), DefaultFrom("common practice, no source")]
    public double WallHeightRatio { get => Told(field); init; } = 200;

    /// <summary>Greatest printed bridge, m (common practice).</summary>
    [Within(0.001, 0.5), DefaultFrom("common practice, no source")]
    public double BridgeM { get => Told(field); init; } = 0.020;

    /// <summary>Greatest overhang from upright, ° (common practice).</summary>
    [Within(0, 90), DefaultFrom("common practice, no source")]
    public double OverhangDeg { get => Told(field); init; } = 45;

    /// <summary>Filament lost to brims, starts and failures, as a ratio (common practice).</summary>
    [Within(0, 2), DefaultFrom("common practice, no source")]
    public double FilamentWaste { get => Told(field); init; } = 0.10;

    /// <summary>Longest single print, s (our choice).</summary>
    [Within(60, 1e7), DefaultFrom("our choice")]
    public double LongestPrintS { get => Told(field); init; } = 86400;

    /// <summary>Greatest bulge of a skin under the pour, m (our choice).</summary>
    [Within(1e-6, 0.1), DefaultFrom("our choice")]
    public double BulgeM { get => Told(field); init; } = 0.0003;

    /// <summary>Least strength over bending stress of a skin (our choice).</summary>
    [Within(1, 100), DefaultFrom("our choice")]
    public double SkinStrength { get => Told(field); init; } = 3;

    /// <summary>Cast mixed beyond the cavity, as a ratio (common practice).</summary>
    [Within(0, 2), DefaultFrom("common practice, no source")]
    public double CastReserve { get => Told(field); init; } = 0.10;

    /// <summary>Least distance of the setting temperature from softening, K (our choice).</summary>
    [Within(0, 100), DefaultFrom("our choice")]
    public double HeatMarginK { get => Told(field); init; } = 10;

    /// <summary>Least passage for the mix, m (common practice).</summary>
    [Within(0.0005, 0.1), DefaultFrom("common practice, no source")]
    public double PassageM { get => Told(field); init; } = 0.006;

    /// <summary>How far above its dry mass the cast may be when it is sealed, as a ratio of the dry mass (our choice).</summary>
    [Within(0.001, 1), DefaultFrom("our choice")]
    public double Dryness { get => Told(field); init; } = 0.05;

    /// <summary>How far the neighbour's level may be over the curve, dB.</summary>
    [Within(-40, 40), DefaultFrom("our choice")]
    public double NeighbourOverDb { get => Told(field); init; }

    /// <summary>Greatest ripple where cabinet and main speakers overlap, ± dB (our choice).</summary>
    [Within(0.05, 20), DefaultFrom("our choice")]
    public double MainSpeakersRippleDb { get => Told(field); init; } = 1.5;

    /// <summary>What real walls take from the rigid room's level, dB (our choice).</summary>
    [Within(0, 20), DefaultFrom("our choice")]
    public double RoomAllowanceDb { get => Told(field); init; } = 3;

    /// <summary>How far the measured resonance may be off, as a ratio (our choice).</summary>
    [Within(0.001, 1), DefaultFrom("our choice")]
    public double ProofResonance { get => Told(field); init; } = 0.07;

    /// <summary>How far the measured Q may be off, as a ratio (our choice).</summary>
    [Within(0.001, 1), DefaultFrom("our choice")]
    public double ProofQ { get => Told(field); init; } = 0.15;

    /// <summary>How far the measured modulus may fall short, as a ratio (our choice).</summary>
    [Within(0.001, 1), DefaultFrom("our choice")]
    public double ProofModulus { get => Told(field); init; } = 0.30;
}
