using System.Numerics;
using CsCheck;
using Stillwall.Numerics;

namespace Stillwall.Tests.Numerics;

public sealed class FourierTransformTests
{
    private static readonly Gen<double[]> Signals = Gen.Int[1, 7].SelectMany(power => Gen.Double[-1, 1].Array[1 << power]);

    // The sum that defines the transform.
    private static Complex Defined(double[] signal, int k) =>
        signal.Select((v, i) => v * Complex.FromPolarCoordinates(1, -2 * Math.PI * k * i / signal.Length)).Aggregate(Complex.Zero, (a, b) => a + b);

    [Fact]
    public void Two_signals_at_once_are_the_sums_that_define_their_transforms() =>
        Signals.Sample(one =>
        {
            var two = one.Select((v, i) => v * v - (i % 3)).ToArray();
            var (first, second) = FourierTransform.Pair(one, two, one.Length);
            Assert.Equal(one.Length / 2 + 1, first.Length);
            for (var k = 0; k < first.Length; k++)
            {
                Assert.True((first[k] - Defined(one, k)).Magnitude < 1e-11);
                Assert.True((second[k] - Defined(two, k)).Magnitude < 1e-11);
            }
        });

    [Fact]
    public void A_signal_comes_back_from_its_transform() =>
        Signals.Sample(signal =>
        {
            var back = FourierTransform.Signal(FourierTransform.Pair(signal, signal, signal.Length).One);
            Assert.Equal(signal.Length, back.Length);
            Assert.All(signal.Zip(back), pair => Assert.Equal(pair.First, pair.Second, 1e-13));
        });

    [Fact]
    public void A_tone_is_one_line_and_its_line_a_tone()
    {
        var lines = new Complex[65];
        lines[5] = new Complex(0, -64);
        var tone = FourierTransform.Signal(lines);
        Assert.All(tone.Select((v, i) => (v, i)), at => Assert.Equal(Math.Sin(2 * Math.PI * 5 * at.i / 128), at.v, 1e-14));
    }

    [Fact]
    public void A_signal_that_is_shorter_than_the_transform_is_followed_by_silence()
    {
        var (one, _) = FourierTransform.Pair([1, 2, 3], [], 8);
        Assert.All(Enumerable.Range(0, 5), k => Assert.True((one[k] - Defined([1, 2, 3, 0, 0, 0, 0, 0], k)).Magnitude < 1e-14));
    }
}
