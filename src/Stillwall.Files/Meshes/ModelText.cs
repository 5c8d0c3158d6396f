using System.Buffers;
using System.Globalization;
using System.Text;

namespace Stillwall.Files.Meshes;

/// <summary>Gathers text as UTF-8, numbers without a detour through strings: a mesh has hundreds of thousands of them.</summary>
internal sealed class ModelText
{
    private const int LongestNumber = 16,
        MicrometresPerMillimetre = 1000;

    private readonly ArrayBufferWriter<byte> bytes = new(1 << 16);

    internal ReadOnlyMemory<byte> Bytes => bytes.WrittenMemory;

    internal ModelText Add(string text)
    {
        Encoding.UTF8.GetBytes(text, bytes);
        return this;
    }

    internal ModelText Add(int number)
    {
        number.TryFormat(bytes.GetSpan(LongestNumber), out var written, default, CultureInfo.InvariantCulture);
        bytes.Advance(written);
        return this;
    }

    /// <summary>Micrometres as millimetres, with as many digits as it takes.</summary>
    internal ModelText AddMillimetres(int micrometres)
    {
        var span = bytes.GetSpan(LongestNumber);
        var (whole, rest, at) = (Math.Abs(micrometres / MicrometresPerMillimetre), Math.Abs(micrometres % MicrometresPerMillimetre), 0);
        if (micrometres < 0)
        {
            span[at++] = (byte)'-';
        }

        whole.TryFormat(span[at..], out var written, default, CultureInfo.InvariantCulture);
        at += written;
        if (rest > 0)
        {
            span[at++] = (byte)'.';
            for (var unit = MicrometresPerMillimetre / 10; rest > 0; unit /= 10)
            {
                span[at++] = (byte)('0' + rest / unit);
                rest %= unit;
            }
        }

        bytes.Advance(at);
        return this;
    }
}
