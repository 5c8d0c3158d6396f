using System.Diagnostics;
using System.Net;
using Stillwall.Web.Serving;

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

        using var program = Started("stillwall.dll", "serve", "alcove", "--urls", "http://127.0.0.1:0");
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

    [Theory]
    [InlineData("https://127.0.0.1:5310")]
    [InlineData("file:///etc")]
    [InlineData("http://0.0.0.0:5310")]
    [InlineData("http://192.168.1.20:5310")]
    [InlineData("http://stillwall.example:5310")]
    [InlineData("http://*:5310")]
    [InlineData("http://localhost:0")]
    [InlineData("http://127.0.0.1:99999")]
    [InlineData("http://127.0.0.1:5310/base")]
    [InlineData("http://127.0.0.1:5310;https://127.0.0.1:5311")]
    [InlineData("http://127.0.0.1:5310;")]
    [InlineData("127.0.0.1:5310")]
    [InlineData("no\u001b[2Jaddress")]
    [InlineData("")]
    public void Only_a_plain_address_of_this_machine_is_listened_at(string address)
    {
        var fault = Start.Faults(["--urls", address])!;
        Assert.Matches(@"\A--urls: ""[ -~]*"" is no http address of this machine alone; one such as http://127\.0\.0\.1:5310\z", fault);
    }

    [Theory]
    [InlineData("http://127.0.0.1:5310", "http://127.0.0.1:5310")]
    [InlineData("HTTP://LOCALHOST:5310/", "http://localhost:5310")]
    [InlineData("http://[::1]:0", "http://[::1]:0")]
    [InlineData("http://localhost:5310; http://[::1]:5310", "http://localhost:5310;http://[::1]:5310")]
    public void An_address_of_this_machine_is_listened_at_as_it_is_meant(string address, string meant)
    {
        Assert.Null(Start.Faults(["--urls", address]));
        Assert.Equal([$"--urls={meant}"], Start.Settings(["--urls", address]));
    }

    [Theory]
    [InlineData("Stillwall.Web.dll", "--urls", "https://127.0.0.1:0")]
    [InlineData("stillwall.dll", "serve", "--urls", "https://127.0.0.1:0")]
    [InlineData("stillwall.dll", "serve", "--urls", "file:///etc")]
    public async Task An_address_that_will_not_do_is_told_in_one_line(params string[] words)
    {
        using var program = Started(words);
        var (output, error) = (
            program.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
            program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken)
        );
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal((2, ""), (program.ExitCode, await output));
        Assert.Matches(@"\A--urls: [^\n]+; one such as http://127\.0\.0\.1:5310\n\z", await error);
    }

    [Fact]
    public async Task The_first_start_in_a_new_home_warns_of_nothing_and_leaves_no_keys_there()
    {
        var home = Directory.CreateDirectory(Path.Combine(folder, "home")).FullName;
        using var program = Started("Stillwall.Web.dll", "--folder", folder, "--urls", "http://127.0.0.1:0");
        try
        {
            var line = await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
            Assert.StartsWith("the workshop page: http://127.0.0.1:", line, StringComparison.Ordinal);
            using var client = new HttpClient { BaseAddress = new Uri(line!.Split(' ')[3]) };
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken)).StatusCode);
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync(CancellationToken.None);
        }

        Assert.Equal(
            ("", ""),
            (await program.StandardOutput.ReadToEndAsync(CancellationToken.None), await program.StandardError.ReadToEndAsync(CancellationToken.None))
        );
        Assert.Empty(Directory.GetFileSystemEntries(home));
    }

    private Process Started(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = folder,
        };
        start.Environment["HOME"] = Path.Combine(folder, "home");
        foreach (var word in words.Select((word, i) => i == 0 ? Path.Combine(AppContext.BaseDirectory, word) : word))
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }
}
