namespace Stillwall.Cli.Tests.Outputs;

/// <summary>An output replaces an earlier one of its own, and nothing else.</summary>
public sealed class OwnOutputTests : IDisposable
{
    private readonly Desk desk = OutputCases.Desk();

    public OwnOutputTests()
    {
        desk.Write(
            "other/stillwall.json",
            File.ReadAllText(desk.Project)
                .Replace("\"core\": \"12 mm\"", "\"core\": \"16 mm\"", StringComparison.Ordinal)
                .Replace("\"level\": \"62 dB\"", "\"level\": \"75 dB\"", StringComparison.Ordinal)
        );
        desk.Write("other/drivers.csv", File.ReadAllText(desk.PathTo("reading-room/drivers.csv")));
    }

    public static TheoryData<string> OfFiles => [.. OutputCases.OfFiles];

    public void Dispose() => desk.Dispose();

    [Theory]
    [MemberData(nameof(OfFiles))]
    public void An_earlier_output_is_replaced_and_an_empty_file_too(string option)
    {
        var output = desk.PathTo("output");
        Assert.Equal(0, desk.Run(OutputCases.Words(option, "output")).ExitCode);
        var first = File.ReadAllBytes(output);
        Assert.Equal(0, desk.Run(Other(option)).ExitCode);
        var second = File.ReadAllBytes(output);
        Assert.NotEqual(first, second);
        File.WriteAllBytes(output, []);
        Assert.Equal(0, desk.Run(OutputCases.Words(option, "output")).ExitCode);
        Assert.Equal(first, File.ReadAllBytes(output));
        Assert.Empty(Directory.GetFiles(desk.Folder, "*.draft"));
    }

    [Theory]
    [MemberData(nameof(OfFiles))]
    public void A_file_of_somebody_else_stays_even_where_it_is_of_the_same_kind(string option)
    {
        Assert.Equal(0, desk.Run(OutputCases.Words(option, "output")).ExitCode);
        var own = File.ReadAllBytes(desk.PathTo("output"));
        foreach (var stranger in Strangers(own))
        {
            File.WriteAllBytes(desk.PathTo("output"), stranger);
            var ran = desk.Run(OutputCases.Words(option, "output"));

            Assert.Equal(
                (2, "", "output: is there and is not what this option wrote; another name, or take that file away first\n"),
                (ran.ExitCode, ran.Output, ran.Error)
            );
            Assert.Equal(stranger, File.ReadAllBytes(desk.PathTo("output")));
        }
    }

    [Fact]
    public void A_recording_of_the_same_form_as_a_signal_stays()
    {
        var recording = File.ReadAllBytes(desk.PathTo("sweep.wav"));
        Assert.Equal(2, desk.Run("signal", "sweep", "--out", "sweep.wav", "--samples", "16").ExitCode);
        Assert.Equal(recording, File.ReadAllBytes(desk.PathTo("sweep.wav")));
    }

    [Fact]
    public void A_table_of_the_same_cabinet_with_a_port_is_known_again()
    {
        Assert.Equal(0, desk.Run("curves", "reading-room", "--csv", "output").ExitCode);
        desk.State("cabinet.port", "{ \"area\": \"40 cm2\", \"length\": \"200 mm\" }");
        Assert.Equal(0, desk.Run("curves", "reading-room", "--csv", "output").ExitCode);
        Assert.Contains("port_speed_m_s", File.ReadAllText(desk.PathTo("output")), StringComparison.Ordinal);
    }

    [Fact]
    [System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
    public void A_link_stays_a_link_and_a_replaced_file_keeps_its_permissions()
    {
        desk.Write("kept/curves.csv", "");
        File.SetUnixFileMode(desk.PathTo("kept/curves.csv"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(desk.PathTo("link.csv"), desk.PathTo("kept/curves.csv"));
        Assert.Equal(0, desk.Run("curves", "reading-room", "--csv", "link.csv").ExitCode);
        Assert.NotNull(new FileInfo(desk.PathTo("link.csv")).LinkTarget);
        Assert.StartsWith("frequency_hz", File.ReadAllText(desk.PathTo("kept/curves.csv")), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(desk.PathTo("kept/curves.csv")));
    }

    [Fact]
    public void A_device_is_written_to_and_stays_what_it_is()
    {
        Assert.Equal(0, desk.Run("curves", "reading-room", "--csv", "/dev/null").ExitCode);
        Assert.Equal("", File.ReadAllText("/dev/null"));
        Assert.Equal(
            "/dev/full: cannot be written (the disk is full); a file in a folder that is there and may be written\n",
            desk.Run("curves", "reading-room", "--csv", "/dev/full").Error
        );
    }

    // The same option with another answer.
    private static string[] Other(string option)
    {
        string[] words = OutputCases.Words(option, "output");
        return option switch
        {
            "room --svg" => [.. words.Select(w => w == "45Hz" ? "60Hz" : w)],
            "room --csv" => [.. words, "--volume-velocity", "0.002"],
            "filter --csv" => [.. words.Select(w => w == "6dB" ? "3dB" : w)],
            "signal --out" => [.. words, "--frequency", "50Hz"],
            "prove impedance --csv" or "prove impedance --driver" => [.. words.Select(w => w == "10ohm" ? "11ohm" : w)],
            "prove sweep --csv" => [.. words, "--points-per-octave", "12"],
            _ => [.. words.Select(w => w == "reading-room" ? "other" : w)],
        };
    }

    private static IEnumerable<byte[]> Strangers(byte[] own)
    {
        yield return "somebody's notes\n"u8.ToArray();
        yield return own[0] switch
        {
            (byte)'<' => "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\"></svg>\n"u8.ToArray(),
            (byte)'R' => [.. own[..100], 1, .. own[101..]],
            0x89 => [.. own[..33], .. own[63..]],
            (byte)'{' => "{\n  \"name\": \"measured\", \"re\": \"3.5 ohm\"\n}\n"u8.ToArray(),
            _ => [.. own, .. "20.0,loud\n"u8],
        };
    }
}
