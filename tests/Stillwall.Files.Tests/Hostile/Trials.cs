using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Runs many seeded cases and tells the different ways in which they went wrong, each with its first seed.</summary>
internal static class Trials
{
    /// <summary>Cases of the library path in a whole run.</summary>
    internal const int Cases = 50_000;

    /// <summary>The first of them, which every run of the tests takes.</summary>
    internal const int InSuite = 1_500;

    /// <summary>Most time that one case may take, s: generous for an unoptimised build on a busy machine; a guard against what never ends.</summary>
    private const double LongestS = 10;

    private const int MostTold = 12;

    internal static void Run(int from, int count, Func<int, string?> trial)
    {
        var wrong = new ConcurrentBag<(int Seed, string Kind, string Text)>();
        var slowest = new ConcurrentBag<(double Seconds, int Seed)>();
        Parallel.For(from, from + count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, (seed, all) =>
        {
            var watch = Stopwatch.StartNew();
            if (Outcome(seed, trial) is { } fault)
            {
                wrong.Add((seed, fault.Kind, fault.Text));
            }

            slowest.Add((watch.Elapsed.TotalSeconds, seed));
            if (wrong.Count > 40 * MostTold)
            {
                all.Stop();
            }
        });

        TestContext.Current.TestOutputHelper?.WriteLine("slowest: " + string.Join(", ", slowest.OrderDescending().Take(8).Select(s => string.Create(CultureInfo.InvariantCulture, $"seed {s.Seed} {s.Seconds:F2} s"))));
        var told = wrong.OrderBy(w => w.Seed).DistinctBy(w => w.Kind).Take(MostTold).Select(w => string.Create(CultureInfo.InvariantCulture, $"seed {w.Seed}: {w.Text}"));
        Assert.True(wrong.IsEmpty, string.Join('\n', told));
    }

    private static (string Kind, string Text)? Outcome(int seed, Func<int, string?> trial)
    {
        try
        {
            var watch = Stopwatch.StartNew();
            var fault = trial(seed);

            // A busy machine may stall one run; what is slow by itself is slow each time.
            for (var again = 0; again < 2 && fault is null && watch.Elapsed.TotalSeconds > LongestS; again++)
            {
                watch.Restart();
                fault = trial(seed);
            }

            fault ??= watch.Elapsed.TotalSeconds > LongestS ? "takes longer than a maker would wait" : null;
            return fault is null ? null : (fault[..Math.Min(60, fault.Length)], fault);
        }
        catch (Exception e)
        {
            var frames = string.Join(" ", (e.StackTrace ?? "").Split('\n').Where(line => line.Contains("Stillwall", StringComparison.Ordinal)).Take(3).Select(line => line.Trim()));
            return (e.GetType().Name + frames, $"{e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")} {frames}");
        }
    }
}
