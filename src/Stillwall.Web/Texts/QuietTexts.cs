using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Quiet.</summary>
internal static class QuietTexts
{
    internal const string Hint = "What crosses the wall at the everyday level, and how loud is polite.";
    internal const string Answer = "How loud is polite",
        Everyday = "everyday level at the seat",
        Polite = "polite up to",
        Worst = "if the wall is at its worst",
        Equalised = "with the equaliser",
        First = "band that breaks the curve first";
    internal const string Equaliser = "Equaliser",
        Kind = "kind",
        At = "at",
        Gain = "gain",
        NoEqualiser = "No equaliser is needed, or none helps.",
        Coefficients = "Its coefficients for the usual sampling rates, CSV";
    internal const string Join = "Joining the main speakers",
        DelayMainSpeakers = "main speakers later by",
        DelayCabinet = "cabinet later by",
        Polarity = "cabinet's polarity",
        Turned = "turned",
        AsIs = "as it is",
        Trim = "cabinet up by",
        Ripple = "ripple left";
    internal const string Asked = "What is asked";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("brief.everyday.level", "everyday bass level", "dB", 1),
        ("brief.everyday.programme", "programme", null, 1),
        ("brief.everyday.hours", "hours a day", null, 1),
        ("brief.neighbour.partition", "party wall", null, 1),
        ("brief.neighbour.area", "area of the party wall", "m2", 0.5),
        ("brief.neighbour.room_volume", "volume of the neighbour's room", "m3", 1),
        ("brief.neighbour.decay_time", "decay time of the neighbour's room", "s", 0.05),
        ("brief.neighbour.curve", "limit curve", null, 1),
        ("brief.neighbour.allowance", "allowance", "dB", 1),
        ("brief.neighbour.a_weighted_limit", "at most, A-weighted", "dB", 1),
        ("brief.neighbour.c_weighted_limit", "at most, C-weighted", "dB", 1),
        ("brief.everyday.quiet_hours.level", "level in the quiet hours", "dB", 1),
        ("brief.main_speakers.corner", "low corner of the main speakers", "Hz", 5),
        ("brief.main_speakers.q", "Q of that corner", null, 0.05),
    ];

    internal const string Delay = "delay between cabinet and main speakers",
        Corner = "corner";

    internal const string Map = "Where to stand and sit",
        MapAt = "at",
        MapHint =
            "Brown: louder than the room's mean; grey: softer. What the seat gains over the mean the neighbour does not get. Move cabinet and seat with "
            + "the pointer or the arrow keys, half a metre at a time with Shift.",
        SearchPlaces = "Search all places",
        StopSearch = "Stop",
        Loudest = "Most at the seat for what the room gets",
        Evenest = "Most even bass",
        TakePlaces = "Stand and sit there",
        Louder = "Louder or softer than every day",
        AsEveryDay = "As every day",
        WithEqualiser = "With the equaliser",
        WithoutEqualiser = "Without the equaliser",
        Own = "Own settings",
        BackToSought = "Back to the computed one",
        ForNow = "for now",
        EveryDay = "every day, without equaliser";

    internal const string SeatAgainstMean = "the seat against the room's mean",
        NextDoorWhy = "next door at the everyday level",
        NextDoorEqualisedWhy = "next door behind the equaliser";

    /// <summary>Upper end of the bands that a search of places counts, Hz.</summary>
    internal static double HighestHz(Stillwall.Projects.Project? project) => Math.Clamp(project?.Brief.Aim?.CrossoverHz ?? 100, 25, 160);

    internal static string MapSaid(string frequency) => $"Plan of the room: level over its mean at {frequency}";

    internal static string Moves(string what, string x, string y) => $"{what}, {x} from the left, {y} from the front; arrow keys move it";

    internal static string SeatOverMean(string level, string frequency) => $"At {frequency} the seat has {level} against the room's mean.";

    internal static string Moved(string what) => $"{what.ToLowerInvariant()} moved";

    internal static string Place(string name, string cabinet, string seat) => $"{name}: cabinet at {cabinet}, seat at {seat}:";

    internal const string AgainstNow = "against now, uneven by",
        Gained = "what these places gain",
        Uneven = "unevenness of the bass there";

    internal static string PlacesHint(int tried) => $"{tried} pairs of places tried in the rigid room; differences under 1 dB mean nothing in a real one.";

    internal static string AtSetting(string seat, string change) => $"{seat} at the seat, {change} against every day";

    internal static string NextDoor(double overDb, string over, string band, string doubt) =>
        overDb > 0
            ? $"Next door the band at {band} is {over} over the curve, give or take {doubt}."
            : $"Next door every band stays under the curve, the nearest at {band} by {over}, give or take {doubt}.";

    internal static string OfSection(string what, SectionKind section) => $"{what} of the {section.Word()}";

    internal static string Missing(IReadOnlyList<string> keys) =>
        keys.Count == 0 ? "Something that is needed is not stated." : $"This cannot be said yet; {Stillwall.Projects.KeyNames.Missing(keys)}.";
}
