using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Projects;

namespace Stillwall.Cli.Output;

/// <summary>The neighbour question, its answer first.</summary>
internal static class QuietText
{
    /// <summary>The answer, the bands, and what would help.</summary>
    internal static string Of(Project project, Appraisal appraisal, Terminal terminal)
    {
        string Wrap(string text) => Words.Wrapped(text, terminal.Width) + "\n";
        if (QuietAnswer.Of(project, appraisal.Quiet) is not { } answer)
        {
            var missing = KeyNames.Missing(appraisal.Quiet.Missing);
            return Wrap($"How loud is polite cannot be said yet{(missing.Length > 0 ? $"; {missing}" : "")}.")
                + (Table(appraisal, terminal) is { } known ? "\n" + known : "");
        }

        var text = Ink.Strong(terminal, Wrap(Sentence(answer)).TrimEnd('\n')) + "\n" + Wrap(Doubt(answer));
        text +=
            "\n"
            + Table(appraisal, terminal)
            + Wrap(
                $"seat, room: in your room. R: sound reduction of the wall. ±: how far the forecast may be off. curve: {Curve(project)}. over: above 0 "
                    + $"the neighbour is over the curve.{Basis(appraisal)}"
            );
        text += Weighted(project, appraisal, terminal.Width) + Left(appraisal.Quiet, terminal.Width) + AfterTable(appraisal.Quiet, terminal);
        return text
            + "\n"
            + Ink.Strong(terminal, "What would help")
            + "\n"
            + string.Concat(Help(project, answer, appraisal.Quiet).Select(l => $"- {Words.Wrapped(l, terminal.Width, 2, 2)}\n"));
    }

    /// <summary>The bands; null where nothing of them is known.</summary>
    internal static string? Table(Appraisal a, Terminal terminal) =>
        a.Quiet.Bands.All(b => b.OverDb is null && b.SeatDb is null)
            ? null
            : Tables.Of(
                terminal,
                "Third-octave bands at the everyday level, all in dB",
                [">band", ">seat", ">room", ">R", ">neighbour", ">±", ">curve", ">over"],
                a.Quiet.Bands.Select(b =>
                    (IReadOnlyList<string>)
                        [
                            Show.Frequency(b.BandHz),
                            Or(b.SeatDb),
                            Or(b.SourceRoomDb),
                            Or(b.ReductionDb),
                            Or(b.NeighbourDb),
                            Or(b.UncertaintyDb),
                            Or(b.CurveDb),
                            Or(b.OverDb),
                        ]
                )
            );

    private static string Sentence(QuietAnswer a)
    {
        var (everyday, polite, first) = (Show.Level(a.EverydayDb), Show.Level(a.PoliteDb), a.FirstWords);
        if (a.PoliteDb >= a.EverydayDb)
        {
            return $"Your everyday {everyday} at the seat is polite, without any equaliser: up to {polite} the neighbour stays under the {Limit(a)}; "
                + $"louder, {first} goes over it first.";
        }

        var without =
            $"Your everyday {everyday} at the seat is not polite as it is: only up to {polite} does the neighbour stay under the {Limit(a)}, and {first} "
            + "goes over it first; ";
        return without
            + (
                a.Equaliser is not [_, ..]
                    ? "no equaliser helps."
                    : $"with {EqualiserWords.Of(a.Equaliser)} it is polite up to "
                        + $"{Show.Level(a.EqualisedDb)}{(a.EqualisedDb >= a.EverydayDb - 1e-9 ? ", which is enough" : ", which is not enough")}."
            );
    }

    private static string Doubt(QuietAnswer a) =>
        a.FirstBandDoubtDb is { } doubt
            ? $"The wall is a forecast, give or take {Show.Level(doubt)} there; at its worst, polite is up to {Show.Level(a.WorstCasePoliteDb)}."
            : "How far the forecast of the wall may be off is not known.";

