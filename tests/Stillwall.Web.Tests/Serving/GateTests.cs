using System.Net;
using System.Net.Sockets;
using System.Text;
using Stillwall.Web.Serving;

namespace Stillwall.Web.Tests.Serving;

/// <summary>Nobody but this machine's own browser on this page is let in: by real requests.</summary>
public sealed class GateTests(Page page) : IClassFixture<Page>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_start_answers_by_itself_with_the_policy_and_headers()
    {
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri("/", UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = string.Join(" ", answer.Headers.GetValues("Content-Security-Policy"));
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        foreach (
            var rule in new[]
            {
                "default-src 'self'",
                "script-src 'self'",
                "style-src 'self'",
                "object-src 'none'",
                "frame-ancestors 'none'",
                "form-action 'self'",
                "base-uri 'self'",
            }
        )
        {
            Assert.Contains(rule, policy, StringComparison.Ordinal);
        }

        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.DoesNotContain("Server", answer.Headers.Select(h => h.Key));
    }

    [Theory]
    [InlineData("")]
    [InlineData("brief")]
    [InlineData("driver")]
    [InlineData("cabinet")]
    [InlineData("walls")]
    [InlineData("parts")]
    [InlineData("pour")]
    [InlineData("pour/bench")]
    [InlineData("supplies")]
    [InlineData("quiet")]
    [InlineData("proof")]
    [InlineData("logbook")]
    [InlineData("projects")]
    public async Task No_page_has_an_inline_style_or_script_or_asks_another_host(string path)
    {
        using var client = page.Client();
        var html = await client.GetStringAsync(new Uri($"/{path}", UriKind.Relative), Stop);
        Assert.DoesNotContain(" style=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("<script(?![^>]* src=)", html);
        Assert.DoesNotMatch("(src|href)=\"(https?:)?//", html);
        Assert.DoesNotMatch(" on[a-z]+=\"", html);
    }

    [Theory]
    [InlineData("/nothing-here")]
    [InlineData("/files/no-such-project/project.zip")]
    [InlineData("/page.js.map")]
    public async Task What_is_not_there_is_not_found(string path)
    {
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("localhost", 200)]
    [InlineData("127.0.0.1", 200)]
    [InlineData("[::1]", 200)]
    [InlineData("stillwall.example", 400)]
    [InlineData("127.0.0.1.example", 400)]
    [InlineData("192.168.1.20", 400)]
    public async Task Only_names_of_this_machine_are_answered(string host, int status)
    {
        using var client = page.Client();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/page.js");
        request.Headers.Host = $"{host}:{page.Address.Port}";
        using var answer = await client.SendAsync(request, Stop);
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("https://elsewhere.example", "/_blazor/negotiate?negotiateVersion=1", 403)]
    [InlineData("http://127.0.0.1:1", "/_blazor/negotiate?negotiateVersion=1", 403)]
    [InlineData("null", "/_blazor/negotiate?negotiateVersion=1", 403)]
    [InlineData("", "/_blazor/negotiate?negotiateVersion=1", 200)]
    public async Task Another_origin_may_not_open_a_circuit(string origin, string path, int status)
    {
        using var client = page.Client();
        using var request = new HttpRequestMessage(HttpMethod.Post, path);
        request.Headers.Add("Origin", origin.Length > 0 ? origin : page.Address.ToString().TrimEnd('/'));
        using var answer = await client.SendAsync(request, Stop);
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("same-origin", 200)]
    [InlineData("cross-site", 403)]
    [InlineData("none", 403)]
    public async Task A_form_without_an_origin_is_taken_only_where_the_browser_says_that_it_is_of_this_page(string site, int status)
    {
        using var client = page.Client();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/_blazor/negotiate?negotiateVersion=1");
        request.Headers.Add("Origin", "null");
        request.Headers.Add("Sec-Fetch-Site", site);
        using var answer = await client.SendAsync(request, Stop);
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("cross-site", "no-cors", "image", 403)]
    [InlineData("same-site", "cors", "empty", 403)]
    [InlineData("cross-site", "navigate", "iframe", 403)]
    [InlineData("cross-site", "navigate", "document", 200)]
    [InlineData("same-origin", "cors", "empty", 200)]
    public async Task Another_page_may_link_here_and_nothing_else(string site, string mode, string destination, int status)
    {
        using var client = page.Client();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/cabinet");
        request.Headers.Add("Sec-Fetch-Site", site);
        request.Headers.Add("Sec-Fetch-Mode", mode);
        request.Headers.Add("Sec-Fetch-Dest", destination);
        using var answer = await client.SendAsync(request, Stop);
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("/files")]
    [InlineData("/files/reading-room/drivers")]
    public async Task A_file_that_does_not_come_from_the_form_is_refused(string path)
    {
        using var client = page.Client();
        using var form = new MultipartFormDataContent { { new StringContent("name\n"), "file", "drivers.csv" } };
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), form, Stop);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_past_the_limit_stays_too_large()
    {
        var (status, _) = await Raw(
            $"POST /_blazor/negotiate?negotiateVersion=1 HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: {Start.BodyLimit + 1}\r\nConnection: close\r\n\r\n"
        );
        Assert.Equal(413, status);
    }

    [Theory]
    [InlineData("/files/reading-room/parts/..%2F..%2Fstillwall.json")]
    [InlineData("/files/reading-room/sheets/..%2Fdrivers.svg")]
    [InlineData("/files/..%2Freading-room/project.zip")]
    [InlineData("/files/reading-room/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("/client/..%2F..%2FStillwall.Web.dll")]
    public async Task No_path_leads_out_of_the_project(string path)
    {
        var (status, _) = await Raw($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n");
        Assert.Contains(status, new[] { 400, 404 });
    }

    [Theory]
    [InlineData("http://0.0.0.0:5310")]
    [InlineData("http://*:5310")]
    [InlineData("http://192.168.1.20:5310")]
    [InlineData("http://[::]:5310")]
    [InlineData("5310")]
    public void An_address_that_others_could_reach_is_refused_in_one_line(string url)
    {
        var line = Start.Faults(["--urls", url]);
        Assert.NotNull(line);
        Assert.Contains(url, line, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', line);
    }

    [Theory]
    [InlineData("http://127.0.0.1:5310")]
    [InlineData("http://localhost:5310;http://[::1]:5310")]
    public void An_address_of_this_machine_is_taken(string url) => Assert.Null(Start.Faults(["--urls", url]));

    [Theory]
    [InlineData("--colour")]
    [InlineData("--urls")]
    [InlineData("one", "two")]
    [InlineData("/no/such/folder")]
    public void What_cannot_be_meant_is_told_in_one_line(params string[] args)
    {
        var line = Start.Faults(args);
        Assert.NotNull(line);
        Assert.DoesNotContain('\n', line);
    }

    // A client that does not tidy the path before it asks.
    private async Task<(int Status, string Body)> Raw(string request)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(page.Address.Host, page.Address.Port, Stop);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request), Stop);
        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync(Stop);
        return (int.Parse(answer.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture), answer);
    }
}
