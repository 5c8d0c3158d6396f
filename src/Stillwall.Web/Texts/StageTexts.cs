namespace Stillwall.Web.Texts;

/// <summary>Texts that several stages share.</summary>
internal static class StageTexts
{
    internal const string Checks = "What is checked";
}
