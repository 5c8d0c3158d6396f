namespace Stillwall.Proofs.Signals;

/// <summary>Soft beginnings and ends, and silence about them.</summary>
internal static class Fades
{
    /// <summary>Fades a signal in place by half a cosine at each end.</summary>
    internal static double[] Put(double[] samples, int first, int last)
    {
        for (var i = 0; i < Math.Min(first, samples.Length); i++)
        {
            samples[i] *= 0.5 - (0.5 * Math.Cos(Math.PI * i / first));
        }

        for (var i = 0; i < Math.Min(last, samples.Length); i++)
        {
            samples[^(i + 1)] *= 0.5 - (0.5 * Math.Cos(Math.PI * i / last));
        }

        return samples;
    }
}
