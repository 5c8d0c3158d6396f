using System.Diagnostics;
using System.Text.RegularExpressions;
using Stillwall.Files.Tests.Meshes;

namespace Stillwall.Cli.Tests;

/// <summary>The files of the demo's parts, as other programs read them.</summary>
public sealed partial class PartFileTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void An_independent_mesh_checker_finds_nothing_to_mend_in_any_part_of_the_demo()
    {
        var checker = MeshChecker();
        foreach (var part in Written("stl"))
        {
            // ADMesh 0.98, from the system's packages: connects facets by exact corners, counts what is open, degenerate or the wrong way round, and
            // the bodies; it adds volumes in 32 bits.
            var report = Checked(checker, part.File);
            int Count(string what) =>
                int.Parse(Regex.Match(report, Regex.Escape(what) + @"\s*:\s*(\d+)").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(part.Triangles, Count("Number of facets"));
            Assert.True(Count("Total disconnected facets") == 0, part.File);
            Assert.All(
                new[] { "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges", "Normals fixed" },
                what => Assert.True(Count(what) == 0, $"{part.File}: {what}")
            );
            Assert.True(Count("Number of parts") == 1, part.File);
            var volume = double.Parse(VolumeLine().Match(report).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
            Assert.InRange(volume / (part.VolumeM3 * 1e9), 1 - 2e-4, 1 + 2e-4);
        }
    }

    [Fact]
    public void Every_3mf_of_the_demo_read_back_by_a_general_parser_has_the_triangles_and_the_volume_of_its_part()
    {
        var parts = Written("3mf");
        Assert.All(
            parts,
            part =>
            {
                var read = Assert.Single(MeshReaders.ThreeMf(File.ReadAllBytes(part.File)));
                Assert.Equal(part.Triangles, read.Triangles.Count);
                Assert.InRange(read.VolumeMm3() / (part.VolumeM3 * 1e9), 1 - 1e-6, 1 + 1e-6);
                Assert.Equal(0, read.UnmatchedEdges());
            }
        );
        var assembly = MeshReaders.ThreeMf(File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(parts[0].File)!, "assembly.3mf")));
        Assert.Equal(assembly.Select(p => p.Name).Order(), assembly.Select(p => p.Name).Order().Distinct());
        Assert.All(assembly, placed => Assert.InRange(placed.VolumeMm3() / (parts.Single(p => p.Name == placed.Name).VolumeM3 * 1e9), 1 - 1e-5, 1 + 1e-5));
    }

    private IReadOnlyList<(string Name, string File, int Triangles, double VolumeM3)> Written(string format)
    {
        var ran = desk.Run("parts", "reading-room", "--out", "out", "--format", format, "--json");
        Assert.True(ran.ExitCode == 0, ran.Error);
        return
        [
            .. ran
                .Json.GetProperty("parts")
                .EnumerateArray()
                .Select(p =>
                    (
                        p.GetProperty("name").GetString()!,
                        desk.PathTo($"out/{p.GetProperty("file").GetString()}"),
                        p.GetProperty("triangles").GetInt32(),
                        p.GetProperty("volume_m3").GetDouble()
                    )
                ),
        ];
    }

    private static string MeshChecker()
    {
        var program = (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, "admesh"))
            .FirstOrDefault(File.Exists);
        if (program is null && Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip("admesh is not on the path: apt-get install admesh");
        }

        Assert.True(program is not null, "admesh is required where CI=true: apt-get install admesh");
        return program;
    }

    private static string Checked(string program, string file)
    {
        using var process = Process.Start(new ProcessStartInfo(program, [file]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        Assert.True(process.WaitForExit(60_000), file);
        Assert.True(process.ExitCode == 0, error.Result);
        return output.Result;
    }

    [GeneratedRegex(@"Volume\s*:\s*([0-9.]+)")]
    private static partial Regex VolumeLine();
}
