namespace Stillwall.Web.Texts;

/// <summary>Texts beside the figures of the title block.</summary>
internal static class TitleTexts
{
    internal static string Inside(string volume) => $"{volume} inside";

    internal static string Under(string frequency) => $"f10 {frequency} Hz";

    internal static string Wanted(string from, string to) => $"wanted {from} to {to}";

    internal static string ToLift(string mass) => $"of {mass} to lift";

    internal static string Longest(string time) => $"longest over {time}";

    internal static string Budget(string money) => $"of {money}";
}
