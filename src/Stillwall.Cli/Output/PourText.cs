using System.Globalization;
using System.Text;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;
using Stillwall.Pours;
using Stillwall.Projects;

namespace Stillwall.Cli.Output;

/// <summary>The pour as a clock for the bench, no wider than a telephone.</summary>
internal sealed class PourText(Facts facts, Appraisal appraisal, Terminal terminal)
{
    private const int Widest = 60,
        ClockWidth = 9;

    private readonly Show show = facts.Show;

    private readonly HashSet<Hazard> said = [.. Cautions.At(WorkStep.Pour, facts).Select(c => c.Hazard)];

    private readonly int width = Math.Min(Widest, terminal.Width);

    /// <summary>What to lay ready, every moment, and what follows.</summary>
    internal string Of(PourBench bench)
    {
        var text = new StringBuilder();
        var batches = bench.Plan.Batches;
        text.Append(
            Ink.Strong(
                terminal,
                Wrap(
                    $"Pour: {Count(batches.Count, "batch", "batches")} in {Count(bench.LiftTopsM.Count, "lift", "lifts")}, {Clock(bench.Plan.DurationS)} "
                        + $"from the first water"
                )
            )
        );
        text.Append('\n')
            .Append(
                Wrap(
                    $"Times are minutes:seconds from the first "
                        + $"water{(bench.Plan.Batches[^1].PourByS < Show.ClockHoursFrom ? "" : ", hours:minutes:seconds from three hours on")}."
                )
            )
            .Append('\n');
        Ready(text, bench);
        foreach (var lift in batches.Index().GroupBy(b => b.Item.Lift))
        {
            text.Append('\n')
                .Append(Ink.Strong(terminal, $"Lift {Number(lift.Key)}: fill to {show.Length(bench.LiftTopsM[lift.Key - 1])} from the bottom"))
                .Append('\n');
            foreach (var (i, batch) in lift)
            {
                text.Append($"  batch {Number(i + 1)}: {Weights(batch)}\n");
                Moments(text, bench, i + 1);
            }
        }

        After(text, bench);
        return text.ToString();
    }

    private void Ready(StringBuilder text, PourBench bench)
    {
        text.Append('\n').Append(Ink.Strong(terminal, "Before you start")).Append('\n');
        Box(text, $"powder and water weighed for each batch, {show.Mass(appraisal.Pour.PowderKg ?? 0)} and {show.Mass(appraisal.Pour.WaterKg ?? 0)} in all");
        foreach (var (i, batch) in bench.Plan.Batches.Index())
        {
            text.Append($"      batch {Number(i + 1)}: {Weights(batch)}\n");
        }

        Box(text, $"a mixing bucket of {show.Liquid(facts.Project.Materials?.Cast?.BucketM3 ?? 0)}, water to wash it, a clock");
        if (facts.Project.Materials?.Cast?.HoldDownKg is { } weight and > 0)
        {
            Box(text, $"{show.Mass(weight)} on the inner sleeve until the first lift has set");
        }

        var holes = facts.Cast.Holes;
        if (holes is not null)
        {
            Box(text, $"{Holes(holes)} taped from inside, the tape pressed down all round");
        }

        if (facts.RehearsalWaterKg is { } water)
        {
            Box(
                text,
                $"water rehearsal done: the cavity takes {show.Mass(water)} of water, give or take {Show.Percent(WaterRehearsal.NearRatio)}. Less: air is "
                    + $"trapped or a passage blocked. More: it leaks{(holes is null ? "" : ", a taped hole too,")} or a skin bulges. Pour it out and let "
                    + $"the form dry; log it as actual of \"water rehearsal\""
            );
        }

        foreach (var need in facts.ScaleNeeds)
        {
            Box(text, $"scales for the {need.What}: up to {show.Mass(need.CapacityKg)} in steps of {show.Mass(need.StepKg)} or finer");
        }

        Box(text, "the form tilted by 5°, a vent open for each bay");
        Box(
            text,
            bench.Plan.ReserveFillsTestBar
                ? "the test-bar mould: the end of the last batch fills it"
                : "no test bar: the reserve is too small to fill its mould"
        );
        Box(text, "dust mask and gloves on");
        text.Append(CareText.At(WorkStep.Pour, facts, width));
        if (facts.Project.Materials?.Cast?.People is > 1 and var people)
        {
            text.Append(Wrap($"With {Number(people)} people the next batch is mixed while one is poured, so its times overlap.")).Append('\n');
        }

        if (!bench.Plan.KeepsPotLife)
        {
            text.Append(Ink.Of(terminal, Verdict.Fails, Wrap("▲ Do not pour by this plan: a batch outlives its pot life."))).Append('\n');
        }
    }

