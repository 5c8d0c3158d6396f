using Stillwall.Numerics;

namespace Stillwall.Proofs.Taps;

/// <summary>One tap.</summary>
/// <param name="TimeS">When it was, s from the start of the recording.</param>
/// <param name="FrequencyHz">Frequency of the bar, Hz.</param>
/// <param name="LossFactor">Loss factor, decrement over π.</param>
/// <param name="IsOutlier">Whether it is too far from the others to count.</param>
public sealed record Tap(double TimeS, double FrequencyHz, double LossFactor, bool IsOutlier);

/// <summary>What a tap test says.</summary>
/// <param name="FrequencyHz">Frequency of the first bending mode, Hz.</param>
/// <param name="YoungsModulusPa">Young's modulus, Pa.</param>
/// <param name="LossFactor">Loss factor, decrement over π.</param>
/// <param name="DensityKgM3">Density by sizes and mass, kg/m³.</param>
public record TapFigures(
    [property: ComputedBy("tap-frequency", "recording")] double FrequencyHz,
    [property: ComputedBy("tap-modulus", "recording.frequency_hz", "recording.length_m", "recording.width_m", "recording.thickness_m", "recording.mass_kg")]
        double YoungsModulusPa,
    [property: ComputedBy("tap-loss", "recording")] double LossFactor,
    [property: ComputedBy("tap-density", "recording.length_m", "recording.width_m", "recording.thickness_m", "recording.mass_kg")] double DensityKgM3
);

/// <summary>What a tap test says, with its bands.</summary>
/// <param name="Figures">The figures.</param>
/// <param name="Uncertainty">Half of each figure's 95 % band, caliper and scales counted.</param>
/// <param name="Noise">Half of each figure's 95 % band for the recording alone, for comparing bars measured with the same tools.</param>
/// <param name="Taps">The single taps.</param>
public sealed record TapResult(TapFigures Figures, TapFigures Uncertainty, TapFigures Noise, IReadOnlyList<Tap> Taps) : TapFigures(Figures)
{
    /// <summary>The figures.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public TapFigures Figures { get; } = Figures;

    /// <summary>How it differs from another bar; null where there is none.</summary>
    public IReadOnlyList<BarDifference>? Against { get; init; }
}

/// <summary>A recording of taps that was looked into, or why it says nothing.</summary>
/// <param name="Result">What it says; null where it says nothing.</param>
/// <param name="Trouble">Why it says nothing, and what would do; null where it says something.</param>
/// <param name="Warnings">What is to be kept in mind about what it says.</param>
public sealed record TapReading(TapResult? Result, string? Trouble, IReadOnlyList<string> Warnings);
