namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Walls.</summary>
internal static class WallTexts
{
    internal const string Hint = "The six walls unfolded, to scale: the lowest resonance of each, and its level against the cone in the worst case that applies.";
    internal const string UnfoldedTitle = "The six walls unfolded, each with its lowest resonance and its level against the cone", Table = "Lowest resonance, and level against the cone", Nothing = "Sizes, skin and cast of the wall are needed first; see Cabinet and the materials above.";
    internal const string Panel = "wall", Span = "clear span", Bonded = "core bonded", Slipping = "skins slipping", Cut = "core cut by struts", Materials = "Materials";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("materials.skin", "skins", null, 1), ("materials.cast.mix", "cast", null, 1), ("materials.cast.powder_per_water", "powder to water", null, 0.1), ("limits.wall_to_cone", "wall against cone at most", "dB", 1), ("measured.core_modulus", "modulus of the core, measured", "GPa", 0.1),
    ];

    internal static string ModeOf(string panel) => $"lowest resonance of the {panel} wall";
}
