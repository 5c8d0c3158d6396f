using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A tray for the bar that is tapped.</summary>
internal sealed class TestBarMould : PartKind
{
    /// <summary>Size of the test bar that the last batch also fills, m: length, width, thickness (our choice).</summary>
    public static IReadOnlyList<double> BarM { get; } = [0.160, 0.040, 0.020];

    /// <summary>Volume of the test bar, m³.</summary>
    public static double BarM3 { get; } = BarM[0] * BarM[1] * BarM[2];

    internal const double Wall = 2;

    private static double Length => BarM[0].InMillimetres();

    private static double Width => BarM[1].InMillimetres();

    private static double Deep => BarM[2].InMillimetres();

    /// <inheritdoc/>
    public override string Name => "test-bar mould";

    internal override int Turn => 120;

    internal override PrintedFor For => PrintedFor.TestBar;

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        if (job.Sizes.Core > 0)
        {
            var size = new PartSize(Length + 2 * Wall, Width + 2 * Wall, Deep + Wall);
            yield return new PartDraft((size.X * size.Y * size.Z - Length * Width * Deep).InCubicMetres(), size, () => Draw(size));
        }
    }

    internal override PartFeatures Features(FeatureJob job) =>
        new()
        {
            SectionAcross = [new(Wall, Wall + Length, 0, 0)],
            Up = [new(Wall, Wall + Width, 0, 0)],
            SectionUp = [new(Wall, Wall + Deep, 0, 0)],
        };

    private static Blank Draw(PartSize size)
    {
        var hollow = Region.RoundedRectangle(Wall, Wall, Wall + Length, Wall + Width, 0);
        var tray = Solid.Empty.Add(Region.RoundedRectangle(0, 0, size.X, size.Y, 0), 0, size.Z).Cut(hollow, Wall, size.Z);
        return Blank.NamedOnTop(tray, hollow, Wall);
    }
}
