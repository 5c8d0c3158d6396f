using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A plate of the front.</summary>
internal abstract class FrontFace : Plate
{
    private protected FrontFace() { }

    /// <summary>The front's outer plate: openings, recesses for the flanges, collars, bosses with their holes, posts, tongue.</summary>
    private protected static Blank DrawOuter(PartJob job)
    {
        var (s, layout) = (job.Sizes, job.Geometry.Front.Layout);
        var plate = Outer(job, layout, FrontTongue(s).Cut(Discs(layout.Bosses.Select(b => b.Grown(BuildUp.TongueGap)))), job.Turned);
        return plate with
        {
            Solid = plate.Solid.Cut(job.Turned(Discs(layout.Recesses)), 0, s.Sunk).Cut(job.Turned(Discs(layout.Pilots)), 0, job.Geometry.PilotDepth),
        };
    }

    // At the front the struts' feet stand in the way.
    private static Region FrontTongue(CabinetSizes sizes)
    {
        if (!sizes.HasTongue)
        {
            return Region.Empty;
        }

        var (pen, half) = (SleeveSection.Pen(sizes), sizes.Web / 2 + BuildUp.TongueGap);
        return Tongue(sizes).Cut(Region.JoinAll(pen.OnBothSides(SleeveSection.StrutPlaces(sizes).Places, p => [pen.Block(p, -half, half, 0, sizes.Core)])));
    }

    private protected static PartFeatures Front(FeatureJob job, bool outer)
    {
        var (s, units, edge) = (job.Sizes, job.Units, Edge(job.Sizes, outer));
        Circle Mirrored(Circle c) => c with { XMm = s.Width - c.XMm };
        var layout = job.Job.Geometry.Front.Layout;
        var openings = layout.Openings.Where(o => o.DiameterMm > 0).Select(Mirrored).ToList();
        var (bosses, pilots) = (layout.Bosses.Select(Mirrored).ToList(), layout.Pilots.Select(Mirrored).ToList());
        var plain = Common(job, outer, layout, Mirrored);
        var single = s.Core <= 0;
        List<Callout> notes = [.. plain.Notes];
        if (openings is [var opening, ..])
        {
            notes.Add(
                FeatureJob.Round(
                    opening,
                    [
                        SheetUnits.Many(openings.Count, units.Diameter(opening.DiameterMm)),
                        .. outer && !single ? [$"collar {units.Of(BuildUp.DriverCollar)}, {units.Of(s.Core)} high"] : Array.Empty<string>(),
                    ]
                )
            );
        }

        if (outer && bosses.Count > 0)
        {
            var high = bosses.OrderByDescending(b => b.XMm > s.Width / 2).ThenBy(b => Math.Abs(b.ZMm - s.Height * 0.3)).First();
            notes.Add(
                new(
                    high.XMm + BuildUp.Boss / 2,
                    high.ZMm,
                    SheetUnits.Many(bosses.Count, $"{units.Diameter(BuildUp.Boss)} on {units.Diameter(s.BoltCircle)},"),
                    pilots.Count > 0
                        ? $"hole {units.Diameter(pilots[0].DiameterMm)}, {units.Of(job.Job.Geometry.PilotDepth - s.Sunk)} deep"
                        : "no hole: bolt not stated"
                )
            );
        }

        var recesses = outer ? layout.Recesses.Select(Mirrored).ToList() : [];
        if (recesses is [var recess, ..])
        {
            const double above = 10 * Math.PI / 180;
            notes.Add(
                new(
                    recess.XMm + recess.DiameterMm / 2 * Math.Cos(above),
                    recess.ZMm + recess.DiameterMm / 2 * Math.Sin(above),
                    SheetUnits.Many(recesses.Count, $"recess {units.Diameter(recess.DiameterMm)},"),
                    $"{units.Of(s.Sunk)} deep, in the face"
                )
            );
        }

        return plain with
        {
            Across = [.. openings.Select(o => o.XMm).Distinct().Select(x => new Length(edge, x, s.Outline.Radius, edge))],
            Up = [.. openings.Select(o => o.ZMm).Distinct().Select(z => new Length(edge, z, edge, edge))],
            SectionUp = [.. plain.SectionUp, .. recesses.Take(1).Select(r => new Length(0, s.Sunk, 0, r.XMm - r.DiameterMm / 2))],
            Notes = notes,
            Centres = [.. openings, .. outer ? pilots : []],
            Hidden = outer ? [.. pilots, .. recesses] : [],
            BoltCircles = outer && bosses.Count > 0 ? [.. openings.Select(o => o with { DiameterMm = s.BoltCircle })] : [],
            CutAt = openings.Count > 0 ? openings[0].ZMm : null,
        };
    }
}

/// <summary>The front's outer plate.</summary>
internal sealed class FrontOuterPlate : FrontFace
{
    /// <inheritdoc/>
    public override string Name => "front outer plate";

    internal override int Turn => 30;

    internal override Exploding Exploding => new(20);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        if (job.Sizes.Core > 0)
        {
            yield return new PartDraft(job.Geometry.OuterPlateM3(job.Geometry.Front), OuterSize(job.Sizes), () => DrawOuter(job))
            {
                Place = job.FrontDown(0),
                CentreMm = job.Sizes.OuterSkin / 2,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) =>
        [OuterSeal(job, "front outer plate and sleeve"), .. OpeningSeals(job.Geometry.Front.Layout.Openings, "driver")];

    internal override PartFeatures Features(FeatureJob job) => Front(job, outer: true);
}

/// <summary>The front's inner plate: openings, and four tongues that stand inside the inner sleeve.</summary>
internal sealed class FrontInnerPlate : FrontFace
{
    /// <inheritdoc/>
    public override string Name => "front inner plate";

    internal override int Turn => 40;

    internal override Exploding Exploding => new(40);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        if (s.Core > 0)
        {
            yield return new PartDraft(
                job.Geometry.InnerPlateM3(job.Geometry.Front),
                InnerSize(s),
                () => Inner(job, job.Geometry.Front.Layout, job.Turned)
            )
            {
                Place = job.FrontDown(s.OuterSkin + s.Core),
                CentreMm = s.Wall,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) => [InnerSeal(job, "front inner plate and sleeve")];

    internal override PartFeatures Features(FeatureJob job) => Front(job, outer: false);
}

/// <summary>The front of a cabinet without a core.</summary>
internal sealed class FrontPlate : FrontFace
{
    /// <inheritdoc/>
    public override string Name => "front plate";

    internal override int Turn => 31;

    internal override Exploding Exploding => new(21);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var (s, g) = (job.Sizes, job.Geometry);
        if (s.Core <= 0)
        {
            yield return new PartDraft(g.OuterPlateM3(g.Front) + g.InnerPlateM3(g.Front), OuterSize(s), () => DrawOuter(job))
            {
                Place = job.FrontDown(0),
                CentreMm = s.Wall / 2,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) =>
        [OuterSeal(job, "front plate and sleeve"), .. OpeningSeals(job.Geometry.Front.Layout.Openings, "driver")];

    internal override PartFeatures Features(FeatureJob job) => Front(job, outer: true);
}
