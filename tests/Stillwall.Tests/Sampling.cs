using System.Globalization;
using System.Runtime.ExceptionServices;
using CsCheck;

#pragma warning disable RS0030 // This is where the list of banned symbols leads to.

namespace Stillwall;

/// <summary>
/// Every property is tried through this, on cases drawn from one seed: always the same where <c>CI</c> is set, others in every run elsewhere. The
/// seed is in the output of each test, and <c>STILLWALL_SEED</c> gives the same cases again.
/// </summary>
internal static class Sampling
{
    private const ulong SeedOfBuildServers = 20261114;

    private const string Variable = "STILLWALL_SEED";

    /// <summary>The seed of this run.</summary>
    internal static ulong Seed { get; } =
        SeedOf(Environment.GetEnvironmentVariable(Variable), Environment.GetEnvironmentVariable("CI"), Environment.TickCount64);

    /// <summary>What is asked for comes first, then what a build server always takes, then the clock.</summary>
    internal static ulong SeedOf(string? asked, string? onBuildServer, long ticks) =>
        asked is { Length: > 0 } ? ulong.Parse(asked, CultureInfo.InvariantCulture)
        : onBuildServer is { Length: > 0 } ? SeedOfBuildServers
        : (ulong)ticks;

    internal static void Sample<T>(this Gen<T> gen, Action<T> assert, int iter = 100, int threads = 0) => Sample(gen, assert, iter, threads, Seed);

    internal static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> assert, int iter = 100, int threads = 0) =>
        Sample(gen, t => assert(t.Item1, t.Item2), iter, threads);

    internal static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> assert, int iter = 100, int threads = 0) =>
        Sample(gen, t => assert(t.Item1, t.Item2, t.Item3), iter, threads);

    internal static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> assert, int iter = 100, int threads = 0) =>
        Sample(gen, t => assert(t.Item1, t.Item2, t.Item3, t.Item4), iter, threads);

    internal static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> assert, int iter = 100, int threads = 0) =>
        Sample(gen, t => assert(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), iter, threads);

    internal static void Sample<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen,
        Action<T1, T2, T3, T4, T5, T6> assert,
        int iter = 100,
        int threads = 0
    ) => Sample(gen, t => assert(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6), iter, threads);

    /// <summary>Properties that say yes or no.</summary>
    internal static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, int iter = 100, int threads = 0) =>
        Sample(gen, t => Assert.True(holds(t.Item1, t.Item2)), iter, threads);

    internal static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int iter = 100, int threads = 0) =>
        Sample(gen, t => Assert.True(holds(t.Item1, t.Item2, t.Item3)), iter, threads);

    internal static void Sample<T>(Gen<T> gen, Action<T> assert, int iter, int threads, ulong seed)
    {
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"cases of {Variable}={seed}"));
        var source = new PCG(1, seed);
        var cases = Enumerable.Range(0, iter).Select(_ => new PCG(source.Next(), source.Next64()).ToString()).ToList();
        var wrong = new CsCheckException?[iter];
        var most = threads > 0 ? threads : Environment.ProcessorCount;
        Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = most }, (i, all) => wrong[i] = Wrong(gen, assert, cases[i], all));
        if (Array.FindIndex(wrong, e => e is not null) is >= 0 and var first)
        {
            // Sought on from the first that fails, for a simpler one.
            Check.Sample(gen, assert, seed: cases[first], iter: iter, threads: most);
            ExceptionDispatchInfo.Throw(wrong[first]!);
        }
    }

    private static CsCheckException? Wrong<T>(Gen<T> gen, Action<T> assert, string seed, ParallelLoopState all)
    {
        try
        {
            Check.Sample(gen, assert, seed: seed, iter: 1, threads: 1);
            return null;
        }
        catch (CsCheckException e)
        {
            // Those before it are still tried, so that the first is the same in every run.
            all.Break();
            return e;
        }
    }
}
