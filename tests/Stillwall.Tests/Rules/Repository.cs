using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Stillwall.Tests.Rules;

/// <summary>The sources on disk and the library as it was built.</summary>
internal static partial class Repository
{
    /// <summary>Stages in the order of the job; each is a folder and a namespace of the library.</summary>
    internal static IReadOnlyList<string> Stages { get; } =
    ["Briefs", "Drivers", "Cabinets", "Walls", "Parts", "Pours", "SupplyLists", "Neighbours", "Proofs", "Logbooks"];

    /// <summary>What every stage may use.</summary>
    internal static IReadOnlyList<string> Foundations { get; } = ["Projects", "Numerics", "Materials", "Shapes"];

    internal static Assembly Library { get; } = typeof(Stillwall.Appraisals.Appraisal).Assembly;

    internal static IReadOnlyList<Type> PublicTypes { get; } = [.. Library.GetExportedTypes().OrderBy(t => t.FullName, StringComparer.Ordinal)];

    /// <summary>Every type that has a name in the sources, public or not.</summary>
    internal static IReadOnlyList<Type> AllTypes { get; } =
    [
        .. Library
            .GetTypes()
            .Where(t => !t.Name.Contains('<', StringComparison.Ordinal) && !t.IsDefined(typeof(CompilerGeneratedAttribute)) && !IsHidden(t))
            .OrderBy(t => t.FullName, StringComparer.Ordinal),
    ];

    internal static string Root { get; } = FindRoot();

    /// <summary>C# files under a folder of the repository, without what a build leaves behind.</summary>
    internal static IReadOnlyList<string> Sources(string folder) => Files(folder, "*.cs");

    internal static IReadOnlyList<string> Files(string folder, string pattern) =>
        Directory.Exists(Path.Combine(Root, folder))
            ?
            [
                .. Directory
                    .GetFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
                    .Where(f => !Built().IsMatch(f))
                    .Order(StringComparer.Ordinal),
            ]
            : [];

    internal static string Relative(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/');

    /// <summary>The folder of the library that a namespace or a using line belongs to: Stillwall.Walls.Plates is in Walls.</summary>
    internal static string? FolderOf(string? space) =>
        space is not null && space.StartsWith("Stillwall.", StringComparison.Ordinal) ? space.Split('.')[1] : null;

    private static bool IsHidden(Type type) => type.IsNestedPrivate || (type.DeclaringType is { } outer && (outer.Name.Contains('<') || IsHidden(outer)));

    private static string FindRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Stillwall.slnx")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new InvalidOperationException("the tests run outside the repository");
    }

    [GeneratedRegex(@"[\\/](bin|obj|node_modules|TestResults|BenchmarkDotNet\.Artifacts)[\\/]")]
    private static partial Regex Built();
}