    private static IEnumerable<string> Help(Project project, QuietAnswer a, Quiet quiet)
    {
        var down = a.EverydayDb - a.PoliteDb;
        if (down > 0)
        {
            yield return $"turn it down by {Show.Level(down)}: stillwall set brief.everyday.level \"{Show.Number(Math.Floor(a.PoliteDb * 2) / 2, 4)} dB\"";
        }
        else
        {
            yield return $"nothing needs to change: {Show.Level(-down)} to spare";
        }

        if (a.Equaliser is [_, ..])
        {
            var against =
                quiet.PlainHighPass is { } plain && quiet.AudibleLossDb is { } lost
                    ? $"; the seat loses {Show.Level(lost)} of what it can hear, by a plain high-pass at {Show.Frequency(plain.F0Hz)} "
                        + $"{Show.Level(plain.AudibleLossDb)}"
                    : "";
            yield return $"{EqualiserWords.Of(a.Equaliser)}: polite up to {Show.Level(a.EqualisedDb)}{against} (figures to load: stillwall quiet --csv "
                + "equaliser.csv)";
        }

        if (quiet.Extension is { } lower)
        {
            var by = lower.StoppedBy switch
            {
                "neighbour" => "the neighbour",
                "excursion" => "the cone's excursion",
                "amplifier" => "the amplifier",
                _ => "nothing down to there",
            };
            yield return $"you could play lower: a Linkwitz transform from {Show.Frequency(lower.F0Hz)} to {Show.Frequency(lower.FpHz)} (Q "
                + $"{Show.Number(lower.PoleQ)}, {Show.Level(lower.BoostDb)} of boost far below), where {by} stops it";
        }

        if (project.Measured?.PartyWallDb is null)
        {
            yield return $"measure the wall: play bass, record it in both rooms and keep the ten differences (stillwall prove wall); the doubt of "
                + $"{Show.Level(a.FirstBandDoubtDb ?? 0)} then shrinks";
        }

        yield return $"every dB that the wall gains in the {Show.Frequency(a.FirstBandHz)} band is a dB more for you, until another band goes over first";
    }

    private static string Basis(Appraisal appraisal) =>
        appraisal.Quiet.WallBasisFromHz is { } from
            ? $" Below {Show.Frequency(from)}, where one room or the other has no mode, the formula for the wall has no basis: those bands are a guess."
            : "";

    private static string Left(Quiet quiet, int width)
    {
        static string One(Headroom h) =>
            string.Join(
                ", ",
                new[] { h.AmplifierDb is { } a ? $"amplifier {Show.Level(a)}" : "", h.ExcursionDb is { } x ? $"cone {Show.Level(x)}" : "" }.Where(t =>
                    t.Length > 0
                )
            );
        return quiet.Headroom is not { } bare
            ? ""
            : Words.Wrapped(
                $"Headroom at this level, peaks included: {One(bare)}{(quiet.HeadroomWithEqualiser is { } with ? $"; with the equaliser {One(with)}" : "")}.",
                width
            ) + "\n";
    }

    private static string AfterTable(Quiet quiet, Terminal terminal) =>
        quiet.BandsWithEqualiser is not { } after
            ? ""
            : "\n"
                + Tables.Of(
                    terminal,
                    "The same volume setting with the equaliser, all in dB",
                    [">band", ">seat", ">change", ">neighbour", ">over"],
                    quiet.Bands.Zip(
                        after,
                        (b, a) => (IReadOnlyList<string>)[Show.Frequency(b.BandHz), Or(a.SeatDb), Or(a.SeatDb - b.SeatDb), Or(a.NeighbourDb), Or(a.OverDb)]
                    )
                );

    private static string Limit(QuietAnswer a) => a.FirstWords.Contains("weighted", StringComparison.Ordinal) ? "limit" : "curve";

    // A curve whose figures come from memory says so wherever it is shown.
    private static string Curve(Project project) =>
        project.Brief.Neighbour?.Curve is { } name && LimitCurves.Find(name) is { } curve
            ? $"{curve.Words} ({curve.Source}{(curve.IsFromMemory ? "; from memory, not compared with the publication" : "")})"
            : "your own limit";

    private static string Weighted(Project project, Appraisal appraisal, int width)
    {
        var lines = appraisal
            .Quiet.WeightedLimits.Select(w =>
                $"Next door {Show.Level(w.NeighbourDb)} {w.Weighting}-weighted, give or take {Show.Level(w.UncertaintyDb)}; your limit is "
                + $"{Show.Level(w.LimitDb)}, so {Show.Level(Math.Abs(w.OverDb))} {(w.OverDb > 0 ? "over" : "under")}."
            )
            .ToList();
        if (appraisal.Quiet.QuietHours is { } hours)
        {
            var stated = project.Brief.Everyday!.QuietHours!;
            var span = stated is { FromHours: { } from, ToHours: { } to } ? $" from {Show.Number(from)} to {Show.Number(to)} o'clock" : "";
            lines.Add(
                $"Quiet hours{span}, {Show.Level(hours.LevelDb)} at the seat: {Show.Level(Math.Abs(hours.OverDb))} "
                    + $"{(hours.OverDb > 0 ? "over" : "under")} their limit, give or take {Show.Level(hours.UncertaintyDb)}; polite up to "
                    + $"{Show.Level(hours.LoudestPoliteLevelDb)}."
            );
        }

        return string.Concat(lines.Select(line => Words.Wrapped(line, width) + "\n"));
    }

    private static string Or(double? value) => value is { } known ? Show.Level(known).Replace(" dB", "", StringComparison.Ordinal) : "unknown";
}
