using System.Collections.Concurrent;
using System.Globalization;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Runs many seeded cases and tells the different ways in which they went wrong, each with its first seed.</summary>
internal static class Trials
{
    /// <summary>Cases of the library path in a whole run.</summary>
    internal const int Cases = 50_000;

    /// <summary>The first of them, which every run of the tests takes.</summary>
    internal const int InSuite = 2_500;

    /// <summary>
    /// Most memory that one case may ask for, in all: a measure of its work that a busy machine does not change. About a second's worth of drawing.
    /// </summary>
    private const long MostBytes = 4L << 30;

    private const int MostTold = 12;

    internal static void Run(int from, int count, Func<int, string?> trial)
    {
        var wrong = new ConcurrentBag<(int Seed, string Kind, string Text)>();
        var work = new ConcurrentBag<(long Bytes, int Seed)>();
        Parallel.For(
            from,
            from + count,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            (seed, all) =>
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                var fault = Outcome(seed, trial);
                var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
                work.Add((bytes, seed));
                if (fault is null && bytes > MostBytes)
                {
                    fault = ("work", "takes more work than a maker would wait for");
                }

                if (fault is { } some)
                {
                    wrong.Add((seed, some.Kind, some.Text));
                }

                if (wrong.Count > 40 * MostTold)
                {
                    all.Stop();
                }
            }
        );

        TestContext.Current.TestOutputHelper?.WriteLine(
            "most work: "
                + string.Join(
                    ", ",
                    work.OrderDescending().Take(8).Select(w => string.Create(CultureInfo.InvariantCulture, $"seed {w.Seed} {w.Bytes >> 20} MB"))
                )
        );
        var told = wrong
            .OrderBy(w => w.Seed)
            .DistinctBy(w => w.Kind)
            .Take(MostTold)
            .Select(w => string.Create(CultureInfo.InvariantCulture, $"seed {w.Seed}: {w.Text}"));
        Assert.True(wrong.IsEmpty, string.Join('\n', told));
    }

    private static (string Kind, string Text)? Outcome(int seed, Func<int, string?> trial)
    {
        try
        {
            return trial(seed) is { } fault ? (fault[..Math.Min(60, fault.Length)], fault) : null;
        }
        catch (Exception e)
        {
            var frames = string.Join(
                " ",
                (e.StackTrace ?? "").Split('\n').Where(line => line.Contains("Stillwall", StringComparison.Ordinal)).Take(3).Select(line => line.Trim())
            );
            return (e.GetType().Name + frames, $"{e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")} {frames}");
        }
    }
}