    private void Moments(StringBuilder text, PourBench bench, int batch)
    {
        var steps = bench.Steps.Where(s => s.Batch == batch).ToList();
        foreach (var (i, step) in steps.Index())
        {
            var until = i + 1 < steps.Count ? $" until {Clock(steps[i + 1].AtS)}" : "";
            var by = step.Action == PourAction.PourBy;
            var line =
                $"{(by ? "▶" : " ")}{Clock(step.AtS, down: by).PadLeft(ClockWidth - 1)}  "
                + $"{Words.Wrapped(Says(step, bench, until), width, ClockWidth + 2, ClockWidth + 2)}";
            text.Append(by ? Ink.Strong(terminal, line) : line).Append('\n');

            // Said once, and meant at every batch.
            text.Append(WorkSteps.Of(step.Action) is { } at ? CareText.Lines(Cautions.At(at, facts).Where(c => said.Add(c.Hazard)), width, ClockWidth) : "");
        }
    }

    private static string Says(PourStep step, PourBench bench, string until) =>
        step.Action switch
        {
            PourAction.Soak => $"powder into the water, let it soak{until}",
            PourAction.Stir => $"stir{until}",
            PourAction.Pour => $"pour{until}",
            PourAction.Empty => step.Batch == bench.Plan.Batches.Count && bench.Plan.ReserveFillsTestBar
                ? "full: tap the walls, watch the vents; the rest into the test-bar mould"
                : "empty: tap the walls, watch the vents",
            PourAction.PourBy => "MUST BE POURED BY",
            _ => $"set: lift {Number(bench.Plan.Batches[step.Batch].Lift)} may start",
        };

    private void After(StringBuilder text, PourBench bench)
    {
        text.Append('\n').Append(Ink.Strong(terminal, "Afterwards")).Append('\n');
        Line(text, bench.WarmFromS, "the last batch begins to set and to warm");
        var peak = appraisal.Pour.ExpectedPeakC is { } expected
            ? $"hottest about now: {show.Temperature(expected)} expected in the wall"
                + (appraisal.Pour.PeakOuterFaceC is { } face ? $", {show.Temperature(face)} on its outside" : "")
                + (appraisal.Pour.AdiabaticPeakC is { } most ? $", {show.Temperature(most)} if no heat is lost" : "")
            : "hottest about now; how hot is not known";
        Line(text, bench.HeatEndS, peak);
        Line(
            text,
            Math.Max(bench.HeatEndS, bench.BearsFromS),
            $"set: it may be moved once the skins are cool to the hand{(appraisal.Mass.WetKg is { } wet ? $"; it weighs {show.Mass(wet)}" : "")}"
        );
        if (facts.Cast.Holes is { } holes)
        {
            text.Append(
                    Wrap(
                        $"Then the tape comes off, and {Holes(holes)} stay open while it dries, the box open too. Once it is dry each is sealed with a "
                            + $"dab before the driver goes in."
                    )
                )
                .Append('\n');
        }

        text.Append(CareText.Lines(Cautions.At(WorkStep.Set, facts).Concat(Cautions.At(WorkStep.CleanUp, facts)).DistinctBy(c => c.Hazard), width));
    }

    private string Holes(HoleFigures holes) =>
        $"{Count(holes.Count, "drying hole", "drying holes")} of {show.Length(facts.Project.Cabinet!.Openings!.DryingHoleM!.Value)}";

    private void Line(StringBuilder text, double atS, string says) =>
        text.Append($"{Clock(atS).PadLeft(ClockWidth)}  {Words.Wrapped(says, width, ClockWidth + 2, ClockWidth + 2)}\n");

    private void Box(StringBuilder text, string says) => text.Append($"[ ] {Words.Wrapped(says, width, 4, 4)}\n");

    private string Weights(PourBatch batch) => $"{show.Mass(batch.PowderKg)} powder, {show.Mass(batch.WaterKg)} water";

    private string Wrap(string words) => Words.Wrapped(words, width);

    // Beyond two days nobody counts minutes. A moment not to be missed is rounded down.
    private static string Clock(double seconds, bool down = false) =>
        seconds >= 2 * Units.Day ? Show.Time(seconds) : Show.Clock((int)(down ? Math.Floor(seconds + 1e-6) : Math.Round(seconds)));

    private static string Count(int value, string one, string many) => $"{Number(value)} {(value == 1 ? one : many)}";

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
