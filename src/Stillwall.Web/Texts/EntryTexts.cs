namespace Stillwall.Web.Texts;

/// <summary>Texts of the lists that the maker states: stock, prices, logbook.</summary>
internal static class EntryTexts
{
    internal const string Add = "Add",
        Remove = "clear";

    internal static readonly string[] Kinds = ["weigh-in", "actual", "attempt", "rattle", "no rattle"];

    internal static string Cell(string what, string entry) => $"{what}, {entry}";

    internal static string NewCell(string what) => $"{what}, new entry";

    internal static string RemoveNamed(string entry) => $"{entry}: clear";

    internal static string Removed(string entry, string list) => $"{entry} taken out of {list.ToLowerInvariant()}";

    internal static string Added(string entry, string list) => $"{entry} added to {list.ToLowerInvariant()}";

    internal static string Needed(string accepted) => $"is needed; {accepted}";
}
