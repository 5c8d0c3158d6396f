using Stillwall.Numerics;

namespace Stillwall.Proofs.Sweeps;

/// <summary>One band of a relative response.</summary>
/// <param name="FrequencyHz">Mid-band frequency, Hz.</param>
/// <param name="MagnitudeDb">Mean energy in the band, dB; the mean of the points from 100 to 200 Hz is 0.</param>
/// <param name="SignalToNoiseDb">How far it stands above the noise, dB; null where no noise was heard.</param>
public sealed record SweepPoint(double FrequencyHz, double MagnitudeDb, double? SignalToNoiseDb);

/// <summary>One harmonic.</summary>
/// <param name="OrderCount">Which: 2 to 5.</param>
/// <param name="Ratio">Its amplitude over that of the fundamental, energy mean over the span that both cover; null where they share none.</param>
public sealed record Harmonic(int OrderCount, double? Ratio);

/// <summary>A relative response by a microphone that nobody has calibrated: it compares only with itself.</summary>
/// <param name="DelayS">How much later it was recorded than the played file says, s.</param>
/// <param name="HarmonicDistortion">Harmonics two to five together over the fundamental, a ratio; null where what was played is no exponential sweep.</param>
/// <param name="SignalToNoiseDb">Energy of the points over that of the noise, dB; null where no noise was heard.</param>
/// <param name="Harmonics">The single harmonics.</param>
/// <param name="Points">The response.</param>
public sealed record SweepResult(
    [property: ComputedBy("sweep-delay", "recording", "recording.played")] double DelayS,
    [property: ComputedBy("sweep-harmonics", "recording", "recording.played")] double? HarmonicDistortion,
    [property: ComputedBy("sweep-noise", "recording", "recording.played")] double? SignalToNoiseDb,
    IReadOnlyList<Harmonic> Harmonics,
    IReadOnlyList<SweepPoint> Points
)
{
    /// <summary>
    /// How far two clocks 100 ppm apart may move a point from 20 to 400 Hz, dB; null where what was played is no exponential sweep, or covers none of
    /// that.
    /// </summary>
    [ComputedBy("sweep-clock", "recording", "recording.played")]
    public double? ClockDoubtDb { get; init; }
}

/// <summary>A recorded sweep that was looked into, or why it says nothing.</summary>
/// <param name="Result">What it says; null where it says nothing.</param>
/// <param name="Trouble">Why it says nothing, and what would do; null where it says something.</param>
/// <param name="Warnings">What is to be kept in mind about what it says.</param>
public sealed record SweepReading(SweepResult? Result, string? Trouble, IReadOnlyList<string> Warnings);
