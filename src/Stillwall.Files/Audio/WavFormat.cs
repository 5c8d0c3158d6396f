using System.Buffers.Binary;
using System.Globalization;

namespace Stillwall.Files.Audio;

/// <summary>How the samples of a WAV file stand in it.</summary>
/// <param name="RateHz">Samples a second.</param>
/// <param name="ChannelCount">How many channels.</param>
/// <param name="SampleLength">Bytes of one sample.</param>
/// <param name="IsFloat">Whether a sample is a floating-point number.</param>
internal sealed record WavFormat(int RateHz, int ChannelCount, int SampleLength, bool IsFloat)
{
    private const int Plain = 1,
        Float = 3,
        Extensible = 0xFFFE;

    internal int FrameLength => ChannelCount * SampleLength;

    internal double StepFraction => IsFloat ? Math.Pow(2, -24) : Math.Pow(2, 1 - (8 * SampleLength));

    /// <summary>Reads the body of a format chunk.</summary>
    /// <param name="body">Its bytes.</param>
    /// <param name="at">Where in the file it begins.</param>
    /// <exception cref="WavFault">It is not a format that is accepted.</exception>
    internal static WavFormat Read(ReadOnlySpan<byte> body, int at)
    {
        if (body.Length < 16)
        {
            throw WavFault.At(at, "has a format chunk that is too short; 16 bytes or more");
        }

        var (kind, bits) = (Word(body, 0), Word(body, 14));
        if (kind == Extensible)
        {
            kind = body.Length >= 40 ? Word(body, 24) : throw WavFault.At(at, "says it is extensible but not how; 40 bytes of format");
        }

        var (channels, rate, frame) = (Word(body, 2), BinaryPrimitives.ReadUInt32LittleEndian(body[4..]), Word(body, 12));
        var (least, greatest, most) = WavReader.Bounds;
        if (kind is not (Plain or Float))
        {
            throw WavFault.At(at, $"is compressed or of a kind that is not read (format {Text(kind)}); 16, 24 or 32 bit or float");
        }

        if (channels < 1 || channels > most)
        {
            throw WavFault.At(at + 2, $"has {Text(channels)} channels; 1 to {Text(most)}");
        }

        if (rate < least || rate > greatest)
        {
            throw WavFault.At(at + 4, $"has a rate of {rate.ToString(CultureInfo.InvariantCulture)} Hz; 8000 to 192000 Hz");
        }

        if (!((kind == Plain && bits is 16 or 24 or 32) || (kind == Float && bits is 32 or 64)))
        {
            throw WavFault.At(at + 14, $"has {Text(bits)} bit {(kind == Float ? "float " : "")}samples; 16, 24 or 32 bit, or float of 32 or 64 bit");
        }

        return frame == channels * bits / 8
            ? new WavFormat((int)rate, channels, bits / 8, kind == Float)
            : throw WavFault.At(
                at + 12,
                $"contradicts itself: {Text(channels)} channels of {Text(bits)} bit in {Text(frame)} bytes; {Text(channels * bits / 8)} bytes"
            );
    }

    private static int Word(ReadOnlySpan<byte> body, int at) => BinaryPrimitives.ReadUInt16LittleEndian(body[at..]);

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What is wrong with a WAV file; caught where it is read.</summary>
internal sealed class WavFault(string message) : Exception(message)
{
    internal static WavFault At(long at, string message) =>
        new(
            $"byte {at.ToString(CultureInfo.InvariantCulture)}: "
                + $"{(message.Contains(';', StringComparison.Ordinal) ? message : $"{message}; {WavReader.Accepted}")}"
        );
}
