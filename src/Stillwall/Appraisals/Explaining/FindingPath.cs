using System.Globalization;
using System.Text.RegularExpressions;
using Stillwall.Appraisals.Findings;

namespace Stillwall.Appraisals.Explaining;

/// <summary>One number of a finding: its value, its limit or its margin.</summary>
internal sealed partial record FindingPath(FindingRule Rule, string Which)
{
    private static readonly string[] Numbers = ["value", "limit", "margin"];

    /// <summary>Finds a finding's number by its path: the id alone for the value, or as in the machine-readable form, by id or index.</summary>
    internal static FindingPath? Find(string path)
    {
        var found = Path().Match(path);
        var rule =
            !found.Success ? null
            : int.TryParse(found.Groups["id"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var index)
                ? AllFindings.Rules.ElementAtOrDefault(index)
            : AllFindings.Find(found.Groups["id"].Value);
        return rule is null ? null : new FindingPath(rule, found.Groups["which"] is { Success: true, Value: var which } ? which : "value");
    }

    /// <summary>Path of a finding's number in the machine-readable form.</summary>
    internal static string Named(FindingRule rule, string which) => $"findings[\"{rule.Id}\"].{which}";

    /// <summary>Paths of a finding's numbers that are known.</summary>
    internal static IEnumerable<string> Known(FindingRule rule, Facts facts)
    {
        var judged = rule.Judge(facts);
        return Numbers.Where(which => new FindingPath(rule, which).Of(judged) is not null).Select(which => Named(rule, which));
    }

    /// <summary>The number itself; null where it is not known.</summary>
    internal double? Of(Judgement judged) =>
        Which switch
        {
            "limit" => judged.Limit,
            "margin" => judged.Margin,
            _ => judged.Value,
        };

    // findings["pour/skins-bulge"].limit, findings[28].limit, pour/skins-bulge.limit, pour/skins-bulge
    [GeneratedRegex(
        """^(findings\[["']?(?<id>[a-z0-9/-]+)["']?\]|(?<id>[a-z]+/[a-z0-9-]+))(\.(?<which>value|limit|margin))?$""",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Path();
}
