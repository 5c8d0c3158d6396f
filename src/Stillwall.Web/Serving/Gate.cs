using System.Net;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;

namespace Stillwall.Web.Serving;

/// <summary>Lets nobody in but this machine's own browser on this page.</summary>
internal static class Gate
{
    /// <summary>What the page may load and do.</summary>
    internal const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; worker-src 'self'; media-src 'self' blob:; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    private static readonly string[] Hosts = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Refuses what does not come from this machine, under one of its names, from this page; sends the headers with every answer.</summary>
    internal static async Task Pass(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (Refusal(context) is { } status)
        {
            context.Response.StatusCode = status;
            return;
        }

        await next(context);
    }

    /// <summary>Reads an address to listen on: http, one of this machine's own names, and a port.</summary>
    /// <returns>The address; null where other machines could reach it, or where it is anything else.</returns>
    internal static Uri? Address(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var url)
        && url is { PathAndQuery: "/", Fragment: "", UserInfo: "" }
        && url.Scheme == Uri.UriSchemeHttp
        && Hosts.Contains(url.Host)
        && !(url.Port == 0 && url.Host == "localhost")
            ? url
            : null;

    private static int? Refusal(HttpContext context)
    {
        var request = context.Request;
        if (context.Features.Get<IHttpConnectionFeature>()?.RemoteIpAddress is { } peer && !IPAddress.IsLoopback(peer))
        {
            return StatusCodes.Status403Forbidden;
        }

        if (!Hosts.Contains(request.Host.Host, StringComparer.OrdinalIgnoreCase))
        {
            return StatusCodes.Status400BadRequest;
        }

        return IsForeignOrigin(request) || IsForeignFetch(request) ? StatusCodes.Status403Forbidden
            : request.ContentLength > LimitOf(context) ? StatusCodes.Status413PayloadTooLarge
            : null;
    }

    private static long LimitOf(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<IRequestSizeLimitMetadata>()?.MaxRequestBodySize ?? Start.BodyLimit;

    // A form of this page says "null", since the page sends no referrer; only the browser itself can say that it is of the same origin.
    private static bool IsForeignOrigin(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        return origin.Length > 0
            && !(origin == "null" && request.Headers["Sec-Fetch-Site"] == "same-origin")
            && !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }

    // A link on another page may lead here; nothing else of another page may reach this one.
    private static bool IsForeignFetch(HttpRequest request)
    {
        var isLink = HttpMethods.IsGet(request.Method) && request.Headers["Sec-Fetch-Mode"] == "navigate" && request.Headers["Sec-Fetch-Dest"] == "document";
        return request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site" && !isLink;
    }
}
