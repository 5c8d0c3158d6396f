using Stillwall.Numerics;

namespace Stillwall.Tests.Numerics;

public sealed class SeededGeneratorTests
{
    // SplitMix64 from state 1234567: first output 6457827717110365317 (published test vector, from memory); its top 53 bits over 2⁵³.
    [Fact]
    public void The_sequence_starts_as_published()
    {
        var expected = (6457827717110365317UL >> 11) / Math.Pow(2, 53);
        Assert.Equal(expected, new SeededGenerator(1234567).Next());
    }

    // An even spread from 0 to 1 has the mean 1/2 and the variance 1/12.
    [Fact]
    public void Draws_are_spread_evenly()
    {
        var generator = new SeededGenerator(7);
        var draws = Enumerable.Range(0, 100000).Select(_ => generator.Next()).ToArray();
        Assert.InRange(draws.Average(), 0.495, 0.505);
        Assert.InRange(draws.Average(d => (d - 0.5) * (d - 0.5)), 0.0825, 0.0842);
    }
}
