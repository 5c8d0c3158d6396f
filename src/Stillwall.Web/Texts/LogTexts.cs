namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Logbook.</summary>
internal static class LogTexts
{
    internal const string Hint = "Attempts, actual masses, weigh-ins: the last first.", Nothing = "Nothing is logged yet.";
    internal const string Date = "date", Kind = "kind", Part = "part", Mass = "mass", Duration = "duration", Cost = "cost", Note = "note";
}
