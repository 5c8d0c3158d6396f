using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>The ring over a driver's screws, visible face down, with pockets for their heads.</summary>
internal sealed class TrimRing : PartKind
{
    // Heads are up to twice the thread wide (our choice).
    private const double PocketDepth = BuildUp.TrimThickness - 1;

    /// <inheritdoc/>
    public override string Name => "trim ring";

    internal override int Turn => 90;

    internal override Exploding Exploding => new(10);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var driver = DriverBody.Of(job.Sheet);
        var (outer, inner) = (driver.Flange, driver.Cutout);
        if (inner <= 0 || outer <= inner)
        {
            return [];
        }

        var (s, pockets) = (job.Sizes, Pockets(job.Sizes));
        var volume =
            Math.PI / 4 * (outer * outer - inner * inner) * BuildUp.TrimThickness - pockets.Sum(p => Math.PI / 4 * p.DiameterMm * p.DiameterMm) * PocketDepth;
        var front = s.Sunk - driver.FlangeThickness - BuildUp.TrimThickness;
        return PlateLayout
            .DriverCentres(s)
            .Select(c => new PartDraft(volume.InCubicMetres(), new PartSize(outer, outer, BuildUp.TrimThickness), () => Draw(outer, inner, pockets))
            {
                Place = Placement.AsPrinted.TurnedAboutX(1).TurnedAboutZ(2).Shifted(c.X, front, c.Z),
                CentreMm = front + BuildUp.TrimThickness / 2,
            });
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var (s, units, pockets) = (job.Sizes, job.Units, Pockets(job.Sizes));
        var driver = DriverBody.Of(job.Job.Sheet);
        var low = pockets.OrderByDescending(c => c.XMm).ThenBy(c => c.ZMm).FirstOrDefault();
        return new PartFeatures
        {
            Notes =
            [
                FeatureJob.Round(new Circle(0, 0, driver.Flange), units.Diameter(driver.Flange)),
                FeatureJob.Round(new Circle(0, 0, driver.Cutout), units.Diameter(driver.Cutout)),
                .. low is null
                    ? Array.Empty<Callout>()
                    :
                    [
                        new Callout(
                            low.XMm + low.DiameterMm / 2,
                            low.ZMm,
                            SheetUnits.Many(pockets.Count, $"{units.Diameter(low.DiameterMm)} on {units.Diameter(s.BoltCircle)},"),
                            $"{units.Of(PocketDepth)} deep"
                        ),
                    ],
            ],
            Centres = [new Circle(0, 0, driver.Flange), .. pockets],
            IsRound = true,
            BoltCircles = low is null ? [] : [new Circle(0, 0, s.BoltCircle)],
        };
    }

    private static IReadOnlyList<Circle> Pockets(CabinetSizes s) =>
        s is not { Bolt: > 0, BoltCircle: > 0 }
            ? []
            :
            [
                .. Enumerable
                    .Range(0, s.Bolts)
                    .Select(i => 2 * Math.PI * (i + 0.5) / s.Bolts)
                    .Select(angle => new Circle(-s.BoltCircle / 2 * Math.Cos(angle), s.BoltCircle / 2 * Math.Sin(angle), 2 * s.Bolt + 1)),
            ];

    private static Blank Draw(double outer, double inner, IReadOnlyList<Circle> pockets)
    {
        var (ring, heads) = (Region.Disc(0, 0, outer).Cut(Region.Disc(0, 0, inner)), Plate.Discs(pockets));
        var solid = Solid.Empty.Add(ring, 0, BuildUp.TrimThickness).Cut(heads, BuildUp.TrimThickness - PocketDepth, BuildUp.TrimThickness);
        return Blank.NamedOnTop(solid, ring.Cut(heads), BuildUp.TrimThickness);
    }
}
