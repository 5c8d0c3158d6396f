using Stillwall.Appraisals;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>What must be true of every reading and every appraisal.</summary>
internal static class Checked
{
    private static readonly string[] NoNumbers = ["NaN", "∞"];

    internal static string? Faults(IEnumerable<Fault> faults)
    {
        foreach (var fault in faults)
        {
            var line = fault.ToString();
            if (line.Length > Fault.LongestLine || line.Any(char.IsControl))
            {
                return $"a fault's line has {line.Length} characters or a control character: {line}";
            }
        }

        return null;
    }

    /// <summary>What is wrong with an appraisal, or null.</summary>
    /// <param name="appraisal">The appraisal.</param>
    /// <param name="stated">What was stated: a name in it may be "NaN", and is then said as it is.</param>
    internal static string? Appraisal(Appraisal appraisal, string stated = "") =>
        Finite.FirstFault(appraisal, "appraisal")
        ?? appraisal
            .Findings.Select(f => Words(f, NoNumbers.Where(word => !stated.Contains(word, StringComparison.Ordinal))))
            .FirstOrDefault(f => f is not null);

    private static string? Words(Finding finding, IEnumerable<string> noNumbers)
    {
        string[] lines = [finding.Because, finding.Remedy ?? "", finding.Basis];
        return lines.FirstOrDefault(line => line.Any(char.IsControl) || noNumbers.Any(word => line.Contains(word, StringComparison.Ordinal))) is { } line
            ? $"{finding.Id} says: {line}"
            : null;
    }
}
