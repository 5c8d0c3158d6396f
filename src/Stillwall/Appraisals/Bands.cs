using System.Globalization;

namespace Stillwall.Appraisals;

/// <summary>A figure with its band, in digits that the band bears.</summary>
internal static class Bands
{
    /// <summary>Writes a figure and its band.</summary>
    /// <param name="band">Half of its 95 % band, in the same unit; 0 where none is known.</param>
    /// <param name="unit">The unit; empty for a ratio.</param>
    /// <returns>Such as 49.0 ± 0.3 Hz.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Of(double value, double band, string unit = "")
    {
        var end = unit.Length == 0 ? "" : $" {unit}";
        if (!(band > 0) || value == 0)
        {
            return $"{Show.Number(value)}{end}";
        }

        // Two digits of the band at most, four of the value.
        var decimals = Math.Clamp(1 - (int)Math.Floor(Math.Log10(band)), 0, Math.Max(0, 3 - (int)Math.Floor(Math.Log10(Math.Abs(value)))));
        var least = Math.Pow(10, -decimals);
        string Written(double x) => Math.Round(x, decimals).ToString($"F{decimals.ToString(CultureInfo.InvariantCulture)}", CultureInfo.InvariantCulture);
        return band >= Math.Abs(value) ? $"{Show.Number(value, 2)} ± {Show.Number(band, 2)}{end}" : $"{Written(value)} ± {Written(Math.Max(band, least))}{end}";
    }
}
