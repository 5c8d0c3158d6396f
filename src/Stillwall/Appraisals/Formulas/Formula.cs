namespace Stillwall.Appraisals.Formulas;

/// <summary>One formula of the catalogue: what it is called, how it reads, who published it and how far it can be trusted.</summary>
/// <param name="Id">Id in kebab case; results name it.</param>
/// <param name="Expression">The formula in one line of plain text.</param>
/// <param name="Source">Author, year and equation or table; or "our choice", "common practice, no source", "from memory".</param>
/// <param name="Accuracy">How well it agrees with what it was checked against, or how wide it scatters.</param>
internal sealed record Formula(string Id, string Name, string Expression, string Source, string Accuracy);
