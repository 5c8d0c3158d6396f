using Stillwall.Appraisals;
using Stillwall.Neighbours;

namespace Stillwall.Cli.Output;

/// <summary>What the ear gets in a day, and what the floor gets at full level.</summary>
internal static class FloorText
{
    internal static string Of(Facts facts, int width) => Wrapped(Ear(facts), width) + Wrapped(Floor(facts), width) + Wrapped(Pads(facts), width);

    private static string Wrapped(string? line, int width) => line is null ? "" : Words.Wrapped(line, width) + "\n";

    private static string? Ear(Facts facts)
    {
        if (facts.Quiet is not { SeatADb: { } a, SeatCDb: { } c })
        {
            return null;
        }

        var levels = $"At the seat {Show.Level(a)} A-weighted, {Show.Level(c)} C-weighted from the bass alone";
        return facts.Project.Brief.Everyday?.Hours is > 0 and var hours
            ? $"{levels}; {Show.Number(hours, 2)} h a day are {Dose(Hearing.DoseRatio(a, hours))} of a day's recommended dose, "
                + $"{Show.Level(Hearing.DailyExposureDb([new Exposure(a, hours)])!.Value)} over eight hours. A-weighting hides bass."
            : $"{levels}. A-weighting hides bass.";
    }

    private static string? Floor(Facts facts)
    {
        if (facts.Floor is not { } floor || facts.Project.Brief.Aim?.LowestHz is not { } lowest)
        {
            return null;
        }

        var feet = floor.FeetResonanceHz is { } sways
            ? $" on feet that sway at {Show.Frequency(sways)}{(floor.RockingHz is { } rocks ? $" and rock at {Show.Frequency(rocks)}" : "")}"
            : " on rigid feet";
        return $"Floor: at {Show.Frequency(lowest)} and full level the cone pushes the cabinet with {facts.Show.Force(floor.ReactionN)} peak along its "
            + $"axis, which lies level;{feet} {facts.Show.Force(floor.FloorN)} go into the floor ({Show.Level(floor.ReRigidDb)}). Friction holds "
            + $"{facts.Show.Force(floor.FrictionN)}: it {(floor.FrictionRatio < 1 ? "walks" : "stays")}.";
    }

    private static string? Pads(Facts facts) =>
        facts.Pads is { } pads && facts.Project.Brief.Aim?.LowestHz is { } lowest && facts.Mass.FinishedKg is { } mass
            ? $"Pads that suit {facts.Show.Mass(mass)} and {Show.Frequency(lowest)}: four of soft rubber (shear modulus "
                + $"{facts.Show.Pressure(pads.ShearModulusPa)}, from memory), {facts.Show.Length(pads.ThicknessM)} thick, "
                + $"{facts.Show.Length(pads.DiameterM)} across; together {Stiffness(facts.Show, pads.StiffnessNPerM)}, {Show.Level(pads.ReRigidDb)}. "
                + "Rubber scatters by a third."
            : null;

    private static string Dose(double ratio) => ratio < 0.001 ? "less than 0.1 %" : Show.Percent(ratio);

    private static string Stiffness(Show show, double stiffness) =>
        show.Inch ? show.Stated(stiffness, Projects.Dimension.Stiffness) : $"{Show.Number(stiffness / 1e3)} kN/m";
}
