using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Stillwall.Files.Outputs;

/// <summary>
/// Names the program behind the samples of a sound, with the hash of everything before it: a recording, and a sound that was changed since, are not
/// taken for an own output.
/// </summary>
/// <remarks>
/// Source: "Multimedia Programming Interface and Data Specifications 1.0" (1991), list of information with the name of the software, from memory;
/// readers pass over it.
/// </remarks>
public static class SoundMark
{
    // RIFF and its length: the length grows by the mark.
    private const int HeadBytes = 8;

    private static readonly int Length = Chunk([]).Length;

    /// <summary>Puts the mark on a sound.</summary>
    /// <param name="wav">All of a WAV file without the mark.</param>
    /// <returns>All of the file with it; the same sound gives the same bytes.</returns>
    public static byte[] Put(byte[] wav)
    {
        ArgumentNullException.ThrowIfNull(wav);
        byte[] file = [.. wav, .. Chunk(wav.AsSpan(HeadBytes))];
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), file.Length - HeadBytes);
        return file;
    }

    internal static bool IsOn(ReadOnlySpan<byte> file) =>
        file.Length > HeadBytes + Length && file.StartsWith("RIFF"u8) && file[^Length..].SequenceEqual(Chunk(file[HeadBytes..^Length]));

    private static byte[] Chunk(ReadOnlySpan<byte> content)
    {
        var name = Encoding.ASCII.GetBytes($"Stillwall {Convert.ToHexStringLower(SHA256.HashData(content))}\0");
        byte[] text = [.. name, .. new byte[name.Length % 2]];
        return [.. "LIST"u8, .. Size(text.Length + 12), .. "INFOISFT"u8, .. Size(name.Length), .. text];
    }

    private static byte[] Size(int length)
    {
        var size = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(size, length);
        return size;
    }
}
