using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Pours;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;

namespace Stillwall.Web.Drawings;

/// <summary>The pour: the form with its lifts at the left, the batches on one clock at the right.</summary>
internal static class PourSchedule
{
    private const double FormLeft = 46,
        FormWide = 66,
        Top = 30,
        FormUp = 216,
        Left = 250,
        Wide = 530,
        RowUp = 44;

    /// <summary>Draws the view; null where the pour is not known.</summary>
    internal static View? Of(Facts facts)
    {
        if (facts.Bench is not { } bench)
        {
            return null;
        }

        var pen = new Pen();
        Form(pen, facts, bench);
        Clock(pen, facts, bench);
        return new View(
            Width: Left + Wide + 70,
            Height: Math.Max(Top + FormUp + 34, Top + bench.Plan.Batches.Count * RowUp + 60),
            Title: PourTexts.ScheduleTitle,
            Description: PourTexts.Said(bench.Plan),
            Svg: pen.Svg,
            Fields: [],
            Marks: []
        )
        {
            Figures = pen.Figures,
        };
    }

    private static void Form(Pen pen, Facts facts, PourBench bench)
    {
        var whole = bench.LiftTopsM[^1];
        var (bottom, below) = (Top + FormUp, 0.0);
        foreach (var (i, top) in bench.LiftTopsM.Index())
        {
            var (y, h) = (bottom - top / whole * FormUp, (top - below) / whole * FormUp);
            pen.Box(i % 2 == 0 ? "liftfill" : "liftfill two", FormLeft, y, FormWide, h)
                .Line("hidden", FormLeft, y, FormLeft + FormWide + 8, y)
                .Figure(
                    "size",
                    FormLeft + FormWide + 12,
                    y + 4,
                    "start",
                    new FigurePiece(facts.Show.Length(top), string.Create(CultureInfo.InvariantCulture, $"cast.lift_tops_m[{i}]"), PourTexts.TopOf(i))
                )
                .Text("tb", FormLeft + FormWide / 2, y + h / 2 + 5, Show.Number(i + 1), "middle");
            below = top;
        }

        pen.Path("formline", $"M{N(FormLeft)} {N(Top - 10)}V{N(bottom)}H{N(FormLeft + FormWide)}V{N(Top - 10)}")
            .Text("t2", FormLeft, Top - 18, PourTexts.Lifts);
    }

    private static void Clock(Pen pen, Facts facts, PourBench bench)
    {
        var plan = bench.Plan;
        var end = Math.Max(plan.Batches.Max(b => b.PourByS), plan.DurationS);
        double X(double s) => Left + s / end * Wide;
        var axis = Top + plan.Batches.Count * RowUp + 8;
        foreach (var (i, batch) in plan.Batches.Index())
        {
            var y = Top + i * RowUp;
            var by = X(batch.PourByS);
            pen.Text("t name", Left - 8, y + 12, PourTexts.Batch(i + 1), "end")
                .Box("mixbar", X(batch.StartS), y, X(batch.PourStartS) - X(batch.StartS), 16)
                .Box("pourbar", X(batch.PourStartS), y, Math.Max(2, X(batch.PourEndS) - X(batch.PourStartS)), 16)
                .Line("dr", X(batch.PourEndS), y + 8, by, y + 8)
                .Line("byline", by, y - 4, by, y + 20)
                .Figure("words", X(batch.StartS), y + 30, "start", [.. PourTexts.Weights(facts.Show.Mass(batch.PowderKg), facts.Show.Mass(batch.WaterKg), i)])
                .Figure("due", by + 4, y + 12, "start", [.. PourTexts.By(batch.PourByS, i)]);
        }

        var step = Steps.FirstOrDefault(s => end / s <= 9, 7200);
        pen.Line("wall", Left, axis, Left + Wide, axis);
        for (var s = 0.0; s <= end + 1; s += step)
        {
            pen.Line("wall", X(s), axis, X(s), axis + 5).Text("tr tick", X(s), axis + 18, PourTexts.Clock(s), "middle");
        }

        pen.Text("t2", Left, Top - 18, PourTexts.FromFirstWater);
    }

    private static readonly double[] Steps = [60, 120, 300, 600, 900, 1800, 3600];
}
