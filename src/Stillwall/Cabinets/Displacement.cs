using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>What stands inside the cabinet besides its braces.</summary>
internal static class Displacement
{
    /// <summary>Volume a driver takes inside.</summary>
    /// <returns>The stated volume, or an estimate from cut-out and depth, or from the cone's area alone, m³.</returns>
    /// <remarks>
    /// All of it counts inside; the air in the front's opening does not, so that a recess, which sinks the driver into that opening by millimetres,
    /// changes nothing here.
    /// Model: 0.35 of the cylinder of cut-out and depth; where they are not stated, a cut-out as wide as the cone and a depth of 0.7 of it.
    /// Source: our choice, no source. Accuracy: ±40 %, a few per cent of a small cabinet.
    /// </remarks>
    public static double DriverM3(DriverSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var cone = Math.Sqrt(4 * (sheet.SdM2 ?? 0) / Math.PI);
        var cutout = sheet.CutoutM ?? cone;
        return sheet.DisplacementM3 ?? 0.35 * Math.PI / 4 * cutout * cutout * (sheet.DepthM ?? 0.7 * cutout);
    }

    /// <summary>Volume the bodies of all ports take inside.</summary>
    /// <param name="port">The stated port; null for none.</param>
    /// <returns>Air and tube wall of the printed length, m³.</returns>
    /// <remarks>Source: geometry; the wall is our choice.</remarks>
    public static double PortM3(Port? port)
    {
        var area = port?.AreaM2 ?? Math.PI / 4 * port?.DiameterM * port?.DiameterM;
        if (port?.LengthM is not { } length || area is not { } a || PortSize.PrintLengthM(length, a) is not { } printed)
        {
            return 0;
        }

        var outer = Math.Sqrt(4 * a / Math.PI) + 2e-3 * BuildUp.PortWall;
        return port.Count * Math.PI / 4 * outer * outer * Math.Max(0, printed);
    }

    /// <summary>Volume a second, passive cone takes inside.</summary>
    /// <param name="cone">The stated cone; null for none.</param>
    /// <returns>A quarter of a cylinder as wide as the cone and as deep, m³.</returns>
    /// <remarks>Source: our choice, no source. Accuracy: ±50 %.</remarks>
    public static double PassiveRadiatorM3(PassiveRadiator? cone)
    {
        if (cone is null)
        {
            return 0;
        }

        Require.Positive(cone.SdM2);
        return 0.25 * cone.SdM2 * Math.Sqrt(4 * cone.SdM2 / Math.PI);
    }
}
