using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands;

/// <summary>The verbs, in the order of the job.</summary>
internal static class Verbs
{
    internal static IEnumerable<Verb> All() =>
    [
        Start.Verb(), Appraise.Verb(), Set.Verb(), Apply.Verb(),
        Curves.Verb(), Panel.Verb(), Mixing.Verb(), Room.Verb(), Filter.Verb(), Join.Verb(),
        Schema.Verb(),
    ];
}
