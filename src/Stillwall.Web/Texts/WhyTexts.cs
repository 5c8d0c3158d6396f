using System.Globalization;
using Stillwall.Appraisals.Explaining;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the sheet that says why.</summary>
internal static class WhyTexts
{
    internal const string From = "from",
        Value = "value",
        Moves = "+1 % moves it",
        Nothing = "nothing is known of it yet";

    internal const string ToItsField = "To its field";
    internal const string OfRecording = "What goes in is sound, which has no one per cent more.";
    internal const string InSteps =
        "What one per cent more of an input does is not told: the inputs are words, whole numbers or other results, or the result goes in steps.";

    /// <summary>What is stated, and under which key.</summary>
    internal static string StatedAs(string key) => $"stated in the project file: {key}";

    /// <summary>What was asked for, and with which driver.</summary>
    internal static string Named(string? name, string? driver) => driver is null ? name ?? "" : $"{name}, with the {driver}";

    internal static string More(int n) => $"and {n} more inputs behind these";

    /// <summary>What one per cent more of an input does.</summary>
    internal static string Effect(ExplainedInput input, string unit) =>
        input switch
        {
            { Sensitivity: { } s } => $"{s.ToString("+0.00;−0.00;0.00", CultureInfo.InvariantCulture)} {(unit == "dB" ? "dB" : "%")}",
            { Acts: Acting.Smooth } => "moves it",
            { Acts: Acting.Steps } => "in steps",
            { Acts: Acting.Inactive } => "not reached now",
            _ => "",
        };
}
