using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>
/// A ring in a groove of the outer sleeve, open in the middle of its lower side so that it springs in; one that has to be split for the printer needs no
/// gap.
/// </summary>
internal sealed class AccentRing : PartKind
{
    /// <inheritdoc/>
    public override string Name => "accent ring";

    internal override int Turn => 100;

    internal override Exploding Exploding => new(50) { OneByOne = true, Room = 14 };

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        var open =
            job.Geometry.AccentGrooveM3 * BuildUp.AccentRingWidth / BuildUp.AccentWidth
            - (s.AccentGap * s.OuterSkin / 2 * BuildUp.AccentRingWidth).InCubicMetres();
        return Places(job)
            .Select(at => s.OuterSkin + at + BuildUp.SlotGap)
            .Select(front => new PartDraft(open, SizeOf(s), () => Draw(job))
            {
                Place = job.FrontDown(front),
                CentreMm = front + BuildUp.AccentRingWidth / 2,
            });
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var (s, units) = (job.Sizes, job.Units);
        return new PartFeatures
        {
            Notes =
            [
                job.Corner(),
                new(s.Width - s.OuterSkin / 4, s.Height * 0.4, $"{units.Of(s.OuterSkin / 2)} thick"),
                .. job.IsSplit
                    ? Array.Empty<Callout>()
                    : [new Callout(s.Width / 2 + s.AccentGap / 2, s.OuterSkin / 4, $"gap {units.Of(s.AccentGap)}")],
            ],
        };
    }

    /// <summary>How many rings there are.</summary>
    internal static int Count(PartJob job) => job.Sizes.OuterSkin > 0 ? job.Cabinet.Accents?.Rings ?? 0 : 0;

    /// <summary>Where the grooves begin, from the front end of the outer sleeve, mm: each distance is the one before it times the stated ratio.</summary>
    /// <remarks>Source: geometry.</remarks>
    internal static IReadOnlyList<double> Places(PartJob job)
    {
        if (Count(job) is not (> 0 and var rings))
        {
            return [];
        }

        var free = job.Geometry.OuterSleeveLengthM.InMillimetres() - rings * BuildUp.AccentWidth;
        var distances = Enumerable.Range(0, rings + 1).Select(i => Math.Pow(job.Cabinet.Accents!.Ratio, i)).ToList();
        var unit = free / distances.Sum();
        return [.. Enumerable.Range(0, rings).Select(i => unit * distances.Take(i + 1).Sum() + i * BuildUp.AccentWidth)];
    }

    /// <summary>A sleeve with the grooves cut into it.</summary>
    internal static Solid Grooved(Solid sleeve, PartJob job)
    {
        var groove = Sleeve.Ring(job.Sizes, 0, job.Sizes.OuterSkin / 2);
        return Places(job).Aggregate(sleeve, (cut, at) => cut.Cut(groove, at, at + BuildUp.AccentWidth));
    }

    /// <summary>From each groove to the next, to be measured on a sleeve.</summary>
    internal static IReadOnlyList<Length> Grooves(PartJob job)
    {
        var places = Places(job);
        return [.. places.Select((at, i) => new Length(i == 0 ? 0 : places[i - 1], at, 0, 0))];
    }

    private static PartSize SizeOf(CabinetSizes s) => new(s.Width, s.Height, BuildUp.AccentRingWidth);

    private static Blank Draw(PartJob job)
    {
        var s = job.Sizes;
        var ring = Sleeve.Ring(s, 0, s.OuterSkin / 2);
        var gap = Region.RoundedRectangle((s.Width - s.AccentGap) / 2, -1, (s.Width + s.AccentGap) / 2, s.OuterSkin, 0);
        return Blank.Nameless(Solid.Empty.Add(job.IsSplit(SizeOf(s)) ? ring : ring.Cut(gap), 0, BuildUp.AccentRingWidth));
    }
}
