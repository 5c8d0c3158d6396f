using System.Buffers.Binary;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Files.Audio;

/// <summary>How samples are written.</summary>
public enum WavSamples
{
    /// <summary>16 bit.</summary>
    Bits16,

    /// <summary>24 bit.</summary>
    Bits24,

    /// <summary>Floating point, 32 bit.</summary>
    FloatingPoint,
}

/// <summary>Writes WAV files; the same sound gives the same bytes.</summary>
public static class WavWriter
{
    /// <summary>Writes a sound.</summary>
    /// <param name="recording">The sound; samples past full scale are held at it, but not in a float file.</param>
    /// <param name="samples">How samples are written.</param>
    /// <returns>All of the file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">More samples than a WAV file can hold.</exception>
    public static byte[] Write(Recording recording, WavSamples samples)
    {
        ArgumentNullException.ThrowIfNull(recording);
        var isFloat = samples == WavSamples.FloatingPoint;
        var length = samples switch
        {
            WavSamples.Bits16 => 2,
            WavSamples.Bits24 => 3,
            _ => 4,
        };
        var frame = length * recording.Channels.Count;
        ArgumentOutOfRangeException.ThrowIfGreaterThan((long)recording.LengthCount * frame, WavReader.GreatestLength - 100, nameof(recording));
        var size = recording.LengthCount * frame;

        // A file that is not plain has a count of further format bytes, and says how many samples there are.
        var head = isFloat ? 58 : 44;
        var bytes = new byte[head + size + (size & 1)];
        var at = Text(bytes, 0, "RIFF"u8);
        at = Number(bytes, at, bytes.Length - 8, 4);
        at = Text(bytes, at, "WAVE"u8);
        at = Text(bytes, at, "fmt "u8);
        at = Number(bytes, at, isFloat ? 18 : 16, 4);
        at = Number(bytes, at, isFloat ? 3 : 1, 2);
        at = Number(bytes, at, recording.Channels.Count, 2);
        at = Number(bytes, at, (int)recording.RateHz, 4);
        at = Number(bytes, at, (int)recording.RateHz * frame, 4);
        at = Number(bytes, at, frame, 2);
        at = Number(bytes, at, 8 * length, 2);
        if (isFloat)
        {
            at = Number(bytes, at, 0, 2);
            at = Text(bytes, at, "fact"u8);
            at = Number(bytes, at, 4, 4);
            at = Number(bytes, at, recording.LengthCount, 4);
        }

        at = Text(bytes, at, "data"u8);
        at = Number(bytes, at, size, 4);
        for (var i = 0; i < recording.LengthCount; i++)
        {
            foreach (var channel in recording.Channels)
            {
                at = isFloat
                    ? Number(bytes, at, BitConverter.SingleToInt32Bits((float)channel[i]), 4)
                    : Number(bytes, at, Whole(channel[i], 8 * length), length);
            }
        }

        return bytes;
    }

    private static int Whole(double sample, int bits)
    {
        var scale = (double)(1 << (bits - 1));
        return (int)Math.Clamp(Math.Round(sample * scale, MidpointRounding.AwayFromZero), -scale, scale - 1);
    }

    private static int Text(byte[] bytes, int at, ReadOnlySpan<byte> text)
    {
        text.CopyTo(bytes.AsSpan(at));
        return at + text.Length;
    }

    private static int Number(byte[] bytes, int at, int value, int length)
    {
        Span<byte> word = stackalloc byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(word, value);
        word[..length].CopyTo(bytes.AsSpan(at));
        return at + length;
    }
}
