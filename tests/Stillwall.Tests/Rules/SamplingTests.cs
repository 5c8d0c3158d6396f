using System.Collections.Concurrent;
using CsCheck;

namespace Stillwall.Tests.Rules;

/// <summary>Random cases can be had again: <see cref="Sampling"/>.</summary>
public class SamplingTests
{
    [Fact]
    public void The_same_seed_gives_the_same_cases_and_as_many_as_are_asked_for()
    {
        Assert.Equal(Drawn(7), Drawn(7));
        Assert.NotEqual(Drawn(7), Drawn(8));
        Assert.Equal(50, Drawn(7).Count);
        Assert.True(Drawn(7).Distinct().Count() > 40);
    }

    [Fact]
    public void A_build_server_always_takes_the_same_cases_and_others_take_new_ones_unless_some_are_asked_for()
    {
        Assert.Equal(Sampling.SeedOf(null, "true", 1), Sampling.SeedOf(null, "true", 2));
        Assert.NotEqual(Sampling.SeedOf(null, null, 1), Sampling.SeedOf(null, null, 2));
        Assert.Equal(12UL, Sampling.SeedOf("12", "true", 1));
        Assert.Equal(12UL, Sampling.SeedOf("12", null, 1));
    }

    // The fault is at 900 and above; the cases of a seed name it with what gives it again.
    [Fact]
    public void A_property_that_does_not_hold_fails_and_names_the_seed_of_a_case()
    {
        void Fail() => Sampling.Sample(Gen.Int[0, 1000], n => Assert.True(n < 900), 200, 2, 7);
        var told = Assert.Throws<CsCheckException>(Fail);
        Assert.Contains("CsCheck_Seed", told.Message, StringComparison.Ordinal);
        var seed = told.Message.Split('"')[1];
#pragma warning disable RS0030 // Tried again as the message says.
        Assert.Throws<CsCheckException>(() => Check.Sample(Gen.Int[0, 1000], n => Assert.True(n < 900), seed: seed, iter: 1, threads: 1));
#pragma warning restore RS0030
    }

    [Fact]
    public void The_seed_stands_in_the_output_of_the_test()
    {
        Gen.Int.Sample(_ => { });
        Assert.Contains($"STILLWALL_SEED={Sampling.Seed}", TestContext.Current.TestOutputHelper!.Output, StringComparison.Ordinal);
    }

    private static List<int> Drawn(ulong seed)
    {
        var drawn = new ConcurrentBag<int>();
        Sampling.Sample(Gen.Int, drawn.Add, 50, 2, seed);
        return [.. drawn.Order()];
    }
}
