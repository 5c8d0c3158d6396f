using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The braces of a cabinet: the one place that knows where they stand and how they are shaped.</summary>
/// <param name="ClearM">Clear depth from one to the next, or from plate to plate without braces, m.</param>
/// <param name="FrontsMm">Where each begins behind the front ends of the inner sleeve, mm: bays of equal clear depth.</param>
/// <param name="Frame">Outer edge of a brace, which slides into the inner sleeve with half the joints' clearance on either side.</param>
internal sealed record Bracing(double ClearM, IReadOnlyList<double> FrontsMm, RoundedFrame Frame, RoundedFrame Window)
{
    /// <summary>The braces of a cabinet.</summary>
    /// <param name="sizes">Its sizes; the walls must leave an inside.</param>
    /// <returns>Their places and their shape, of which also a cabinet without braces has one.</returns>
    /// <remarks>Source: our choice. Accuracy: exact for the drawing.</remarks>
    public static Bracing Of(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var inside = sizes.Outline.Inset(sizes.Wall);
        var clear = ((sizes.Depth - 2 * sizes.Wall).InMetres() - (sizes.Braces * BuildUp.BraceThickness).InMetres()) / (sizes.Braces + 1);
        return new Bracing(
            clear,
            [.. Enumerable.Range(0, sizes.Braces).Select(i => clear.InMillimetres() * (i + 1) + BuildUp.BraceThickness * i)],
            inside.Inset(sizes.JointClearance / 2),
            inside.Inset(Math.Min(BuildUp.BraceFrame, Math.Min(inside.Width, inside.Height) / 3))
        );
    }
}
