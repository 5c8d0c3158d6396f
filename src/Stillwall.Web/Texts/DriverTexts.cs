namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Driver.</summary>
internal static class DriverTexts
{
    internal static string Imported(string file) => $"drivers from {file}";
}
