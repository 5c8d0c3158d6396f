using Stillwall.Appraisals;
using Stillwall.Cli.Running;
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
        var (everyday, polite, band) = (Show.Level(a.EverydayDb), Show.Level(a.PoliteDb), Show.Frequency(a.FirstBandHz));
        if (a.PoliteDb >= a.EverydayDb)
        {
            return $"Your everyday {everyday} at the seat is polite, without any equaliser: up to {polite} the neighbour stays under the curve; louder, the {band} band breaks it first.";
        }

        var without = $"Your everyday {everyday} at the seat is not polite as it is: only up to {polite} does the neighbour stay under the curve, and the {band} band breaks it first; ";
        return without + (a.Equaliser is not [var section, ..] ? "no equaliser helps."
            : $"with a high-pass at {Show.Frequency(section.F0Hz)} it is polite up to {Show.Level(a.EqualisedDb)}{(a.EqualisedDb >= a.EverydayDb - 1e-9 ? ", which is enough" : ", which is not enough")}.");
    }

    private static string Doubt(QuietAnswer a) => a.FirstBandDoubtDb is { } doubt
        ? $"The wall is a forecast, give or take {Show.Level(doubt)} in that band; at its worst, polite is up to {Show.Level(a.WorstCasePoliteDb)}."
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

    private static string Curve(Project project) => project.Brief.Neighbour?.Curve switch
    {
        "hearing-threshold" => "what a good ear just hears",
        "night-rooms-se-2014" => "a guide value for bedrooms at night",
        _ => "your own limit",
    };

    private static string Or(double? value) => value is { } known ? Show.Level(known).Replace(" dB", "", StringComparison.Ordinal) : "unknown";
}
