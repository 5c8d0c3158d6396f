namespace Stillwall.Shapes;

/// <summary>A place on a path: where it is, which way the path runs, and whether it runs straight there.</summary>
/// <param name="AlongX">Unit vector along the path, across.</param>
/// <param name="AlongY">Unit vector along the path, up.</param>
/// <param name="ToCorner">Distance along the path to the nearest arc, mm; negative inside an arc.</param>
internal sealed record PathPlace(double X, double Y, double AlongX, double AlongY, double ToCorner);

/// <summary>A rectangle with rounded corners as a closed path, run counter-clockwise from the middle of its lower side.</summary>
/// <param name="Radius">Radius of the corners, mm, at most half the shorter side.</param>
internal sealed record RoundedFrame(double Left, double Bottom, double Right, double Top, double Radius)
{
    /// <summary>Width, mm.</summary>
    public double Width => Right - Left;

    /// <summary>Height, mm.</summary>
    public double Height => Top - Bottom;

    /// <summary>Length once round, mm.</summary>
    public double Length => 2 * (Width + Height) - (8 - 2 * Math.PI) * Radius;

    /// <summary>The frame a distance further in on every side; corners lose as much radius, down to none.</summary>
    /// <returns>The inner frame; its edges may have passed one another.</returns>
    public RoundedFrame Inset(double distance) => new(Left + distance, Bottom + distance, Right - distance, Top - distance, Math.Max(0, Radius - distance));

    /// <summary>The region within.</summary>
    /// <returns>The region; empty where the edges have passed one another.</returns>
    public Region ToRegion() => Region.RoundedRectangle(Left, Bottom, Right, Top, Radius);

    /// <summary>The place a distance along the path.</summary>
    /// <param name="distance">Distance from the middle of the lower side, counter-clockwise, mm.</param>
    /// <returns>Place and direction; the outside lies at the right of the direction.</returns>
    public PathPlace At(double distance)
    {
        var at = distance % Length;
        at = at < 0 ? at + Length : at;
        var half = (Width - 2 * Radius) / 2;
        at += half;
        var arc = Math.PI / 2 * Radius;
        var (x, y, angle) = (Left + Radius, Bottom, 0.0);
        for (var side = 0; ; side++)
        {
            var straight = side % 2 == 0 ? Width - 2 * Radius : Height - 2 * Radius;
            var (cos, sin) = (Math.Cos(angle), Math.Sin(angle));
            if (at <= straight)
            {
                return new PathPlace(x + at * cos, y + at * sin, cos, sin, Math.Min(at, straight - at));
            }

            (x, y, at) = (x + straight * cos, y + straight * sin, at - straight);
            if (at < arc)
            {
                var turned = angle + at / Radius;
                var (cx, cy) = (x - Radius * sin, y + Radius * cos);
                return new PathPlace(
                    cx + Radius * Math.Sin(turned),
                    cy - Radius * Math.Cos(turned),
                    Math.Cos(turned),
                    Math.Sin(turned),
                    -Math.Min(at, arc - at)
                );
            }

            at -= arc;
            (x, y) = (x - Radius * sin + Radius * cos, y + Radius * cos + Radius * sin);
            angle += Math.PI / 2;
        }
    }
}
