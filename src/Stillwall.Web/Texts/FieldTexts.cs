using Stillwall.Appraisals;
using Stillwall.Appraisals.Formulas;

namespace Stillwall.Web.Texts;

/// <summary>Texts of fields.</summary>
internal static class FieldTexts
{
    internal const string Was = "was",
        NotStated = "not stated";

    /// <summary>Where a value comes from.</summary>
    /// <param name="defaultFrom">Where the default comes from, or what stands in.</param>
    internal static string Source(bool isStated, bool hasValue, string? defaultFrom, string? figures)
    {
        var said = (isStated, hasValue, defaultFrom) switch
        {
            (true, _, _) => "stated by you",
            (_, true, { } from) => $"default: {from}",
            (_, true, _) => "default",
            (_, _, { } standIn) => $"{NotStated}: {standIn}",
            _ => NotStated,
        };
        return figures is null || !hasValue ? said : $"{said}; its figures: {figures}";
    }

    /// <summary>Where the figures behind a word come from; null for a key without any.</summary>
    internal static string? SourceOf(string key, Facts facts) =>
        key switch
        {
            "materials.skin" => facts.Skin?.Basis,
            "materials.cast.mix" => facts.CastMix?.Basis,
            "brief.neighbour.partition" => FormulaCatalogue.Find("wall-reduction")?.Source,
            "brief.neighbour.curve" => FormulaCatalogue.Find("limit-curve")?.Source,
            "brief.everyday.programme" => "from memory of long-term spectra, our choice",
            _ => null,
        };

    /// <summary>Stage on which a key of the project has its field.</summary>
    internal static string StageOf(string key) =>
        key.Split('.', 2)[0] switch
        {
            "cabinet" => "Cabinet",
            "materials" => "Walls",
            "measured" => "Proof",
            _ => "Brief",
        };

    internal static string Back(string shown) => shown.Length > 0 ? $"back to {shown}" : "clear";

    internal static string BackOf(string label, string shown) => shown.Length > 0 ? $"{label}: back to {shown}" : $"{label}: clear";

    internal static string TakenOut(string label) => $"{label} taken out";
}
