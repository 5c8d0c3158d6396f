using Stillwall.Cabinets;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>What is measured on one part. Places in its print frame, mm.</summary>
internal sealed record PartFeatures
{
    /// <summary>Lengths under the plan.</summary>
    internal IReadOnlyList<Length> Across { get; init; } = [];

    /// <summary>Lengths at the left of the plan.</summary>
    internal IReadOnlyList<Length> Up { get; init; } = [];

    /// <summary>Lengths under the section.</summary>
    internal IReadOnlyList<Length> SectionAcross { get; init; } = [];

    /// <summary>Lengths at the left of the section.</summary>
    internal IReadOnlyList<Length> SectionUp { get; init; } = [];

    /// <summary>Notes on the plan.</summary>
    internal IReadOnlyList<Callout> Notes { get; init; } = [];

    internal IReadOnlyList<Callout> SectionNotes { get; init; } = [];

    /// <summary>Circles whose centres are marked on the plan.</summary>
    internal IReadOnlyList<Circle> Centres { get; init; } = [];

    /// <summary>Circles that cannot be seen from above.</summary>
    internal IReadOnlyList<Circle> Hidden { get; init; } = [];

    /// <summary>Circles on which others lie.</summary>
    internal IReadOnlyList<Circle> BoltCircles { get; init; } = [];

    /// <summary>Whether the outline is a circle, whose diameter a note tells.</summary>
    internal bool IsRound { get; init; }

    /// <summary>Where the section is cut; null for the middle.</summary>
    internal double? CutAt { get; init; }
}

/// <summary>One length to be measured along an axis of a view.</summary>
/// <param name="From">Lesser end, mm of the thing.</param>
/// <param name="To">Greater end, mm of the thing.</param>
/// <param name="EdgeFrom">Where across the axis the extension line of the lesser end begins, mm of the thing.</param>
/// <param name="EdgeTo">The same for the greater end.</param>
/// <param name="Suffix">Words after the figure.</param>
internal sealed record Length(double From, double To, double EdgeFrom, double EdgeTo, string Suffix = "");

/// <summary>A note that a leader ties to a place.</summary>
internal sealed record Callout((double U, double V) At, IReadOnlyList<string> Lines)
{
    internal Callout(double u, double v, params string[] lines)
        : this((u, v), lines) { }
}

/// <summary>Writes a length in the project's unit; a bare figure, the sheet says which unit.</summary>
/// <param name="Inch">Whether inches come first, with millimetres in brackets.</param>
internal sealed record SheetUnits(bool Inch)
{
    internal string Rule => Inch ? "Dimensions in inches, millimetres in brackets" : "Dimensions in millimetres";

    /// <summary>A length, mm, to a hundredth of a millimetre at most.</summary>
    internal string Of(double mm) => Inch ? $"{Digits(mm / Units.Inch.InMillimetres(), 3)} [{Digits(mm, 2)}]" : Digits(mm, 2);

    internal string Diameter(double mm) => "⌀" + Of(mm);

    internal static string Many(int count, string what) => count == 1 ? what : FormattableString.Invariant($"{count} × {what}");

    private static string Digits(double value, int decimals) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero)
            .ToString(decimals == 3 ? "0.000" : "0.##", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>What the features of a part are told from.</summary>
/// <param name="IsSplit">Whether the printer makes it in pieces.</param>
internal sealed record FeatureJob(PartJob Job, SheetUnits Units, bool IsSplit)
{
    /// <summary>Stated sizes, mm.</summary>
    internal CabinetSizes Sizes => Job.Sizes;

    /// <summary>A note on the rounding of an outline, at its upper right corner, halfway round the arc.</summary>
    /// <param name="inset">How far within the outer edge the outline lies, mm.</param>
    internal Callout Corner(double inset = 0)
    {
        var radius = Math.Max(0, Sizes.Outline.Radius - inset);
        var away = inset + (1 - Math.Sqrt(0.5)) * radius;
        return new(Sizes.Width - away, Sizes.Height - away, $"R{Units.Of(radius)}");
    }

    /// <summary>A note on a circle, at its upper right.</summary>
    internal static Callout Round(Circle circle, params string[] lines) =>
        new(circle.XMm + circle.DiameterMm / 2 * Math.Sqrt(0.5), circle.ZMm + circle.DiameterMm / 2 * Math.Sqrt(0.5), lines);

    /// <summary>A length across, from an inset on one side to the same on the other.</summary>
    internal Length Inside(double inset) => new(inset, Sizes.Width - inset, 0, 0);
}
