using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;

namespace Stillwall.Parts.Kinds;

/// <summary>A plate of the rear.</summary>
internal abstract class RearFace : Plate
{
    private protected RearFace() { }

    /// <summary>The rear's outer plate: terminal, pour opening, vents, openings for drying, collar, posts, tongue.</summary>
    private protected static Blank DrawOuter(PartJob job) => Outer(job, job.Geometry.Rear.Layout, Tongue(job.Sizes), r => r);

    private protected static PartFeatures Rear(FeatureJob job, bool outer)
    {
        var (s, units) = (job.Sizes, job.Units);
        var layout = job.Job.Geometry.Rear.Layout;
        var plain = Common(job, outer, layout, c => c);
        var edge = Edge(s, outer);
        var notes = plain.Notes.ToList();
        var terminal = layout.Openings.FirstOrDefault(o => o.DiameterMm > 0);
        var round = new List<Circle>();
        if (terminal is not null)
        {
            notes.Add(
                FeatureJob.Round(
                    terminal,
                    [
                        units.Diameter(terminal.DiameterMm),
                        .. outer && s.Core > 0 ? [$"collar {units.Of(BuildUp.TerminalCollar)}, {units.Of(s.Core)} high"] : Array.Empty<string>(),
                    ]
                )
            );
            round.Add(terminal);
        }

        var heights = new List<Length>(terminal is null ? [] : [new(edge, terminal.ZMm, edge, edge)]);
        var across = new List<Length>(plain.Across);
        if (outer)
        {
            foreach (var pour in layout.PourOpenings.Where(p => p.DiameterMm > 0))
            {
                notes.Add(FeatureJob.Round(pour, $"{units.Diameter(pour.DiameterMm)}, to pour"));
                heights.Add(new(0, pour.ZMm, 0, 0));
                round.Add(pour);
            }

            if (layout.Vents is [var vent, ..])
            {
                var shown = layout.Vents.OrderByDescending(v => v.XMm).ThenBy(v => Math.Abs(v.ZMm - s.Height * 0.35)).First();
                notes.Add(new(shown.XMm + vent.DiameterMm / 2, shown.ZMm, SheetUnits.Many(layout.Vents.Count, $"{units.Diameter(vent.DiameterMm)}, vent")));
            }

            if (layout.DryOuts is [var dry, ..])
            {
                var shown = layout.DryOuts.OrderByDescending(d => d.XMm).ThenByDescending(d => d.ZMm).First();
                notes.Add(FeatureJob.Round(shown, SheetUnits.Many(layout.DryOuts.Count, $"{units.Diameter(dry.DiameterMm)}, to dry")));
                round.AddRange(layout.DryOuts);
                var rows = layout.DryOuts.Where(d => Math.Abs(d.XMm - dry.XMm) < 0.01).Select(d => d.ZMm).Order().ToList();
                heights.AddRange(Chain(units, rows, dry.XMm - dry.DiameterMm / 2));
                var columns = layout.DryOuts.Select(d => d.XMm).Distinct().Order().ToList();
                var lowest = layout.DryOuts.Min(d => d.ZMm - d.DiameterMm / 2);
                across.AddRange(columns.Select((x, i) => new Length(i == 0 ? 0 : columns[i - 1], x, i == 0 ? s.Outline.Radius : lowest, lowest)));
            }
        }

        return plain with
        {
            Across = across,
            Up = heights,
            Notes = notes,
            Centres = round,
            CutAt = terminal?.ZMm,
        };
    }

    // From the edge to the first, then from each to the next; many at equal distances as one.
    private static IEnumerable<Length> Chain(SheetUnits units, List<double> places, double edge)
    {
        var (first, pitch) = (new Length(0, places[0], 0, edge), places.Count > 1 ? places[1] - places[0] : 0);
        var even = places.Count > 3 && places.Zip(places.Skip(1)).All(p => Math.Abs(p.Second - p.First - pitch) < 0.01);
        return even
            ? [first, new(places[0], places[^1], edge, edge, $" = {places.Count - 1} × {units.Of(pitch)}")]
            : [first, .. places.Zip(places.Skip(1)).Select(p => new Length(p.First, p.Second, edge, edge))];
    }
}

/// <summary>The rear's outer plate.</summary>
internal sealed class RearOuterPlate : RearFace
{
    /// <inheritdoc/>
    public override string Name => "rear outer plate";

    internal override int Turn => 50;

    internal override Exploding Exploding => new(100);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        if (s.Core > 0)
        {
            yield return new PartDraft(job.Geometry.OuterPlateM3(job.Geometry.Rear), OuterSize(s), () => DrawOuter(job))
            {
                Place = PartJob.RearDown(s.Depth),
                CentreMm = s.Depth - s.OuterSkin / 2,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) =>
        [OuterSeal(job, "rear outer plate and sleeve"), .. OpeningSeals(job.Geometry.Rear.Layout.Openings, "terminal")];

    internal override PartFeatures Features(FeatureJob job) => Rear(job, outer: true);
}

/// <summary>The rear's inner plate: the terminal's opening and four tongues.</summary>
internal sealed class RearInnerPlate : RearFace
{
    /// <inheritdoc/>
    public override string Name => "rear inner plate";

    internal override int Turn => 60;

    internal override Exploding Exploding => new(90);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        if (s.Core > 0)
        {
            yield return new PartDraft(job.Geometry.InnerPlateM3(job.Geometry.Rear), InnerSize(s), () => Inner(job, job.Geometry.Rear.Layout, r => r))
            {
                Place = PartJob.RearDown(s.Depth - s.OuterSkin - s.Core),
                CentreMm = s.Depth - s.Wall,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) => [InnerSeal(job, "rear inner plate and sleeve")];

    internal override PartFeatures Features(FeatureJob job) => Rear(job, outer: false);
}

/// <summary>The rear of a cabinet without a core.</summary>
internal sealed class RearPlate : RearFace
{
    /// <inheritdoc/>
    public override string Name => "rear plate";

    internal override int Turn => 51;

    internal override Exploding Exploding => new(101);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var (s, g) = (job.Sizes, job.Geometry);
        if (s.Core <= 0)
        {
            yield return new PartDraft(g.OuterPlateM3(g.Rear) + g.InnerPlateM3(g.Rear), OuterSize(s), () => DrawOuter(job))
            {
                Place = PartJob.RearDown(s.Depth),
                CentreMm = s.Depth - s.Wall / 2,
            };
        }
    }

    internal override IEnumerable<SealedJoint> Sealed(PartJob job) =>
        [OuterSeal(job, "rear plate and sleeve"), .. OpeningSeals(job.Geometry.Rear.Layout.Openings, "terminal")];

    internal override PartFeatures Features(FeatureJob job) => Rear(job, outer: true);
}
