namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the brief.</summary>
internal static class BriefFormulas
{
    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "room-in-spot",
            "Room left in the spot",
            "beside: half of what the spot is wider; above: height of the spot − height of the cabinet − feet of 8 mm",
            "geometry; the feet are our choice",
            "exact"
        ),
        new("room-behind", "Room behind the cabinet", "clearance + plug space", "geometry", "exact"),
        new("seat-distance", "Distance of the seat on the plan", "√(Δx² + Δy²), heights left out", "geometry", "exact"),
    ];
}
