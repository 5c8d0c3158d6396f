namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Quiet.</summary>
internal static class QuietTexts
{
    internal const string Hint = "What crosses the wall at the everyday level, and how loud is polite.";
    internal const string Answer = "How loud is polite", Everyday = "everyday level at the seat", Polite = "polite up to", Worst = "if the wall is at its worst", Equalised = "with the equaliser", First = "band that breaks the curve first";
    internal const string Equaliser = "Equaliser", Kind = "kind", At = "at", Gain = "gain", NoEqualiser = "No equaliser is needed, or none helps.";
    internal const string Join = "Joining the main speakers", DelayMains = "main speakers later by", DelayCabinet = "cabinet later by", Polarity = "cabinet's polarity", Turned = "turned", AsIs = "as it is", Trim = "cabinet up by", Ripple = "ripple left";
    internal const string Asked = "What is asked";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("brief.everyday.level", "everyday bass level", "dB", 1), ("brief.everyday.programme", "programme", null, 1), ("brief.everyday.hours", "hours a day", null, 1), ("brief.neighbour.partition", "party wall", null, 1), ("brief.neighbour.area", "its area", "m2", 0.5),
        ("brief.neighbour.room_volume", "volume of the room behind", "m3", 1), ("brief.neighbour.decay_time", "decay time there", "s", 0.05), ("brief.neighbour.curve", "curve not to pass", null, 1), ("brief.neighbour.allowance", "allowance", "dB", 1),
        ("brief.mains.corner", "low corner of the mains", "Hz", 5), ("brief.mains.q", "its Q", null, 0.05),
    ];

    internal const string Delay = "delay between cabinet and mains", Corner = "corner";

    internal static string OfSection(string what, string section) => $"{what} of the {section}";

    internal static string Missing(IReadOnlyList<string> keys) => keys.Count == 0 ? "Something that is needed is not stated." : $"Not stated yet: {string.Join(", ", keys)}.";
}
