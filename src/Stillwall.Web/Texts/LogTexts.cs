namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Logbook.</summary>
internal static class LogTexts
{
    internal const string Hint = "Attempts, actual masses, weigh-ins: the last first.",
        Nothing = "Nothing is logged yet.",
        Entries = "Entries";
    internal const string KindsHint =
        "These kinds are read: weigh-in for drying, actual and attempt against the plan, rattle and no rattle after a slow sweep. Any other word is kept.";

    internal static IReadOnlyList<(string, string, string?, string, IReadOnlyList<string>)> Columns(IEnumerable<string> parts) =>
        [
            ("date", "date", null, "2026-11-16", []),
            ("kind", "kind", null, "weigh-in", EntryTexts.Kinds),
            ("part", "part", null, "cabinet", [.. parts.Prepend("cabinet").Distinct()]),
            ("mass", "mass", "kg", "9.42", []),
            ("duration", "time taken", "h", "2.5", []),
            ("cost", "cost", null, "12", []),
            ("note", "remark", null, "", []),
        ];
}
