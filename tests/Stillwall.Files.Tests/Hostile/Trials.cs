using System.Diagnostics;
using System.Globalization;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Runs many seeded cases and tells the different ways in which they went wrong, each with its first seed.</summary>
internal static class Trials
{
    /// <summary>Cases of the library path, all kinds together.</summary>
    internal const int Cases = 50_000;

    /// <summary>Most time that one case may take, s: generous for an unoptimised build on a busy machine; a guard against what never ends.</summary>
    private const double LongestS = 10;

    /// <summary>Cases of them that are appraised to the end, which takes most of the time.</summary>
    internal const int Appraised = 60;

    private const int MostTold = 12;

    internal static void Run(int from, int count, Func<int, string?> trial)
    {
        var wrong = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var seed = from; seed < from + count && wrong.Count < MostTold; seed++)
        {
            if (Outcome(seed, trial) is { } fault)
            {
                wrong.TryAdd(fault.Kind, string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {fault.Text}"));
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Values));
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
