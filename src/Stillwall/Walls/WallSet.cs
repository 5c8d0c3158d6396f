using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Shapes;

namespace Stillwall.Walls;

/// <summary>The six walls of a drawn cabinet.</summary>
/// <param name="Core">The set core; null for a single printed wall.</param>
/// <param name="DriverKg">Mass of the driver that hangs in the front, kg; 0 where it is not known.</param>
/// <param name="ConeM2">Area of its cone, m²; 0 where it is not known.</param>
internal sealed record WallSet(CabinetGeometry Geometry, SkinMaterial Skin, CoreMaterial? Core, double DriverKg = 0, double ConeM2 = 0)
{
    /// <summary>How the edges are taken: the softer of the two bounds (our choice).</summary>
    public const PanelEdges Edges = PanelEdges.Supported;

    /// <summary>Layers from the outside in.</summary>
    public IReadOnlyList<Layer> Layers =>
        Core is null || Geometry.Sizes.Core <= 0
            ? [Layer.Of(Geometry.Sizes.Wall.InMetres(), Skin)]
            : [Layer.Of(Geometry.Sizes.OuterSkin.InMetres(), Skin), Layer.Of(Geometry.CoreM, Core), Layer.Of(Geometry.Sizes.InnerSkin.InMetres(), Skin)];

    /// <summary>Whether full-height struts divide the core: their windows are less than half open.</summary>
    public bool IsCut => Geometry.Sleeve.Struts.Count > 0 && Geometry.Struts.OpenFraction < CutCore.OpenWindowsRatio;

    /// <summary>The panels between supports: left, right, top, bottom, front, rear. Braces are elastic lines across the four side walls.</summary>
    public IReadOnlyList<WallPanel> Panels
    {
        get
        {
            var (g, layers) = (Geometry, Layers);
            var deep = g.InsideDepthM;
            double? strut = layers.Count > 1 ? g.ClearDepthM : null;
            var braces = PlateHold.OfBraces(
                g.Sizes.Braces,
                Skin.ModulusPa,
                Skin.DensityKgM3,
                BuildUp.BraceThickness.InMetres(),
                Math.Min(BuildUp.BraceFrame.InMetres(), Math.Min(g.InsideWidthM, g.InsideHeightM) / 3)
            );
            return
            [
                new("left", deep, g.InsideHeightM, layers, strut, braces),
                new("right", deep, g.InsideHeightM, layers, strut, braces),
                new("top", deep, g.InsideWidthM, layers, strut, braces),
                new("bottom", deep, g.InsideWidthM, layers, strut, braces),
                new("front", g.InsideWidthM, g.InsideHeightM, layers, null, Front),
                new("rear", g.InsideWidthM, g.InsideHeightM, layers),
            ];
        }
    }

    // One driver in the middle; several, or one that leaves hardly any front, count as a whole front.
    private PlateHold? Front
    {
        get
        {
            var (s, shorter) = (Geometry.Sizes, Math.Min(Geometry.InsideWidthM, Geometry.InsideHeightM));
            var radius = (s.Cutout / 2).InMetres();
            return s.DriverCount == 1 && radius > 0 && radius <= RoundHole.GreatestRatio * shorter
                ? new PlateHold(0, [], new RoundHole(radius, Math.Clamp((s.BoltCircle / 2).InMetres(), radius, shorter / 2), DriverKg, ConeM2))
                : null;
        }
    }

