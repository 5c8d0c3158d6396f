using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>What one state of a wall's bond comes to.</summary>
/// <param name="FirstModeHz">First resonance, Hz.</param>
/// <param name="WallToConeDb">
/// Worst volume velocity of the panel over that of the cone from 20 Hz to twice the crossover, dB; null where box or crossover is unknown.
/// </param>
public sealed record WallCase(
    [property: ComputedBy("panel-modes", "walls[].width_m", "walls[].height_m")] double FirstModeHz,
    [property: ComputedBy("wall-to-cone", "walls[].width_m", "walls[].height_m", "box.effective_volume_m3")] double? WallToConeDb
);

/// <summary>One panel of the cabinet as the walls block of the appraisal shows it.</summary>
/// <param name="Panel">Which: <c>left</c>, <c>right</c>, <c>top</c>, <c>bottom</c>, <c>front</c> or <c>rear</c>.</param>
/// <param name="WidthM">Clear span between supports along the first side, m.</param>
/// <param name="HeightM">Clear span between supports along the second side, m.</param>
/// <param name="Bonded">Layers that act as one.</param>
/// <param name="Slipping">Layers that slip on one another.</param>
/// <param name="CutCore">Strips between full-height struts; null where no strut cuts the core.</param>
public sealed record WallPanelFigures(
    string Panel,
    [property: ComputedBy("clear-span")] double WidthM,
    [property: ComputedBy("clear-span")] double HeightM,
    WallCase Bonded,
    WallCase Slipping,
    WallCase? CutCore
)
{
    /// <summary>The cases that apply, by their names in the machine-readable form.</summary>
    /// <param name="keyed">Whether the core is keyed to both skins, so that slipping does not apply.</param>
    /// <returns>One to three cases.</returns>
    public IEnumerable<(string Key, WallCase Figures)> Applying(bool keyed)
    {
        yield return ("bonded", Bonded);
        if (!keyed)
        {
            yield return ("slipping", Slipping);
        }

        if (CutCore is not null)
        {
            yield return ("cut_core", CutCore);
        }
    }
}

/// <summary>One panel to be looked at.</summary>
/// <param name="Panel">Which.</param>
/// <param name="WidthM">Clear width, m.</param>
/// <param name="HeightM">Clear height, m.</param>
/// <param name="Layers">Layers from the outside in.</param>
/// <param name="StrutSpanM">
/// Clear length, from brace to brace, of struts that cut the core over its full height, m; null where none do or their windows are at least half
/// open.
/// </param>
/// <param name="Hold">What holds it besides its edges; nothing where null.</param>
public sealed record WallPanel(string Panel, double WidthM, double HeightM, IReadOnlyList<Layer> Layers, double? StrutSpanM = null, PlateHold? Hold = null);

/// <summary>The cabinet's panels: resonance and sound of each, and of all together.</summary>
public static class WallPanels
{
    /// <summary>Resonance and sound of one panel in every state of its bond.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="edges">
    /// How it is held; a real edge lies between the two, and walls that meet in a cast corner and bulge alike hold one another as if clamped.
    /// </param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, or null where it is unknown.</param>
    /// <param name="crossoverHz">Crossover, Hz, or null where it is unknown.</param>
    /// <param name="coneOnAirHz">Resonance of the cone's mass on the enclosed air, Hz; without it the cone's reaction is left out.</param>
    /// <returns>The figures; a panel with an opening by all its modes.</returns>
    /// <exception cref="ArgumentException">A figure out of range.</exception>
    /// <remarks>
    /// Model: <see cref="PanelModel"/>, <see cref="CutCore"/> and <see cref="WallSound"/>, loss factor from the layers. Validity: as those. Source:
    /// as those. Accuracy: as those.
    /// </remarks>
    public static WallPanelFigures Of(WallPanel panel, PanelEdges edges, double? boxComplianceM3PerPa, double? crossoverHz, double? coneOnAirHz = null)
    {
        ArgumentNullException.ThrowIfNull(panel);
        var (bonded, slipping, mass) = (Laminate.Bonded(panel.Layers), Laminate.Slipping(panel.Layers), Laminate.SurfaceDensityKgM2(panel.Layers));
        var area = panel.WidthM * panel.HeightM;
        WallCase Case(params IReadOnlyList<WallMotion> modes) =>
            new(
                modes[0].FirstModeHz,
                boxComplianceM3PerPa is { } box && crossoverHz is { } cross ? WallSound.Worst(modes, box, cross, coneOnAirHz).WallToConeDb : null
            );
        var opened = panel.Hold?.Hole is null ? null : ShearPlate.PressureModes([bonded, slipping], mass, panel.WidthM, panel.HeightM, edges, panel.Hold);
        WallCase Plate(BendingStiffness stiffness)
        {
            var (mode, mean) = ShearPlate.First(stiffness, mass, panel.WidthM, panel.HeightM, edges, panel.Hold);
            return Case(new WallMotion(area * mean, mode, stiffness.LossFactor));
        }

        return new WallPanelFigures(
            panel.Panel,
            panel.WidthM,
            panel.HeightM,
            opened is null ? Plate(bonded) : Case(opened[0]),
            opened is null ? Plate(slipping) : Case(opened[1]),
            panel.StrutSpanM is { } span ? Case(WallMotion.Of(CutCore.Solve(panel.Layers, span, edges), area, slipping.LossFactor)) : null
        );
    }

    /// <summary>The worst sound of all panels together, each bonded or each slipping.</summary>
    /// <param name="panels">The panels, at least one.</param>
    /// <param name="edges">How they are held.</param>
    /// <param name="bonded">Whether the layers act as one.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa.</param>
    /// <param name="crossoverHz">Crossover, Hz.</param>
    /// <returns>The worst level and its frequency.</returns>
    /// <exception cref="ArgumentException">No panels, or a figure out of range.</exception>
    /// <remarks>
    /// Model: <see cref="WallSound.Worst"/> over all panels. Validity: as that. Source: as that. Accuracy: as that.
    /// </remarks>
    public static WorstWallSound Total(IReadOnlyList<WallPanel> panels, PanelEdges edges, bool bonded, double boxComplianceM3PerPa, double crossoverHz)
    {
        ArgumentNullException.ThrowIfNull(panels);
        var motions = panels.Select(p =>
        {
            var bending = bonded ? Laminate.Bonded(p.Layers) : Laminate.Slipping(p.Layers);
            var (mode, mean) = ShearPlate.First(bending, Laminate.SurfaceDensityKgM2(p.Layers), p.WidthM, p.HeightM, edges, p.Hold);
            return new WallMotion(p.WidthM * p.HeightM * mean, mode, bending.LossFactor);
        });
        return WallSound.Worst([.. motions], boxComplianceM3PerPa, crossoverHz);
    }
}
