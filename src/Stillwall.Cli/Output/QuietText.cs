using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Materials;
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
            var missing = string.Join(", ", appraisal.Quiet.Missing);
            return Wrap($"What is polite cannot be said yet{(missing.Length > 0 ? $"; not stated: {missing}" : "")}.")
                + (Table(appraisal, terminal) is { } known ? "\n" + known : "");
        }

        var text = Ink.Strong(terminal, Wrap(Sentence(answer)).TrimEnd('\n')) + "\n" + Wrap(Doubt(answer));
        text += "\n" + Table(appraisal, terminal) + Wrap(
            $"seat, room: in your room. wall: what it takes away. ±: how far the forecast may be off. curve: {Curve(project)}. over: above 0 the neighbour is over the curve.{Basis(appraisal)}");
        text += Weighted(project, appraisal, terminal.Width);
        return text + "\n" + Ink.Strong(terminal, "What would help") + "\n" + string.Concat(Help(project, answer).Select(l => $"- {Words.Wrapped(l, terminal.Width, 2, 2)}\n"));
    }

    /// <summary>The bands; null where nothing of them is known.</summary>
    internal static string? Table(Appraisal a, Terminal terminal) =>
        a.Quiet.Bands.All(b => b.OverDb is null && b.SeatDb is null) ? null : Tables.Of(
            terminal, "Third-octave bands at the everyday level, all in dB", [">band", ">seat", ">room", ">wall", ">neighbour", ">±", ">curve", ">over"],
            a.Quiet.Bands.Select(b => (IReadOnlyList<string>)[
                Show.Frequency(b.BandHz), Or(b.SeatDb), Or(b.SourceRoomDb), Or(b.ReductionDb), Or(b.NeighbourDb), Or(b.UncertaintyDb), Or(b.CurveDb), Or(b.OverDb)]));

    private static string Sentence(QuietAnswer a)
    {
        var (everyday, polite, first) = (Show.Level(a.EverydayDb), Show.Level(a.PoliteDb), a.FirstWords);
        if (a.PoliteDb >= a.EverydayDb)
        {
            return $"Your everyday {everyday} at the seat is polite, without any equaliser: up to {polite} the neighbour stays under the {Limit(a)}; louder, {first} breaks it first.";
        }

        var without = $"Your everyday {everyday} at the seat is not polite as it is: only up to {polite} does the neighbour stay under the {Limit(a)}, and {first} breaks it first; ";
        return without + (a.Equaliser is not [var section, ..] ? "no equaliser helps."
            : $"with a high-pass at {Show.Frequency(section.F0Hz)} it is polite up to {Show.Level(a.EqualisedDb)}{(a.EqualisedDb >= a.EverydayDb - 1e-9 ? ", which is enough" : ", which is not enough")}.");
    }

    private static string Doubt(QuietAnswer a) => a.FirstBandDoubtDb is { } doubt
        ? $"The wall is a forecast, give or take {Show.Level(doubt)} there; at its worst, polite is up to {Show.Level(a.WorstCasePoliteDb)}."
        : "How far the wall is off is not known.";

    private static IEnumerable<string> Help(Project project, QuietAnswer a)
    {
        var down = a.EverydayDb - a.PoliteDb;
        if (down > 0)
        {
            yield return $"turn it down by {Show.Level(down)}: stillwall set brief.everyday.level \"{Show.Number(Math.Floor(a.PoliteDb * 2) / 2, 4)} dB\"";
        }
        else
        {
            yield return $"nothing has to: {Show.Level(-down)} to spare";
        }

        if (a.Equaliser is [var section, ..])
        {
            yield return $"a second-order high-pass at {Show.Frequency(section.F0Hz)}, Q {Show.Number(section.Q)}: polite up to {Show.Level(a.EqualisedDb)}";
        }

        if (project.Measured?.PartyWallDb is null)
        {
            yield return $"measure the wall: play bass, read both rooms, state the ten differences as measured.party_wall; the doubt of {Show.Level(a.FirstBandDoubtDb ?? 0)} then shrinks";
        }

        yield return $"every dB that the wall gains in the {Show.Frequency(a.FirstBandHz)} band is a dB more for you, until another band breaks first";
    }

    private static string Basis(Appraisal appraisal) => appraisal.Quiet.WallBasisFromHz is { } from ? $" Below {Show.Frequency(from)}, where one room or the other has no mode, the formula for the wall has no basis: those bands are a guess." : "";

    private static string Limit(QuietAnswer a) => a.FirstWords.Contains("weighted", StringComparison.Ordinal) ? "limit" : "curve";

    // A curve whose figures come from memory says so wherever it is shown.
    private static string Curve(Project project) => project.Brief.Neighbour?.Curve is { } name && LimitCurves.Find(name) is { } curve
        ? $"{curve.Words} ({curve.Source}{(curve.IsFromMemory ? "; from memory, not compared with the publication" : "")})"
        : "your own limit";

    private static string Weighted(Project project, Appraisal appraisal, int width)
    {
        var lines = appraisal.Quiet.WeightedLimits.Select(w =>
            $"Next door {Show.Level(w.NeighbourDb)} {w.Weighting}-weighted, give or take {Show.Level(w.UncertaintyDb)}; your limit is {Show.Level(w.LimitDb)}, so {Show.Level(Math.Abs(w.OverDb))} {(w.OverDb > 0 ? "over" : "under")}.").ToList();
        if (appraisal.Quiet.QuietHours is { } hours)
        {
            var stated = project.Brief.Everyday!.QuietHours!;
            var span = stated is { FromHours: { } from, ToHours: { } to } ? $" from {Show.Number(from)} to {Show.Number(to)} o'clock" : "";
            lines.Add($"Quiet hours{span}, {Show.Level(hours.LevelDb)} at the seat: {Show.Level(Math.Abs(hours.OverDb))} {(hours.OverDb > 0 ? "over" : "under")} their limit, give or take {Show.Level(hours.UncertaintyDb)}; polite up to {Show.Level(hours.LoudestPoliteLevelDb)}.");
        }

        return string.Concat(lines.Select(line => Words.Wrapped(line, width) + "\n"));
    }

    private static string Or(double? value) => value is { } known ? Show.Level(known).Replace(" dB", "", StringComparison.Ordinal) : "unknown";
}
