namespace Stillwall.Projects;

/// <summary>What is asked: printer, spot, listening aim, amplifier, main speakers, air, room and neighbour.</summary>
public sealed record Brief : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>The printer's build space and how it lays material.</summary>
    public Printer? Printer { get => Told(field); init; }

    /// <summary>The place the cabinet must stand in.</summary>
    public Spot? Spot { get => Told(field); init; }

    /// <summary>What is to be heard: how low, how loud, how far away.</summary>
    public Aim? Aim { get => Told(field); init; }

    /// <summary>The level of everyday listening.</summary>
    public Everyday? Everyday { get => Told(field); init; }

    /// <summary>The amplifier that drives the cabinet.</summary>
    public Amplifier? Amplifier { get => Told(field); init; }

    /// <summary>The main speakers that the cabinet joins.</summary>
    public MainSpeakers? MainSpeakers { get => Told(field); init; }

    /// <summary>State of the air; 20 °C and 101 325 Pa unless stated.</summary>
    public AirState Air { get => Told(field); init; } = new();

    /// <summary>The listening room.</summary>
    public Room? Room { get => Told(field); init; }

    /// <summary>The room behind the party wall.</summary>
    public Neighbour? Neighbour { get => Told(field); init; }
}

/// <summary>The printer's build space and how it lays material.</summary>
public sealed record Printer : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Width of the build space, m.</summary>
    [Within(0.05, 3)]
    public double? BuildWidthM { get => Told(field); init; }

    /// <summary>Depth of the build space, m.</summary>
    [Within(0.05, 3)]
    public double? BuildDepthM { get => Told(field); init; }

    /// <summary>Height of the build space, m.</summary>
    [Within(0.05, 3)]
    public double? BuildHeightM { get => Told(field); init; }

    /// <summary>Strip left free at each edge of the bed, brim included, m.</summary>
    [Within(0, 0.1), DefaultFrom("our choice")]
    public double EdgeMarginM { get => Told(field); init; } = 0.005;

    /// <summary>Bore of the nozzle, m.</summary>
    [Within(0.0001, 0.002), DefaultFrom("the commonest nozzle; common practice, no source")]
    public double NozzleM { get => Told(field); init; } = 0.0004;

    /// <summary>Height of one printed layer, m.</summary>
    [Within(0.00005, 0.002), DefaultFrom("half the usual nozzle; common practice, no source")]
    public double LayerM { get => Told(field); init; } = 0.0002;

    /// <summary>Steady flow of melted plastic, mm³/s (a bare number in the file).</summary>
    [Key("flow_mm3_s"), Within(0.5, 200)]
    public double? Flow { get => Told(field); init; }

    /// <summary>Time lost at each layer, s.</summary>
    [Within(0, 600), DefaultFrom("common practice, no source")]
    public double LayerPauseS { get => Told(field); init; } = 4;
}

/// <summary>The place the cabinet must stand in.</summary>
public sealed record Spot : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Width of the spot, m.</summary>
    [Within(0.05, 10)]
    public double? WidthM { get => Told(field); init; }

    /// <summary>Height of the spot, m.</summary>
    [Within(0.05, 10)]
    public double? HeightM { get => Told(field); init; }

    /// <summary>Depth of the spot, m.</summary>
    [Within(0.05, 10)]
    public double? DepthM { get => Told(field); init; }

    /// <summary>Air to be left on every side of the cabinet, m.</summary>
    [Within(0, 1), DefaultFrom("none")]
    public double ClearanceM { get => Told(field); init; }

    /// <summary>Room behind the cabinet for plug and cable, besides the clearance, m.</summary>
    [Within(0, 1), DefaultFrom("none")]
    public double PlugSpaceM { get => Told(field); init; }
}

/// <summary>What is to be heard.</summary>
public sealed record Aim : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>The lowest note that must be heard, Hz.</summary>
    [Within(5, 300)]
    public double? LowestHz { get => Told(field); init; }

    /// <summary>Where the main speakers take over, Hz.</summary>
    [Within(20, 1000)]
    public double? CrossoverHz { get => Told(field); init; }

    /// <summary>Sine level wanted at the lowest note, dB re 20 µPa rms.</summary>
    [Within(20, 140)]
    public double? LevelDb { get => Told(field); init; }

    /// <summary>Listening distance, m.</summary>
    [Within(0.1, 50), DefaultFrom("our choice")]
    public double DistanceM { get => Told(field); init; } = 2;

    /// <summary>Wanted Q of the closed system.</summary>
    [Within(0.2, 3), DefaultFrom("second-order Butterworth, our choice")]
    public double SystemQ { get => Told(field); init; } = 0.707;

    /// <summary>How far the system Q may be from the wanted one.</summary>
    [Within(0.005, 1), DefaultFrom("our choice")]
    public double SystemQTolerance { get => Told(field); init; } = 0.12;
}

