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
                call.Session.Print(call.Has(json) ? ResultJson.Write(explanation) : Text(explanation, call.Session.Terminal));
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

    private static string Text(Explanation e, Terminal terminal)
    {
        var value = e.Value is { } number ? $"{Show.Number(number, 6)} {(e.Unit == "1" ? "" : e.Unit)}".TrimEnd() : "unknown";
        return $"{e.Result} = {value}\n{e.Formula}\nsource: {e.Basis}\n\n" + Tables.Of(
            terminal, "Inputs in SI; effect of one per cent more", ["input", ">value", ">effect"],
            e.Inputs.Select(i => (IReadOnlyList<string>)[i.Key, Written(i.Value), i.Sensitivity is { } s ? $"{Show.Number(s, 2)} %" : "–"]));
    }

    private static string Written(object? value) => value switch
    {
        null => "–",
        double number => Show.Number(number, 6),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "–",
    };
}
