using System.Diagnostics;
using System.Text.Json;
using Stillwall.Files.Projects;
using Stillwall.Web.Proving;

namespace Stillwall.Web.Tests.Serving;

/// <summary>The same recordings brought to the page and to the command line.</summary>
public sealed class BothFacesTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 30);

    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-faces-").FullName;

    public static TheoryData<string> Kinds => ["impedance", "driver", "sweep", "tap", "wall", "polarity", "hold"];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Both_faces_show_the_same_readings_and_keep_the_same_keys(string kind)
    {
        var (stated, sounds, line) = Brought(kind);
        var parts = string.Join(',', sounds.Select(s => $"{s.Name}:{s.Wav.Length}"));
        var page = ProofReader.Read(
            kind,
            name => name == "parts" ? parts : stated.FirstOrDefault(s => s.Name == name).Text,
            Demo.Facts,
            sounds.SelectMany(s => s.Wav).ToArray()
        );
        foreach (var (name, wav) in sounds)
        {
            File.WriteAllBytes(Path.Combine(folder, $"{name}.wav"), wav);
        }

        File.WriteAllBytes(Path.Combine(folder, "played.wav"), ProofReader.SignalFile("sweep"));
        _ = Run("start reading-room --demo");
        var before = Project;
        var shown = Run($"prove {line} --project reading-room{(kind == "sweep" ? "" : " --keep")} --log 2026-11-30");
        Assert.All(page.Figures, f => Assert.Contains(Words($"{f.Name} {f.Text}"), shown, StringComparison.Ordinal));
        Assert.All(page.Remarks, r => Assert.Contains(r[1..], shown, StringComparison.Ordinal));

        // As one JSON value: where something is put in does not count.
        var kept = DemoMarks.Without(page.WrittenInto(before, isKept: true, Day), Demo.Facts.Project, [.. page.Keys, "logbook"]);
        Assert.Equal(JsonDocument.Parse(kept).RootElement.ToString(), JsonDocument.Parse(Project).RootElement.ToString());
        Assert.True(page.IsIn(ProjectReader.Read(Project).Project!, Project));
    }

    private string Project => File.ReadAllText(Path.Combine(folder, "reading-room", "stillwall.json"));

    private static ((string Name, string Text)[] Stated, (string Name, byte[] Wav)[] Sounds, string Line) Brought(string kind)
    {
        (string, byte[]) Main(byte[] wav) => ("recording", wav);
        return kind switch
        {
            "impedance" => ([("reference", "10ohm")], [Main(Sounds.Impedance())], "impedance recording.wav --reference 10ohm"),
            "driver" => (
                [("reference", "10ohm"), ("added", "40g"), ("sd", "214cm2")],
                [
                    Main(Sounds.Impedance(30, 5.5, 0.475)),
                    ("mass", Sounds.Impedance(30 / Math.Sqrt(2), 5.5 * Math.Sqrt(2), 0.475 * Math.Sqrt(2))),
                ],
                "impedance recording.wav --reference 10ohm --with-mass mass.wav --mass 40g --sd 214cm2"
            ),
            "sweep" => ([("at", "seat")], [Main(Sounds.Heard(ProofReader.SignalFile("sweep")))], "sweep recording.wav --played played.wav --at seat"),
            "tap" => (
                [("length", "160mm"), ("width", "40mm"), ("thickness", "40mm"), ("mass", "268.8g"), ("scales", "2g")],
                [Main(Sounds.Taps())],
                "tap recording.wav --length 160mm --width 40mm --thickness 40mm --mass 268.8g --scales 2g"
            ),
            "wall" => ([], [Main(Sounds.Noise(0.5)), ("there", Sounds.Noise(0.05))], "wall recording.wav there.wav"),
            "polarity" => ([], [Main(Sounds.Pulses(1)), ("main", Sounds.Pulses(-1))], "polarity recording.wav --against main.wav"),
            _ => ([("seconds", "2.1 s")], [], "hold --seconds 2.1"),
        };
    }

    private static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    // All words of what is shown, lines and columns taken out.
    private string Run(string line)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder };
        foreach (var word in line.Split(' ').Prepend(Path.Combine(AppContext.BaseDirectory, "stillwall.dll")))
        {
            start.ArgumentList.Add(word);
        }

        using var program = Process.Start(start)!;
        var error = program.StandardError.ReadToEndAsync();
        var output = program.StandardOutput.ReadToEnd();
        program.WaitForExit();
        Assert.True(program.ExitCode == 0, error.Result);
        return Words(output);
    }
}
