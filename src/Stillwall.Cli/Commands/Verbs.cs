using Stillwall.Cli.Commands.Proving;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands;

/// <summary>The verbs, in the order of the job.</summary>
internal static class Verbs
{
    internal static IEnumerable<Verb> All() =>
        [
            Start.Verb(),
            Appraise.Verb(),
            Set.Verb(),
            Apply.Verb(),
            Rank.Verb(),
            Curves.Verb(),
            Panel.Verb(),
            WallsVerb.Verb(),
            PartFiles.Verb(),
            Sheets.Verb(),
            Mixing.Verb(),
            StageViews.Pour(),
            StageViews.Supplies(),
            Room.Verb(),
            QuietVerb.Verb(),
            Rating.Verb(),
            Filter.Verb(),
            Join.Verb(),
            Signals.Verb(),
            Prove.Verb(),
            Whys.Verb(),
            Schema.Verb(),
            Serve.Verb(),
        ];
}
