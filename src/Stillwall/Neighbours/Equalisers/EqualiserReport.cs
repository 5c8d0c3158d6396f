using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>One section with its coefficients at the usual rates.</summary>
/// <param name="Section">The section.</param>
/// <param name="Digital">Its coefficients at 44.1, 48 and 96 kHz.</param>
public sealed record DigitalSection(EqualiserSection Section, IReadOnlyList<Biquad> Digital);

/// <summary>The equaliser to type in or to load, and what it changes.</summary>
/// <param name="Sections">Its sections in order.</param>
/// <param name="Before">The bands without it.</param>
/// <param name="After">The bands with it at the same volume setting; the same where there is none.</param>
/// <param name="SeatLossDb">What the seat loses of the everyday level, dB.</param>
/// <param name="AudibleLossDb">What the seat loses of what is audible, dB.</param>
/// <param name="PlainHighPass">The plain high-pass that would do the same; null where none is needed.</param>
/// <param name="Headroom">What amplifier and cone have left without it.</param>
/// <param name="HeadroomWithEqualiser">What they have left with it; null where there is none.</param>
/// <param name="Extension">How much lower the box could play by Linkwitz transform; null where not at all.</param>
public sealed record EqualiserReport(
    IReadOnlyList<DigitalSection> Sections,
    IReadOnlyList<QuietBand> Before,
    IReadOnlyList<QuietBand> After,
    [property: ComputedBy("seat-loss", "quiet.seat_loss_db")] double? SeatLossDb,
    [property: ComputedBy("audible-loss", "quiet.audible_loss_db")] double? AudibleLossDb,
    PlainHighPass? PlainHighPass,
    Headroom? Headroom,
    Headroom? HeadroomWithEqualiser,
    BassExtension? Extension
)
{
    /// <summary>Sampling rates that coefficients are handed out for, Hz.</summary>
    public static IReadOnlyList<double> RatesHz { get; } = [44100, 48000, 96000];

    /// <summary>The report of a neighbour question.</summary>
    /// <param name="quiet">Its answer.</param>
    /// <returns>The report; null where nothing can be said of an equaliser yet.</returns>
    /// <remarks>
    /// Model: the answer's own figures; coefficients by <see cref="Biquad"/>. Validity: as the answer. Source: W3C 2021.
    /// Accuracy: 0.001 dB of SciPy.
    /// </remarks>
    public static EqualiserReport? Of(Quiet quiet)
    {
        ArgumentNullException.ThrowIfNull(quiet);
        return quiet.Equaliser is not { } sections
            ? null
            : new(
                Sections: [.. sections.Select(s => new DigitalSection(s, [.. RatesHz.Select(rate => FilterDesign.Of(s.At(rate)))]))],
                Before: quiet.Bands,
                After: quiet.BandsWithEqualiser ?? quiet.Bands,
                SeatLossDb: quiet.SeatLossDb,
                AudibleLossDb: quiet.AudibleLossDb,
                PlainHighPass: quiet.PlainHighPass,
                Headroom: quiet.Headroom,
                HeadroomWithEqualiser: quiet.HeadroomWithEqualiser,
                Extension: quiet.Extension
            );
    }
}
