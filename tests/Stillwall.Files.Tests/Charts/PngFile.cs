using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Stillwall.Files.Tests.Charts;

/// <summary>Reads a PNG after its own standard (ISO/IEC 15948), knowing nothing of the library that wrote it.</summary>
internal static class PngFile
{
    private static readonly byte[] Signature = [137, 80, 78, 71, 13, 10, 26, 10];

    internal static (int Width, int Height) Size(byte[] png)
    {
        var header = Chunks(png)[0];
        Assert.Equal("IHDR", header.Kind);
        return (BinaryPrimitives.ReadInt32BigEndian(header.Data), BinaryPrimitives.ReadInt32BigEndian(header.Data.AsSpan(4)));
    }

    /// <summary>Colours as 0xRRGGBB, row by row; true colour of 8 bits, with or without transparency, not interlaced.</summary>
    internal static int[,] Pixels(byte[] png)
    {
        var (width, height) = Size(png);
        var chunks = Chunks(png);
        var channels = chunks[0].Data[9] == 6 ? 4 : 3;
        using var packed = new MemoryStream([.. chunks.Where(c => c.Kind == "IDAT").SelectMany(c => c.Data)]);
        using var unpacked = new ZLibStream(packed, CompressionMode.Decompress);
        var pixels = new int[height, width];
        var (before, row) = (new byte[width * channels], new byte[width * channels]);
        for (var y = 0; y < height; y++)
        {
            var filter = unpacked.ReadByte();
            unpacked.ReadExactly(row);
            Unfilter(filter, row, before, channels);
            for (var x = 0; x < width; x++)
            {
                pixels[y, x] = (row[x * channels] << 16) | (row[(x * channels) + 1] << 8) | row[(x * channels) + 2];
            }

            (before, row) = (row, before);
        }

        return pixels;
    }

    private static void Unfilter(int filter, byte[] row, byte[] before, int channels)
    {
        for (var i = 0; i < row.Length; i++)
        {
            var (left, up, corner) = (i >= channels ? row[i - channels] : 0, before[i], i >= channels ? before[i - channels] : 0);
            row[i] += (byte)(
                filter switch
                {
                    0 => 0,
                    1 => left,
                    2 => up,
                    3 => (left + up) / 2,
                    _ => Paeth(left, up, corner),
                }
            );
        }
    }

    private static int Paeth(int left, int up, int corner)
    {
        var (a, b, c) = (Math.Abs(up - corner), Math.Abs(left - corner), Math.Abs(left + up - (2 * corner)));
        return a <= b && a <= c ? left
            : b <= c ? up
            : corner;
    }

    private static List<(string Kind, byte[] Data)> Chunks(byte[] png)
    {
        Assert.Equal(Signature, png[..8]);
        List<(string, byte[])> chunks = [];
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            chunks.Add((Encoding.ASCII.GetString(png, at + 4, 4), png[(at + 8)..(at + 8 + length)]));
            at += length + 12;
        }

        return chunks;
    }
}
