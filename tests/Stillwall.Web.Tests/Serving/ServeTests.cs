using System.Diagnostics;
using System.Net;

namespace Stillwall.Web.Tests.Serving;

/// <summary>The command line starts the page where it is beside it.</summary>
public sealed class ServeTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("stillwall-serve-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_page_comes_up_with_the_project_that_was_named()
    {
        var stop = TestContext.Current.CancellationToken;
        var sample = Path.Combine(Source.Root, "samples", "reading-room");
        Directory.CreateDirectory(Path.Combine(folder, "alcove"));
        foreach (var file in new[] { "stillwall.json", "drivers.csv" })
        {
            File.Copy(Path.Combine(sample, file), Path.Combine(folder, "alcove", file));
        }

        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardInput = true, WorkingDirectory = folder };
        foreach (var word in new[] { Path.Combine(AppContext.BaseDirectory, "stillwall.dll"), "serve", "alcove", "--urls", "http://127.0.0.1:0" })
        {
            start.ArgumentList.Add(word);
        }

        using var program = Process.Start(start)!;
        try
        {
            var line = await program.StandardOutput.ReadLineAsync(stop);
            Assert.NotNull(line);
            Assert.StartsWith("the workshop page: http://127.0.0.1:", line, StringComparison.Ordinal);
            using var client = new HttpClient { BaseAddress = new Uri(line.Split(' ')[3]) };
            using var answer = await client.GetAsync(new Uri("/", UriKind.Relative), stop);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Contains("Reading-room cabinet", await answer.Content.ReadAsStringAsync(stop), StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(new Uri("/files/alcove/stillwall.json", UriKind.Relative), stop)).StatusCode);
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync(CancellationToken.None);
        }
    }
}
