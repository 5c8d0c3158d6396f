using System.Diagnostics;

namespace Stillwall.Cli.Tests;

/// <summary>The program as the system runs it.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_document_is_on_standard_output_alone()
    {
        var (exitCode, output, error) = Run("mix", "--powder", "4kg", "--json");

        Assert.Equal((0, ""), (exitCode, error));
        Assert.Equal(desk.Run("mix", "--powder", "4kg", "--json").Output, output);
    }

    [Fact]
    public void A_refusal_is_on_standard_error_alone()
    {
        var (exitCode, output, error) = Run("mix", "--powder", "4");

        Assert.Equal((2, ""), (exitCode, output));
        Assert.StartsWith("--powder: ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_current_folder_is_the_project_and_a_piped_run_has_no_colour()
    {
        var (exitCode, output, error) = Run("appraise", "--strict");
        var inProcess = desk.Run(["appraise", "--strict"], terminal => terminal with { Folder = desk.PathTo("reading-room") });

        Assert.Equal((inProcess.ExitCode, inProcess.Output, ""), (exitCode, output, error));
    }

    private (int ExitCode, string Output, string Error) Run(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = desk.PathTo("reading-room"),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "stillwall.dll"));
        foreach (var arg in args)
        {
            start.ArgumentList.Add(arg);
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
