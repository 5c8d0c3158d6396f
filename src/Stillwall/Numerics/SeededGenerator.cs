namespace Stillwall.Numerics;

/// <summary>Numbers drawn from a seed, the same on every machine and every version of the runtime.</summary>
/// <remarks>The mixing function is SplitMix64 (Steele, Lea and Flood 2014), with 53 bits per number.</remarks>
internal sealed class SeededGenerator(ulong seed)
{
    private ulong state = seed;

    /// <summary>Draws the next number, evenly from 0 up to but not including 1.</summary>
    public double Next()
    {
        state += 0x9E3779B97F4A7C15;
        var mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Draws a factor about one.</summary>
    /// <param name="spread">Half the span: 0.2 draws evenly from 0.8 to 1.2.</param>
    public double Factor(double spread) => 1 + (spread * ((2 * Next()) - 1));
}
