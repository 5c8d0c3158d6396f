using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>A program that saves without pause until it is killed: the test program itself, before it looks for any test.</summary>
internal static class SavingChild
{
    private const string FolderOfChild = "STILLWALL_TEST_SAVE_FOLDER";

    // A child whose parent has gone ends by itself.
    private const int MostSaves = 5000;

    [ModuleInitializer]
    internal static void SaveWhenAsked()
    {
        if (Environment.GetEnvironmentVariable(FolderOfChild) is not { } folder)
        {
            return;
        }

        var next = NumberOf(Path.Combine(folder, ProjectStore.FileName)) + 1;
        for (var i = 0; i < MostSaves; i++)
        {
            if (ProjectStore.Save(folder, Text(next + i)) is not null)
            {
                break;
            }

            if (i == 0)
            {
                SayThatItSaves();
            }
        }

        Environment.Exit(1);
    }

    // After the first save, which is slow for it is compiled then: on a busy machine the kill would come before anything is written.
    private static void SayThatItSaves()
    {
        using var output = Console.OpenStandardOutput();
        output.WriteByte((byte)'s');
    }

    internal static Process Start(string folder)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(SavingChild).Assembly.Location]) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment[FolderOfChild] = folder;
        return Process.Start(start)!;
    }

    internal static string Text(int number) =>
        $"{{ \"stillwall\": 1, \"name\": \"{number.ToString(CultureInfo.InvariantCulture)}\", \"note\": \"{new string('x', 3000)}\" }}\n";

    /// <summary>Which text a file holds; it throws where it is no whole one.</summary>
    internal static int NumberOf(string file)
    {
        var text = File.ReadAllText(file);
        var number = int.Parse(text.Split('"')[5], CultureInfo.InvariantCulture);
        return text == Text(number) ? number : throw new InvalidDataException($"{file} holds a part of a text");
    }
}
