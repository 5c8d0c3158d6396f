using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A strip of 100 mm for shrinkage, with five holes in which the peg shows the clearance that fits: 0.1 to 0.5 mm all round.</summary>
internal sealed class CalibrationStrip : PartKind
{
    private const double Length = 100,
        Width = 20,
        Step = 0.1;

    private const int Holes = 5;

    /// <summary>Thickness of the strip and of the peg's foot, mm.</summary>
    internal const double Thickness = 4;

    /// <inheritdoc/>
    public override string Name => "calibration strip";

    internal override int Turn => 140;

    internal override PrintedFor For => PrintedFor.Calibration;

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        if (job.Sizes.Core > 0)
        {
            var area = Length * Width - Sides.Sum(side => side * side);
            yield return new PartDraft((area * Thickness).InCubicMetres(), new PartSize(Length, Width, Thickness), Draw);
        }
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var sides = Sides.ToList();
        return new PartFeatures
        {
            Notes =
            [
                new(
                    At(3) + sides[3] / 2,
                    Width / 2 + 2,
                    "holes from the left, square:",
                    string.Join(", ", sides.Select(job.Units.Of))
                ),
            ],
            Across = [new(At(0), At(1), At(0) - sides[0] / 2, At(0) - sides[1] / 2)],
        };
    }

    private static IEnumerable<double> Sides => Enumerable.Range(1, Holes).Select(i => CalibrationPeg.Side + 2 * Step * i);

    private static double At(int hole) => Length * (hole + 0.5) / Holes;

    private static Blank Draw()
    {
        var holes = Sides.Select(
            (side, i) => Region.RoundedRectangle(At(i) - side / 2, (Width - side) / 2, At(i) + side / 2, (Width + side) / 2, 0)
        );
        var strip = Region.RoundedRectangle(0, 0, Length, Width, 0).Cut(Region.JoinAll(holes));
        return Blank.NamedOnTop(Solid.Empty.Add(strip, 0, Thickness), strip, Thickness);
    }
}
