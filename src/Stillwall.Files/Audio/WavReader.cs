using System.Buffers.Binary;
using System.Globalization;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Files.Audio;

/// <summary>A WAV file that was read, or why not.</summary>
/// <param name="Recording">The sound; null where the file cannot be used.</param>
/// <param name="Fault">What is wrong, where, and what is accepted; null where it can be used.</param>
/// <param name="Warnings">What is odd about a file that can be used.</param>
public sealed record WavReading(Recording? Recording, string? Fault, IReadOnlyList<string> Warnings);

/// <summary>Reads WAV files: 16, 24 and 32 bit and float, plain and extensible.</summary>
/// <remarks>
/// Source: "Multimedia Programming Interface and Data Specifications 1.0" (1991) and its extensible form (2001), from memory; tests read and write
/// both.
/// </remarks>
public static class WavReader
{
    /// <summary>Largest file that is read, bytes: two hours of 16 bit mono at 44.1 kHz, or five and a half minutes of 32 bit stereo at 192 kHz.</summary>
    public const int GreatestLength = 512 << 20;

    /// <summary>What is accepted, in words.</summary>
    public const string Accepted = "a WAV file of 16, 24 or 32 bit or float, 1 to 8 channels, 8 to 192 kHz";

    private const double LeastRateHz = 8000,
        GreatestRateHz = 192000;
    private const int MostChannels = 8;

    /// <summary>Reads a file.</summary>
    /// <param name="bytes">All of the file.</param>
    /// <returns>The sound, or one fault that names the byte where it lies; never both, never neither.</returns>
    public static WavReading Read(ReadOnlySpan<byte> bytes)
    {
        var warnings = new List<string>();
        try
        {
            var (format, data) = Chunks(bytes, warnings);
            return new WavReading(Samples(format, bytes.Slice(data.Start, data.Length), data.Start), null, warnings);
        }
        catch (WavFault fault)
        {
            return new WavReading(null, fault.Message, []);
        }
    }

    private static (WavFormat Format, (int Start, int Length) Data) Chunks(ReadOnlySpan<byte> bytes, List<string> warnings)
    {
        if (bytes.Length < 12 || !bytes[..4].SequenceEqual("RIFF"u8) || !bytes[8..12].SequenceEqual("WAVE"u8))
        {
            throw WavFault.At(
                0,
                bytes.Length == 0 ? "is empty"
                    : bytes.Length < 12 ? "is too short for a WAV file"
                    : "is not a WAV file (it does not begin with RIFF … WAVE)"
            );
        }

        WavFormat? format = null;
        for (var at = 12; at + 8 <= bytes.Length;)
        {
            var id = bytes.Slice(at, 4);
            var (size, body, left) = (BinaryPrimitives.ReadUInt32LittleEndian(bytes[(at + 4)..]), at + 8, (uint)(bytes.Length - at - 8));
            if (id.SequenceEqual("fmt "u8))
            {
                format = format is null
                    ? WavFormat.Read(bytes.Slice(body, (int)Math.Min(size, left)), body)
                    : throw WavFault.At(at, "has a second format chunk; one");
            }
            else if (id.SequenceEqual("data"u8))
            {
                var known = format ?? throw WavFault.At(at, "has its samples before their format; a format chunk first");
                return (known, (body, DataLength(size, left, known, warnings)));
            }

            // Chunks begin at even places.
            var next = body + size + (size & 1L);
            at = next <= bytes.Length ? (int)next : bytes.Length;
        }

        throw WavFault.At(bytes.Length, format is null ? "has no format chunk" : "has no samples (no data chunk)");
    }

    // A size of 0 or of all ones is what a recorder leaves that was stopped before it could say.
    private static int DataLength(uint size, uint left, WavFormat format, List<string> warnings)
    {
        var isOpen = size is uint.MaxValue or 0;
        var length = (int)Math.Min(isOpen ? left : size, left);
        length -= length % format.FrameLength;
        if (isOpen && length > 0)
        {
            warnings.Add("does not say how long it is; all that is there was read");
        }
        else if (length == 0)
        {
            throw WavFault.At(44, "has no samples");
        }
        else if (size > left)
        {
            var (there, said) = (Seconds(length, format), Seconds(size, format));
            warnings.Add($"is cut off: {there} of {said} s are there, and only they count");
        }

        return length;
    }

    private static string Seconds(long length, WavFormat format) =>
        (length / (double)format.FrameLength / format.RateHz).ToString("0.##", CultureInfo.InvariantCulture);

    private static Recording Samples(WavFormat format, ReadOnlySpan<byte> data, int start)
    {
        var frames = data.Length / format.FrameLength;
        var channels = new double[format.ChannelCount][];
        for (var c = 0; c < channels.Length; c++)
        {
            channels[c] = new double[frames];
            Fill(channels[c], data[(c * format.SampleLength)..], format);
            if (format.IsFloat && Array.FindIndex(channels[c], x => !(Math.Abs(x) < GreatestSample)) is >= 0 and var bad)
            {
                throw WavFault.At(
                    start + ((long)bad * format.FrameLength) + (c * format.SampleLength),
                    $"has a sample that is no number or beyond all reason ({channels[c][bad].ToString("G4", CultureInfo.InvariantCulture)}); samples "
                        + "about −1 to 1"
                );
            }
        }

        return new Recording(format.RateHz, channels, format.StepFraction);
    }

    // Float files may go past full scale; no sound card is out by more than this (our choice).
    private const double GreatestSample = 1e4;

    private static void Fill(double[] samples, ReadOnlySpan<byte> data, WavFormat format)
    {
        var step = format.FrameLength;
        for (int i = 0, at = 0; i < samples.Length; i++, at += step)
        {
            samples[i] = (format.SampleLength, format.IsFloat) switch
            {
                (2, _) => BinaryPrimitives.ReadInt16LittleEndian(data[at..]) / 32768.0,
                (3, _) => (data[at] << 8 | data[at + 1] << 16 | data[at + 2] << 24) / 2147483648.0,
                (4, false) => BinaryPrimitives.ReadInt32LittleEndian(data[at..]) / 2147483648.0,
                (4, true) => BinaryPrimitives.ReadSingleLittleEndian(data[at..]),
                _ => BinaryPrimitives.ReadDoubleLittleEndian(data[at..]),
            };
        }
    }

    internal static (double Least, double Greatest, int MostChannels) Bounds => (LeastRateHz, GreatestRateHz, MostChannels);
}
