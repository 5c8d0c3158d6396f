using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Files.Audio;
using Stillwall.Files.Projects;
using Stillwall.Projects;
using Stillwall.Proofs.Recordings;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Why a recording or what was asked of it is refused, in one line.</summary>
internal sealed class ProofRefusal(string line) : Exception(line);

/// <summary>What somebody brought to a proof.</summary>
/// <param name="Body">Recordings as files, one after the other.</param>
/// <param name="Asked">What is stated beside them, by name.</param>
/// <param name="Facts">The project to compare with.</param>
/// <param name="Before">The latest outcome of the same proof.</param>
internal sealed record ProofRequest(ReadOnlyMemory<byte> Body, Func<string, string?> Asked, Facts Facts, ProofOutcome? Before)
{
    internal const string Main = "recording";

    private readonly Dictionary<string, IReadOnlyList<Recording>> read = new(StringComparer.Ordinal);

    /// <summary>What is odd about the files that were read.</summary>
    internal List<string> Odd { get; } = [];

    /// <summary>The recording of that name.</summary>
    /// <exception cref="ProofRefusal">It was not brought, or is no sound that is read.</exception>
    internal Recording Sound(string name = Main) => Sounds(name) is [var first, ..] ? first : throw new ProofRefusal(ProofTexts.NotBrought(name));

    /// <summary>The recording of that name; null where it was not brought.</summary>
    internal Recording? PerhapsSound(string name) => Sounds(name) is [var first, ..] ? first : null;

    /// <summary>Every recording of that name.</summary>
    internal IReadOnlyList<Recording> Sounds(string name)
    {
        if (!read.TryGetValue(name, out var sounds))
        {
            read[name] = sounds = [.. Parts().Where(p => p.Name == name).Select(p => Read(name, p.From, p.Length))];
        }

        return sounds;
    }

    internal bool Has(string name) => Parts().Any(p => p.Name == name);

    /// <summary>A stated quantity.</summary>
    /// <exception cref="ProofRefusal">It is not stated, or out of range.</exception>
    internal double Quantity(string name, Dimension dimension, double least, double most) =>
        PerhapsQuantity(name, dimension, least, most) ?? throw new ProofRefusal(ProofTexts.NotStated(name));

    /// <summary>A stated quantity; null where it is left empty.</summary>
    /// <exception cref="ProofRefusal">It is out of range.</exception>
    internal double? PerhapsQuantity(string name, Dimension dimension, double least, double most) =>
        Asked(name) is not { Length: > 0 } text ? null
        : Units.TryRead(text, dimension, out var value, out _) && value >= least && value <= most ? value
        : throw new ProofRefusal(ProofTexts.NotWithin(name, text, Units.Write(least, dimension), Units.Write(most, dimension)));

    /// <summary>A recording as an input of a figure.</summary>
    internal static ExplainedInput Recorded(Recording recording, string name = "") =>
        new(name.Length == 0 ? Main : $"{Main}.{name}", ProofTexts.Recorded(recording.DurationS, recording.RateHz), "1", null);

    /// <summary>A number that went in, with what one per cent of it does.</summary>
    /// <param name="key">What it is.</param>
    /// <param name="value">The number, SI.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="result">The figure for another number in its place.</param>
    internal static ExplainedInput Moved(string key, double value, string unit, Func<double, double?> result) =>
        new($"{Main}.{key}", value, unit, Why.Sensitivity(value, result));

    /// <summary>A measured value as a project states it.</summary>
    internal static (string, string) Kept(string key, params double[] values) => (key, MeasuredText.Of(key, values));

    private Recording Read(string name, int from, int length)
    {
        var file = WavReader.Read(Body.Span.Slice(from, length));
        Odd.AddRange(file.Warnings.Except(Odd));
        return file.Recording ?? throw new ProofRefusal(ProofTexts.Recording(name, file.Fault!));
    }

    // Names and lengths as the page states them; without them all is one recording.
    private List<(string Name, int From, int Length)> Parts()
    {
        if (Asked("parts") is not { Length: > 0 } stated)
        {
            return [(Main, 0, Body.Length)];
        }

        var (parts, from) = (new List<(string, int, int)>(), 0);
        foreach (var part in stated.Split(','))
        {
            var pair = part.Split(':');
            if (pair.Length != 2 || !int.TryParse(pair[1], NumberStyles.None, CultureInfo.InvariantCulture, out var length) || length > Body.Length - from)
            {
                throw new ProofRefusal(ProofTexts.BadParts);
            }

            parts.Add((pair[0], from, length));
            from += length;
        }

        return from == Body.Length ? parts : throw new ProofRefusal(ProofTexts.BadParts);
    }
}