    /// <summary>Computes the six walls.</summary>
    /// <param name="coneOnAirHz">Resonance of the cone's mass on the air in the box, Hz; without it the cone's reaction on the front is left out.</param>
    /// <returns>The figures in the order of <see cref="Panels"/>; equal panels are computed once.</returns>
    /// <remarks>
    /// Model: first-order shear plates with supported edges, the softer of the two bounds; braces as elastic lines with their mass, not bonded to the wall;
    /// the front with the opening of one driver and its mass on the bolt circle, its frame's stiffness left out; a front of several drivers counts as
    /// whole. Validity: as <see cref="PanelModel"/> and <see cref="WallSound"/>. Source: as those; our choice of edges.
    /// </remarks>
    public IReadOnlyList<WallPanelFigures> Figures(double? boxComplianceM3PerPa, double? crossoverHz, double? coneOnAirHz = null)
    {
        var solved = Panels.DistinctBy(Size).ToDictionary(Size, p => WallPanels.Of(p, Edges, boxComplianceM3PerPa, crossoverHz, coneOnAirHz));
        return [.. Panels.Select(p => solved[Size(p)] with { Panel = p.Panel })];
    }

    /// <summary>The modes of the six walls that give way to the box pressure.</summary>
    /// <returns>Modes of each panel in the order of <see cref="Panels"/>; equal panels are computed once.</returns>
    /// <remarks>Model: modes of <see cref="ShearPlate"/> that are even both ways, edges as in <see cref="Figures"/>. Source: as that.</remarks>
    public IReadOnlyList<IReadOnlyList<WallMotion>> PressureModes(bool bonded)
    {
        var bending = bonded ? Laminate.Bonded(Layers) : Laminate.Slipping(Layers);
        var mass = Laminate.SurfaceDensityKgM2(Layers);
        var solved = Panels.DistinctBy(Size).ToDictionary(Size, p => ShearPlate.PressureModes(bending, mass, p.WidthM, p.HeightM, Edges, p.Hold));
        return [.. Panels.Select(p => solved[Size(p)])];
    }

    /// <summary>The thinnest core with which thin plates as large as the panels ring above a frequency and stay below a level: a quick look.</summary>
    /// <param name="leastModeHz">Least first mode, Hz; null where it is not asked.</param>
    /// <param name="greatestDb">Greatest wall sound relative to the cone, dB.</param>
    /// <returns>The core, m, in whole millimetres; null where even the greatest does not do.</returns>
    /// <remarks>
    /// Model: thin plates with supported edges, bonded. Validity: for advice; shear takes a few per cent more. Source: <see cref="ThinPlate"/>,
    /// <see cref="WallSound"/>, <see cref="LightestCore"/>. Accuracy: 5 % in frequency.
    /// </remarks>
    public double? ThinnestCoreM(double leastM, double greatestM, double? leastModeHz, double greatestDb, double boxComplianceM3PerPa, double crossoverHz)
    {
        var plates = Panels
            .DistinctBy(Size)
            .Select(p => (p.WidthM, Area: p.WidthM * p.HeightM, Factors: ThinPlate.Factors(p.WidthM / p.HeightM, Edges)))
            .ToList();
        return LightestCore.FindM(Passes, leastM, greatestM);

        bool Passes(double coreM)
        {
            var layers = (this with { Geometry = Geometry with { Sizes = Geometry.Sizes with { Core = coreM.InMillimetres() } } }).Layers;
            var (bending, mass) = (Laminate.Bonded(layers), Laminate.SurfaceDensityKgM2(layers));
            return plates.All(p =>
            {
                var mode = p.Factors.FrequencyFactors[0] * Math.Sqrt(bending.StiffnessNm / mass) / (2 * Math.PI * p.WidthM * p.WidthM);
                var motion = new WallMotion(p.Area * p.Factors.MeanFactor * Math.Pow(p.WidthM, 4) / bending.StiffnessNm, mode, bending.LossFactor);
                return !(mode < leastModeHz) && WallSound.Worst([motion], boxComplianceM3PerPa, crossoverHz).WallToConeDb <= greatestDb;
            });
        }
    }

    private static (double, double, double?, int, RoundHole?) Size(WallPanel panel) =>
        (panel.WidthM, panel.HeightM, panel.StrutSpanM, panel.Hold?.Braces.Count ?? 0, panel.Hold?.Hole);
}
