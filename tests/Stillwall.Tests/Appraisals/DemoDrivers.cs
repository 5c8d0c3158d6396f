using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>The demo's candidate drivers, in the columns and units of its table.</summary>
internal static class DemoDrivers
{
    internal static IReadOnlyList<DriverSheet> All { get; } =
    [
        Row("Wren 5", 130, 3.4, 0.45, 52, 4.2, 0.42, 0.382, 5.2, 85, 6.5, 6.99, 18.46, 80, 82, 116, 140, 4.5, 90, 128, 4, 4, 0.45, 1.35, 54),
        Row("Dipper 5", 130, 6.8, 0.6, 46, 3.8, 0.52, 0.457, 6.8, 88, 5, 8.55, 19.34, 60, 76, 116, 140, 4, 90, 128, 4, 4, 0.42, 1.2, null),
        Row("Sandpiper 6", 165, 3.5, 0.7, 41, 4.8, 0.44, 0.403, 12, 137, 8, 8.28, 33.43, 120, 96, 146, 176, 5, 110, 164, 6, 4, 0.72, 1.95, 78),
        Row("Lapwing 6", 165, 3.3, 0.9, 36, 5.2, 0.5, 0.456, 13.5, 134, 9.5, 7.42, 36.87, 150, 104, 146, 176, 5, 115, 164, 6, 4, 0.8, 2.3, 92),
        Row("Dunlin 8", 200, 3.55, 1.2, 30, 5.5, 0.475, 0.437, 24, 214, 12, 10.4, 76.17, 200, 130, 186, 222, 6, 120, 209, 8, 5, 1.25, 3.1, 119),
        Row("Curlew 8", 200, 3.4, 1.1, 33, 4.6, 0.39, 0.36, 24, 214, 9, 10.7, 62.95, 180, 118, 186, 222, 6, 120, 209, 8, 5, 1.1, 2.8, 88),
        Row("Godwit 8", 200, 6.6, 1.6, 27, 6, 0.55, 0.504, 31, 212, 10, 12.1, 71.45, null, 124, 186, 220, 6, 120, 208, 8, 5, 1.2, 2.9, 104),
        Row("Avocet 10", 250, 3.5, 1.5, 26, 5.8, 0.46, 0.426, 55, 330, 12.5, 11.4, 105.2, 250, 142, 230, 270, 7, 140, 254, 8, 5, 1.9, 4.3, 146),
        Row("Heron 10", 250, 3.6, 1.9, 23, 6.4, 0.42, 0.394, 52, 332, 14, 13.4, 144, 300, 155, 230, 270, 7, 156, 254, 8, 5, 2.2, 5.6, 198),
        Row("Bittern 10", 250, 6.4, null, 29, 4.1, 0.6, 0.523, 58, 326, 8, 12.3, 78.27, 150, 120, 230, 268, 6, 134, 252, 8, 5, 1.6, 3.4, 74),
        Row("Crane 12", 310, 3.5, 2, 22, 6.2, 0.44, 0.411, 98, 500, 13, 14.4, 189.4, 350, 160, 282, 318, 8, 156, 302, 8, 6, 3.2, 6.2, 176),
        Row("Pelican 12", 320, 3.7, 2.6, 20, 7, 0.38, 0.36, 92, 510, 17, 17.6, 253.9, 500, 178, 290, 330, 9, 180, 312, 8, 6, 3.9, 9.4, 289),
    ];

    private static DriverSheet Row(
        string name, double diameter, double re, double? le, double fs, double qms, double qes, double qts, double vas, double sd, double xmax, double bl, double mms, double? power,
        double depth, double cutout, double flange, double flangeThickness, double magnet, double boltCircle, int bolts, double bolt, double displacement, double mass, double? price) => new()
        {
            Name = name,
            DiameterM = diameter / 1e3,
            ReOhm = re,
            LeH = le / 1e3,
            FsHz = fs,
            Qms = qms,
            Qes = qes,
            Qts = qts,
            VasM3 = vas / 1e3,
            SdM2 = sd / 1e4,
            XmaxM = xmax / 1e3,
            BlTM = bl,
            MmsKg = mms / 1e3,
            PowerW = power,
            DepthM = depth / 1e3,
            CutoutM = cutout / 1e3,
            FlangeM = flange / 1e3,
            FlangeThicknessM = flangeThickness / 1e3,
            MagnetDiameterM = magnet / 1e3,
            BoltCircleM = boltCircle / 1e3,
            Bolts = bolts,
            BoltM = bolt / 1e3,
            DisplacementM3 = displacement / 1e3,
            MassKg = mass,
            Price = price,
        };
}
