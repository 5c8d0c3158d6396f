using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>Draws pieces that stand across the wall: along the path, and from the inner skin outwards.</summary>
/// <param name="core">Thickness of the core, mm.</param>
/// <param name="corners">The quarters of the core ring, lower left, lower right, upper left, upper right, to clip what stands at a corner.</param>
internal sealed class WallPen(RoundedFrame path, double core, IReadOnlyList<Lazy<Region>> corners)
{
    /// <summary>How far past its skin a piece at a corner is drawn before the ring clips it, mm.</summary>
    internal const double Past = 1.5;

    private readonly KeyGrid grid = KeyGrid.Of(core);

    // A place as near as this to the middle of the lower or upper side stands on it, mm.
    private const double OnMirror = 1e-6;

    /// <summary>Pieces at places that lie alike left and right: those on the right are drawn, those on the left are their mirror images.</summary>
    internal IReadOnlyList<Region> OnBothSides(IEnumerable<double> places, Func<double, IEnumerable<Region>> draw)
    {
        var (middle, half) = ((path.Left + path.Right) / 2, path.Length / 2);
        var drawn = new List<Region>();
        foreach (var at in places.Select(p => p % path.Length).Where(p => p <= half + OnMirror || p >= path.Length - OnMirror))
        {
            var single = at <= OnMirror || at >= half - OnMirror;
            foreach (var piece in draw(at))
            {
                drawn.Add(piece);
                if (!single)
                {
                    drawn.Add(piece.Mirrored(middle));
                }
            }
        }

        return drawn;
    }

    /// <summary>Area that pieces at the corners have more than those on flat walls, m²; a piece that there is no room for counts not at all.</summary>
    internal double MoreAtCornersM2(IEnumerable<double> places, double width, Func<double, Region> draw, double flat) =>
        OnBothSides(places.Where(at => path.At(at).ToCorner < width / 2), at => [draw(at)]).Where(r => !r.IsEmpty).Sum(r => r.AreaM2 - flat.InSquareMetres());

    /// <summary>A block across the wall.</summary>
    internal Region Block(double at, double from, double to, double low, double high) => Outlined(at, [(from, low), (to, low), (to, high), (from, high)]);

    /// <summary>What lies within a reach of a skin, at places along it: level strips as wide as asked, drawn past the skin.</summary>
    internal Region Reach(IEnumerable<double> places, double width, double reach, bool onOuter)
    {
        var (low, high) = onOuter ? (core - reach, core + Past) : (-Past, reach);
        return Region.Apart(places.Select(at => Drawn(At(at), [(-width / 2, low), (width / 2, low), (width / 2, high), (-width / 2, high)])));
    }

    /// <summary>An undercut key on one of the skins.</summary>
    internal Region Key(double at, bool onOuter, double hair = 0)
    {
        var (foot, head, height) = (BuildUp.KeyFoot / 2 - hair, BuildUp.KeyHead / 2 - hair, BuildUp.KeyHeightIn(core));
        // Round a tight corner the keys of the inner skin crowd one another and the slots; those of the outer skin only at a sharp one.
        var tight = onOuter ? path.Radius < core / 2 + BuildUp.KeyHead / 2 : path.Radius - core / 2 < BuildUp.TightCorner;
        return tight && path.At(at).ToCorner < (onOuter ? core / 2 : Math.Max(0, core / 2 - path.Radius) + BuildUp.HeadWidth) + BuildUp.KeyHead ? Region.Empty
            : onOuter ? Outlined(at, [(-head, core - height), (head, core - height), (foot, core), (-foot, core)])
            : Outlined(at, [(-foot, 0), (foot, 0), (head, height), (-head, height)]);
    }

    // u runs along the path, v from the inner skin outwards. At a corner a piece is drawn past the skins and clipped by the ring.
    internal Region Outlined(double at, (double U, double V)[] outline)
    {
        var place = At(at);
        var atCorner = place.ToCorner < outline.Max(c => Math.Abs(c.U));
        var drawn = atCorner ? outline.SelectMany((c, i) => PastSkin(c, outline[(i + 1) % outline.Length])) : outline;
        var region = Drawn(place, drawn);
        var corner = (place.X > (path.Left + path.Right) / 2 ? 1 : 0) + (place.Y > (path.Bottom + path.Top) / 2 ? 2 : 0);
        return atCorner ? region.Intersect(corners[corner].Value) : region;
    }

    private PathPlace At(double at)
    {
        var place = path.At(at);
        return place.ToCorner < 0 ? place
            : Math.Abs(place.AlongX) > Math.Abs(place.AlongY) ? place with { X = KeyGrid.Nearest(place.X, grid.Along) }
            : place with { Y = KeyGrid.Nearest(place.Y, grid.Along) };
    }

    // A foot goes on straight into its skin.
    private IEnumerable<(double U, double V)> PastSkin((double U, double V) at, (double U, double V) next)
    {
        if (at.V > 0 && at.V < core)
        {
            return [at];
        }

        var past = (at.U, at.V <= 0 ? at.V - Past : at.V + Past);
        return next.V.Equals(at.V) ? [at, past] : [past, at];
    }

    private Region Drawn(PathPlace place, IEnumerable<(double U, double V)> outline) =>
        Region.Polygon(
            outline.Select(c =>
            {
                var outwards = c.V - core / 2;
                return (place.X + c.U * place.AlongX + outwards * place.AlongY, place.Y + c.U * place.AlongY - outwards * place.AlongX);
            })
        );
}
