namespace Stillwall.Shapes;

/// <summary>The mesh of a solid, and what it took.</summary>
/// <param name="Watertight">Whether every directed edge is met exactly once by its reverse.</param>
/// <param name="PatchCount">
/// Places where the solid touched itself in a line and 10 µm were joined or cut so that it does not; worth a warning when not zero.
/// </param>
internal sealed record SolidMesh(IndexedMesh Mesh, bool Watertight, int PatchCount)
{
    private const int MostRounds = 8;

    /// <summary>Covers a solid with triangles.</summary>
    /// <returns>The mesh, outward; not watertight only where eight rounds of patches did not help.</returns>
    /// <remarks>
    /// Model: walls along the edges of the slabs and caps where neighbours differ. Where the solid touches itself in a line, 10 µm are joined and cut
    /// there in turn, more where that did not help, over the height of the slab for an upright line, 10 µm high for a level one.
    /// Validity: any solid on the grid of 1 µm. Source: our own construction. Accuracy: the volume is that of the slabs, to the last digits where all
    /// sides are upright; an edge that crosses one of a slab with inclined sides is bent by up to 0.71 µm there.
    /// </remarks>
    public static SolidMesh Of(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var (layers, patches) = (solid.Layers, 0);
        for (var round = 0; ; round++)
        {
            var mesh = MeshBuilder.Build(layers);
            var wrong = MeshEdges.Unmatched(mesh);
            if (wrong.Count == 0 || round == MostRounds)
            {
                return new SolidMesh(mesh, wrong.Count == 0, patches);
            }

            patches += wrong.Count;
            layers = MeshPatches.Apply(layers, [.. wrong.Select(e => (mesh.Points[e.Lesser], mesh.Points[e.Greater]))], join: round % 2 == 0, round + 1);
        }
    }
}
