using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>quiet</c>: the neighbour question, and the equaliser that answers it.</summary>
internal static class QuietVerb
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var csv = new OutputOption("--csv", "FILE", "writes the equaliser's coefficients at 44.1, 48 and 96 kHz; - is standard output");
        var json = new Flag("--json", "the equaliser as one JSON document: kind, frequency, Q, gain, coefficients, bands before and after");
        return new Verb(
            "quiet",
            "which everyday level is polite to the neighbour, band by band, and what would help",
            "stillwall quiet my-cabinet --csv equaliser.csv"
        )
        {
            Takes = [project, csv, json],
            Do = call =>
            {
                call.OneOutput(json, csv);
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                if (call.Has(json) || call.Text(csv) is not null)
                {
                    var facts = loaded.Facts();
                    var report =
                        EqualiserReport.Of(facts.Quiet)
                        ?? throw Refusal.Input($"quiet: no equaliser can be sought yet; {KeyNames.Missing(facts.Quiet.Missing)}");
                    Deliver(call, report, csv, call.Has(json));
                    return ExitCodes.Done;
                }

                var terminal = call.Session.Terminal;
                var appraisal = Appraisal.OfStage(loaded.Project, loaded.Candidates, "Quiet");
                var rest = FloorText.Of(loaded.Facts(), terminal.Width);
                call.Session.Print(
                    QuietText.Of(loaded.Project, appraisal, terminal) + (rest.Length > 0 ? $"\n{Ink.Strong(terminal, "Ear and floor")}\n{rest}" : "")
                );
                call.Session.Print("\n" + CareText.At(WorkStep.Quiet, loaded.Facts(), terminal.Width));
                call.Session.Print(new AppraisalText(loaded, terminal).Checks(appraisal, "Quiet"));
                return ExitCodes.Done;
            },
        };
    }

    private static void Deliver(Invocation call, EqualiserReport report, OutputOption csv, bool asJson)
    {
        call.Deliver(csv, EqualiserTable.Write(report));
        if (call.Text(csv) is { } file && !asJson)
        {
            Common.SayWritten(call.Session, file, EqualiserTable.Rows(report).Count);
        }

        if (asJson)
        {
            call.Session.Print(ResultJson.Write(report));
        }
    }
}
