using System.Reflection;
using System.Xml.Linq;

namespace Stillwall.Tests.Rules;

/// <summary>A formula says where it comes from: its remarks name a source, or say that there is none. What is public tells of every parameter.</summary>
public sealed class DocumentationTests
{
    private const string AddRemarks =
        "add <remarks> with \"Model: … Validity: … Source: … Accuracy: …\"; where there is no source write \"Source: our choice\" or \"from memory\":\n";

    private static readonly Lazy<IReadOnlyDictionary<string, XElement>> Members = new(() =>
        XDocument.Load(Path.ChangeExtension(Repository.Library.Location, ".xml")).Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, m => m)
    );

    [Fact]
    public void Every_public_formula_of_a_stage_names_its_source()
    {
        var formulas = StaticMethods(Repository.PublicTypes).Where(m => m.IsPublic && GivesNumbers(m)).ToList();
        Assert.True(formulas.Count > 100);
        var silent = Silent(formulas);
        Assert.True(silent.Count == 0, AddRemarks + string.Join("\n", silent));
    }

    // What a stage keeps to itself counts where it is sure to compute: a number comes out.
    [Fact]
    public void Every_internal_formula_of_a_stage_names_its_source()
    {
        var formulas = StaticMethods(Repository.AllTypes).Where(m => !m.IsPrivate && IsNumber(m.ReturnType)).ToList();
        Assert.True(formulas.Count > 80);
        var silent = Silent(formulas);
        Assert.True(silent.Count == 0, AddRemarks + string.Join("\n", silent));
    }

    [Fact]
    public void Every_parameter_of_a_public_member_is_told_of()
    {
        const BindingFlags declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var members = Repository.PublicTypes.SelectMany(t => t.GetMethods(declared).Cast<MethodBase>().Concat(t.GetConstructors(declared))).ToList();
        Assert.True(members.Count > 500);
        var silent = members
            .Where(m => CardsOf(m).Any() && !CardsOf(m).Elements("inheritdoc").Any())
            .SelectMany(m => m.GetParameters().Select(p => (Member: m, p.Name)))
            .Where(p => !CardsOf(p.Member).Elements("param").Any(told => told.Attribute("name")!.Value == p.Name && told.Value.Length > 0))
            .Select(p => $"{p.Member.DeclaringType!.FullName}.{p.Member.Name}: {p.Name}")
            .ToList();
        Assert.True(silent.Count == 0, "add <param> with unit and range:\n" + string.Join("\n", silent));
    }

    private static IEnumerable<MethodInfo> StaticMethods(IEnumerable<Type> types) =>
        types
            .Where(t => Repository.Stages.Contains(Repository.FolderOf(t.Namespace)))
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && !m.Name.Contains('<', StringComparison.Ordinal));

    // A method that hands back text or asks yes or no is no formula.
    private static bool GivesNumbers(MethodInfo method) =>
        method.ReturnType != typeof(string) && method.ReturnType != typeof(bool) && method.ReturnType != typeof(void);

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?) || type == typeof(IReadOnlyList<double>);

    private static List<string> Silent(IEnumerable<MethodInfo> formulas) =>
        [
            .. formulas
                .Where(m => !CardsOf(m).Elements("remarks").Any(r => r.Value.Contains("Source:", StringComparison.Ordinal)))
                .Select(m => $"{m.DeclaringType!.FullName}.{m.Name}")
                .Distinct(),
        ];

    // The cards of a member and of those that share its name; a record tells of what its constructor takes on itself.
    private static IEnumerable<XElement> CardsOf(MethodBase member)
    {
        var type = member.DeclaringType!.FullName!.Replace('+', '.');
        var start = $"M:{type}.{member.Name.Replace('.', '#')}";
        return Members
            .Value.Where(m =>
                m.Key == start
                || m.Key.StartsWith(start + "(", StringComparison.Ordinal)
                || m.Key.StartsWith(start + "`", StringComparison.Ordinal)
                || (member.IsConstructor && m.Key == $"T:{type}")
            )
            .Select(m => m.Value);
    }
}
