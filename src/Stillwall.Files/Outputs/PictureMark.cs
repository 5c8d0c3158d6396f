namespace Stillwall.Files.Outputs;

/// <summary>Names the program in a picture of points, so that it is known again (PNG, ISO/IEC 15948: a text chunk "Software" behind the header).</summary>
internal static class PictureMark
{
    // Signature and header chunk.
    private const int HeadBytes = 33;

    // Length 18, kind, text, checksum over kind and text.
    private static readonly byte[] Chunk = [0, 0, 0, 18, .. "tEXtSoftware\0Stillwall"u8, 0x4B, 0x8B, 0x1D, 0x6E];

    internal static byte[] Put(ReadOnlySpan<byte> png) => [.. png[..HeadBytes], .. Chunk, .. png[HeadBytes..]];

    internal static bool IsOn(ReadOnlySpan<byte> file) => file.Length > HeadBytes && file[HeadBytes..].StartsWith(Chunk);
}
