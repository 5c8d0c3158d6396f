using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Driver.</summary>
internal static class DriverTexts
{
    internal const string Catalogue = "Candidates in this cabinet",
        Compared = "Side by side",
        Search = "Search",
        HideFailing = "without those that fail";
    internal const string Compare = "compare",
        Name = "driver",
        Resonance = "fc, Hz",
        Q = "Qtc",
        F10 = "f10, Hz",
        Level = "level at the lowest note, dB",
        Limited = "limited by",
        Price = "price",
        Reason = "because";
    internal const string OnFront = "nothing cheaper is louder",
        Chosen = "in the cabinet",
        Choose = "Use this driver",
        Table = "The table of drivers",
        Bring = "A CSV file with one row for each driver",
        Take = "Use this file",
        Fetch = "Download the present table";

    internal const string VerdictOf = "verdict";

    internal static string Hint(int n) => $"{n} candidates, ranked in this cabinet, in this spot, on this amplifier; the best first.";

    internal static string Count(int shown, int all) => shown == all ? $"{all} drivers" : $"{shown} of {all} drivers";

    internal static string CompareWith(string name) => $"compare {name}";

    internal static string ChooseNamed(string name) => $"{Choose}: {name}";

    internal static string ChosenNamed(string name) => $"driver {name}";

    internal static string MoreReasons(int n) => n == 1 ? "one more reason" : $"{n} more reasons";

    /// <summary>What a finding is about, in the words of its id.</summary>
    internal static string TopicOf(string id) => id[(id.IndexOf('/', StringComparison.Ordinal) + 1)..].Replace('-', ' ');

    internal static string Unjudged(IReadOnlyList<string> topics) => $"not judged: {string.Join(", ", topics)}";

    internal static string Faulty(int n) =>
        n == 1 ? "One fault in the table; the row is left out of the ranking:" : $"{n} faults in the table; rows with one are left out of the ranking:";

    internal static string Imported(string file) => $"drivers from {file}";

    /// <summary>What is put side by side; with its result where it is computed, else it is the data sheet's.</summary>
    internal static IReadOnlyList<(string Name, string? Result, Func<DriverSheet?, RankedDriver?, string?> Of)> Lines(Show show) =>
        [
            (VerdictOf, null, (_, r) => r?.Verdict.ToString().ToLowerInvariant()),
            ("resonance in this cabinet", "box.system_resonance_hz", (_, r) => r?.SystemResonanceHz is { } f ? Show.Frequency(f) : null),
            ("Qtc", "box.system_q", (_, r) => r?.SystemQ is { } q ? Show.Number(q) : null),
            ("f3 (−3 dB)", "box.f3_hz", (_, r) => r?.F3Hz is { } f ? Show.Frequency(f) : null),
            ("f10 (−10 dB)", "box.f10_hz", (_, r) => r?.F10Hz is { } f ? Show.Frequency(f) : null),
            ("greatest level at the lowest note", "box.max_spl_at_lowest_db", (_, r) => r?.MaxSplAtLowestDb is { } l ? Show.Level(l) : null),
            ("limited by", null, (_, r) => r?.LimitedByAtLowest?.Word()),
            ("price", null, (_, r) => r?.Price is { } p ? show.Money(p) : null),
            ("fs", null, (s, _) => s?.FsHz is { } f ? Show.Frequency(f) : null),
            ("Qts", "driver.qts", (s, _) => s is { Qms: { } m, Qes: { } e } ? Show.Number(m * e / (m + e)) : null),
            ("Vas", null, (s, _) => s?.VasM3 is { } v ? show.Volume(v) : null),
            ("Xmax, one way", null, (s, _) => s?.XmaxM is { } x ? show.Length(x) : null),
            ("power", null, (s, _) => s?.PowerW is { } p ? $"{Show.Number(p)} W" : null),
            ("Re", null, (s, _) => s?.ReOhm is { } r ? $"{Show.Number(r)} ohm" : null),
            ("flange", null, (s, _) => s?.FlangeM is { } f ? show.Length(f) : null),
            ("cut-out", null, (s, _) => s?.CutoutM is { } c ? show.Length(c) : null),
            ("depth", null, (s, _) => s?.DepthM is { } d ? show.Length(d) : null),
            ("mass", null, (s, _) => s?.MassKg is { } m ? show.Mass(m) : null),
        ];
}
