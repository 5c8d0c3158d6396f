namespace Stillwall.Web.Texts;

/// <summary>What is written about the charts, in one place.</summary>
public static class ChartTexts
{
    internal const string Questions = "Question",
        More = "Lines, table, files",
        Lines = "Lines",
        AsTable = "As a table",
        Files = "Files",
        Band = "band",
        To = "to",
        Before = "before";
    internal const string BandOfDoubt = "band of doubt",
        CrossHair = "Cross-hair: left and right arrows move it along the line, with Shift ten times as far";
    internal const string BeingComputed = "being computed",
        Nothing = "There is nothing to draw yet.",
        UnknownChart = "no such chart",
        NothingOpen = "no project is open",
        NoFont = "no sans font on this machine to write labels with; take the SVG";

    internal const string LineOf = "Every line by the same formula";

    internal static string CellOf(string column, string row) => $"{column} at {row}";

    internal static string AnswerOf(string question) => $"the answer to “{question}”";

    internal static string LineOfChart(string question) => $"the line of “{question}”";

    internal static string Picture(string title) => $"{title} The same as numbers: {More}, {AsTable}.";
}
