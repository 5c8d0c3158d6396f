using Microsoft.AspNetCore.Http.Metadata;

namespace Stillwall.Web.Serving;

/// <summary>Most bytes that an address takes.</summary>
internal sealed class SizeLimit(long bytes) : IRequestSizeLimitMetadata
{
    public long? MaxRequestBodySize => bytes;
}
