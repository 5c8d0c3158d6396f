using Stillwall.Appraisals;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>The form at the bench, its lifts set, being filled, and to come.</summary>
internal static class LiftColumn
{
    internal const double Width = 92,
        Height = 512;

    private const double Left = 4,
        Wide = 52,
        Bottom = 506,
        Tall = 500;

    /// <summary>Draws the column.</summary>
    internal static string Of(IReadOnlyList<double> topsM, int present, bool inch)
    {
        var pen = new Pen();
        var from = 0.0;
        foreach (var (i, top) in topsM.Index())
        {
            var (y, h) = (Bottom - top / topsM[^1] * Tall, (top - from) / topsM[^1] * Tall);
            var (css, word) = (i + 1 - present) switch
            {
                < 0 => ("lset", BenchTexts.Set),
                0 => ("lnow", BenchTexts.Now),
                _ => ("lnext", BenchTexts.Waiting),
            };
            pen.Box(css, Left, y, Wide, h).Line("ltick", Left, y, 62, y).Text("lnum", 64, y + 5, DrawingTexts.Number(top.InMillimetres(), inch));
            if (h > 44)
            {
                pen.Text("lname", Left + Wide / 2, y + h / 2, Show.Number(i + 1), "middle").Text("lword", Left + Wide / 2, y + h / 2 + 18, word, "middle");
            }

            from = top;
        }

        return pen.Path("lform", $"M3 0V{N(Bottom + 2)}H57V0").Svg;
    }
}
