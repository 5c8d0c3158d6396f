using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;

namespace Stillwall.Cli.Commands;

/// <summary><c>why</c>: where one result comes from.</summary>
internal static class Whys
{
    internal static Verb Verb()
    {
        var result = new TextArgument("RESULT", "a result as in appraise --json, such as box.system_q, or the id of a finding");
        var project = Common.ProjectOption;
        var json = Common.Json;
        return new Verb("why", "formula, inputs, source and sensitivities of one result", "stillwall why box.system_resonance_hz --project my-cabinet")
        {
            Takes = [result, project, json],
            Do = call =>
            {
                var facts = LoadedProject.Load(call.Session, call.Text(project)).Facts();
                var explanation = Explained(facts, call.Text(result)!);
                call.Session.Print(call.Has(json) ? ResultJson.Write(explanation) : Text(explanation, facts.Show, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    private static Explanation Explained(Facts facts, string result)
    {
        try
        {
            return Why.Of(facts, result);
        }
        catch (ArgumentException unknown)
        {
            // The runtime adds the parameter's name, which says nothing to a user.
            throw Refusal.Input(unknown.Message.Split(" (Parameter", 2)[0]);
        }
    }

    private static string Text(Explanation e, Show show, Terminal terminal)
    {
        string Wrap(string text) => Words.Wrapped(text, terminal.Width, 0, 2) + "\n";
        var value = e.Value is { } number ? show.InUnit(number, e.Unit) : "unknown";
        return Ink.Strong(terminal, $"{e.Result} = {value}")
            + "\n"
            + Wrap(e.Formula)
            + Wrap($"source: {e.Basis}")
            + "\n"
            + (
                e.Inputs.Count == 0
                    ? ""
                    : Tables.Of(
                        terminal,
                        "What goes in, and what one per cent more of it does to the result",
                        ["input", ">value", ">effect"],
                        e.Inputs.Select(i => (IReadOnlyList<string>)[i.Key, Written(i, show), Effect(i, e.Unit)])
                    )
            );
    }

    private static string Effect(ExplainedInput input, string unit) =>
        input switch
        {
            { Sensitivity: { } s } => $"{(s > 0 ? "+" : "")}{Show.Number(s, 2)} {(unit == "dB" ? "dB" : "%")}",
            { Acts: Acting.Smooth } => "moves it",
            { Acts: Acting.Steps } => "in steps",
            { Acts: Acting.Inactive } => "not reached now",
            _ => "–",
        };

    private static string Written(ExplainedInput input, Show show) =>
        input.Value switch
        {
            null => "–",
            double number => show.InUnit(number, input.Unit),
            int count => Show.Number(count),
            var word => Convert.ToString(word, CultureInfo.InvariantCulture) ?? "–",
        };
}
