using Stillwall.Cabinets;

namespace Stillwall.Figures.Sheets;

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

    /// <summary>Notes on the section.</summary>
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