/// <summary>Everyday listening: the level that the neighbour question is asked for.</summary>
public sealed record Everyday : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Level at the seat: unweighted energy sum of the third-octaves 20 to 160 Hz, dB.</summary>
    [Within(0, 130)]
    public double? LevelDb { get => Told(field); init; }

    /// <summary>What is played.</summary>
    [OneOf("speech", "acoustic-music", "music", "deep-music", "pink", "own"), DefaultFrom("our choice")]
    public string Programme { get => Told(field); init; } = "music";

    /// <summary>Own spectrum: relative level in the ten third-octaves 20 to 160 Hz, dB.</summary>
    [Within(-200, 200), Count(10)]
    public IReadOnlyList<double>? SpectrumDb { get => Told(field); init; }

    /// <summary>Hours of listening a day (a bare number in the file).</summary>
    [Within(0, 24)]
    public double? Hours { get => Told(field); init; }

    /// <summary>How far peaks rise above the long-term level, dB; the programme's own where absent.</summary>
    [Within(3, 40)]
    public double? CrestDb { get => Told(field); init; }

    /// <summary>A second level, for the hours in which the house sleeps.</summary>
    public QuietHours? QuietHours { get => Told(field); init; }
}

/// <summary>The hours in which the house sleeps: a second everyday level, held against limits of its own.</summary>
public sealed record QuietHours : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Hour of the day at which they begin (a bare number in the file).</summary>
    [Key("from"), Within(0, 24)]
    public double? FromHours { get => Told(field); init; }

    /// <summary>Hour of the day at which they end (a bare number in the file).</summary>
    [Key("to"), Within(0, 24)]
    public double? ToHours { get => Told(field); init; }

    /// <summary>Level at the seat in these hours, in the measure of the everyday level, dB.</summary>
    [Within(0, 130)]
    public double? LevelDb { get => Told(field); init; }

    /// <summary>The curve of these hours; the neighbour's where absent.</summary>
    [OneOf("hearing-threshold", "hearing-threshold-2003", "night-rooms-se-2014", "night-rooms-fi-2003",
        "night-rooms-uk-2005", "audibility-nl-1999", "threshold-de-1997", "own")]
    public string? Curve { get => Told(field); init; }

    /// <summary>How far above that curve the level may be, dB.</summary>
    [Within(-40, 40), DefaultFrom("none")]
    public double AllowanceDb { get => Told(field); init; }

    /// <summary>Greatest A-weighted level of the bass next door in these hours, dB.</summary>
    [Within(-50, 130)]
    public double? AWeightedLimitDb { get => Told(field); init; }

    /// <summary>Greatest C-weighted level of the bass next door in these hours, dB.</summary>
    [Within(-50, 130)]
    public double? CWeightedLimitDb { get => Told(field); init; }
}

/// <summary>The amplifier that drives the cabinet.</summary>
public sealed record Amplifier : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Power into the rated load, W.</summary>
    [Within(0.1, 20000)]
    public double? PowerW { get => Told(field); init; }

    /// <summary>Load at which the power is stated, ohm.</summary>
    [Within(0.5, 64)]
    public double? RatedLoadOhm { get => Told(field); init; }

    /// <summary>Least load the amplifier may drive, ohm.</summary>
    [Within(0.1, 64)]
    public double? MinimumLoadOhm { get => Told(field); init; }
}

/// <summary>The main speakers that the cabinet joins.</summary>
public sealed record MainSpeakers : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Their low-frequency corner, Hz.</summary>
    [Within(10, 1000)]
    public double? CornerHz { get => Told(field); init; }

    /// <summary>Q of their low-frequency roll-off.</summary>
    [Within(0.2, 5), DefaultFrom("second-order Butterworth, our choice")]
    public double Q { get => Told(field); init; } = 0.707;

    /// <summary>Level at 1 m for 2.83 V, dB.</summary>
    [Within(50, 120)]
    public double? SensitivityDb { get => Told(field); init; }

    /// <summary>The left one: x, y, z in the room, m.</summary>
    [Within(0, 100), Count(3)]
    public IReadOnlyList<double>? LeftAtM { get => Told(field); init; }

    /// <summary>The right one: x, y, z in the room, m.</summary>
    [Within(0, 100), Count(3)]
    public IReadOnlyList<double>? RightAtM { get => Told(field); init; }
}

/// <summary>State of the air.</summary>
public sealed record AirState : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Temperature, °C.</summary>
    [Within(-40, 60), DefaultFrom("our choice")]
    public double TemperatureC { get => Told(field); init; } = 20;

    /// <summary>Pressure, Pa.</summary>
    [Within(30000, 120000), DefaultFrom("standard atmosphere, ISO 2533:1975 (from memory)")]
    public double PressurePa { get => Told(field); init; } = 101325;
}

