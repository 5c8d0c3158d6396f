using Stillwall.Appraisals.WallChoices;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Walls.</summary>
internal static class WallTexts
{
    internal const string Hint =
        "The six walls unfolded, to scale: the lowest resonance of each, and its level relative to the cone in the worst case that applies.";
    internal const string UnfoldedTitle = "The six walls unfolded, each with its lowest resonance and its level relative to the cone",
        Table = "Lowest resonance, and level relative to the cone",
        Nothing = "Sizes, skin and cast of the wall are needed first; see Cabinet and the materials above.";
    internal const string Panel = "wall",
        Span = "clear span",
        Bonded = "core bonded",
        Slipping = "skins slipping",
        Cut = "core cut by struts",
        Materials = "Materials";

    internal const string Kinds = "Kinds of wall in the same outside",
        Compare = "Compare them",
        Comparing = "comparing; the lightest wall is sought among some hundred",
        Kind = "wall",
        Mode = "mode",
        Sound = "relative to the cone",
        Mass = "finished",
        Net = "net",
        Price = "price",
        Print = "print, at least",
        Poured = "passage for the mix",
        Because = "fails",
        Take = "Use this wall",
        Taken = "the lightest wall";
    internal const string KindsHint =
        "Worst panel and case, edges supported. A lattice is one cell across the core, two nozzles thick; the stiffness of an empty one is known to a "
        + "factor of 1.5.";

    internal const string Strengths = "Strengths that are assumed, and what is asked of them";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] StrengthKeys =
    [
        ("limits.keyed_strength", "shear strength of cast on its keys", "MPa", 0.1),
        ("limits.sealant_strength", "strength of the sealant", "MPa", 0.01),
        ("limits.joint_safety", "safety factor of the joints", null, 0.5),
        ("limits.insert_pull_out", "one of your own inserts pulled out at", "N", 50),
        ("limits.screw_torque", "torque of the driver's screws", "N*m", 0.05),
        ("limits.insert_safety", "safety factor of the inserts", null, 0.5),
        ("limits.gasket_pressure", "pressure the gasket needs", "kPa", 1),
        ("limits.tilt", "least tipping angle", "deg", 1),
    ];

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("materials.skin", "skins", null, 1),
        ("materials.cast.mix", "cast", null, 1),
        ("materials.cast.powder_per_water", "powder to water", null, 0.1),
        ("limits.wall_to_cone", "greatest level relative to the cone", "dB", 1),
        ("measured.core_modulus", "modulus of the core, measured", "GPa", 0.1),
    ];

    internal const string LightestMass = "the lightest wall's finished mass",
        LightestSaving = "what the lightest wall saves",
        Less = "less than now";

    /// <summary>Whether the mix flows through it.</summary>
    internal static string Flows(WallKind kind) =>
        kind.CanBePoured is { } flows
            ? flows
                ? ", yes"
                : ", no"
            : "–";

    internal static string WithKind(string what, string kind) => $"{what}, {kind}";

    internal const string NoneLight = "No core from 4 to 30 mm with up to two braces passes all of walls and pour.",
        LightestIs = "The lightest double skin that passes all of walls and pour: core",
        StrutsEvery = "struts every",
        LightestCore = "the lightest wall's core",
        LightestPitch = "the lightest wall's struts",
        LightestBraces = "the lightest wall's braces";

    internal static string Braces(int count) =>
        count switch
        {
            0 => "no brace",
            1 => "one brace",
            _ => "braces",
        };

    /// <summary>Why it is not thinner.</summary>
    internal static string Thinner(LightestWall light) => light.HeldBy.Count > 0 ? $"A core 1 mm thinner fails: {string.Join("; ", light.HeldBy)}." : "";

    internal static string SpanOf(string panel) => $"clear span of the {panel} wall";

    internal static string SoundOf(string panel) => $"sound of the {panel} wall relative to the cone";

    internal static string ModeOf(string panel) => $"lowest resonance of the {panel} wall";
}
