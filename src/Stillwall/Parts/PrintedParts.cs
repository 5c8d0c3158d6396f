using Stillwall.Numerics;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>A part that has been drawn and covered with triangles.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="File">File it is written to.</param>
/// <param name="VolumeM3">Volume within its surface, m³.</param>
/// <param name="MassKg">Mass, kg; null without a skin material.</param>
/// <param name="SizeM">Size as printed: x, y on the bed, z up, m.</param>
/// <param name="Fits">Whether it fits the printer with the edge margin on all four sides; null without a printer.</param>
/// <param name="Triangles">Number of triangles.</param>
/// <param name="Watertight">Whether its surface is closed.</param>
/// <param name="PrintSeconds">Least printing time, s; null without the printer's flow.</param>
public sealed record PrintedPart(
    string Name,
    string File,
    [property: ComputedBy("part-volume")] double VolumeM3,
    [property: ComputedBy("part-mass", "parts[].volume_m3")] double? MassKg,
    [property: ComputedBy("part-size")] IReadOnlyList<double> SizeM,
    bool? Fits,
    int Triangles,
    bool Watertight,
    [property: ComputedBy("print-time", "parts[].volume_m3")] double? PrintSeconds
);

/// <summary>A part's surface, its lowest corner at the origin, and where it goes in the cabinet.</summary>
/// <param name="Place">Where it goes; null for moulds, coupons and gauges.</param>
internal sealed record MeshedPart(PartKind Kind, string Name, SolidMesh Surface, Placement? Place)
{
    /// <summary>Covers a drawn part with triangles, turned on the bed where it fits better that way.</summary>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <remarks>Source: geometry. Accuracy: the volume is that of the slabs to a part in a million.</remarks>
    public static MeshedPart Of(DrawnPart drawn, Printer? printer)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        var (solid, place) = (SolidMesh.Of(drawn.Solid), drawn.Place);
        if (printer is not null && PrinterFit.LiesBetterTurned(solid.Mesh.SizeM, printer))
        {
            (solid, place) = (solid with { Mesh = solid.Mesh.Placed(Placement.AsPrinted.TurnedAboutZ(1)) }, place?.TurnedFirst(-1));
        }

        var (x, y) = (solid.Mesh.Points.Min(p => p.X).OffGrid(), solid.Mesh.Points.Min(p => p.Y).OffGrid());
        var onBed = solid with { Mesh = solid.Mesh.Placed(Placement.AsPrinted.Shifted(-x, -y, 0)) };
        return new MeshedPart(drawn.Kind, drawn.Name, onBed, place?.ShiftedFirst(x, y, 0));
    }

    /// <summary>Its figures.</summary>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <param name="skinDensityKgM3">Density of the plastic, kg/m³; null where no skin is stated.</param>
    /// <param name="extension">Extension of its file, without the point.</param>
    /// <remarks>Source: geometry; the time is common practice, no source. Accuracy: times are a floor.</remarks>
    public PrintedPart Figures(Printer? printer, double? skinDensityKgM3, string extension)
    {
        var (volume, size) = (Surface.Mesh.VolumeM3, Surface.Mesh.SizeM);
        return new PrintedPart(
            Name: Name,
            File: $"{Name.Replace(' ', '-')}.{extension}",
            VolumeM3: volume,
            MassKg: volume * skinDensityKgM3,
            SizeM: size,
            Fits: PrinterFit.Fits(size, printer),
            Triangles: Surface.Mesh.Triangles.Length,
            Watertight: Surface.Watertight,
            PrintSeconds: PartList.PrintSeconds(volume, size[2], printer)
        );
    }
}

/// <summary>Everything to print, as drawn.</summary>
/// <param name="Parts">The parts in the order in which they are built in, then moulds and gauges.</param>
/// <param name="Joints">Beads of sealant.</param>
/// <param name="Collisions">What collides in the assembled cabinet.</param>
/// <param name="CavityVolumeM3">Space between the skins that the cast fills, m³.</param>
/// <param name="NetVolumeM3">Net acoustic volume, m³; null where it is not known.</param>
public sealed record PrintedParts(
    IReadOnlyList<PrintedPart> Parts,
    IReadOnlyList<SealantBead> Joints,
    IReadOnlyList<Collision> Collisions,
    [property: ComputedBy("cavity-between-skins")] double CavityVolumeM3,
    [property: ComputedBy("net-volume")] double? NetVolumeM3
);
