using System.Buffers.Binary;
using Stillwall.Files.Audio;
using Stillwall.Files.Outputs;
using Stillwall.Files.Projects;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Files.Tests.Outputs;

public sealed class OutputSetTests : IDisposable
{
    private static readonly byte[] Sound = WavWriter.Write(
        new Recording(
            8000,
            [
                [0.1, -0.2, 0.3],
            ],
            0
        ),
        WavSamples.Bits24
    );

    private readonly string folder = FolderPath.Real(Directory.CreateTempSubdirectory("stillwall-").FullName);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_mark_on_a_sound_is_passed_over_by_its_reader_and_counted_in_its_length()
    {
        var marked = SoundMark.Put(Sound);
        Assert.Equal(0, marked.Length % 2);
        Assert.Equal(marked.Length - 8, BinaryPrimitives.ReadInt32LittleEndian(marked.AsSpan(4)));
        Assert.Equal(marked.Length - Sound.Length - 8, BinaryPrimitives.ReadInt32LittleEndian(marked.AsSpan(Sound.Length + 4)));
        Assert.Empty(WavReader.Read(marked).Warnings);
        Assert.Equal(WavReader.Read(Sound).Recording!.Channels[0], WavReader.Read(marked).Recording!.Channels[0]);
        Assert.Equal(marked, SoundMark.Put(Sound));
    }

    [Fact]
    public void A_sound_with_any_byte_changed_is_nobodys_output()
    {
        var marked = SoundMark.Put(Sound);
        Assert.True(SoundMark.IsOn(marked));
        Assert.False(SoundMark.IsOn(Sound));
        for (var at = 8; at < marked.Length - 1; at++)
        {
            byte[] changed = [.. marked];
            changed[at] ^= 1;
            Assert.False(SoundMark.IsOn(changed), $"byte {at}");
        }
    }

    [Fact]
    public void The_mark_on_a_picture_has_the_checksum_of_its_standard()
    {
        var marked = PictureMark.Put(new byte[40]);
        Assert.Equal(30, marked.Length - 40);
        var checksum = 0xFFFFFFFFu;
        foreach (var value in marked[37..59])
        {
            checksum ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                checksum = (checksum & 1) == 0 ? checksum >> 1 : (checksum >> 1) ^ 0xEDB88320u;
            }
        }

        Assert.Equal(~checksum, BinaryPrimitives.ReadUInt32BigEndian(marked.AsSpan(59)));
    }

    [Fact]
    public void Nothing_is_in_its_place_before_the_end_and_nothing_is_left_of_what_is_given_up()
    {
        var file = At("curves.csv");
        using (var given = new OutputSet())
        {
            Assert.Null(given.Add(file, "a\n1\n"u8.ToArray()));
            Assert.False(File.Exists(file));
            Assert.Single(Directory.GetFiles(folder));
        }

        Assert.Empty(Directory.GetFiles(folder));
        using var kept = new OutputSet();
        Assert.Null(kept.Add(file, "a\n1\n"u8.ToArray()));
        Assert.Null(kept.Place());
        Assert.Equal([file], Directory.GetFiles(folder));
    }

    [Fact]
    public void Only_drafts_of_our_own_are_cleared_away()
    {
        File.WriteAllText(At("stillwall-abcd1234.xyz.draft"), "left behind");
        File.WriteAllText(At("stillwall-letter.draft"), "to the museum");
        using var outputs = new OutputSet();
        Assert.Null(outputs.Add(At("curves.csv"), "a\n"u8.ToArray()));
        Assert.Null(outputs.Place());
        Assert.Equal([At("curves.csv"), At("stillwall-letter.draft")], Directory.GetFiles(folder).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Links_are_followed_folder_by_folder_and_one_that_leads_in_a_circle_is_told()
    {
        Directory.CreateDirectory(At("there"));
        Directory.CreateSymbolicLink(At("near"), At("there"));
        Directory.CreateSymbolicLink(At("far"), At("near"));
        File.CreateSymbolicLink(At("there/round"), At("near/round"));
        Assert.Equal(At("there/new/file"), FolderPath.Real(At("far/new/file")));
        using var outputs = new OutputSet();
        Assert.False(outputs.Add(At("far/round"), "a\n"u8.ToArray())!.IsInput);
    }

    [Theory]
    [InlineData("a\u001b[2Jb", "a\\u001b[2Jb")]
    [InlineData("\u202Eb\u2066", "\\u202eb\\u2066")]
    [InlineData("\U000E0001", "\\udb40\\udc01")]
    [InlineData("Pfütze 8 Ω 木 \U0001F50A", "Pfütze 8 Ω 木 \U0001F50A")]
    [InlineData("one\ntwo", "one\\u000atwo")]
    public void What_is_hidden_is_shown_and_nothing_else(string text, string shown) => Assert.Equal(shown, Visible.Of(text));

    private string At(string name) => Path.Combine(folder, name);
}
