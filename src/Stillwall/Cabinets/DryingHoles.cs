using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>Holes in the inner sleeve's skin through which the cast dries into the cabinet: rows along the depth, all with holes at the same heights.</summary>
/// <param name="DiameterMm">Diameter of a hole, mm; 0 for none.</param>
/// <param name="Rows">Where the rows stand, on the middle of the core's path.</param>
/// <param name="HeightsMm">Heights of the holes' axes from the front end of the inner sleeve, mm.</param>
internal sealed record DryingHoles(double DiameterMm, IReadOnlyList<PathPlace> Rows, IReadOnlyList<double> HeightsMm)
{
    public static DryingHoles None { get; } = new(0, [], []);

    public int Count => Rows.Count * HeightsMm.Count;

    /// <summary>Area of one hole, m²: a disc, with the corner of a roof of 45° above 8 mm.</summary>
    public double HoleM2 => (DiameterMm * DiameterMm).InSquareMetres() / 4 * (Math.PI + (DiameterMm > CrossHole.GreatestRound ? 1 - Math.PI / 4 : 0));

    /// <summary>Area of all holes, m².</summary>
    public double OpenM2 => Count * HoleM2;

    /// <summary>Distance of the holes of a row, mm; across a brace, which holds the skin, it may be less.</summary>
    public double PitchMm => Math.Max(BuildUp.DryingHolePitch, BuildUp.DryingHolePitchPerDiameter * DiameterMm);

    /// <summary>What a row of holes leaves of the skin that bends across it, as a ratio; 1 without holes.</summary>
    public double LeftRatio => Count == 0 ? 1 : 1 - DiameterMm / PitchMm;

    /// <summary>Sets out the holes of a cabinet.</summary>
    /// <returns>The holes; none where none are stated, without a core, or where no strip has room.</returns>
    /// <remarks>
    /// Model: one row in the middle of every clear strip of the four flat inner sides, between slots and keys; along the depth away from the ends, where
    /// the keys stand closely, and from each brace with its seats, as many as a pitch of 40 mm or three diameters has room for, centred. The bay in the
    /// middle of the lower side stays whole for the names of pieces. Where the printer's size cuts the sleeve the drawing does not know: a cut may pass
    /// through a hole. Source: our choice.
    /// </remarks>
    public static DryingHoles Of(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return sizes.DryingHole > 0 && sizes.Core > 0 && sizes.InnerSkin > 0
            ? new DryingHoles(sizes.DryingHole, [.. RowsOf(sizes)], [.. HeightsOf(sizes)])
            : None;
    }

    private static IEnumerable<PathPlace> RowsOf(CabinetSizes sizes)
    {
        var (path, struts, pitch) = SleeveSection.StrutPlaces(sizes);
        var strut = sizes.Tied ? BuildUp.HeadWidth / 2 + BuildUp.SlotGap + BuildUp.LipThickness : sizes.Web / 2;
        var standing = struts
            .Select(p => (At: p, Half: strut))
            .Concat(SleeveSection.KeyPlaces(sizes, onOuter: false, atEnds: false).Select(p => (At: p, Half: BuildUp.KeyHead / 2)))
            .OrderBy(s => s.At)
            .ToList();

        // How much earlier than the path the inner face runs into its corner, where that is sharper.
        var sooner = Math.Max(sizes.Outline.Radius, sizes.Wall) - Math.Max(sizes.Outline.Radius, sizes.OuterSkin + sizes.Core / 2);
        var room = sizes.DryingHole / 2 + BuildUp.DryingHoleRoom;

        // Two pieces on either side count: at a tight corner the nearest may be a key that there is no room for.
        bool IsClear(PathPlace hole, int at) =>
            Enumerable
                .Range(at - 1, 4)
                .Select(k => standing[(k + standing.Count) % standing.Count])
                .All(s => Clear(hole, path.At(s.At), s.Half, sizes.Core) >= room);
        for (var i = 0; i < standing.Count; i++)
        {
            var (one, next) = (standing[i], standing[(i + 1) % standing.Count]);
            var (from, to) = (one.At + one.Half, next.At - next.Half + (i + 1 == standing.Count ? path.Length : 0));
            var (middle, place) = ((from + to) / 2, path.At((from + to) / 2));
            var fromLowest = Math.Abs(Math.IEEERemainder(middle, path.Length));
            if (place.ToCorner - sooner >= room && fromLowest > pitch / 2 && to > from && IsClear(place, i))
            {
                yield return place;
            }
        }
    }

    // How far a piece is along the wall that a hole goes through; one at a corner leans, and its foot is nearer than its place on the path.
    private static double Clear(PathPlace hole, PathPlace piece, double half, double core)
    {
        var foot = -core / 2 - (piece.ToCorner < half ? WallPen.Past : 0);
        return new[] { (-half, foot), (half, foot), (-half, 0), (half, 0) }.Min(c =>
            Math.Abs(
                (piece.X + c.Item1 * piece.AlongX + c.Item2 * piece.AlongY - hole.X) * hole.AlongX
                    + (piece.Y + c.Item1 * piece.AlongY - c.Item2 * piece.AlongX - hole.Y) * hole.AlongY
            )
        );
    }

    private static IEnumerable<double> HeightsOf(CabinetSizes sizes)
    {
        var inside = sizes.Depth - 2 * sizes.Wall;
        var room = BuildUp.DryingHoleRoom;
        var (below, above) = (sizes.DryingHole / 2 + room, sizes.DryingHole / (sizes.DryingHole > CrossHole.GreatestRound ? Math.Sqrt(2) : 2) + room);
        var bracing = Bracing.Of(sizes);
        var pitch = new DryingHoles(sizes.DryingHole, [], []).PitchMm;
        for (var i = 0; i <= sizes.Braces; i++)
        {
            // From behind one brace to the seats before the next.
            var begins = i == 0 ? 0 : bracing.FrontsMm[i - 1] + BuildUp.BraceThickness;
            var ends = begins + bracing.ClearM.InMillimetres() - BuildUp.SeatDepth;
            var (from, to) = (Math.Max(begins, BuildUp.EndZone) + below, Math.Min(ends, inside - BuildUp.EndZone) - above);
            var more = (int)Math.Floor((to - from) / pitch);
            for (var k = 0; from <= to && k <= more; k++)
            {
                yield return from + (to - from - more * pitch) / 2 + k * pitch;
            }
        }
    }
}
