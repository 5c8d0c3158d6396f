using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Neighbours;

/// <summary>One stretch of a day with a steady A-weighted level.</summary>
/// <param name="LevelDb">A-weighted level, dB.</param>
/// <param name="Hours">How long, h.</param>
public sealed record Exposure(double LevelDb, double Hours);

/// <summary>What a day's listening does to the ear, as published occupational limits count it.</summary>
public static class Hearing
{
    private const double CriterionDb = 85;
    private const double CriterionHours = 8;
    private const double ExchangeDb = 3;

    /// <summary>Share of a day's recommended dose.</summary>
    /// <param name="aWeightedLevelDb">A-weighted level at the ear, −300 to 200 dB.</param>
    /// <param name="hours">Hours a day, 0 to 24.</param>
    /// <returns>Dose; 1 is the whole of the recommended limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: hours / (8 / 2^((L − 85)/3)). Validity: an occupational limit; at 85 dB over 8 h some people still lose hearing. Source: NIOSH 98-126:
    /// 85 dB(A), 8 h, 3 dB exchange.
    /// Accuracy: by definition.
    /// </remarks>
    public static double DoseRatio(double aWeightedLevelDb, double hours)
    {
        Require.Within(hours, 0, 24, nameof(hours), "h");
        return hours * Units.Hour / LongestS(aWeightedLevelDb);
    }

    /// <summary>Time in which a level makes up the whole of a day's recommended dose.</summary>
    /// <param name="aWeightedLevelDb">A-weighted level at the ear, −300 to 200 dB.</param>
    /// <returns>Time, s; more than a day where the level is low.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Model: 8 h / 2^((L − 85)/3). Validity: as the dose. Source: NIOSH 98-126. Accuracy: by definition.</remarks>
    public static double LongestS(double aWeightedLevelDb)
    {
        Require.Within(aWeightedLevelDb, -300, 200, nameof(aWeightedLevelDb), "dB");
        return CriterionHours * Units.Hour / Math.Pow(2, (aWeightedLevelDb - CriterionDb) / ExchangeDb);
    }

    /// <summary>A day's exposure as a steady level over eight hours.</summary>
    /// <param name="day">The stretches of the day; levels −50 to 150 dB, hours 0 to 24.</param>
    /// <returns>Level over eight hours, dB; null for a day without any time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: 10 log10 Σ (h/8) 10^(L/10). Validity: A-weighted levels at the ear. Source: ISO 9612:2009, task-based measurement. Accuracy: by
    /// definition.
    /// </remarks>
    public static double? DailyExposureDb(IReadOnlyList<Exposure> day)
    {
        ArgumentNullException.ThrowIfNull(day);
        foreach (var stretch in day)
        {
            Require.Within(stretch.LevelDb, -50, 150, nameof(day), "dB");
            Require.Within(stretch.Hours, 0, 24, nameof(day), "h");
        }

        var shares = day.Where(stretch => stretch.Hours > 0).Select(stretch => stretch.LevelDb + (10 * Math.Log10(stretch.Hours / CriterionHours))).ToArray();
        return shares.Length == 0 ? null : ThirdOctaves.SumDb(shares);
    }
}
