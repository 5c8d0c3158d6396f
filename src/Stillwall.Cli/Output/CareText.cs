using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Output;

/// <summary>What to take care of, in lines.</summary>
internal static class CareText
{
    // As many as are read; the others stand at their steps.
    private const int Worst = 5;

    /// <summary>What to take care of at one step, the worst first.</summary>
    /// <param name="step">The step.</param>
    /// <param name="facts">What is computed; null without a project.</param>
    /// <param name="width">Greatest length of a line.</param>
    /// <param name="indent">Spaces before each.</param>
    internal static string At(WorkStep step, Facts? facts, int width, int indent = 0) => Lines(Cautions.At(step, facts), width, indent);

    /// <summary>Cautions in their order.</summary>
    internal static string Lines(IEnumerable<StepCaution> cautions, int width, int indent = 0) => Lines(cautions.Select(c => c.Sentence), width, indent);

    /// <summary>Says under the result of a proof what to take care of at the next one.</summary>
    /// <param name="session">The run.</param>
    /// <param name="step">The step.</param>
    /// <param name="facts">What is computed; null without a project.</param>
    /// <param name="isQuiet">Whether standard output holds something else.</param>
    internal static void Say(Session session, WorkStep step, Facts? facts, bool isQuiet) =>
        session.Print(isQuiet ? "" : At(step, facts, session.Terminal.Width));

    /// <summary>The worst of a plan and what most plans have not, where it is not said at its next step, and where the rest stands.</summary>
    internal static string WorstOf(Appraisal appraisal, WorkStep? next, int width)
    {
        var now = appraisal.Cautions.Where(c => c.Step == next).Select(c => c.Hazard).ToHashSet();
        var later = appraisal.Cautions.Where(c => !now.Contains(c.Hazard)).DistinctBy(c => c.Hazard).OrderBy(c => c.Hazard).ToList();
        var told = later.Where((c, i) => i < Worst || CautionTable.All[(int)c.Hazard].IsUnusual).ToList();
        var left = later.Count - told.Count;
        var rest = $"{left.ToString(CultureInfo.InvariantCulture)} more, each said at its step; --all lists them";
        return Lines(told, width) + (left > 0 ? $"  {Words.Wrapped(rest, width, 2, 2)}\n" : "");
    }

    /// <summary>Everything to take care of in a plan, each with its steps.</summary>
    internal static string AllOf(Appraisal appraisal, int width) =>
        Lines(
            appraisal
                .Cautions.GroupBy(c => c.Hazard)
                .OrderBy(g => g.Key)
                .Select(g => $"{g.First().Sentence} ({string.Join(", ", g.Select(c => WorkSteps.Word(c.Step)))})"),
            width,
            0
        );

    private static string Lines(IEnumerable<string> sentences, int width, int indent) =>
        string.Concat(sentences.Select(s => $"{new string(' ', indent)}! {Words.Wrapped(s, width, indent + 2, indent + 2)}\n"));
}
