namespace Stillwall.Cli.Running;

/// <summary>Where a run of the command line reads and writes.</summary>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="Input">Standard input.</param>
public sealed record Terminal(Stream Output, TextWriter Error, TextReader Input)
{
    /// <summary>Width of lines where the output is not a terminal, characters.</summary>
    public const int UsualWidth = 100;

    /// <summary>Folder that relative paths start from.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    /// <summary>Whether a person reads the output as it comes.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Whether a person can be asked.</summary>
    public bool InputIsTerminal { get; init; }

    /// <summary>Whether the output may be coloured; <c>NO_COLOR</c> forbids it.</summary>
    public bool HasColour { get; init; }

    /// <summary>Width of a line, characters.</summary>
    public int Width { get; init; } = UsualWidth;

    /// <summary>Ends a run that would go on for ever.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>The terminal of this process.</summary>
    /// <returns>The terminal; standard output is written as UTF-8 whatever the system's code page.</returns>
    public static Terminal OfProcess()
    {
        var isTerminal = !Console.IsOutputRedirected;
        if (isTerminal && OperatingSystem.IsWindows())
        {
            Console.OutputEncoding = System.Text.Encoding.UTF8;
        }

        return new Terminal(Console.OpenStandardOutput(), Console.Error, Console.In)
        {
            OutputIsTerminal = isTerminal,
            InputIsTerminal = !Console.IsInputRedirected,
            HasColour =
                isTerminal && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb",
            Width = isTerminal ? Math.Clamp(WidthOfWindow(), 40, 160) : UsualWidth,
        };
    }

    private static int WidthOfWindow()
    {
        try
        {
            return Console.WindowWidth is > 0 and var width ? width : UsualWidth;
        }
        catch (IOException)
        {
            // No window behind the terminal.
            return UsualWidth;
        }
    }
}
