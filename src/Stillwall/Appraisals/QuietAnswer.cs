using Stillwall.Materials;
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
    [property: ComputedBy("polite-level", "quiet.bands[].over_db")] double PoliteDb,
    [property: ComputedBy("polite-level-equalised", "quiet.bands[].over_db", "quiet.equaliser[].f0_hz")] double EqualisedDb,
    [property: ComputedBy("polite-level-worst", "quiet.bands[].over_db", "quiet.bands[].uncertainty_db")] double WorstCasePoliteDb,
    [property: ComputedBy("first-band", "quiet.bands[].over_db")] double FirstBandHz,
    [property: ComputedBy("wall-uncertainty")] double? FirstBandDoubtDb,
    IReadOnlyList<EqualiserSection> Equaliser
)
{
    /// <summary>What breaks first as it gets louder, in words: a band, or a weighted level.</summary>
    public string FirstWords { get; init; } = $"the {Show.Frequency(FirstBandHz)} band";

    /// <summary>Answers the question from its figures.</summary>
    /// <param name="project">The project.</param>
    /// <param name="quiet">Its neighbour question.</param>
    /// <returns>The answer, or null where something that it needs is not stated.</returns>
    /// <remarks>
    /// Model: everyday level less the greatest excess, the same with the band of doubt added to every band. Validity: as the neighbour question.
    /// Source: arithmetic on its results.
    /// Accuracy: as theirs.
    /// </remarks>
    public static QuietAnswer? Of(Project project, Quiet quiet)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(quiet);
        var judged = quiet.Bands.Where(b => b.OverDb is not null).ToList();
        if (
            (judged.Count == 0 && quiet.WeightedLimits.Count == 0)
            || project.Brief.Everyday?.LevelDb is not { } level
            || quiet is not { LoudestPoliteLevelDb: { } polite, LoudestPoliteLevelWithEqualiserDb: { } equalised }
        )
        {
            return null;
        }

        var worst = judged.Select(b => b.OverDb!.Value + (b.UncertaintyDb ?? 0)).Concat(quiet.WeightedLimits.Select(w => w.OverDb + w.UncertaintyDb)).Max();
        var (first, weighted) = (judged.MaxBy(b => b.OverDb), quiet.WeightedLimits.MaxBy(w => w.OverDb));
        if (weighted is null || first?.OverDb >= weighted.OverDb)
        {
            return new QuietAnswer(
                EverydayDb: level,
                PoliteDb: polite,
                EqualisedDb: equalised,
                WorstCasePoliteDb: level - worst,
                FirstBandHz: first!.BandHz,
                FirstBandDoubtDb: first.UncertaintyDb,
                Equaliser: quiet.Equaliser ?? []
            );
        }

        // Of a weighted level the band that has most of it.
        var weights = weighted.Weighting == "A" ? (Func<double, double>)Weightings.ADb : Weightings.CDb;
        var loudest = quiet.Bands.Zip(ThirdOctaves.Bands).MaxBy(pair => pair.First.NeighbourDb + weights(pair.Second.CentreHz)).First;
        return new QuietAnswer(
            EverydayDb: level,
            PoliteDb: polite,
            EqualisedDb: equalised,
            WorstCasePoliteDb: level - worst,
            FirstBandHz: loudest.BandHz,
            FirstBandDoubtDb: weighted.UncertaintyDb,
            Equaliser: quiet.Equaliser ?? []
        )
        {
            FirstWords = $"the {weighted.Weighting}-weighted level",
        };
    }
}
