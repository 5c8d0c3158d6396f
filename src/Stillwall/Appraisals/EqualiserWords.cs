using Stillwall.Neighbours;
using Stillwall.Neighbours.Equalisers;

namespace Stillwall.Appraisals;

/// <summary>An equaliser told in words.</summary>
internal static class EqualiserWords
{
    /// <summary>Its sections in one line, such as <c>a cut of 4.6 dB at 83.5 Hz (Q 4.1) and a high-pass at 37.8 Hz</c>.</summary>
    /// <returns>The words; nothing for no section.</returns>
    public static string Of(IReadOnlyList<EqualiserSection> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        var told = new List<string>();
        for (var i = 0; i < sections.Count; i++)
        {
            // Two high-passes of one corner are one of the fourth order.
            var isPair =
                i + 1 < sections.Count
                && sections[i] is { Kind: SectionKind.Highpass } first
                && sections[i + 1] is { Kind: SectionKind.Highpass } second
                && first.F0Hz == second.F0Hz;
            told.Add(isPair ? $"a fourth-order high-pass at {Show.Frequency(sections[i].F0Hz)}" : One(sections[i]));
            i += isPair ? 1 : 0;
        }

        return told.Count < 2 ? string.Concat(told) : $"{string.Join(", ", told.Take(told.Count - 1))} and {told[^1]}";
    }

    private static string One(EqualiserSection section) =>
        section.Kind switch
        {
            SectionKind.Highpass => $"a high-pass at {Show.Frequency(section.F0Hz)} (Q {Show.Number(section.Q, 2)})",
            SectionKind.Peaking => $"a cut of {Show.Level(-section.GainDb)} at {Show.Frequency(section.F0Hz)} (Q {Show.Number(section.Q, 2)})",
            SectionKind.Lowshelf => $"a shelf {Show.Level(-section.GainDb)} down below {Show.Frequency(section.F0Hz)} (Q {Show.Number(section.Q, 2)})",
            _ => $"the box's {Show.Frequency(section.F0Hz)}, Q {Show.Number(section.Q, 2)}, made {Show.Frequency(section.FpHz ?? 0)}, Q "
                + $"{Show.Number(section.PoleQ ?? 0, 2)}",
        };
}
