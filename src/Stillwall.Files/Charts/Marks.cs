namespace Stillwall.Files.Charts;

/// <summary>A place on the picture, px from its upper left corner.</summary>
internal readonly record struct Pixel(double X, double Y);

/// <summary>A rectangle on the picture, px.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    internal bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    internal bool Holds(Pixel spot) => spot.X >= Left && spot.X <= Right && spot.Y >= Top && spot.Y <= Bottom;

    internal bool Within(Box other) => Left >= other.Left && Right <= other.Right && Top >= other.Top && Bottom <= other.Bottom;

    internal Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}

/// <summary>Where a text stands to its place.</summary>
internal enum Anchor
{
    /// <summary>It begins there.</summary>
    Start,

    /// <summary>Its middle is there.</summary>
    Middle,

    /// <summary>It ends there.</summary>
    End,
}

/// <summary>One thing to draw: every painter knows these four and nothing of charts.</summary>
internal abstract record Mark;

/// <summary>Strokes, each through several places.</summary>
internal sealed record StrokeMark(IReadOnlyList<IReadOnlyList<Pixel>> Lines, string Colour, double Width, string Dash = "") : Mark;

/// <summary>A filled ring of corners, with an edge where a colour is given.</summary>
internal sealed record AreaMark(IReadOnlyList<Pixel> Ring, string Fill, string Edge = "", double EdgeWidth = 0) : Mark;

/// <summary>A disc.</summary>
internal sealed record DiscMark(Pixel Middle, double Radius, string Fill, string Edge, double EdgeWidth) : Mark;

/// <summary>A text on a ground of its own.</summary>
internal sealed record TextMark(string Text, Pixel At, double Size, Anchor Anchor, string Colour, string Ground, bool Bold = false) : Mark;
