using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>Kinds of a second-order section.</summary>
public enum SectionKind
{
    /// <summary>Lets high frequencies pass.</summary>
    Highpass,

    /// <summary>Lets low frequencies pass.</summary>
    Lowpass,

    /// <summary>Lifts or cuts about a middle.</summary>
    Peaking,

    /// <summary>Lifts or cuts below a corner.</summary>
    Lowshelf,

    /// <summary>Lifts or cuts above a corner.</summary>
    Highshelf,

    /// <summary>Linkwitz transform: makes a box's resonance and Q others.</summary>
    Transform,
}

/// <summary>What one equaliser section is asked to be.</summary>
public sealed record FilterInputs
{
    /// <summary>Kind of section.</summary>
    public required SectionKind Kind { get; init; }

    /// <summary>Corner or middle, Hz; for <c>transform</c> the box as it is.</summary>
    public required double F0Hz { get; init; }

    /// <summary>Q; null takes 1/√2, for shelves that of the slope.</summary>
    public double? Q { get; init; }

    /// <summary>Gain of a peak or shelf, dB.</summary>
    public double GainDb { get; init; }

    /// <summary>Slope of a shelf, where no Q is given.</summary>
    public double SlopeFactor { get; init; } = 1;

    /// <summary>Corner as wished, Hz; <c>transform</c> needs it.</summary>
    public double? FpHz { get; init; }

    /// <summary>Q as wished, for <c>transform</c>.</summary>
    public double PoleQ { get; init; } = Analogue.ButterworthQ;

    /// <summary>Sampling rate, Hz.</summary>
    public double RateHz { get; init; } = 48000;
}

/// <summary>Makes an equaliser section from its name and figures.</summary>
public static class FilterDesign
{
    /// <summary>Names of the kinds of section.</summary>
    public static IReadOnlyList<string> Kinds { get; } = EnumWords.All(typeof(SectionKind), ' ');

    /// <summary>The section that is asked for.</summary>
    /// <param name="inputs">Kind and figures.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentException">An unknown kind, or <c>transform</c> without the wished corner.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range.</exception>
    /// <remarks>
    /// Model: one of <see cref="Biquad"/>'s sections. Validity: as there. Source: W3C 2021. Accuracy: as there.
    /// </remarks>
    public static Biquad Of(FilterInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var q = inputs.Q ?? Analogue.ButterworthQ;
        return inputs.Kind switch
        {
            SectionKind.Highpass => Biquad.HighPass(inputs.F0Hz, q, inputs.RateHz),
            SectionKind.Lowpass => Biquad.LowPass(inputs.F0Hz, q, inputs.RateHz),
            SectionKind.Peaking => Biquad.Peaking(inputs.F0Hz, inputs.GainDb, q, inputs.RateHz),
            SectionKind.Lowshelf => Biquad.LowShelf(inputs.F0Hz, inputs.GainDb, ShelfQ(inputs), inputs.RateHz),
            SectionKind.Highshelf => Biquad.HighShelf(inputs.F0Hz, inputs.GainDb, ShelfQ(inputs), inputs.RateHz),
            SectionKind.Transform when inputs.FpHz is { } fpHz => Biquad.Transform(inputs.F0Hz, q, fpHz, inputs.PoleQ, inputs.RateHz),
            SectionKind.Transform => throw new ArgumentException("transform needs fp, the corner as wished; accepted: a frequency above 0 Hz", nameof(inputs)),
            _ => throw new ArgumentException($"{inputs.Kind} is no kind of section; accepted: {string.Join(", ", Kinds)}", nameof(inputs)),
        };
    }

    private static double ShelfQ(FilterInputs inputs) => inputs.Q ?? Biquad.ShelfQ(inputs.GainDb, inputs.SlopeFactor);
}
