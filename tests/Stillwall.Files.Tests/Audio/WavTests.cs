using System.Buffers.Binary;
using System.Globalization;
using Stillwall.Files.Audio;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Files.Tests.Audio;

public sealed class WavTests
{
    /// <summary>A file written out byte by byte after the format's description: 16 bit, stereo, 8 kHz, samples 1 and −2, then 3 and −32768.</summary>
    private static readonly byte[] ByHand =
    [
        .. "RIFF"u8,
        44,
        0,
        0,
        0,
        .. "WAVE"u8,
        .. "fmt "u8,
        16,
        0,
        0,
        0,
        1,
        0,
        2,
        0,
        0x40,
        0x1F,
        0,
        0,
        0,
        0x7D,
        0,
        0,
        4,
        0,
        16,
        0,
        .. "data"u8,
        8,
        0,
        0,
        0,
        1,
        0,
        0xFE,
        0xFF,
        3,
        0,
        0,
        0x80,
    ];

    [Fact]
    public void A_file_written_by_hand_is_read()
    {
        var reading = WavReader.Read(ByHand);
        Assert.Null(reading.Fault);
        Assert.Empty(reading.Warnings);
        Assert.Equal(8000, reading.Recording!.RateHz);
        Assert.Equal([1 / 32768.0, 3 / 32768.0], reading.Recording.Channels[0]);
        Assert.Equal([-2 / 32768.0, -1], reading.Recording.Channels[1]);
    }

    [Fact]
    public void What_is_written_is_the_file_written_by_hand() =>
        Assert.Equal(
            ByHand,
            WavWriter.Write(
                new Recording(
                    8000,
                    [
                        [1 / 32768.0, 3 / 32768.0],
                        [-2 / 32768.0, -1],
                    ],
                    0
                ),
                WavSamples.Bits16
            )
        );

    [Theory]
    [InlineData(WavSamples.Bits16, 44100, 1, 3.1e-5)]
    [InlineData(WavSamples.Bits24, 48000, 2, 1.2e-7)]
    [InlineData(WavSamples.FloatingPoint, 96000, 2, 6e-8)]
    [InlineData(WavSamples.Bits24, 44100, 3, 1.2e-7)]
    public void What_is_written_is_read_back_to_a_step(WavSamples samples, double rate, int channels, double step)
    {
        double[][] sound = [.. Enumerable.Range(0, channels).Select(c => Enumerable.Range(0, 1001).Select(i => Math.Sin((0.1 * i) + c) * 0.999).ToArray())];
        var read = WavReader.Read(WavWriter.Write(new Recording(rate, sound, 0), samples)).Recording!;
        Assert.Equal(rate, read.RateHz);
        Assert.Equal(channels, read.Channels.Count);
        Assert.All(sound.Zip(read.Channels), p => Assert.All(p.First.Zip(p.Second), s => Assert.Equal(s.First, s.Second, step)));
    }

    [Fact]
    public void Extensible_and_odd_chunks_are_read()
    {
        byte[] subformat = [1, 0, 0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xAA, 0, 0x38, 0x9B, 0x71];
        byte[] format = [.. ByHand[20..36], 22, 0, 16, 0, 3, 0, 0, 0, .. subformat];
        format[0] = 0xFE;
        format[1] = 0xFF;
        byte[] file = [.. ByHand[..12], .. "LIST"u8, 3, 0, 0, 0, 7, 7, 7, 0, .. "fmt "u8, 40, 0, 0, 0, .. format, .. ByHand[36..]];
        var reading = WavReader.Read(file);
        Assert.Null(reading.Fault);
        Assert.Equal([1 / 32768.0, 3 / 32768.0], reading.Recording!.Channels[0]);
    }

