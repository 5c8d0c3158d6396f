namespace Stillwall.Shapes;

/// <summary>Takes a solid apart, or closes it up, where it touches itself in a line.</summary>
internal static class MeshPatches
{
    private const double PatchMm = 0.010;
    private const int PatchHeight = 10;

    /// <summary>Joins, or cuts, 10 µm times a size along each line. An upright line is patched over the height of its slab, a level one 10 µm high.</summary>
    internal static IReadOnlyList<SolidLayer> Apply(IReadOnlyList<SolidLayer> layers, IReadOnlyList<(MeshPoint A, MeshPoint B)> edges, bool join, int size)
    {
        var patches = new Dictionary<(int Layer, Reach Reach), List<Region>>();
        foreach (var (a, b) in edges)
        {
            var around = Region.Along(new GridPoint(a.X, a.Y), new GridPoint(b.X, b.Y), size * PatchMm);
            foreach (var at in Touched(layers, Math.Min(a.Z, b.Z), Math.Max(a.Z, b.Z)))
            {
                (patches.TryGetValue(at, out var list) ? list : patches[at] = []).Add(around);
            }
        }

        return [.. layers.SelectMany((layer, i) => Patched(layer, reach => patches.GetValueOrDefault((i, reach)), join))];
    }

    // A line within a slab is patched there; one where two slabs meet, in the upper of them.
    private static IEnumerable<(int Layer, Reach Reach)> Touched(IReadOnlyList<SolidLayer> layers, int low, int high)
    {
        var all = Enumerable.Range(0, layers.Count);
        return low < high
            ? all.Where(i => layers[i].Bottom < high && layers[i].Top > low).Select(i => (i, Reach.Whole))
            : all
                .Where(i => layers[i].Bottom <= low && layers[i].Top >= low)
                .TakeLast(1)
                .Select(i => (i, layers[i].Bottom == low ? Reach.Foot : Reach.Head));
    }

    private static IEnumerable<SolidLayer> Patched(SolidLayer layer, Func<Reach, List<Region>?> patchesAt, bool join)
    {
        var (foot, whole, head) = (patchesAt(Reach.Foot), patchesAt(Reach.Whole), patchesAt(Reach.Head));
        var thin = layer.Top - layer.Bottom <= 4 * PatchHeight;
        if (thin)
        {
            (foot, whole, head) = (null, All(foot, whole, head), null);
        }

        var region = Patched(layer.Region, whole, join);
        var (bottom, top) = (layer.Bottom + (foot is null ? 0 : PatchHeight), layer.Top - (head is null ? 0 : PatchHeight));
        if (foot is not null)
        {
            yield return new SolidLayer(layer.Bottom, bottom, Patched(region, foot, join));
        }

        yield return whole is null && foot is null && head is null ? layer : new SolidLayer(bottom, top, region);
        if (head is not null)
        {
            yield return new SolidLayer(top, layer.Top, Patched(region, head, join));
        }
    }

    private static List<Region>? All(params List<Region>?[] lists)
    {
        var all = lists.SelectMany(l => l ?? []).ToList();
        return all.Count == 0 ? null : all;
    }

    private static Region Patched(Region region, List<Region>? patches, bool join) =>
        patches is null ? region : region.Combine(patches, join ? (a, b) => a || b : (a, b) => a && !b);

    private enum Reach
    {
        Foot,
        Whole,
        Head,
    }
}
