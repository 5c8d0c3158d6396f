using Stillwall.Appraisals;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the frame round every stage.</summary>
internal static class ShellTexts
{
    internal const string Product = "Stillwall",
        Stages = "Stages",
        ToTheDrawing = "To the drawing",
        Verdicts = "Verdicts",
        Findings = "Findings";
    internal const string Why = "why",
        Close = "Close",
        Undo = "Undo",
        Redo = "Redo",
        Projects = "Projects",
        Next = "Next",
        Care = "Take care",
        CareSteps = "Take care, step by step";

    internal static string CareAt(Stillwall.Appraisals.Care.WorkStep step) => $"{Care}: {Stillwall.Appraisals.Care.WorkSteps.Word(step)}";

    internal const string Dark = "Dark",
        Light = "Light";
    internal const string FollowedFile = "Another program changed the project file; this page follows it.";

    internal const string Understood = "Understood";
    internal const string Conflict = "Another program changed the project file while it was changed here. Nothing is saved until you choose.";
    internal const string TakeTheirs = "Take what is in the file",
        KeepMine = "Keep what is here";
    internal const string NotFromThisPage = "not sent from this page; the form on it",
        NoFile = "no file was sent; one file";
    internal const string Saved = "Saved",
        Saving = "saving",
        NotSaved = "Not saved",
        Revision = "revision {0}";
    internal const string Computing = "computing",
        Scrollable = "table, scrolls sideways where it is wider than the page";
    internal const string Reconnecting = "The page has lost its program and tries to reach it again.",
        Reload = "Load the page again",
        Ended = "The program has ended. Start it again, then load the page anew.";
    internal const string NothingThere = "There is nothing at this address.",
        ToTheStart = "To the first stage";
    internal const string CannotOpen = "The project cannot be opened";
    internal const string DoneUndo = "Done. Undo";
    internal const string Seeking = "seeking what would mend it";
    internal const string Sheet = "Workshop sheet",
        Pour = "Pour",
        ClosedBox = "Closed box in a plaster double shell",
        FirstAngle = "First-angle projection";
    internal const string NetVolume = "Net volume",
        Resonance = "Resonance",
        SystemQ = "System Q",
        Mass = "Mass",
        Printing = "Printing",
        Price = "Price";
    internal const string Unknown = "unknown",
        NotKnown = "–";

    internal static readonly string[] StageNames = ["Brief", "Driver", "Cabinet", "Walls", "Parts", "Pour", "Supplies", "Quiet", "Proof", "Logbook"];

    internal static string FollowedPage(string what) => $"Another page changed this project ({what}); this page follows it.";

    internal static string Hold(int n) => $"{n} hold,";

    internal static string Tight(int n) => $"{n} tight,";

    internal static string Fail(int n) => $"{n} fail";

    internal static string UnknownUntil(int n) => $"{n} unknown until more is stated or built";

    internal static string Those(int n) => n == 1 ? "The one that holds" : $"The {n} that hold";

    internal static string TheUnknown(int n) => n == 1 ? "The one that is unknown" : $"The {n} that are unknown";

    /// <summary>What of a stage holds or does not.</summary>
    internal static string Count(IEnumerable<Verdict> verdicts)
    {
        var all = verdicts.ToList();
        int Of(Verdict verdict) => all.Count(v => v == verdict);
        var holds = Of(Verdict.Holds);
        return all.Count == 0 ? "nothing checked"
            : holds == all.Count
                ? holds switch
                {
                    1 => "it holds",
                    2 => "both hold",
                    _ => $"all {holds} hold",
                }
            : string.Join(
                ", ",
                new[] { (Of(Verdict.Fails), "fails"), (Of(Verdict.Tight), "tight"), (Of(Verdict.Unknown), "unknown") }
                    .Where(c => c.Item1 > 0)
                    .Select(c => c is ( > 1, "fails") ? $"{c.Item1} fail" : $"{c.Item1} {c.Item2}")
            );
    }

    internal static string FigureWhy(string figure, string what) => $"{figure}, why {what}?";

    internal static string WhyOf(string what) => $"Why {what}?";

    internal static string MarginOf(string topic) => $"margin of: {topic}";

    internal static string Spare(string amount, bool isOver) => isOver ? $"{amount} past the limit" : $"{amount} to spare";
}
