using Stillwall.Numerics;

namespace Stillwall.Proofs.Recordings;

/// <summary>Sound as samples, full scale at ±1.</summary>
public sealed record Recording
{
    /// <summary>Puts channels together.</summary>
    /// <param name="rateHz">Samples a second, above 0.</param>
    /// <param name="channels">One or more channels of equal length, finite samples, full scale at ±1.</param>
    /// <param name="stepFraction">Smallest step between two samples as a fraction of full scale, 0 or more: 2^−15 for 16 bit.</param>
    /// <exception cref="ArgumentOutOfRangeException">No channel, channels of different lengths, or a number out of range.</exception>
    public Recording(double rateHz, IReadOnlyList<double[]> channels, double stepFraction)
    {
        ArgumentNullException.ThrowIfNull(channels);
        Require.Positive(rateHz);
        Require.NotNegative(stepFraction);
        Require.Within(channels.Count, 1, 1000, nameof(channels), "channels");
        Require.Within(channels.Max(c => c.Length), channels[0].Length, channels.Min(c => c.Length), nameof(channels), "samples in every channel");
        (RateHz, Channels, StepFraction) = (rateHz, channels, stepFraction);
    }

    /// <summary>Samples a second, Hz.</summary>
    public double RateHz { get; }

    /// <summary>The channels, of equal length, the left one first.</summary>
    public IReadOnlyList<double[]> Channels { get; }

    /// <summary>Smallest step between two samples as a fraction of full scale.</summary>
    public double StepFraction { get; }

    /// <summary>How many samples each channel has.</summary>
    public int LengthCount => Channels[0].Length;

    /// <summary>How long it is, s.</summary>
    public double DurationS => LengthCount / RateHz;

    /// <summary>The channel with the most energy, its mean taken off: what to look at in a recording by one microphone.</summary>
    /// <returns>Samples, full scale at ±1.</returns>
    /// <remarks>Model: Σx² decides. Source: our choice. Accuracy: exact.</remarks>
    public double[] Loudest() => Channels.Select(WithoutMean).MaxBy(c => c.Sum(x => x * x))!;

    /// <summary>Takes the mean off a channel.</summary>
    /// <param name="samples">The samples.</param>
    /// <returns>New samples about zero.</returns>
    /// <remarks>Model: x − mean(x): a constant offset of a sound card is no sound. Source: common practice, no source. Accuracy: exact.</remarks>
    public static double[] WithoutMean(double[] samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        var mean = samples.Length == 0 ? 0 : samples.Average();
        return Array.ConvertAll(samples, x => x - mean);
    }
}
