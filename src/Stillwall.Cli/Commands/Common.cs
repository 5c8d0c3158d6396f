using System.Globalization;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands;

/// <summary>Options and arguments that several verbs have.</summary>
internal static class Common
{
    internal static Flag Json => new("--json", "one JSON document on standard output and nothing else");

    internal static TextArgument Project => new("PROJECT", "project folder or its file; the current folder where left out", isOptional: true);

    internal static TextOption ProjectOption => new("--project", "PROJECT", "project folder or its file; the current folder where left out");

    internal static OutputOption Csv(string columns) => new("--csv", "FILE", $"writes {columns}; - is standard output");

    internal static OutputOption Out =>
        new("--out", "DIR", "folder to write into; out in the project folder where left out. Its own old files there, listed in made.json, are cleared away");

    /// <summary>Says what went into a file; nothing where it went to standard output.</summary>
    internal static void SayWritten(Session session, string file, int rows)
    {
        if (file != "-")
        {
            session.PrintLine($"{file}: {rows.ToString(CultureInfo.InvariantCulture)} rows");
        }
    }
}
