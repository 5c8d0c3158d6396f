using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>Refuses what cannot be computed yet, and says what to state first.</summary>
internal static class Want
{
    /// <summary>What has to be stated before a verb can answer.</summary>
    /// <param name="what">The verb, or what it was asked for.</param>
    /// <param name="missing">A key of the project file, or a reason in words.</param>
    internal static Refusal Of(string what, string missing) => Refusal.Input($"{what}: not possible yet; {KeyNames.Missing(missing)}");

    /// <summary>What stands between a project and its drawn cabinet.</summary>
    internal static Refusal OfCabinet(string verb) => Of(verb, "cabinet.outside");

    /// <summary>What stands between a project and its box.</summary>
    internal static Refusal OfBox(string what, Facts facts) => Of(what, facts.MissingForBox);

    /// <summary>What stands between a project and its walls.</summary>
    internal static Refusal OfWalls(string verb, Facts facts) => Of(verb, facts.MissingForWalls);

    internal static Refusal OfRoom(string what, Facts facts) => Of(what, facts.MissingForRoom);

    internal static Refusal OfJoining(string verb, Facts facts) =>
        Of(
            verb,
            facts.Project.Brief.Aim?.CrossoverHz is null ? "brief.aim.crossover"
                : facts.Project.Brief.MainSpeakers?.CornerHz is null ? "brief.main_speakers.corner"
                : facts.MissingForBox
        );
}
