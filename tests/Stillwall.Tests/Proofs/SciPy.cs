using System.Diagnostics;
using System.Globalization;
using Stillwall.Tests.Rules;

namespace Stillwall.Tests.Proofs;

/// <summary>Figures by SciPy: as stored, and as the script in their README makes them again.</summary>
internal static class SciPy
{
    internal static string Folder { get; } = Path.Combine(Repository.Root, "tests", "data", "proofs");

    /// <summary>A Python that has SciPy; null where there is none.</summary>
    internal static string? Python { get; } =
        new[] { "/usr/bin/python3", "python3", "python" }.FirstOrDefault(p => Run(p, ["-c", "import scipy"], Path.GetTempPath()) == 0);

    internal static IReadOnlyList<double[]> Table(string folder, string file) =>
        [.. File.ReadLines(Path.Combine(folder, file)).Skip(1).Select(l => l.Split(',').Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray())];

    /// <summary>Runs the script of the README in a folder.</summary>
    internal static int Make(string python, string folder)
    {
        var script = Path.Combine(folder, "make.py");
        File.WriteAllText(script, File.ReadAllText(Path.Combine(Folder, "README.md")).Split("```python\n")[1].Split("```")[0]);
        return Run(python, [script], folder);
    }

    private static int Run(string program, string[] args, string folder)
    {
        try
        {
            using var process = Process.Start(
                new ProcessStartInfo(program, args)
                {
                    WorkingDirectory = folder,
                    RedirectStandardError = true,
                    RedirectStandardOutput = true,
                }
            )!;
            var said = Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
            process.WaitForExit();
            said.GetAwaiter().GetResult();
            return process.ExitCode;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return -1;
        }
    }
}
