using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>A core that full-height struts cut into pieces: what is left of the wall are strips side by side.</summary>
internal static class CutCore
{
    // βl of a clamped–clamped beam.
    private static readonly double[] ClampedRoots = [4.730040745, 7.853204624, 10.995607838, 14.137165491, 17.278759657, 20.420352246];

    /// <summary>Share of open windows in the struts at and above which the core counts as one (our choice).</summary>
    public const double OpenWindowsRatio = 0.5;

    /// <summary>Frequencies and deflections of the strips that struts leave of a wall.</summary>
    /// <param name="spanM">Clear length of a strip along the struts between the supports at its two ends, m, above 0.</param>
    /// <returns>The strip's figures; the mean is over its length.</returns>
    /// <remarks>
    /// Model: across the struts the cut core hands on no bending, so each strip between two struts is a beam as long as the struts, its layers
    /// slipping: f₁ = (β₁l)²/(2πl²)·√(D/m), clamped centre l⁴/(384D) and mean l⁴/(720D), supported 5l⁴/(384D) and l⁴/(120D) per pascal.
    /// Validity: struts over the full height of the wall, windows less than half open; a lower bound, the skins' hold across the struts is left out.
    /// Source: elementary beam theory; roots as tabulated by Blevins 1979. Accuracy: exact for its model; real walls lie between this and the
    /// slipping panel.
    /// </remarks>
    public static PanelCase Solve(IReadOnlyList<Layer> layers, double spanM, PanelEdges edges)
    {
        Require.Positive(spanM);
        var stiffness = Laminate.Slipping(layers).StiffnessNm;
        var rate = Math.Sqrt(stiffness / Laminate.SurfaceDensityKgM2(layers)) / (2 * Math.PI * spanM * spanM);
        var compliance = Math.Pow(spanM, 4) / stiffness;
        return edges == PanelEdges.Clamped
            ? new PanelCase([.. ClampedRoots.Select(r => r * r * rate)], compliance / 384, compliance / 720)
            : new PanelCase([.. Enumerable.Range(1, ThinPlate.Modes).Select(n => Math.Pow(n * Math.PI, 2) * rate)], 5 * compliance / 384, compliance / 120);
    }
}
