namespace Stillwall.Figures.Sheets;

/// <summary>A place on the paper: from its left and upper edges, mm.</summary>
/// <param name="YMm">From the upper edge downwards, mm.</param>
internal readonly record struct SheetPoint(double XMm, double YMm);

/// <summary>A box on the paper.</summary>
/// <param name="TopMm">Upper edge, mm from the top of the paper.</param>
/// <param name="BottomMm">Lower edge, mm from the top of the paper.</param>
internal readonly record struct SheetBox(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>Whether two boxes have an area in common.</summary>
    public bool Overlaps(SheetBox other) => LeftMm < other.RightMm && other.LeftMm < RightMm && TopMm < other.BottomMm && other.TopMm < BottomMm;

    /// <summary>Whether a box lies within this one.</summary>
    public bool Contains(SheetBox other) => other.LeftMm >= LeftMm && other.RightMm <= RightMm && other.TopMm >= TopMm && other.BottomMm <= BottomMm;
}

/// <summary>Kinds of line, after ISO 128-2 (from memory).</summary>
internal enum SheetLine
{
    /// <summary>Nothing drawn.</summary>
    None,

    /// <summary>Continuous wide: visible edges and outlines.</summary>
    Visible,

    /// <summary>Continuous narrow: dimensions, leaders, hatching, edges of fittings.</summary>
    Thin,

    /// <summary>Dashed narrow: hidden edges.</summary>
    Hidden,

    /// <summary>Long-dashed dotted narrow: centre lines, bolt circles, cutting planes.</summary>
    Centre,

    /// <summary>Long-dashed double-dotted narrow: outlines of things that are not printed, such as the driver.</summary>
    Phantom,

    /// <summary>Continuous, widest: the frame.</summary>
    Frame,
}

/// <summary>What an area is filled with.</summary>
internal enum SheetFill
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Hatched: printed plastic that is cut.</summary>
    Plastic,

    /// <summary>Dotted: cast that is cut.</summary>
    Cast,

    /// <summary>A light tint: a body that is seen.</summary>
    Body,

    /// <summary>Paper: what is open.</summary>
    Paper,

    /// <summary>Ink: arrows, checks of a scale bar.</summary>
    Ink,
}

/// <summary>On which side of its place a text stands.</summary>
internal enum SheetAnchor
{
    /// <summary>It begins there.</summary>
    Start,

    Middle,

    End,
}

/// <summary>Something drawn on a sheet.</summary>
internal abstract record SheetMark;

/// <summary>Lines or an area.</summary>
/// <param name="Lines">Lines, each through its points; in an area each is a ring.</param>
/// <param name="Closed">Whether the last point joins the first.</param>
/// <param name="Fill">What fills the rings; holes by the even-odd rule.</param>
internal sealed record SheetPath(IReadOnlyList<IReadOnlyList<SheetPoint>> Lines, SheetLine Line, bool Closed = false, SheetFill Fill = SheetFill.None)
    : SheetMark;

/// <summary>A circle.</summary>
internal sealed record SheetCircle(SheetPoint Centre, double RadiusMm, SheetLine Line, SheetFill Fill = SheetFill.None) : SheetMark;

/// <summary>A line of text.</summary>
/// <param name="At">Where its base line begins, has its middle or ends.</param>
/// <param name="Upright">Whether it reads upwards, from the right of the sheet.</param>
internal sealed record SheetText(string Text, SheetPoint At, double SizeMm, SheetAnchor Anchor = SheetAnchor.Start, bool Upright = false, bool Bold = false)
    : SheetMark
{
    private const double Ascent = 0.78,
        Descent = 0.22;

    /// <summary>Box that the text takes, on the wide side whatever the font.</summary>
    public SheetBox Box
    {
        get
        {
            var width = WidthMm(Text, SizeMm, Bold);
            var from = Anchor switch
            {
                SheetAnchor.Start => 0,
                SheetAnchor.Middle => -width / 2,
                _ => -width,
            };
            return Upright
                ? new SheetBox(At.XMm - Ascent * SizeMm, At.YMm - from - width, At.XMm + Descent * SizeMm, At.YMm - from)
                : new SheetBox(At.XMm + from, At.YMm - Ascent * SizeMm, At.XMm + from + width, At.YMm + Descent * SizeMm);
        }
    }

    /// <summary>Width that a text takes at most in the usual sans fonts.</summary>
    /// <remarks>Validity: Latin text and figures. Source: our choice. Accuracy: a few per cent too wide.</remarks>
    public static double WidthMm(string text, double sizeMm, bool bold = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return sizeMm * (bold ? 1.08 : 1) * text.Sum(Advance);
    }

    private static double Advance(char c) =>
        c switch
        {
            'i' or 'j' or 'l' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' => 0.31,
            ' ' or 'f' or 't' or 'r' or 'I' or '-' or '(' or ')' or '[' or ']' => 0.38,
            'm' or 'w' or 'M' or 'W' => 0.92,
            >= 'A' and <= 'Z' or '⌀' or '×' or '±' or '–' => 0.72,
            _ => 0.6,
        };
}

/// <summary>Marks that belong together.</summary>
/// <param name="Kind">What they are, such as <c>dimension</c> or <c>check-line</c>.</param>
internal sealed record SheetGroup(string Kind, IReadOnlyList<SheetMark> Marks) : SheetMark;

/// <summary>One sheet of paper with a drawing.</summary>
/// <param name="Description">The same in a sentence, for whoever cannot see it.</param>
/// <param name="ScaleRatio">Length on the paper over length of the thing; 0 where there is none.</param>
/// <param name="Parts">Names of the printed parts that it shows in detail.</param>
/// <param name="Marks">What is drawn, from the lowest up.</param>
internal sealed record Sheet(
    string Name,
    string Title,
    string Description,
    double WidthMm,
    double HeightMm,
    double ScaleRatio,
    IReadOnlyList<string> Parts,
    IReadOnlyList<SheetMark> Marks
)
{
    // ISO 5457: 20 mm at the left for filing, 10 mm elsewhere (from memory).
    internal const double Filing = 20,
        Margin = 10;

    /// <summary>The scale as it is written, <c>1:2</c>; <c>none</c> for a view without one.</summary>
    public string ScaleName => NameOf(ScaleRatio);

    /// <summary>A scale as it is written.</summary>
    internal static string NameOf(double scale) =>
        scale switch
        {
            0 => "none",
            >= 1 => FormattableString.Invariant($"{scale:0.##}:1"),
            _ => FormattableString.Invariant($"1:{1 / scale:0.##}"),
        };

    /// <summary>The frame, within which everything lies.</summary>
    public SheetBox Frame => new(Filing, Margin, WidthMm - Margin, HeightMm - Margin);
}