    [Fact]
    public void A_file_that_is_cut_off_is_read_with_a_warning()
    {
        byte[] file = [.. ByHand];
        file[40] = 80;
        var reading = WavReader.Read(file);
        Assert.Equal(2, reading.Recording!.LengthCount);
        Assert.Contains("cut off", Assert.Single(reading.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_does_not_say_its_length_is_read_with_a_warning()
    {
        foreach (var size in new byte[] { 0, 255 })
        {
            byte[] file = [.. ByHand];
            Array.Fill(file, size, 40, 4);
            var reading = WavReader.Read(file);
            Assert.Equal(2, reading.Recording!.LengthCount);
            Assert.Contains("does not say how long", Assert.Single(reading.Warnings), StringComparison.Ordinal);
        }
    }

    public static TheoryData<string> BadFiles => [.. Bad().Select(b => b.Name)];

    [Theory]
    [MemberData(nameof(BadFiles))]
    public void A_bad_file_is_told_in_one_line_that_says_what_is_accepted(string name)
    {
        var reading = WavReader.Read(Bad().Single(b => b.Name == name).Bytes);
        Assert.Null(reading.Recording);
        Assert.Matches("^byte [0-9]+: [^\r\n]+; [^\r\n]+$", reading.Fault!);
        Assert.InRange(reading.Fault!.Length, 20, 200);
    }

    [Fact]
    public void There_are_sixty_bad_files_and_more() => Assert.True(Bad().Count() >= 60);

    [Fact]
    public void No_byte_that_is_changed_leads_to_more_than_a_fault_or_a_sound()
    {
        for (var at = 0; at < ByHand.Length; at++)
        {
            foreach (var value in new byte[] { 0, 1, 2, 3, 16, 127, 128, 254, 255 })
            {
                byte[] file = [.. ByHand];
                file[at] = value;
                var reading = WavReader.Read(file);
                Assert.True(reading.Recording is null == reading.Fault is not null);
                Assert.True(reading.Recording is null || reading.Recording.Channels.All(c => c.All(double.IsFinite)));
            }
        }
    }

    private static IEnumerable<(string Name, byte[] Bytes)> Bad()
    {
        yield return ("empty", []);
        for (var length = 1; length < 44; length++)
        {
            yield return ($"cut after {length.ToString(CultureInfo.InvariantCulture)} bytes", ByHand[..length]);
        }

        (string Name, int At, byte[] Put)[] changes =
        [
            ("big-endian", 0, "RIFX"u8.ToArray()),
            ("long form", 0, "RF64"u8.ToArray()),
            ("a picture", 0, [0x89, 0x50, 0x4E, 0x47]),
            ("no wave", 8, "AVI "u8.ToArray()),
            ("no format", 12, "junk"u8.ToArray()),
            ("short format", 16, [8, 0, 0, 0]),
            ("compressed", 20, [0x55, 0]),
            ("a-law", 20, [6, 0]),
            ("extensible without more", 20, [0xFE, 0xFF]),
            ("no channel", 22, [0, 0]),
            ("nine channels", 22, [9, 0]),
            ("rate 0", 24, [0, 0, 0, 0]),
            ("rate 4000", 24, [0xA0, 0x0F, 0, 0]),
            ("rate of 4 GHz", 24, [255, 255, 255, 255]),
            ("frame of 3", 32, [3, 0]),
            ("8 bit", 34, [8, 0]),
            ("0 bit", 34, [0, 0]),
            ("20 bit", 34, [20, 0]),
            ("64 bit", 34, [64, 0]),
            ("float of 16 bit", 20, [3, 0]),
            ("no data", 36, "date"u8.ToArray()),
            ("size of 2 GB in format", 16, [255, 255, 255, 127]),
        ];
        foreach (var (name, at, put) in changes)
        {
            byte[] file = [.. ByHand];
            put.CopyTo(file, at);
            yield return (name, file);
        }

        yield return ("text", "date,mass_kg\n2026-11-16,9.42\n"u8.ToArray());
        yield return ("samples before their format", [.. ByHand[..12], .. ByHand[36..], .. ByHand[12..36]]);
        yield return ("two formats", [.. ByHand[..36], .. ByHand[12..36], .. ByHand[36..]]);
        foreach (var (name, sample) in new[] { ("not a number", float.NaN), ("infinite", float.PositiveInfinity), ("beyond all reason", 1e20f) })
        {
            var file = WavWriter.Write(new Recording(48000, [new double[10]], 0), WavSamples.FloatingPoint);
            BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(58 + 20), sample);
            yield return (name, file);
        }
    }
}
