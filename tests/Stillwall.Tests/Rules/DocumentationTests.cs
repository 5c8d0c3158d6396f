using System.Reflection;
using System.Xml.Linq;

namespace Stillwall.Tests.Rules;

/// <summary>A formula says where it comes from: the remarks of every public static method of a stage name a source, or say that there is none.</summary>
public sealed class DocumentationTests
{
    private static readonly Lazy<IReadOnlyDictionary<string, XElement>> Members = new(() =>
        XDocument.Load(Path.ChangeExtension(Repository.Library.Location, ".xml")).Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, m => m)
    );

    [Fact]
    public void Every_public_formula_of_a_stage_names_its_source()
    {
        var formulas = Repository
            .PublicTypes.Where(t => Repository.Stages.Contains(Repository.FolderOf(t.Namespace)))
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && GivesNumbers(m))
            .ToList();
        Assert.True(formulas.Count > 100);
        var silent = formulas
            .Where(m => !RemarksOf(m).Contains("Source:", StringComparison.Ordinal))
            .Select(m => $"{m.DeclaringType!.FullName}.{m.Name}")
            .Distinct()
            .ToList();
        Assert.True(
            silent.Count == 0,
            "add <remarks> with \"Model: … Validity: … Source: … Accuracy: …\"; where there is no source write \"Source: our choice\" or \"from memory\":\n"
                + string.Join("\n", silent)
        );
    }

    // A method that hands back text or asks yes or no is no formula.
    private static bool GivesNumbers(MethodInfo method) =>
        method.ReturnType != typeof(string) && method.ReturnType != typeof(bool) && method.ReturnType != typeof(void);

    private static string RemarksOf(MethodInfo method)
    {
        var start = $"M:{method.DeclaringType!.FullName!.Replace('+', '.')}.{method.Name}";
        return string.Join(
            ' ',
            Members
                .Value.Where(m =>
                    m.Key == start || m.Key.StartsWith(start + "(", StringComparison.Ordinal) || m.Key.StartsWith(start + "`", StringComparison.Ordinal)
                )
                .Select(m => m.Value.Element("remarks")?.Value ?? "")
        );
    }
}
