using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>What the water of a rehearsal says of the form.</summary>
public enum RehearsalReading
{
    /// <summary>The cavity is as it was drawn.</summary>
    AsDrawn,

    /// <summary>It takes less: air is trapped, a passage is blocked, or the skins are thicker than drawn.</summary>
    TakesLess,

    /// <summary>It takes more: it leaks, or a skin bulges.</summary>
    TakesMore,
}

/// <summary>The empty form is filled with water before it is filled with cast: what the water weighs, and what a difference means.</summary>
public static class WaterRehearsal
{
    /// <summary>
    /// How near the water that goes in should come to the cavity as drawn, as a ratio: half a per cent for the scales and what clings, half for the
    /// print (our choice).
    /// </summary>
    public const double NearRatio = 0.01;

    /// <summary>Water that the cavity takes.</summary>
    /// <param name="cavityM3">Volume of the cavity, m³, 0 or more.</param>
    /// <returns>Mass, kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    /// <remarks>
    /// Model: volume × 998 kg/m³. Validity: water at 15 to 25 °C. Source: density of water at 20 °C, 998.2 kg/m³ (from memory). Accuracy: 0.1 % of
    /// the volume; the cavity itself as it was printed.
    /// </remarks>
    public static double WaterKg(double cavityM3)
    {
        Require.NotNegative(cavityM3);
        return cavityM3 * CastMixes.WaterDensityKgM3;
    }

    /// <summary>What the weighed water says.</summary>
    /// <param name="expectedKg">Water that the cavity takes as drawn, kg, above 0.</param>
    /// <param name="weighedKg">Water that went in, kg, 0 or more.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: within one per cent it is as drawn. Validity: water weighed in and the form dry before. Source: our choice. Accuracy: 37 g on 3.7 kg.
    /// </remarks>
    public static RehearsalReading Read(double expectedKg, double weighedKg)
    {
        Require.Positive(expectedKg);
        Require.NotNegative(weighedKg);
        var off = weighedKg / expectedKg - 1;
        return off < -NearRatio ? RehearsalReading.TakesLess
            : off > NearRatio ? RehearsalReading.TakesMore
            : RehearsalReading.AsDrawn;
    }
}

/// <summary>What one pair of scales must be able to do.</summary>
/// <param name="What">What is weighed: <c>batches</c>, <c>cabinet</c> or <c>test bar</c>.</param>
/// <param name="CapacityKg">The most it must carry, kg.</param>
/// <param name="StepKg">The coarsest step of its display that will do, kg.</param>
public sealed record ScaleNeed(
    string What,
    [property: ComputedBy("scales", "pour.batches[].powder_kg", "mass.wet_kg")] double CapacityKg,
    [property: ComputedBy("scales", "pour.batches[].water_kg", "pour.dry_in_cabinet_kg")] double StepKg
);

/// <summary>What the scales must be able to weigh.</summary>
public static class Scales
{
    // A hundredth of the smallest amount of a batch, a tenth of the water that may be left in the cabinet, half a per cent of the test bar: our choice.
    private const double OfBatch = 0.01,
        OfWater = 0.1,
        OfBar = 0.005;

    /// <summary>Scales for the batches, for the cabinet while it dries, and for the test bar.</summary>
    /// <param name="plan">The pour.</param>
    /// <param name="wetKg">Cabinet on the day of the pour, kg, above 0.</param>
    /// <param name="dryCastKg">Dry cast in the cabinet, kg, above 0.</param>
    /// <param name="drynessRatio">Free water that may be left over the dry cast, above 0.</param>
    /// <param name="barKg">Test bar, kg, above 0.</param>
    /// <returns>Three needs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: shares of what has to be told apart, down to a step of 1, 2 or 5. Validity: scales that are as true as their step. Source: our choice.
    /// Accuracy: exact.
    /// </remarks>
    public static IReadOnlyList<ScaleNeed> Of(PourPlan plan, double wetKg, double dryCastKg, double drynessRatio, double barKg)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Require.Positive(wetKg);
        Require.Positive(dryCastKg);
        Require.Positive(drynessRatio);
        Require.Positive(barKg);
        return
        [
            new ScaleNeed(
                "batches",
                plan.Batches.Max(b => Math.Max(b.PowderKg, b.WaterKg)),
                StepKg(OfBatch * plan.Batches.Min(b => Math.Min(b.PowderKg, b.WaterKg)))
            ),
            new ScaleNeed("cabinet", wetKg, StepKg(OfWater * drynessRatio * dryCastKg)),
            new ScaleNeed("test bar", barKg, StepKg(OfBar * barKg)),
        ];
    }

    // Displays count in steps of 1, 2 or 5.
    private static double StepKg(double atMostKg)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(atMostKg)));
        return new[] { 5, 2, 1 }.Select(step => step * decade).First(step => step <= atMostKg * (1 + 1e-9));
    }
}
