namespace Stillwall.Numerics;

/// <summary>Says where a result comes from: the formula's id in the catalogue and the inputs it is computed from.</summary>
/// <param name="formula">Id of the formula in the catalogue, in kebab case.</param>
/// <param name="inputs">
/// What goes in: keys of the project file (<c>cabinet.core</c>), of the chosen driver (<c>driver.fs</c>) or of the appraisal (<c>box.effective_volume_m3</c>).
/// </param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
public sealed class ComputedByAttribute(string formula, params string[] inputs) : Attribute
{
    /// <summary>Id of the formula in the catalogue, in kebab case.</summary>
    public string Formula { get; } = formula;

    /// <summary>Keys of the inputs.</summary>
    public IReadOnlyList<string> Inputs { get; } = inputs;
}
