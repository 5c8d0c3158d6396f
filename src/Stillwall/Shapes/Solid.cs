using System.Collections.Immutable;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <summary>A part as a stack of slabs: shapes added and cut, in order, each between two heights. The last shape that covers a place decides.</summary>
/// <remarks>Heights and sizes in millimetres, rounded to the grid of 1 µm. Slabs are drawn when first asked for, and then kept.</remarks>
internal sealed class Solid
{
    private readonly ImmutableList<SolidStep> steps;
    private readonly Lazy<IReadOnlyList<SolidLayer>> layers;

    private Solid(ImmutableList<SolidStep> steps)
    {
        this.steps = steps;
        layers = new(() => LayerDrawing.Draw(steps));
    }

    /// <summary>Nothing yet.</summary>
    public static Solid Empty { get; } = new([]);

    /// <summary>The slabs from the lowest up; empty heights are left out, unchanged neighbours are one.</summary>
    public IReadOnlyList<SolidLayer> Layers => layers.Value;

    /// <summary>Volume, m³: the sum over the slabs.</summary>
    public double VolumeM3 => Layers.Sum(l => l.VolumeM3);

    /// <summary>Lowest and highest point, mm; null for nothing.</summary>
    public (double Bottom, double Top)? Heights => Layers.Count == 0 ? null : (Layers[0].BottomMm, Layers[^1].TopMm);

    /// <summary>
    /// The box round everything that was added, whatever was cut away after: left, bottom, right, top in the plane, mm; null for nothing. Needs no
    /// drawing.
    /// </summary>
    public (double Left, double Bottom, double Right, double Top)? AddedExtent
    {
        get
        {
            var boxes = steps
                .Where(s => s.Kind == SolidStepKind.Add)
                .Select(s => s.Region)
                .Select(r => r.Extent)
                .OfType<(double Left, double Bottom, double Right, double Top)>()
                .ToList();
            return boxes.Count == 0 ? null : (boxes.Min(b => b.Left), boxes.Min(b => b.Bottom), boxes.Max(b => b.Right), boxes.Max(b => b.Top));
        }
    }

    /// <summary>The lowest foot and the highest top of what was added, mm; null for nothing. Needs no drawing.</summary>
    public (double Bottom, double Top)? AddedHeights
    {
        get
        {
            var added = steps.Where(s => s.Kind == SolidStepKind.Add).ToList();
            return added.Count == 0 ? null : (added.Min(s => s.Bottom) / MicrometresPerMillimetre, added.Max(s => s.Top) / MicrometresPerMillimetre);
        }
    }

    /// <summary>The lowest point, mm; null for nothing. Draws the slabs up to it alone.</summary>
    public double? FootMm => layers.IsValueCreated ? Heights?.Bottom : LayerDrawing.Foot(steps) / MicrometresPerMillimetre;

    /// <summary>Adds an upright shape.</summary>
    /// <param name="to">Height of its top, mm; not below the foot.</param>
    public Solid Add(Region region, double from, double to) => With(SolidStepKind.Add, region, from, to);

    /// <summary>Cuts an upright shape out.</summary>
    /// <param name="to">Height of its top, mm; not below the foot.</param>
    public Solid Cut(Region region, double from, double to) => With(SolidStepKind.Cut, region, from, to);

    /// <summary>Adds another solid's slabs.</summary>
    public Solid Add(Solid other) => With(SolidStepKind.Add, other);

    /// <summary>Cuts another solid out.</summary>
    public Solid Cut(Solid other) => With(SolidStepKind.Cut, other);

    /// <summary>Keeps what stands on a region and drops the rest, over all heights.</summary>
    public Solid Within(Region region)
    {
        ArgumentNullException.ThrowIfNull(region);
        return steps.IsEmpty ? this : new(steps.Add(new SolidStep(SolidStepKind.Keep, region, steps.Min(s => s.Bottom), steps.Max(s => s.Top))));
    }

    /// <summary>Between two heights keeps what stands on a region and drops the rest; above and below all stays.</summary>
    /// <param name="to">Upper height, mm; not below the lower.</param>
    public Solid Within(Region region, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(region);
        var (bottom, top) = Span(from, to);
        return bottom == top ? this : new(steps.Add(new SolidStep(SolidStepKind.Keep, region, bottom, top)));
    }

    /// <summary>Keeps what lies between two heights.</summary>
    /// <param name="to">Upper height, mm; not below the lower.</param>
    /// <returns>What is left, at the same height as before.</returns>
    public Solid Between(double from, double to)
    {
        var (bottom, top) = Span(from, to);
        return new([
            .. steps.Where(s => s.Bottom < top && s.Top > bottom).Select(s => s with { Bottom = Math.Max(s.Bottom, bottom), Top = Math.Min(s.Top, top) }),
        ]);
    }

    /// <summary>Lifts or lowers the whole.</summary>
    public Solid Lifted(double distance)
    {
        var by = OnGrid(distance, nameof(distance));
        return new([.. steps.Select(s => s with { Bottom = s.Bottom + by, Top = s.Top + by })]);
    }

    private static (int Bottom, int Top) Span(double from, double to)
    {
        var (bottom, top) = (OnGrid(from, nameof(from)), OnGrid(to, nameof(to)));
        return top < bottom
            ? throw new ArgumentOutOfRangeException(nameof(to), to, FormattableString.Invariant($"accepted: {from} mm or more"))
            : (bottom, top);
    }

    private Solid With(SolidStepKind kind, Region region, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(region);
        var (bottom, top) = Span(from, to);
        return region.IsEmpty || bottom == top ? this : new(steps.Add(new SolidStep(kind, region, bottom, top)));
    }

    private Solid With(SolidStepKind kind, Solid other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(steps.AddRange(other.Layers.Select(l => new SolidStep(kind, l.Region, l.Bottom, l.Top))));
    }
}

/// <summary>What a step does.</summary>
internal enum SolidStepKind
{
    Add,
    Cut,
    Keep,
}

/// <summary>One step: a shape added, cut or kept between two heights.</summary>
internal sealed record SolidStep(SolidStepKind Kind, Region Region, int Bottom, int Top);
