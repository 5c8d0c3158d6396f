namespace Stillwall.Appraisals.Formulas;

/// <summary>Every formula that a result may name, in the order of the job.</summary>
internal static class FormulaCatalogue
{
    private static readonly Dictionary<string, Formula> ById = new Formula[][]
    {
        [.. BriefFormulas.All],
        [.. DriverFormulas.All],
        [.. CabinetFormulas.All],
        [.. WallFormulas.All],
        [.. PartFormulas.All],
        [.. PourFormulas.All],
        [.. QuietFormulas.All],
        [.. ProofFormulas.All],
        [.. FindingFormulas.All],
    }
        .SelectMany(f => f)
        .ToDictionary(f => f.Id);

    public static IReadOnlyCollection<Formula> All => ById.Values;

    /// <summary>The formula, or null.</summary>
    /// <param name="id">Id in kebab case, as a result names it.</param>
    public static Formula? Find(string id) => ById.GetValueOrDefault(id);
}
