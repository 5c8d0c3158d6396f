using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Walls;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.WallChoices;

/// <summary>A wall whose core is one cell of a sheet gyroid in place of struts and keys; each figure is computed where it is asked for.</summary>
internal sealed class Lattice
{
    private readonly Facts facts;
    private readonly WallSet set;
    private readonly CabinetGeometry geometry;
    private readonly double sheetM,
        share;
    private readonly Lazy<IReadOnlyList<WallPanelFigures>> panels;

    private Lattice(Facts facts, WallSet set, CabinetGeometry geometry, SkinMaterial skin, CoreMaterial core, bool isCast)
    {
        (this.facts, this.set, this.geometry, Skin, IsCast) = (facts, set, geometry, skin, isCast);
        sheetM = Math.Min(2 * facts.Project.Brief.Printer?.NozzleM ?? WallKinds.UsualSheetM, 0.3 * geometry.CoreM);
        share = Gyroid.SolidShare(geometry.CoreM, sheetM);
        var middle = isCast ? Gyroid.Filled(geometry.CoreM, share, skin, core) : Gyroid.Empty(geometry.CoreM, share, skin);
        Layers = [set.Layers[0], middle, set.Layers[2]];
        panels = new(() =>
            [
                .. set.Panels.Select(p =>
                    WallPanels.Of(
                        p with
                        {
                            Layers = Layers,
                            StrutSpanM = null,
                        },
                        WallSet.Edges,
                        facts.BoxCompliance,
                        facts.Project.Brief.Aim?.CrossoverHz,
                        facts.ConeOnAirHz
                    )
                ),
            ]
        );
    }

    internal static Lattice? Of(Facts f, bool isCast) =>
        f is { WallsDrawn: { } set, Skin: { } skin, Core: { } core, Geometry: { } g } ? new Lattice(f, set, g, skin, core, isCast) : null;

    internal SkinMaterial Skin { get; }

    internal bool IsCast { get; }

    internal double WallM => geometry.Sizes.Wall.InMetres();

    internal double StiffnessNm => Laminate.Bonded(Layers).StiffnessNm;

    internal double FirstModeHz => panels.Value.Min(p => p.Bonded.FirstModeHz);

    internal double? WallToConeDb => panels.Value.Max(p => p.Bonded.WallToConeDb);

    internal double? FinishedKg => facts.Mass.FinishedKg + PlasticKg + CastOverDrawn * facts.Pour.DryInCabinetKg;

    internal double TotalPrice => facts.Cost.TotalPrice + Priced("filament", PlasticKg / facts.Print.FilamentKg) + Priced("cast powder", CastOverDrawn);

    internal double? PrintSeconds => facts.Print.PrintSeconds + MorePlasticM3.InCubicMillimetres() / facts.Project.Brief.Printer?.Flow;

    internal double? PassageM => IsCast ? Gyroid.PassageM(geometry.CoreM, sheetM) : null;

    internal bool? CanBePoured => PassageM is { } passage ? passage >= Pours.Flow.WantedPassageM(facts.Limits.PassageM, facts.GrainM) : null;

    private IReadOnlyList<Layer> Layers { get; }

    private double SpaceM3 => geometry.CavityM3 + geometry.StandingM3;

    private double MorePlasticM3 => share * SpaceM3 - geometry.StandingM3;

    private double PlasticKg => MorePlasticM3 * Skin.DensityKgM3;

    private double CastOverDrawn => (IsCast ? (1 - share) * SpaceM3 : 0) / geometry.CavityM3 - 1;

    /// <summary>One figure by the name that it has among the kinds; null where it is not known.</summary>
    internal double? Figure(string property) =>
        property switch
        {
            nameof(WallKind.WallM) => WallM,
            nameof(WallKind.StiffnessNm) => StiffnessNm,
            nameof(WallKind.FirstModeHz) => FirstModeHz,
            nameof(WallKind.WallToConeDb) => WallToConeDb,
            nameof(WallKind.FinishedKg) => FinishedKg,
            nameof(WallKind.NetVolumeM3) => facts.NetVolumeM3,
            nameof(WallKind.TotalPrice) => TotalPrice,
            nameof(WallKind.PrintSeconds) => PrintSeconds,
            nameof(WallKind.PassageM) => PassageM,
            _ => null,
        };

    private double Priced(string item, double? ratio) => ratio * facts.Supplies.FirstOrDefault(l => l.Item == item)?.Price ?? 0;
}
