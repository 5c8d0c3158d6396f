namespace Stillwall.Figures;

/// <summary>What a series is, from which every face takes its look.</summary>
public enum StyleRole
{
    /// <summary>The thing the chart is about.</summary>
    Main,

    /// <summary>A second view of the same thing.</summary>
    Second,

    /// <summary>A band of doubt.</summary>
    Band,

    /// <summary>The former state, as a pencil line.</summary>
    Pencil,
}

/// <summary>How the points of a series are drawn.</summary>
public enum SeriesShape
{
    /// <summary>A line through the points.</summary>
    Line,

    /// <summary>The area between the points and the upper points.</summary>
    Area,

    /// <summary>A bar from the axis up to each point, a third-octave wide.</summary>
    Bars,

    /// <summary>A stroke from each point to its upper point.</summary>
    Strokes,
}

/// <summary>The mark of a landmark.</summary>
public enum LandmarkMark
{
    /// <summary>A point on a line.</summary>
    Point,

    /// <summary>Full disc: holds.</summary>
    Holds,

    /// <summary>Half disc: tight.</summary>
    Tight,

    /// <summary>Triangle: fails.</summary>
    Fails,

    /// <summary>Ring: unknown.</summary>
    Unknown,
}

/// <summary>One point of a chart, in the units of its axes.</summary>
/// <param name="X">Along the axis across, in its unit.</param>
/// <param name="Y">Along the axis up, in its unit.</param>
public readonly record struct ChartPoint(double X, double Y);

/// <summary>Words under the axis that say what a place on it means.</summary>
/// <param name="X">Place on the axis, in its unit.</param>
/// <param name="Text">What it means.</param>
public sealed record AxisNote(double X, string Text);

/// <summary>One axis.</summary>
/// <param name="Label">What is shown along it.</param>
/// <param name="Unit">Unit of its numbers; empty for a ratio.</param>
/// <param name="IsLogarithmic">Whether equal factors take equal room.</param>
/// <param name="Low">Start of the range, in the unit; above 0 on a logarithmic axis.</param>
/// <param name="High">End of the range, in the unit, above the start.</param>
/// <param name="Ticks">Where numbers stand, ascending, in the unit.</param>
public sealed record ChartAxis(string Label, string Unit, bool IsLogarithmic, double Low, double High, IReadOnlyList<double> Ticks)
{
    /// <summary>What stands at the ticks instead of their numbers; empty where the numbers do.</summary>
    public IReadOnlyList<string> TickLabels { get; init; } = [];

    /// <summary>What places on the axis mean, ascending.</summary>
    public IReadOnlyList<AxisNote> Notes { get; init; } = [];
}

/// <summary>One curve, band or set of bars.</summary>
/// <param name="Name">Label, to stand on the line.</param>
/// <param name="Role">What it is.</param>
/// <param name="Shape">How it is drawn.</param>
/// <param name="Points">The points, ascending along the axis across; the lower edge of a band.</param>
public sealed record ChartSeries(string Name, StyleRole Role, SeriesShape Shape, IReadOnlyList<ChartPoint> Points)
{
    /// <summary>Upper edge of an area, upper ends of strokes; empty otherwise.</summary>
    public IReadOnlyList<ChartPoint> UpperPoints { get; init; } = [];
}

/// <summary>A limit: a region past which it is wrong, hatched along its edge.</summary>
/// <param name="Name">Label: what must not be.</param>
/// <param name="Edge">The edge.</param>
/// <param name="Region">The region past the edge as a ring of corners, the first not repeated, within the axes.</param>
public sealed record ChartLimit(string Name, IReadOnlyList<ChartPoint> Edge, IReadOnlyList<ChartPoint> Region);

/// <summary>A point worth a name.</summary>
/// <param name="At">Where.</param>
/// <param name="Label">Its name and number; empty where the mark alone says enough.</param>
/// <param name="Mark">Its mark.</param>
/// <param name="MayDropLabel">Whether the label may be left out where there is no room; the table has it all the same.</param>
public sealed record ChartLandmark(ChartPoint At, string Label, LandmarkMark Mark = LandmarkMark.Point, bool MayDropLabel = false)
{
    /// <summary>What it is, for whoever points at it; its label where that is all there is to say.</summary>
    public string Name { get; init; } = Label;
}

/// <summary>An upright line at a place worth a name.</summary>
/// <param name="X">Where, in the unit of the axis across.</param>
/// <param name="Label">Its name and number.</param>
public sealed record ChartRule(double X, string Label);

/// <summary>The same as a table, for those who do not see the picture.</summary>
/// <param name="Columns">Headings.</param>
/// <param name="Rows">Rows of as many cells as there are headings; an empty cell is unknown.</param>
public sealed record ChartTable(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>A chart as data: every face draws the same one.</summary>
/// <param name="Name">Short name in kebab case, fit for a file.</param>
/// <param name="Title">The question or statement.</param>
/// <param name="Answer">The answer in one sentence.</param>
/// <param name="AnswerFrom">Path of the result, or id of the finding, behind the answer.</param>
/// <param name="Across">The axis across.</param>
/// <param name="Up">The axis up.</param>
/// <param name="Series">What is drawn, from back to front.</param>
/// <param name="Limits">The limits.</param>
/// <param name="Landmarks">Points worth a name.</param>
/// <param name="Rules">Upright lines.</param>
/// <param name="Table">The same as a table.</param>
public sealed record Chart(
    string Name,
    string Title,
    string Answer,
    string AnswerFrom,
    ChartAxis Across,
    ChartAxis Up,
    IReadOnlyList<ChartSeries> Series,
    IReadOnlyList<ChartLimit> Limits,
    IReadOnlyList<ChartLandmark> Landmarks,
    IReadOnlyList<ChartRule> Rules,
    ChartTable Table
)
{
    /// <summary>Path or id behind the line; the answer's where they are one.</summary>
    public string LineFrom { get; init; } = AnswerFrom;
}
