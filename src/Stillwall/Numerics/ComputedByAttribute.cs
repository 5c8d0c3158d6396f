namespace Stillwall.Numerics;

/// <summary>Says where a result comes from: the formula's id in the catalogue and the inputs it is computed from.</summary>
/// <param name="formula">Id of the formula in the catalogue, in kebab case.</param>
/// <param name="inputs">
/// Other results that go in, by their paths (<c>box.effective_volume_m3</c>). What is stated is found, not declared; only where a result cannot be
/// computed anew, as beside a recording, its keys (<c>driver.fs</c>) are named too.
/// </param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
internal sealed class ComputedByAttribute(string formula, params string[] inputs) : Attribute
{
    /// <summary>Id of the formula in the catalogue, in kebab case.</summary>
    public string Formula { get; } = formula;

    /// <summary>Keys of the inputs.</summary>
    public IReadOnlyList<string> Inputs { get; } = inputs;
}
