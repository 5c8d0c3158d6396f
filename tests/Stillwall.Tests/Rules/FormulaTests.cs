using System.Collections;
using System.Reflection;
using System.Text.Json;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Findings;
using Stillwall.Appraisals.Formulas;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Tests.Rules;

/// <summary>Every number that a user sees can say by which formula and from which inputs it was computed.</summary>
public sealed class FormulaTests
{
    // Numbers of an appraisal that no formula computes, each with its reason.
    private static readonly Dictionary<string, string> Exempt = new(StringComparer.Ordinal)
    {
        ["findings[].value"] = "carries the value of whatever is judged; its formula stands with its finding's trace",
        ["findings[].limit"] = "carries a stated or default limit, as its finding's trace tells",
        ["findings[].margin"] = "is the distance between the two",
        ["quiet.bands[].band_hz"] = "names the band",
        ["quiet.bands_with_equaliser[].band_hz"] = "names the band",
    };

    [Fact]
    public void Every_number_of_an_appraisal_names_its_formula()
    {
        var silent = Numbers().Where(n => n.Attribute is null && !Exempt.ContainsKey(n.Path)).Select(n => n.Path).ToList();
        Assert.True(
            silent.Count == 0,
            "put [ComputedBy(formula, inputs…)] on the property, or the path with its reason into the exemptions:\n" + string.Join("\n", silent)
        );
        Assert.All(Exempt.Keys, path => Assert.Contains(Numbers(), n => n.Path == path && n.Attribute is null));
    }

    [Fact]
    public void Every_formula_that_a_result_names_is_in_the_catalogue()
    {
        var missing = Named().Where(id => FormulaCatalogue.Find(id) is null).Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.True(
            missing.Count == 0,
            "add the formula with its source and accuracy to Appraisals/Formulas/<Stage>Formulas.cs:\n" + string.Join("\n", missing)
        );
    }

    [Fact]
    public void Every_formula_of_the_catalogue_is_named_by_a_result()
    {
        var idle = FormulaCatalogue.All.Select(f => f.Id).Except(Named()).ToList();
        Assert.True(idle.Count == 0, "name the formula on the result that it computes, or take it out:\n" + string.Join("\n", idle));
    }

    [Fact]
    public void Every_formula_is_told_in_full_under_an_id_in_kebab_case()
    {
        Assert.All(FormulaCatalogue.All, f => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", f.Id));
        Assert.All(
            FormulaCatalogue.All,
            f => Assert.All([f.Name, f.Expression, f.Source, f.Accuracy], text => Assert.False(string.IsNullOrWhiteSpace(text), f.Id))
        );
        Assert.Equal(FormulaCatalogue.All.Count, FormulaCatalogue.All.Select(f => f.Name).Distinct().Count());
        Assert.Null(FormulaCatalogue.Find("perpetual-motion"));
    }

    [Fact]
    public void Every_input_that_a_result_names_exists()
    {
        var paths = Paths(typeof(Appraisal), "").Concat(Paths(typeof(CastFigures), "cast.")).ToHashSet(StringComparer.Ordinal);
        var sheet = ModelBlock.Of(typeof(DriverSheet));
        bool Exists(string key) =>
            ProjectKeys.Find(key) is not null
            || paths.Contains(key)
            || key == "recording"
            || key.StartsWith("recording.", StringComparison.Ordinal)
            || (key.StartsWith("driver.", StringComparison.Ordinal) && sheet.Find(key["driver.".Length..]) is not null);
        var unknown = PropertiesWithFormula()
            .SelectMany(p => p.GetCustomAttribute<ComputedByAttribute>()!.Inputs.Where(i => !Exists(i)).Select(i => $"{p.DeclaringType!.Name}.{p.Name}: {i}"))
            .ToList();
        Assert.True(
            unknown.Count == 0,
            "name an input by its key in the project file, as driver.<key>, or by its path in the appraisal:\n" + string.Join("\n", unknown)
        );
    }

    [Fact]
    public void What_is_stated_is_found_and_not_declared_where_a_result_can_be_computed_anew()
    {
        var declared = PropertiesWithFormula()
            .Where(p => p.DeclaringType!.Namespace is { } space && !space.StartsWith("Stillwall.Proofs", StringComparison.Ordinal))
            .Where(p => p.DeclaringType != typeof(Stillwall.Appraisals.WallChoices.LightestWall))
            .SelectMany(p => p.GetCustomAttribute<ComputedByAttribute>()!.Inputs.Where(i => ProjectKeys.Find(i) is not null).Select(i => $"{p.Name}: {i}"))
            .ToList();
        Assert.True(declared.Count == 0, "leave the key out; what is read for a result is found by itself:\n" + string.Join("\n", declared));
    }

    // A finding's number is explained by its trace; limit and margin have one formula for all.
    private static IEnumerable<string> Named() =>
        Attributes().Select(a => a.Formula).Concat(AllFindings.Rules.Select(r => r.Trace.Formula)).Concat(["limit", "margin"]);

    private sealed record Number(string Path, ComputedByAttribute? Attribute);

    private static IEnumerable<PropertyInfo> PropertiesWithFormula() =>
        Repository.Library.GetTypes().SelectMany(t => t.GetProperties()).Where(p => p.GetCustomAttribute<ComputedByAttribute>() is not null);

    private static IEnumerable<ComputedByAttribute> Attributes() => PropertiesWithFormula().Select(p => p.GetCustomAttribute<ComputedByAttribute>()!);

    private static IEnumerable<Number> Numbers() =>
        Walk(typeof(Appraisal), "")
            .Where(p => IsNumber(p.Property.PropertyType))
            .Select(p => new Number(p.Path, p.Property.GetCustomAttribute<ComputedByAttribute>()));

    private static IEnumerable<string> Paths(Type type, string before) => Walk(type, before).Select(p => p.Path);

    private static IEnumerable<(string Path, PropertyInfo Property)> Walk(Type type, string before)
    {
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var item = Item(property.PropertyType);
            var path = before + Snake(property.Name) + (item is not null && !IsNumber(property.PropertyType) ? "[]" : "");
            yield return (path, property);
            var inner = item ?? property.PropertyType;
            if (inner.Namespace?.StartsWith("Stillwall.", StringComparison.Ordinal) == true && !inner.IsEnum)
            {
                foreach (var deeper in Walk(inner, path + "."))
                {
                    yield return deeper;
                }
            }
        }
    }

    private static Type? Item(Type type) =>
        type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type) && type.IsGenericType ? type.GetGenericArguments()[^1] : null;

    private static bool IsNumber(Type type)
    {
        var plain = Item(type) ?? Nullable.GetUnderlyingType(type) ?? type;
        return plain == typeof(double) || plain == typeof(int);
    }

    // The keys of the JSON: snake case, which parts digits too (F3Hz is f3_hz, KgM3 is kg_m3).
    private static string Snake(string name) => JsonNamingPolicy.SnakeCaseLower.ConvertName(name);
}
