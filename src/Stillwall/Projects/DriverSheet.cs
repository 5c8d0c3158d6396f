namespace Stillwall.Projects;

/// <summary>A driver's data sheet as stated, in the file or in a row of <c>drivers.csv</c>; what is not stated is null.</summary>
/// <remarks>
/// <see cref="ReOhm"/>, <see cref="SdM2"/> and either fs, Qms, Qes, Vas or Bl, Mms, Cms, Rms suffice. Vas refers to 20 °C and 101 325 Pa.
/// Parameters after IEC 60268-5:2003.
/// </remarks>
public sealed record DriverSheet : Stated
{
    /// <summary>Name of the driver.</summary>
    [Column("name"), DefaultFrom("none")]
    public string Name { get => Told(field); init; } = "unnamed driver";

    /// <summary>A remark of the maker's; read and kept.</summary>
    public string? Note { get => Told(field); init; }

    /// <summary>Nominal diameter, m.</summary>
    [Column("diameter_mm", 1e-3), Within(0.01, 1)]
    public double? DiameterM { get => Told(field); init; }

    /// <summary>Resistance of the coil at direct current, ohm.</summary>
    [Column("re_ohm"), Within(0.1, 200)]
    public double? ReOhm { get => Told(field); init; }

    /// <summary>Inductance of the coil, H.</summary>
    [Column("le_mh", 1e-3), Within(0, 0.1)]
    public double? LeH { get => Told(field); init; }

    /// <summary>Resonance in free air, Hz.</summary>
    [Column("fs_hz"), Within(1, 2000)]
    public double? FsHz { get => Told(field); init; }

    /// <summary>Mechanical Q.</summary>
    [Column("qms"), Within(0.05, 100)]
    public double? Qms { get => Told(field); init; }

    /// <summary>Electrical Q.</summary>
    [Column("qes"), Within(0.02, 100)]
    public double? Qes { get => Told(field); init; }

    /// <summary>Total Q as printed, for comparison.</summary>
    [Column("qts"), Within(0.02, 100)]
    public double? Qts { get => Told(field); init; }

    /// <summary>Air volume with the compliance of the suspension, m³.</summary>
    [Column("vas_l", 1e-3), Within(1e-5, 10)]
    public double? VasM3 { get => Told(field); init; }

    /// <summary>Area of the cone, m².</summary>
    [Column("sd_cm2", 1e-4), Within(1e-4, 1)]
    public double? SdM2 { get => Told(field); init; }

    /// <summary>Greatest linear excursion, one way, peak, m.</summary>
    [Column("xmax_mm", 1e-3), Within(1e-5, 0.1)]
    public double? XmaxM { get => Told(field); init; }

    /// <summary>Force factor, N/A (T·m).</summary>
    [Column("bl_tm"), Within(0.1, 100)]
    public double? BlTM { get => Told(field); init; }

    /// <summary>Moving mass with its air load, kg.</summary>
    [Column("mms_g", 1e-3), Within(1e-4, 5)]
    public double? MmsKg { get => Told(field); init; }

    /// <summary>Compliance of the suspension, m/N.</summary>
    [Within(1e-6, 0.1)]
    public double? CmsMPerN { get => Told(field); init; }

    /// <summary>Mechanical resistance of the suspension, kg/s.</summary>
    [Within(1e-3, 1000)]
    public double? RmsKgS { get => Told(field); init; }

    /// <summary>Rated power, V²/R at the rated load, W.</summary>
    [Column("power_w"), Within(0.1, 20000)]
    public double? PowerW { get => Told(field); init; }

    /// <summary>Depth behind the mounting face, m.</summary>
    [Column("depth_mm", 1e-3), Within(0.005, 1)]
    public double? DepthM { get => Told(field); init; }

    /// <summary>Diameter of the cut-out, m.</summary>
    [Column("cutout_mm", 1e-3), Within(0.01, 1)]
    public double? CutoutM { get => Told(field); init; }

    /// <summary>Outside diameter of the flange, m.</summary>
    [Column("flange_mm", 1e-3), Within(0.01, 1)]
    public double? FlangeM { get => Told(field); init; }

    /// <summary>Thickness of the flange, m.</summary>
    [Column("flange_thickness_mm", 1e-3), Within(0, 0.1)]
    public double? FlangeThicknessM { get => Told(field); init; }

    /// <summary>Diameter of the magnet, m.</summary>
    [Column("magnet_diameter_mm", 1e-3), Within(0.005, 1)]
    public double? MagnetDiameterM { get => Told(field); init; }

    /// <summary>Diameter of the bolt circle, m.</summary>
    [Column("bolt_circle_mm", 1e-3), Within(0.01, 1)]
    public double? BoltCircleM { get => Told(field); init; }

    /// <summary>Number of bolts.</summary>
    [Column("bolts"), Within(0, 64)]
    public int? Bolts { get => Told(field); init; }

    /// <summary>Thread diameter of the bolts, m.</summary>
    [Column("bolt_mm", 1e-3), Within(0.001, 0.02)]
    public double? BoltM { get => Told(field); init; }

    /// <summary>Volume the driver takes inside the cabinet, m³.</summary>
    [Column("displacement_l", 1e-3), Within(0, 0.2)]
    public double? DisplacementM3 { get => Told(field); init; }

    /// <summary>Mass of the driver, kg.</summary>
    [Column("mass_kg"), Within(0.01, 100)]
    public double? MassKg { get => Told(field); init; }

    /// <summary>Price, in the project's currency.</summary>
    [Column("price"), Within(0, 1e6)]
    public double? Price { get => Told(field); init; }
}
