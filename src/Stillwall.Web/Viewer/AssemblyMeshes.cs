using System.Runtime.InteropServices;
using System.Text.Json;
using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Figures.Sheets;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Web.Viewer;

/// <summary>The printed parts in their places, as the page turns them: figures for people, a run of bytes for the screen.</summary>
/// <param name="Parts">Figures of the parts that have a place, in the order of the bytes.</param>
/// <param name="Bytes">
/// Length of the head as a 32-bit number; the head as JSON, filled up with blanks to a multiple of four; then for each body its corners in mm (x, y,
/// z as 32-bit floats), triangles (three indices), sharp edges (two indices) and round edges (two corners, two triangles) as 32-bit numbers, all
/// little-endian.
/// </param>
internal sealed record AssemblyMeshes(IReadOnlyList<PrintedPart> Parts, byte[] Bytes)
{
    private const string Cast = "cast";

    // Drawing takes seconds, so the last few are kept; they weigh some megabytes each.
    private static readonly LatestFew<Stated, AssemblyMeshes> Drawn = new(4);

    /// <summary>Draws the parts of a project, once for all states of it that agree in what the parts depend on.</summary>
    /// <returns>The parts; null where the cabinet is not known.</returns>
    internal static AssemblyMeshes? Of(Facts facts) =>
        facts.Geometry is { } geometry && facts.Project.Cabinet is { } cabinet
            ? Drawn.Get(new Stated(geometry.Sizes, cabinet.Accents, cabinet.Feet, facts.Sheet, facts.Project.Brief.Printer, facts.Skin?.DensityKgM3), () =>
                Draw(facts, geometry, cabinet)
            )
            : null;

    private static AssemblyMeshes Draw(Facts facts, CabinetGeometry geometry, Cabinet cabinet)
    {
        var printer = facts.Project.Brief.Printer;
        var job = facts.PartJob!;
        var parts = PartDrawings.Of(job).Where(p => p.Place is not null).AsParallel().AsOrdered().Select(p => MeshedPart.Of(p, printer)).ToList();
        var placed = parts.Select(p => (p.Kind, p.Name, Mesh: p.Surface.Mesh.Placed(p.Place!))).ToList();
        var shifts = ExplodedPlaces.Of([
            .. placed.Select(p => new PlacedPart(p.Kind, p.Mesh.Points.Min(c => c.Y).OffGrid(), p.Mesh.Points.Max(c => c.Y).OffGrid())),
        ]);
        var bodies = placed.Zip(shifts, (p, shift) => new Body(p.Name, p.Mesh, shift)).ToList();
        var core = geometry.Sizes.Core > 0 ? new Body(Cast, CastBody.Of(geometry), default) : null;
        return new AssemblyMeshes(
            [.. parts.Select(p => p.Figures(printer, facts.Skin?.DensityKgM3, "3mf"))],
            Packed([.. bodies, .. core is null ? [] : new[] { core }])
        );
    }

    private static byte[] Packed(IReadOnlyList<Body> bodies)
    {
        var edges = bodies.AsParallel().AsOrdered().Select(b => b.Name == Cast ? new FeatureEdges([], []) : FeatureEdges.Of(b.Mesh)).ToList();
        var head = JsonSerializer.SerializeToUtf8Bytes(
            new Head([
                .. bodies.Zip(edges, (b, e) =>
                    new BodyHead(
                        Name: b.Name,
                        Points: b.Mesh.Points.Length,
                        Triangles: b.Mesh.Triangles.Length,
                        Sharp: e.Sharp.Count,
                        Round: e.Round.Count,
                        ApartY: b.Apart.YMm,
                        ApartZ: b.Apart.ZMm,
                        IsCast: b.Name == Cast
                    )
                ),
            ]),
            JsonSerializerOptions.Web
        );
        var padded = (head.Length + 3) / 4 * 4;
        using var stream = new MemoryStream();
        stream.Write(MemoryMarshal.AsBytes<int>([padded]));
        stream.Write(head);
        stream.Write(Enumerable.Repeat((byte)' ', padded - head.Length).ToArray());
        foreach (var (body, lines) in bodies.Zip(edges))
        {
            stream.Write(MemoryMarshal.AsBytes<float>([.. body.Mesh.Points.SelectMany(p => new[] { p.X / 1000f, p.Y / 1000f, p.Z / 1000f })]));
            stream.Write(MemoryMarshal.AsBytes(body.Mesh.Triangles.AsSpan()));
            stream.Write(MemoryMarshal.AsBytes<SharpEdge>([.. lines.Sharp]));
            stream.Write(MemoryMarshal.AsBytes<RoundEdge>([.. lines.Round]));
        }

        return stream.ToArray();
    }

    private sealed record Stated(CabinetSizes Sizes, Accents? Accents, Feet? Feet, DriverSheet? Sheet, Printer? Printer, double? DensityKgM3);

    private sealed record Body(string Name, IndexedMesh Mesh, ApartShift Apart);

    private sealed record Head(IReadOnlyList<BodyHead> Bodies);

    private sealed record BodyHead(string Name, int Points, int Triangles, int Sharp, int Round, double ApartY, double ApartZ, bool IsCast);
}

/// <summary>The room between the skins, openings left out, plastic not: what stands in it is drawn over it.</summary>
internal static class CastBody
{
    /// <summary>The room as a mesh in its place, mm.</summary>
    internal static IndexedMesh Of(CabinetGeometry geometry)
    {
        var s = geometry.Sizes;
        var (cavity, inner) = (s.Outline.Inset(s.OuterSkin).ToRegion(), s.Outline.Inset(s.OuterSkin + s.Core).ToRegion());
        Region Wall(PlateSection plate) => plate.Layout.Standing.Aggregate(cavity, (region, circle) => region.Cut(circle.ToRegion()));
        var (from, to) = (s.OuterSkin, s.OuterSkin + s.Core);

        // Heights run from the rear to the front, as a part that was printed with its rear end down.
        var solid = Solid
            .Empty.Add(Wall(geometry.Rear), from, to)
            .Add(cavity.Cut(inner), to, s.Depth - to)
            .Add(Wall(geometry.Front), s.Depth - to, s.Depth - from);
        return SolidMesh.Of(solid).Mesh.Placed(Placement.AsPrinted.TurnedAboutX(1).Shifted(0, s.Depth, 0));
    }
}
