using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>What one sheet shows of the parts: equal ones once, before they are split for the printer.</summary>
internal sealed record SheetPart(PartKind Kind, IReadOnlyList<DrawnPart> Parts, IReadOnlyList<string> Printed)
{
    /// <summary>Whether the printer makes them in pieces.</summary>
    internal bool IsSplit => Printed.Count > Parts.Count;

    private readonly Lazy<Solid> tidy = new(() => TidySolid.Of(Parts[0].Solid));

    internal Solid Tidy => tidy.Value;

    /// <summary>Box round it as printed: left, front, right, rear and height, mm.</summary>
    internal (double Left, double Bottom, double Right, double Top) Extent => Tidy.AddedExtent!.Value;

    internal double HeightMm => Tidy.Heights!.Value.Top;
}

/// <summary>What the sheets of one project are drawn from.</summary>
internal sealed class SheetJob
{
    internal SheetJob(Facts facts, CabinetGeometry geometry)
    {
        (Facts, Geometry) = (facts, geometry);
        Drawing = new PartJob(geometry, facts.Project.Cabinet!, facts.Sheet, null);
        var printed = facts.Parts.ToLookup(p => p.Kind, p => p.Name);
        Parts = [.. PartDrawings.Of(Drawing).GroupBy(p => p.Kind).Select(g => new SheetPart(g.Key, [.. g], [.. printed[g.Key]]))];
        Units = new SheetUnits(facts.Show.Inch);
    }

    internal Facts Facts { get; }

    internal CabinetGeometry Geometry { get; }

    internal CabinetSizes Sizes => Geometry.Sizes;

    internal PartJob Drawing { get; }

    internal IReadOnlyList<SheetPart> Parts { get; }

    internal SheetUnits Units { get; }

    /// <summary>Parts in their places, with those they are equal to.</summary>
    internal IEnumerable<(SheetPart Equal, DrawnPart Part)> Placed => Parts.SelectMany(s => s.Parts.Where(p => p.Place is not null).Select(p => (s, p)));

    /// <summary>Surface of a part in its place, mm.</summary>
    internal static IndexedMesh MeshOf(SheetPart equal, DrawnPart part) => SolidMesh.Of(equal.Tidy).Mesh.Placed(part.Place!);

    /// <summary>Title block of a sheet that is not of one part.</summary>
    internal TitleBlockText Block(string title, string kind, double scale, string material, string mass) =>
        new(
            Project: Facts.Project.Name,
            Title: title,
            Kind: kind,
            Material: material,
            Mass: mass,
            Scale: Sheet.NameOf(scale),
            Units: Units.Rule,
            Tolerance: "± 0.3 mm, over 100 mm ± 0.3 % (our choice)"
        );
}

/// <summary>A sheet before the sheets are counted.</summary>
internal sealed record SheetDraft(
    string Name,
    string Title,
    string Description,
    double WidthMm,
    double HeightMm,
    double ScaleRatio,
    IReadOnlyList<string> Parts,
    IReadOnlyList<SheetMark> Marks,
    TitleBlockText Block
)
{
    /// <summary>Kind of part that it is of; null for a sheet of several.</summary>
    internal PartKind? Kind { get; init; }

    /// <summary>ISO 216: A4 and A3 lying, mm.</summary>
    internal static (double Width, double Height) A4 => (297, 210);

    internal static (double Width, double Height) A3 => (420, 297);

    internal static SheetBox FrameOf((double Width, double Height) paper) =>
        new(Sheet.Filing, Sheet.Margin, paper.Width - Sheet.Margin, paper.Height - Sheet.Margin);
}
