namespace Stillwall.Projects;

/// <summary>Names that keys and findings had once: refused like any unknown word, with the present name beside it.</summary>
internal static class FormerNames
{
    private static readonly (string Former, string Now)[] Words =
    [
        ("mains_ripple", "main_speakers_ripple"),
        ("mains", "main_speakers"),
        ("second_cone", "passive_radiator"),
        ("quiet/joins-the-mains", "quiet/matches-the-main-speakers"),
        ("proof/pushes-as-the-join-asks", "proof/polarity-matches-the-main-speakers"),
    ];

    /// <summary>The present name for a former one.</summary>
    /// <param name="word">A key, a dotted key or a finding's id, as written.</param>
    /// <returns>What it is called now; null where it was never called otherwise.</returns>
    internal static string? Now(string word)
    {
        var parts = word.Split('.');
        var now = parts.Select(part => Words.FirstOrDefault(w => w.Former == part).Now ?? part).ToList();
        return now.SequenceEqual(parts) ? null : string.Join('.', now);
    }
}
