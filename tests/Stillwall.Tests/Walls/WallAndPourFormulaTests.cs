using System.Reflection;
using Stillwall.Appraisals.Formulas;
using Stillwall.Numerics;

namespace Stillwall.Tests.Walls;

public class WallAndPourFormulaTests
{
    [Theory]
    [InlineData("Stillwall.Walls", "WallFormulas")]
    [InlineData("Stillwall.Pours", "PourFormulas")]
    public void Every_result_of_the_stage_has_its_formula_and_every_formula_a_result(string stage, string catalogue)
    {
        var library = typeof(Formula).Assembly;
        var listed = (IReadOnlyList<Formula>)library.GetType($"Stillwall.Appraisals.Formulas.{catalogue}")!.GetProperty("All", BindingFlags.NonPublic | BindingFlags.Static)!.GetValue(null)!;
        var used = library.GetTypes().Where(t => t.Namespace == stage).SelectMany(t => t.GetProperties()).Select(p => p.GetCustomAttribute<ComputedByAttribute>()?.Formula).OfType<string>().Distinct();
        Assert.Equal(listed.Select(f => f.Id).Order(), used.Order());
    }
}
