namespace Stillwall.Tests.Rules.Fixture.Walls;

/// <summary>What an earlier stage must not use.</summary>
internal class Tilt
{
    internal const int Most = 7;

    internal static readonly int Least = Environment.ProcessorCount;

    internal static event Action? Moved;

    internal static double Of(double x) => x + Least;

    internal static void Move() => Moved?.Invoke();
}

internal readonly record struct Lean(double X);

internal sealed class FellException : Exception;

/// <summary>A later stage may use an earlier one.</summary>
internal sealed class Upright
{
    internal static string Asked() => new Briefs.Plain().ToString()!;
}
