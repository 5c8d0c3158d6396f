namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of what is judged and is no result of a stage by itself.</summary>
internal static class FindingFormulas
{
    /// <summary>Id of what a limit is.</summary>
    internal const string Limit = "limit";

    /// <summary>Id of what a margin is.</summary>
    internal const string Margin = "margin";

    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            Limit,
            "Limit of a finding",
            "as stated in brief, shelf or limits, or its default; for a tolerance: what is wanted or computed ± the tolerance, on the value's side",
            "as the finding itself says",
            "as stated"
        ),
        new(Margin, "Margin of a finding", "distance from value to limit, positive on the good side", "definition", "as value and limit"),
        new(
            "spot-fit",
            "Space that a side takes",
            "outside size + 2 × clearance, + plug space for the depth; the side with the least to spare counts",
            "geometry",
            "exact"
        ),
        new(
            "parameter-mismatch",
            "Disagreement of a data sheet",
            "printed/derived − 1, the worst of Bl, Mms and Qts; Bl = √(2π fs Mms Re/Qes), Mms = 1/((2π fs)² Cms)",
            "relations between small-signal parameters, IEC 60268-5:2003 (from memory)",
            "exact for the relations"
        ),
        new(
            "front-fit",
            "Room to spare on the front",
            "half the front less half of flange, bolt circle with its boss, or opening; material between cut-out and screw holes",
            "geometry of the drawn front",
            "exact for the drawing"
        ),
        new("driver-depth", "Depth that a driver takes", "depth of the driver + air behind the magnet", "geometry; the air is our choice", "as the data sheet"),
        new(
            "thinnest-core",
            "Thinnest core that still passes",
            "core as stated; its limit is the least thickness that keeps both wall limits",
            "search on the plate model, our choice",
            "as the plate model"
        ),
        new(
            "keyed-fraction",
            "Share of the skins that is keyed",
            "heads of keys, webs and slots over the strut pitch, the lesser of both skins",
            "geometry of the drawn section; what counts is our choice",
            "exact for the drawing"
        ),
        new(
            "skin-gap",
            "Gap behind an unkeyed inner skin",
            "(setting strain + 43e-6 × cooling) × half the width",
            "strain of Glass Tips 2009, a transcription; difference of expansion from memory",
            "a third"
        ),
        new(
            "insert-safety",
            "Safety factor of a threaded insert",
            "pull-out/(5 T/d + box pressure and cone reaction for each screw), T = 0.2 F d",
            "torque rule and pull-out from memory: pull one of your own out",
            "a factor of two"
        ),
        new(
            "tilt",
            "Angle at which it tips",
            "arctan(distance of the nearest edge between the feet from the centre of mass/height of the middle)",
            "elementary statics; feet where they are drawn, a driver's mass two thirds of its depth behind its face (our choice)",
            "2°"
        ),
        new(
            "slenderness",
            "Slenderness of a skin while it is printed",
            "height/thickness of the tallest piece, or clear bay/thickness, whichever is nearer its limit",
            "common practice, no source",
            "a rule of thumb"
        ),
        new(
            "over-air",
            "What is printed over air",
            "twice the longest ledge of the drawn sections; slopes by their lean",
            "geometry; a ledge as a bridge of twice its length is our choice",
            "exact for the drawing"
        ),
        new(
            "joint-clearance",
            "Clearance that shrinkage leaves",
            "0.3 mm + 0.1 % of the length, or twice the drawn gap, less half the shrinkage × length",
            "common practice, no source; shrinkage from memory; the half is our choice",
            "a factor of two on the shrinkage"
        ),
        new(
            "sleeve-uplift",
            "Weight that holds the inner sleeve down",
            "ρ × floor under the sleeve × 30 mm − mass of sleeve and front inner plate, not below zero",
            "Archimedes; the first lift of 30 mm is our choice",
            "10 %"
        ),
        new("least-passage", "Least passage for the mix", "core − 2 × height of a key", "geometry of the drawn section", "exact for the drawing"),
        new(
            "dryness",
            "Water left in the cast",
            "(last weigh-in − dry mass of shells and cast)/dry cast",
            "stoichiometry; the limit is our choice",
            "3 % of the dry mass"
        ),
        new("days-left", "Days to spare", "earliest best-before date − pour date", "arithmetic", "exact"),
        new("lacking-items", "Items that are not to hand", "number of supplies that are short, missing or past their date", "arithmetic", "exact"),
        new("hearing-dose", "Share of a day's dose", "hours/8 × 2^((A-weighted level − 85 dB)/3)", "NIOSH 98-126", "as the level"),
        new("as-measured", "Measured value", "as stated under measured", "stated: your own measurement", "as its own uncertainty"),
        new(
            "polarity-against-join",
            "Cabinet that pushes the wrong way",
            "1 where the measured polarity is not that of the best join, else 0",
            "common practice, no source: first swings before one microphone, one cone after the other",
            "right or unknown"
        ),
        new("as-logged", "Logged count", "parts whose last entry is \"rattle\"", "stated in the logbook", "the ear's"),
        new(
            "plan-deviation",
            "Deviation from the plan",
            "actual/planned − 1, the greatest of all figures that both know",
            "arithmetic",
            "the scales' and the clock's"
        ),
    ];
}
