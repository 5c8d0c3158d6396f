namespace Stillwall.Cli.Running;

/// <summary>What the command line ends with.</summary>
internal static class ExitCodes
{
    internal const int Done = 0,
        SomethingFails = 1,
        BadInput = 2,
        BadPath = 3,
        Defect = 70;
}

/// <summary>A run that cannot go on, for a reason that lies with what was given to it.</summary>
internal sealed class Refusal(int exitCode, params IEnumerable<string> lines) : Exception
{
    internal int ExitCode { get; } = exitCode;

    internal IReadOnlyList<string> Lines { get; } = [.. lines];

    internal static Refusal Input(params IEnumerable<string> lines) => new(ExitCodes.BadInput, lines);

    internal static Refusal Path(params IEnumerable<string> lines) => new(ExitCodes.BadPath, lines);
}
