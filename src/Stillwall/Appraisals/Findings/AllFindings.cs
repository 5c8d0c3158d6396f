namespace Stillwall.Appraisals.Findings;

/// <summary>Every rule, in the order of the job.</summary>
internal static class AllFindings
{
    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        .. BriefFindings.Rules,
        .. DriverFindings.Rules,
        .. CabinetFindings.Rules,
        .. WallFindings.Rules,
        .. PartFindings.Rules,
        .. PourFindings.Rules,
        .. SupplyFindings.Rules,
        .. QuietFindings.Rules,
        .. ProofFindings.Rules,
        .. LogbookFindings.Rules,
    ];

    /// <summary>Finds a rule by the id of its finding.</summary>
    internal static FindingRule? Find(string id) => Rules.FirstOrDefault(r => r.Id == id);
}
