using Stillwall.Cabinets;
using Stillwall.Parts.Kinds;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Two things that want the same place.</summary>
/// <param name="First">One of them.</param>
/// <param name="Second">The other.</param>
/// <param name="DepthM">Distance from the front face where that begins, m.</param>
/// <param name="AreaM2">Greatest area in common, m².</param>
public sealed record Collision(string First, string Second, double DepthM, double AreaM2);

/// <summary>Looks for things that collide in the assembled cabinet: parts, the driver's body and magnet, the terminal, the wire's path.</summary>
internal static class InteriorCheck
{
    /// <summary>Depth that a terminal cup takes behind the rear face, mm (our choice; the project does not state it).</summary>
    public const double TerminalDepth = 40;

    /// <summary>Least width of the passage that two wires need through a brace, mm (our choice).</summary>
    public const double WirePassage = 10;

    // Areas below this are rounding where parts touch, m².
    private const double Touching = 0.1e-6;

    // What goes through an opening of its own size touches nothing, mm.
    private const double Play = 0.1;

    /// <summary>Compares every pair of things that stand along the depth, slab by slab.</summary>
    /// <returns>What collides; empty where nothing does.</returns>
    /// <remarks>
    /// Model: regions of slabs at the same depth; the driver, as deep in the front as its recess, with its flange where it is sunk, else as a
    /// cylinder as wide as its cut-out over the front half of its depth and as its magnet over the rear half.
    /// Validity: parts printed along the depth; ports are not placed and not looked at. Source: geometry; shape of the driver and depth of the
    /// terminal are our choice. Accuracy: 0.1 mm².
    /// </remarks>
    public static IReadOnlyList<Collision> Of(PartJob job, IReadOnlyList<DrawnPart> parts)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(parts);
        var placed = parts
            .Where(p => p.Kind is not TrimRing)
            .Select(p => (p.Name, Solid: InCabinet.Of(p)!))
            .Where(p => p.Solid is not null)
            .ToList();
        var things = placed.Concat(Bodies(job)).ToList();
        var collisions = new List<Collision>();
        for (var i = 0; i < things.Count; i++)
        {
            for (var j = i + 1; j < things.Count; j++)
            {
                if (Between(things[i], things[j]) is { } collision)
                {
                    collisions.Add(collision);
                }
            }
        }

        return [.. collisions, .. Wire(job)];
    }

    private static Collision? Between((string Name, Solid Solid) one, (string Name, Solid Solid) other)
    {
        if (!MayTouch(one.Solid, other.Solid))
        {
            return null;
        }

        // The same regions come back at every window of a strut.
        var seen = new Dictionary<(Region, Region), double>();
        Collision? worst = null;
        foreach (var a in one.Solid.Layers)
        {
            foreach (var b in other.Solid.Layers.SkipWhile(b => b.TopMm <= a.BottomMm).TakeWhile(b => b.BottomMm < a.TopMm))
            {
                if (!seen.TryGetValue((a.Region, b.Region), out var area))
                {
                    area = a.Region.MayTouch(b.Region) ? a.Region.Combine([b.Region], (inOne, inOther) => inOne && inOther).AreaM2 : 0;
                    seen[(a.Region, b.Region)] = area;
                }

                if (area > Math.Max(Touching, worst?.AreaM2 ?? 0))
                {
                    worst = new Collision(one.Name, other.Name, worst?.DepthM ?? Math.Max(a.BottomMm, b.BottomMm).InMetres(), area);
                }
            }
        }

        return worst;
    }

    private static bool MayTouch(Solid one, Solid other) =>
        one.AddedHeights is { } h
        && other.AddedHeights is { } k
        && h.Bottom < k.Top
        && k.Bottom < h.Top
        && one.AddedExtent is { } e
        && other.AddedExtent is { } f
        && e.Left < f.Right
        && f.Left < e.Right
        && e.Bottom < f.Top
        && f.Bottom < e.Top;

    private static IEnumerable<(string, Solid)> Bodies(PartJob job)
    {
        var s = job.Sizes;
        if (DriverBody.Of(job.Sheet) is { IsDrawn: true } body)
        {
            var (flange, basket, magnet) = body.Steps(s.Sunk) is [var a, var b, var c] ? (a, b, c) : default;
            foreach (var (x, z) in PlateLayout.DriverCentres(s))
            {
                yield return (
                    "driver",
                    Solid
                        .Empty.Add(Region.Disc(x, z, s.Flange), flange.From, flange.To)
                        .Add(Region.Disc(x, z, basket.Diameter - Play), basket.From, basket.To)
                        .Add(Region.Disc(x, z, magnet.Diameter - Play), magnet.From, magnet.To)
                );
            }
        }

        if (job.Geometry.Rear.Layout.Openings is [{ DiameterMm: > 0 } terminal])
        {
            yield return (
                "terminal",
                Solid.Empty.Add((terminal with { DiameterMm = terminal.DiameterMm - Play }).ToRegion(), s.Depth - Math.Max(TerminalDepth, s.Wall), s.Depth)
            );
        }
    }

    // Through the window of a brace there must be a way beside the magnet that stands in it.
    private static IEnumerable<Collision> Wire(PartJob job)
    {
        var s = job.Sizes;
        var window = job.Geometry.Bracing.Window.ToRegion();
        var driver = DriverBody.Of(job.Sheet);
        foreach (var at in job.Geometry.Bracing.FrontsMm.Where(at => driver.Depth > 0 && s.Wall + at < s.Sunk + driver.Depth))
        {
            var free = window.Cut(Region.JoinAll(PlateLayout.DriverCentres(s).Select(c => Region.Disc(c.X, c.Z, driver.Magnet))));
            if (free.Offset(-WirePassage / 2).IsEmpty)
            {
                yield return new Collision("wire", "magnet in the window of a brace", (s.Wall + at).InMetres(), window.AreaM2 - free.AreaM2);
            }
        }
    }
}
