using System.Globalization;
using Stillwall.Appraisals;

namespace Stillwall.Cli.Commands.Proving;

/// <summary>A figure with its band, in digits that the band bears.</summary>
internal static class Bands
{
    internal static string Of(double value, double band, string unit = "")
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
