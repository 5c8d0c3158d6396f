namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the printed parts, of masses and of the supplies list.</summary>
internal static class PartFormulas
{
    /// <summary>Every formula of these stages.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "inside-volume",
            "Air space within the inner skins",
            "area within the inner skin × depth between the inner plates",
            "geometry of the drawn cabinet",
            "exact to the 1 µm grid"
        ),
        new(
            "part-volume",
            "Volume of plastic",
            "areas of plan regions × lengths",
            "geometry of the drawn cabinet",
            "the drawn part within 0.5 %, engraved names not counted; pieces of a split part count as equal; a print varies by a few per cent"
        ),
        new("part-mass", "Mass of plastic", "volume × density of the plastic", "arithmetic; density as the material states", "3 %, from flow and infill"),
        new(
            "part-size",
            "Size as printed",
            "bounding box in the print's own frame, turned a right angle where it lies better",
            "geometry of the drawn cabinet",
            "exact"
        ),
        new("sealant-path", "Path of a bead of sealant", "once round the middle of the skin's end", "geometry of the drawn cabinet", "exact"),
        new("sealant-volume", "Sealant for a joint", "length × (clearance × 5 mm + (4 mm)²/2)", "our choice of bead", "a maker lays half as much again"),
        new(
            "print-time",
            "Least printing time",
            "volume/flow + layers × pause",
            "common practice, no source",
            "a floor: real printing takes 1.5 to 1.8 times as long"
        ),
        new("print-time-honest", "Printing time to reckon with", "1.5 to 1.8 × the least time", "from memory", "the span itself"),
        new("filament", "Filament in the parts", "sum of the masses", "arithmetic", "as the masses"),
        new("filament-to-have", "Filament to have", "filament × (1 + waste)", "common practice, no source", "as the stated waste"),
        new("spools", "Spools to have", "filament to have/1 kg, rounded up", "arithmetic", "exact"),
        new("pieces", "Things to print", "parts, and sleeves in as many pieces as the build height asks for", "geometry of the drawn cabinet", "exact"),
        new("finished-mass", "Finished mass", "shells + dry cast + drivers + fill + hardware", "arithmetic; hardware is common practice, no source", "5 %"),
        new("wet-mass", "Mass on the day of the pour", "shells + slurry in the cabinet", "arithmetic", "3 %"),
        new("dry-cabinet-mass", "Dry mass of shells and cast", "shells + dry cast in the cabinet", "arithmetic; stoichiometry", "3 %"),
        new("dry-out", "Least time to dry", "free water/(open area × 60 g/(m²·h))", "rate from memory", "a lower bound: months are normal behind closed skins"),
        new("supply-needed", "Amount needed", "what the plan uses, reserve and waste counted", "common practice, no source", "as the plan"),
        new("supply-stock", "Amount on the shelf", "sum of the stated entries that are within their date", "arithmetic", "exact"),
        new("supply-to-buy", "Amount to buy", "needed − on the shelf, not below zero", "arithmetic", "exact"),
        new("supply-price", "Price", "needed × unit price; what is to be bought in whole packs", "stated prices", "exact"),
        new("cost", "Cost", "sum of the prices", "stated prices", "as the prices"),
    ];
}
