using Stillwall.Neighbours;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>The neighbour question answered in a few numbers.</summary>
/// <param name="EverydayDb">Everyday level, dB.</param>
/// <param name="PoliteDb">Loudest polite level without an equaliser, dB.</param>
/// <param name="EqualisedDb">Loudest polite level with it, dB.</param>
/// <param name="WorstCasePoliteDb">Loudest polite level if the wall is as bad as the band of the forecast allows, without an equaliser, dB.</param>
/// <param name="FirstBandHz">Band that goes over the curve first as it gets louder, Hz.</param>
/// <param name="FirstBandDoubtDb">Half width of the forecast's band there, dB; null where not known.</param>
/// <param name="Equaliser">The equaliser that is proposed; empty where none is needed or none helps.</param>
public sealed record QuietAnswer(
    double EverydayDb,
    [property: ComputedBy("polite-level", "brief.everyday.level", "quiet.bands[].over_db")] double PoliteDb,
    [property: ComputedBy("polite-level-equalised", "brief.everyday.level", "quiet.bands[].over_db", "quiet.equaliser[].f0_hz")] double EqualisedDb,
    [property: ComputedBy("polite-level-worst", "brief.everyday.level", "quiet.bands[].over_db", "quiet.bands[].uncertainty_db")] double WorstCasePoliteDb,
    [property: ComputedBy("first-band", "quiet.bands[].over_db")] double FirstBandHz,
    [property: ComputedBy("wall-uncertainty", "brief.neighbour.partition", "measured.party_wall")] double? FirstBandDoubtDb,
    IReadOnlyList<EqualiserSection> Equaliser)
{
    /// <summary>Answers the question from its figures.</summary>
    /// <param name="project">The project.</param>
    /// <param name="quiet">Its neighbour question.</param>
    /// <returns>The answer, or null where something that it needs is not stated.</returns>
    /// <remarks>
    /// Model: everyday level less the greatest excess, the same with the band of doubt added to every band. Validity: as the neighbour question. Source: arithmetic on its results.
    /// Accuracy: as theirs.
    /// </remarks>
    public static QuietAnswer? Of(Project project, Quiet quiet)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(quiet);
        var judged = quiet.Bands.Where(b => b.OverDb is not null).ToList();
        if (judged.Count == 0 || project.Brief.Everyday?.LevelDb is not { } level || quiet is not { LoudestPoliteLevelDb: { } polite, LoudestPoliteLevelWithEqualiserDb: { } equalised })
        {
            return null;
        }

        var first = judged.MaxBy(b => b.OverDb)!;
        return new QuietAnswer(level, polite, equalised, level - judged.Max(b => b.OverDb!.Value + (b.UncertaintyDb ?? 0)), first.BandHz, first.UncertaintyDb, quiet.Equaliser ?? []);
    }
}
