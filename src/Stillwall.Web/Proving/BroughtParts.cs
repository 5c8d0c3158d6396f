using System.Globalization;
using Stillwall.Appraisals.Proving;
using Stillwall.Files.Audio;
using Stillwall.Proofs.Recordings;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Why a recording or what was asked of it is refused, in one line.</summary>
internal sealed class BroughtRefusal(string line) : Exception(line);

/// <summary>Recordings that came in one piece.</summary>
internal sealed class BroughtParts
{
    internal const string Main = "recording";

    private readonly ReadOnlyMemory<byte> body;
    private readonly List<(string Name, int From, int Length)> parts = [];

    /// <summary>Finds where each begins.</summary>
    /// <param name="body">The files, one after the other.</param>
    /// <param name="stated">Name and length of each as the page states them; without them all is one recording.</param>
    internal BroughtParts(ReadOnlyMemory<byte> body, string? stated)
    {
        this.body = body;
        var from = 0;
        foreach (var part in (stated is { Length: > 0 } ? stated : $"{Main}:{body.Length.ToString(CultureInfo.InvariantCulture)}").Split(','))
        {
            var pair = part.Split(':');
            if (pair.Length != 2 || !int.TryParse(pair[1], NumberStyles.None, CultureInfo.InvariantCulture, out var length) || length > body.Length - from)
            {
                throw new BroughtRefusal(ProofTexts.BadParts);
            }

            parts.Add((pair[0], from, length));
            from += length;
        }

        if (from != body.Length)
        {
            throw new BroughtRefusal(ProofTexts.BadParts);
        }
    }

    /// <summary>Every recording of that name.</summary>
    internal IReadOnlyList<Recording> Sounds(string kind, string name, List<AboutInput> odd) =>
        [
            .. parts
                .Where(p => p.Name == name)
                .Select(p =>
                {
                    var file = WavReader.Read(body.Span.Slice(p.From, p.Length));
                    odd.AddRange(file.Warnings.Select(w => new AboutInput(name, w)));
                    return file.Recording ?? throw new BroughtRefusal(ProofTexts.Fault(kind, new AboutInput(name, file.Fault!)));
                }),
        ];
}
