using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A brace: a frame that slides into the inner sleeve, with a window; where braces stand is told by <see cref="Bracing"/>.</summary>
internal sealed class Brace : PartKind
{
    /// <inheritdoc/>
    public override string Name => "brace";

    internal override int Turn => 80;

    internal override Exploding Exploding => new(80) { OneByOne = true };

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var (s, bracing) = (job.Sizes, job.Geometry.Bracing);
        var size = new PartSize(bracing.Frame.Width, bracing.Frame.Height, BuildUp.BraceThickness);
        return bracing.FrontsMm.Select(at => new PartDraft(job.Geometry.BraceM3, size, () => Draw(bracing))
        {
            Place = job.FrontDown(s.Wall + at),
            CentreMm = s.Wall + at + BuildUp.BraceThickness / 2,
        });
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var (s, units) = (job.Sizes, job.Units);
        var (frame, window) = (job.Job.Geometry.Bracing.Frame, job.Job.Geometry.Bracing.Window);
        return new PartFeatures
        {
            SectionAcross = [new(frame.Left, window.Left, 0, 0), new(window.Left, window.Right, 0, 0)],
            Up = [new(window.Bottom, window.Top, frame.Left, frame.Left)],
            Notes =
            [
                new(frame.Right - (1 - Math.Sqrt(0.5)) * frame.Radius, frame.Top - (1 - Math.Sqrt(0.5)) * frame.Radius, $"R{units.Of(frame.Radius)}"),
                new(
                    window.Right - (1 - Math.Sqrt(0.5)) * window.Radius,
                    window.Top - (1 - Math.Sqrt(0.5)) * window.Radius,
                    window.Radius > 0 ? $"window, R{units.Of(window.Radius)}" : "window, sharp corners"
                ),
                new(frame.Right, s.Height * 0.4, $"{units.Of(s.JointClearance / 2)} clear of the sleeve"),
            ],
        };
    }

    private static Blank Draw(Bracing bracing)
    {
        var face = bracing.Frame.ToRegion().Cut(bracing.Window.ToRegion());
        return Blank.NamedOnTop(Solid.Empty.Add(face, 0, BuildUp.BraceThickness), face, BuildUp.BraceThickness);
    }
}
