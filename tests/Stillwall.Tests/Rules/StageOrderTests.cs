using System.Reflection;
using System.Text.RegularExpressions;

namespace Stillwall.Tests.Rules;

/// <summary>A stage uses the stated model, numerics, materials, shapes and the stages before it; only Appraisals and Figures see everything.</summary>
public sealed partial class StageOrderTests
{
    // They put the stages together and draw what came out.
    private static readonly string[] SeeEverything = ["Appraisals", "Figures"];

    public static TheoryData<string> Folders => [.. Repository.Foundations, .. Repository.Stages];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_names_no_later_stage_in_its_sources(string folder)
    {
        var wrong = Repository
            .Sources($"src/Stillwall/{folder}")
            .SelectMany(file => Named().Matches(File.ReadAllText(file)).Select(m => (File: Repository.Relative(file), Folder: m.Groups[1].Value)))
            .Where(use => !Allowed(folder).Contains(use.Folder))
            .Distinct()
            .ToList();
        Assert.True(wrong.Count == 0, Message(folder, wrong.Select(w => $"{w.File} names Stillwall.{w.Folder}")));
    }

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_s_types_show_no_later_stage(string folder)
    {
        var wrong = Repository
            .Library.GetTypes()
            .Where(t => Repository.FolderOf(t.Namespace) == folder)
            .SelectMany(t => Shown(t).SelectMany(Inside).Select(used => (Type: t.FullName, Used: used.FullName, Folder: Repository.FolderOf(used.Namespace))))
            .Where(use => use.Folder is not null && !Allowed(folder).Contains(use.Folder))
            .Distinct()
            .ToList();
        Assert.True(wrong.Count == 0, Message(folder, wrong.Select(w => $"{w.Type} shows {w.Used}")));
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

    private static IEnumerable<Type> Shown(Type type)
    {
        const BindingFlags own = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var members = type.GetFields(own)
            .Select(f => f.FieldType)
            .Concat(type.GetProperties(own).Select(p => p.PropertyType))
            .Concat(type.GetMethods(own).SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType)))
            .Concat(type.GetConstructors(own).SelectMany(c => c.GetParameters().Select(p => p.ParameterType)))
            .Concat(type.GetInterfaces());
        return type.BaseType is null ? members : members.Append(type.BaseType);
    }

    private static IEnumerable<Type> Inside(Type type) =>
        type.HasElementType ? Inside(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Inside).Append(type)
        : [type];

    [GeneratedRegex(@"(?<![\w.])Stillwall\.([A-Z]\w+)")]
    private static partial Regex Named();
}
