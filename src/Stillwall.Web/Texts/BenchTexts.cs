namespace Stillwall.Web.Texts;

/// <summary>Texts at the bench: few words, large.</summary>
internal static class BenchTexts
{
    internal const string Title = "At the bench",
        Back = "Back to the plan",
        Begin = "First water is in",
        Next = "Done, next",
        Finish = "The pour is over",
        Late = "I am late",
        NotLate = "Go on",
        Again = "Start over";
    internal const string Ready = "Before you start",
        ReadyAll = "All is ready",
        PouredBy = "Pour by",
        Now = "now",
        Set = "set",
        Waiting = "next",
        NothingPlanned = "There is no pour to carry out yet.";
    internal const string Soak = "Soak",
        Stir = "Stir",
        PourWord = "Pour",
        Empty = "Tap the walls",
        Wait = "Let it set",
        Over = "Poured";
    internal const string Powder = "Powder into the water, never water onto the powder.",
        StirSaid = "Slowly, without air; until no lump is left.",
        Taps = "Watch the vents.",
        WaitSaid = "The lift must set before the next one presses on it.";
    internal const string OverSaid = "Leave it. It warms and sets by itself; weigh it once the skins are cool, and log the mass.";
    internal const string StillThin = "Does it still run off the stick like cream? Pour it now, in one go.";
    internal const string PastPotLife = "The pot life is over. Do not pour this batch: throw it away and mix it again.";
    internal const string Powdered = "powder",
        Water = "water",
        AllOfIt = "all of it",
        DipStick = "on the dip stick",
        Of = "of";

    internal static string Place(int lift, int lifts, int step, int steps) => $"Lift {lift} of {lifts}, step {step} of {steps}";

    internal static string LiftIn(int lift) => $"Lift {lift} is in";

    internal static string UpTo(string height) => $"In one go, up to {height}.";

    internal static string AgainWith(string powder, string water) => $"Again: {powder} of powder, {water} of water.";

    internal static string[] Lay(string powder, string water, string? hold, string? rehearsal, bool bar, int holes) =>
        [
            .. new[]
            {
                $"{powder} of powder and {water} of water weighed, each batch by itself",
                "bucket, stick, water to wash them",
                hold is null ? null : $"{hold} on the inner sleeve until the first lift has set",
                holes > 0 ? $"{holes} drying holes taped from inside, the tape pressed down all round" : null,
                rehearsal is null ? null : $"water rehearsal done: the form took {rehearsal} of water, did not leak and is dry again",
                "the form tilted by 5°, a vent open for each bay",
                bar ? "the test-bar mould: the end of the last batch fills it" : null,
                "dust mask and gloves on",
            }.OfType<string>(),
        ];
}
