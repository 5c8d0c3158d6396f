using System.ComponentModel;
using System.Diagnostics;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>serve</c>: starts the workshop page where it is beside this program or in its source tree, as a program of its own.</summary>
internal static class Serve
{
    private const string Page = "Stillwall.Web.dll";

    internal static Verb Verb()
    {
        var project = Common.Project;
        var urls = new TextOption("--urls", "URL", "address on this machine to serve at; http://127.0.0.1:5310 where left out");
        return new Verb("serve", "starts the workshop page in a browser of this machine", "stillwall serve my-cabinet")
        {
            Takes = [project, urls],
            Do = call =>
                Run(
                    call,
                    Find(AppContext.BaseDirectory)
                        ?? throw Refusal.Path(
                            $"serve: the workshop page ({Page}) is not beside this program; build it with dotnet build src/Stillwall.Web, or publish both "
                                + "into one folder"
                        ),
                    call.Text(project),
                    call.Text(urls)
                ),
        };
    }

    /// <summary>The page beside a folder of programs, or in the source tree that it was built in; null where there is none.</summary>
    internal static string? Find(string folder)
    {
        var beside = Path.Combine(folder, Page);
        if (File.Exists(beside))
        {
            return beside;
        }

        // bin/CONFIGURATION/FRAMEWORK of this project; the page's stands at the same place of its own.
        var framework = new DirectoryInfo(Path.TrimEndingDirectorySeparator(folder));
        var source = framework.Parent?.Parent?.Parent?.Parent;
        var built = source is null ? null : Path.Combine(source.FullName, "Stillwall.Web", "bin", framework.Parent!.Name, framework.Name, Page);
        return File.Exists(built) ? built : null;
    }

    private static int Run(Invocation call, string page, string? project, string? urls)
    {
        var start = new ProcessStartInfo(Host()) { UseShellExecute = false, WorkingDirectory = call.Session.Terminal.Folder };
        start.ArgumentList.Add(page);
        if (project is not null || File.Exists(Path.Combine(call.Session.Terminal.Folder, ProjectStore.FileName)))
        {
            start.ArgumentList.Add(call.Session.FullPath(project ?? "."));
        }

        if (urls is not null)
        {
            start.ArgumentList.Add("--urls");
            start.ArgumentList.Add(urls);
        }

        try
        {
            using var process = Process.Start(start)!;
            using var ending = call.Session.Terminal.Stop.Register(() => process.Kill(entireProcessTree: true));
            process.WaitForExit();
            return call.Session.Terminal.Stop.IsCancellationRequested ? ExitCodes.Done : process.ExitCode;
        }
        catch (Win32Exception e)
        {
            throw Refusal.Path($"serve: {Host()} cannot be started ({e.Message}); the .NET runtime on the path");
        }
    }

    // The program that runs this one, where that is the runtime's own; else the one on the path.
    private static string Host() => Environment.ProcessPath is { } self && Path.GetFileNameWithoutExtension(self) == "dotnet" ? self : "dotnet";
}