/// <summary>The listening room, a rectangle with a flat ceiling.</summary>
public sealed record Room : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Width, along the room's x axis, m.</summary>
    [Within(0.5, 100)]
    public double? WidthM { get => Told(field); init; }

    /// <summary>Length, along the room's y axis, m.</summary>
    [Within(0.5, 100)]
    public double? LengthM { get => Told(field); init; }

    /// <summary>Height, m.</summary>
    [Within(0.5, 30)]
    public double? HeightM { get => Told(field); init; }

    /// <summary>Time in which every mode but the uniform one decays by 60 dB, s.</summary>
    [Within(0.05, 20)]
    public double? DecayTimeS { get => Told(field); init; }

    /// <summary>Time in which the uniform pressure decays by 60 dB, s; the room's decay time where absent.</summary>
    [Within(0.01, 100), DefaultFrom("the room’s decay time")]
    public double? PressureDecayTimeS { get => Told(field); init; }

    /// <summary>Centre of the cone: x, y, z in the room, m.</summary>
    [Within(0, 100), Count(3)]
    public IReadOnlyList<double>? CabinetAtM { get => Told(field); init; }

    /// <summary>The listener's ears: x, y, z in the room, m.</summary>
    [Within(0, 100), Count(3)]
    public IReadOnlyList<double>? SeatAtM { get => Told(field); init; }
}

/// <summary>The room behind the party wall, and what may be heard there.</summary>
public sealed record Neighbour : Stated
{
    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Kind of party wall; with leaves the mass decides.</summary>
    [OneOf("brick-125-plastered", "brick-255-plastered", "brick-360-plastered", "brick-cavity-280",
        "concrete-100", "concrete-200", "concrete-300", "studs-plaster", "plasterboard-75",
        "heavy-wall", "heavy-floor", "lightweight-wall", "floating-floor-on-slab", "timber-floor", "one-leaf", "two-leaves", "own")]
    public string? Partition { get => Told(field); init; }

    /// <summary>Own wall: sound reduction in the ten third-octaves 20 to 160 Hz, dB.</summary>
    [Within(0, 120), Count(10)]
    public IReadOnlyList<double>? ReductionDb { get => Told(field); init; }

    /// <summary>Mass by area of the wall's leaf, or of the one on your side, kg/m².</summary>
    [Within(1, 3000)]
    public double? LeafKgM2 { get => Told(field); init; }

    /// <summary>Mass by area of the other leaf, kg/m².</summary>
    [Within(1, 3000)]
    public double? SecondLeafKgM2 { get => Told(field); init; }

    /// <summary>Clear distance between the leaves, m.</summary>
    [Within(0.001, 2)]
    public double? GapM { get => Told(field); init; }

    /// <summary>Sound reduction of all other paths together, along floor, ceiling and side walls, dB; none where absent.</summary>
    [Within(10, 120)]
    public double? FlankingDb { get => Told(field); init; }

    /// <summary>Area of the party wall, m².</summary>
    [Within(0.1, 500)]
    public double? AreaM2 { get => Told(field); init; }

    /// <summary>Volume of the neighbour's room, m³.</summary>
    [Within(1, 10000)]
    public double? RoomVolumeM3 { get => Told(field); init; }

    /// <summary>Decay time of the neighbour's room, s.</summary>
    [Within(0.05, 20)]
    public double? DecayTimeS { get => Told(field); init; }

    /// <summary>The curve that the neighbour's level is held against.</summary>
    [OneOf("hearing-threshold", "hearing-threshold-2003", "night-rooms-se-2014", "night-rooms-fi-2003",
        "night-rooms-uk-2005", "audibility-nl-1999", "threshold-de-1997", "own")]
    public string? Curve { get => Told(field); init; }

    /// <summary>Own curve: level in the ten third-octaves 20 to 160 Hz, dB.</summary>
    [Key("curve_levels"), Within(-50, 150), Count(10)]
    public IReadOnlyList<double>? CurveDb { get => Told(field); init; }

    /// <summary>How far above the curve the level may be, dB.</summary>
    [Within(-40, 40), DefaultFrom("none")]
    public double AllowanceDb { get => Told(field); init; }

    /// <summary>Greatest A-weighted level of the bass next door, beside or instead of a curve, dB.</summary>
    [Within(-50, 130)]
    public double? AWeightedLimitDb { get => Told(field); init; }

    /// <summary>Greatest C-weighted level of the bass next door, beside or instead of a curve, dB.</summary>
    [Within(-50, 130)]
    public double? CWeightedLimitDb { get => Told(field); init; }
}
