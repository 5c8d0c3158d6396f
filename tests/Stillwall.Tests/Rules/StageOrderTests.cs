using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Stillwall.Tests.Rules;

/// <summary>A stage uses the stated model, numerics, materials, shapes and the stages before it; only Appraisals and Figures see everything.</summary>
public sealed partial class StageOrderTests
{
    // They put the stages together and draw what came out.
    private static readonly string[] SeeEverything = ["Appraisals", "Figures"];

    private static readonly IReadOnlyCollection<BuiltUse> Uses = BuiltUses.Of(Repository.Library);

    public static TheoryData<string> Folders => [.. Repository.Foundations, .. Repository.Stages];

    // What the compiler puts in by value leaves no trace in what was built: constants, members of enumerations, nameof. So the sources are read too.
    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_names_no_later_stage_in_its_sources(string folder)
    {
        var wrong = Repository
            .Sources($"src/Stillwall/{folder}")
            .SelectMany(file => Named(File.ReadAllText(file)).Select(used => (File: Repository.Relative(file), Folder: used)))
            .Where(use => !Allowed(folder).Contains(use.Folder))
            .Distinct()
            .ToList();
        Assert.True(wrong.Count == 0, Message(folder, wrong.Select(w => $"{w.File} names {w.Folder}")));
    }

    [Theory]
    [InlineData("using Stillwall.Walls;")]
    [InlineData("using W = Stillwall.Walls.Plate;")]
    [InlineData("var x = Walls.Tilt.Most;")]
    [InlineData("var x = Walls.Tilt.Kind.Steep;")]
    [InlineData("var x = nameof(Walls.Tilt);")]
    [InlineData("var x = global::Stillwall.Walls.Tilt.Most;")]
    [InlineData("class A { Walls.Tilt? Of(int x) => null; }")]
    [InlineData("/// <see cref=\"Stillwall.Walls.Tilt\"/>")]
    public void A_name_of_a_later_stage_is_seen(string source) => Assert.Equal(["Walls"], Named(source).Distinct());

    [Theory]
    [InlineData("var x = facts.Walls.Count;")]
    [InlineData("var x = this.Walls.Count;")]
    [InlineData("// Walls.Tilt is told of in words.")]
    public void A_member_of_the_same_name_is_none(string source) => Assert.Empty(Named(source));

    // As it was built: whatever a name looked like in the source, in a signature, a body, a lambda or an attribute.
    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_uses_no_later_stage_in_what_was_built(string folder)
    {
        var wrong = Uses.Where(use => SpaceOf(use.By) == folder && SpaceOf(use.Of) is { } used && !Allowed(folder).Contains(used)).ToList();
        Assert.True(wrong.Count == 0, Message(folder, wrong.Select(w => $"{w.By}.{w.In} uses {w.Of}")));
    }

    [Fact]
    public void Every_folder_of_the_library_has_its_place_in_the_order()
    {
        var known = Repository.Foundations.Concat(Repository.Stages).Concat(SeeEverything).ToList();
        var unknown = Repository.Library.GetTypes().Select(t => Repository.FolderOf(t.Namespace)).OfType<string>().Distinct().Except(known).ToList();
        Assert.True(
            unknown.Count == 0,
            $"{string.Join(", ", unknown)} is in no order: put it into a stage's folder, or into the lists of Repository.cs and docs/architecture.md with "
                + "its reason"
        );
    }

    [Fact]
    public void The_order_in_the_document_is_the_order_that_is_tested()
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "docs", "architecture.md"));
        Assert.Contains(string.Join(" → ", Repository.Stages), text, StringComparison.Ordinal);
    }

    private static IReadOnlyList<string> Allowed(string folder) =>
        Repository.Stages.Contains(folder) ? [.. Repository.Foundations, .. Repository.Stages.TakeWhile(s => s != folder), folder] : Repository.Foundations;

    private static string Message(string folder, IEnumerable<string> wrong) =>
        $"{folder} may use {string.Join(", ", Allowed(folder))}. Hand the value in as a number or a record of an earlier folder, or move the judgement to "
        + $"Appraisals:\n{string.Join("\n", wrong)}";

    private static string? SpaceOf(string type)
    {
        var outer = type.Split('+')[0];
        return Repository.FolderOf(outer[..Math.Max(0, outer.LastIndexOf('.'))]);
    }

    // Whole names anywhere, and names that begin with a folder in code.
    private static IEnumerable<string> Named(string source) =>
        Whole()
            .Matches(source)
            .Select(m => m.Groups[1].Value)
            .Concat(
                CSharpSyntaxTree
                    .ParseText(source)
                    .GetRoot()
                    .DescendantNodes()
                    .OfType<IdentifierNameSyntax>()
                    .Where(n =>
                        (n.Parent is QualifiedNameSyntax q && q.Left == n) || (n.Parent is MemberAccessExpressionSyntax access && access.Expression == n)
                    )
                    .Select(n => n.Identifier.Text)
                    .Where(Repository.Stages.Concat(SeeEverything).Contains)
            );

    [GeneratedRegex(@"(?<![\w.])Stillwall\.([A-Z]\w+)")]
    private static partial Regex Whole();
}
