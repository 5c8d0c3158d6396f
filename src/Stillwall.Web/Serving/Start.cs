using System.ComponentModel;
using System.Diagnostics;
using Stillwall.Files;
using Stillwall.Files.Projects;

namespace Stillwall.Web.Serving;

/// <summary>What the program is told when it is started.</summary>
internal static class Start
{
    /// <summary>Most bytes that a request may bring, but for those that take a file.</summary>
    internal const long BodyLimit = 1 << 20;

    private const string Usage = "Stillwall.Web [PROJECT] [--folder DIR] [--urls http://127.0.0.1:PORT] [--no-browser]";
    private const int LongestShown = 60;
    private const string DefaultUrl = "http://127.0.0.1:5310";

    private static readonly string[] Options = ["--folder", "--urls"];

    /// <summary>What is wrong with the arguments, in one line; null where nothing is.</summary>
    internal static string? Faults(string[] args)
    {
        var settings = Read(args, out var wrong);
        if (wrong is not null)
        {
            return Visible.Of($"{wrong}; {Usage}");
        }

        if (Addresses(settings).FirstOrDefault(a => Gate.Address(a) is null) is { } foreign)
        {
            return $"--urls: \"{Visible.Of(foreign.Length > LongestShown ? foreign[..LongestShown] + "…" : foreign)}\" is no http address of this machine "
                + "alone; one such as http://127.0.0.1:5310";
        }

        return settings.GetValueOrDefault("project") is { } project && ProjectStore.Load(project).Trouble is { } trouble ? trouble.ToString() : null;
    }

    /// <summary>The arguments as settings.</summary>
    internal static string[] Settings(string[] args)
    {
        var settings = Read(args, out _);
        settings["urls"] = string.Join(';', Addresses(settings).Select(a => Gate.Address(a)!.GetLeftPart(UriPartial.Authority)));
        return [.. settings.Select(s => $"--{s.Key}={s.Value}")];
    }

    /// <summary>Says where the page is; opens it where somebody sits at a terminal.</summary>
    internal static void Announce(string url, IConfiguration settings)
    {
        Console.WriteLine($"the workshop page: {url}  (Ctrl+C ends it)");
        if (!Console.IsOutputRedirected && !Console.IsInputRedirected && settings["no-browser"] is null)
        {
            try
            {
                using var browser = Process.Start(new ProcessStartInfo(url) { UseShellExecute = true });
            }
            catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
            {
                // No browser to be opened: the address has been said.
            }
        }
    }

    private static string[] Addresses(Dictionary<string, string> settings) =>
        (settings.GetValueOrDefault("urls") ?? DefaultUrl).Split(';', StringSplitOptions.TrimEntries);

    private static Dictionary<string, string> Read(string[] args, out string? wrong)
    {
        var settings = new Dictionary<string, string>(StringComparer.Ordinal);
        wrong = null;
        for (var i = 0; i < args.Length; i++)
        {
            var (name, value) = args[i].Split('=', 2) is [var n, var v] && n.StartsWith("--", StringComparison.Ordinal) ? (n, v) : (args[i], null);
            if (name == "--no-browser")
            {
                settings["no-browser"] = "yes";
            }
            else if (Options.Contains(name))
            {
                value ??= i + 1 < args.Length ? args[++i] : null;
                wrong ??= value is null ? $"{name}: nothing follows it" : null;
                settings[name[2..]] = value ?? "";
            }
            else if (name.StartsWith("--", StringComparison.Ordinal) && value is not null)
            {
                settings[name[2..]] = value;
            }
            else if (name.StartsWith('-'))
            {
                wrong ??= $"{name}: no such option";
            }
            else
            {
                wrong ??= settings.ContainsKey("project") ? $"{name}: a second project" : null;
                settings["project"] = name;
            }
        }

        return settings;
    }
}
