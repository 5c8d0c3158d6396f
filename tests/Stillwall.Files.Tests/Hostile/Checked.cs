using Stillwall.Appraisals;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>What must be true of every reading and every appraisal.</summary>
internal static class Checked
{
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

    internal static string? Appraisal(Appraisal appraisal) =>
        Finite.FirstFault(appraisal, "appraisal") ?? appraisal.Findings.Select(Words).FirstOrDefault(f => f is not null);

    private static string? Words(Finding finding)
    {
        string[] lines = [finding.Because, finding.Remedy ?? "", finding.Basis];
        return lines.FirstOrDefault(line => line.Any(char.IsControl) || line.Contains("NaN", StringComparison.Ordinal) || line.Contains('∞', StringComparison.Ordinal)) is { } line
            ? $"{finding.Id} says: {line}"
            : null;
    }
}
