namespace Stillwall.Web.Texts;

/// <summary>Units as people write them.</summary>
internal static class UnitTexts
{
    internal static string Said(string unit) =>
        unit.Replace("degC", "°C", StringComparison.Ordinal)
            .Replace("degF", "°F", StringComparison.Ordinal)
            .Replace("2", "²", StringComparison.Ordinal)
            .Replace("3", "³", StringComparison.Ordinal)
            .Replace("*", "·", StringComparison.Ordinal);
}
