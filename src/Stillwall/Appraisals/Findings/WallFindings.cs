using Stillwall.Walls;
using static Stillwall.Appraisals.Findings.Judgement;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the walls.</summary>
internal static class WallFindings
{
    private static readonly Lever ThickerCore = new("cabinet.core", Toward.More, 0.0005, "core {new} instead of {old}");
    private static readonly Lever MoreBraces = new("cabinet.braces", Toward.More, 1, "{new} braces instead of {old}");
    private static readonly Lever ThickerSkins = new("cabinet.outer_skin+cabinet.inner_skin", Toward.More, 0.0001, "skins of {new} instead of {old}");
    private static readonly Lever CloserStruts = new("cabinet.strut_pitch", Toward.Less, 0.001, "struts every {new} instead of {old}");

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Walls",
            "panel resonance above the working range",
            "first-order shear plate with supported edges, the softer bound; the front with its opening and the driver's mass; the limit is our choice",
            new("panel-modes", "walls[].first_mode_hz"),
            Resonance,
            [MoreBraces, ThickerCore, ThickerSkins]
        ),
        new(
            "Walls",
            "wall sound below the cone",
            "box pressure on shear plates with supported edges, static deflection and first mode; the limit is our choice",
            new("wall-to-cone", "walls[].wall_to_cone_db"),
            Sound,
            [MoreBraces, ThickerCore, ThickerSkins]
        ),
        new("Walls", "not heavier than it need be", "our choice: advice once the walls are 45 dB below the cone", new("thinnest-core"), Heaviness),
        new(
            "Walls",
            "core keyed to the skins",
            "area of undercut keys, struts and slots on the drawn section; 30 % within 80 mm of an end and the limit elsewhere are our choice",
            new("keyed-fraction"),
            Keyed,
            [CloserStruts, ThickerCore]
        ),
        new(
            "Walls",
            "inner skin stays on",
            "setting and cooling strain over half the width against the undercut of the keys (expansion from memory)",
            new("skin-gap", "pour.expected_peak_c"),
            SkinGap,
            [CloserStruts, ThickerCore]
        ),
        new(
            "Walls",
            "lifted by the front, hung by the rear",
            "shear on keys and on sealant as the limits state it (0.5 and 0.1 MPa, from memory) against twice the weight",
            new("joint-safety", "mass.finished_kg"),
            Joint,
            new Lever("cabinet.strut_pitch", Toward.Less, 0.001, "struts every {new} instead of {old}")
        ),
        new(
            "Walls",
            "driver screws hold",
            "pull-out of threaded inserts, the low end of what is reported (from memory) unless you state your own; what the screws leave on the gasket",
            new("insert-safety", "box.net_volume_m3", "box.system_resonance_hz"),
            Screws
        ),
        new(
            "Walls",
            "stands without tipping",
            "elementary statics: base between the feet over the height of the centre of mass",
            new("tilt", "mass.finished_kg"),
            Tipping,
            new Lever("cabinet.outside.width", Toward.More, 0.001, "width {new} instead of {old}")
        ),
    ];

    private static Judgement Resonance(Facts f)
    {
        if (f.WorstMode is not { } worst)
        {
            return Unknown("Hz", f.MissingForWalls);
        }

        return f.WorkingRangeHz(f.Limits.PanelModeRatio) is not { } limit
            ? Unknown("Hz", "brief.aim.crossover")
            : AtLeast(
                worst.ModeHz,
                limit,
                "Hz",
                Nearness.Tenth,
                $"the {worst.Panel} panel, {worst.Case}, first resonates at {Show.Frequency(worst.ModeHz)}; the cabinet works up to {Show.Frequency(limit)}"
            );
    }

    private static Judgement Sound(Facts f)
    {
        if (f.WorstSound is not { } worst)
        {
            return Unknown("dB", f.MissingForWallSound);
        }

        return AtMost(
            worst.LevelDb,
            f.Limits.WallToConeDb,
            "dB",
            Nearness.Level,
            $"the {worst.Panel} wall, {worst.Case}, is {Show.Level(Math.Abs(worst.LevelDb))} {(worst.LevelDb <= 0 ? "below" : "above")} the cone at the "
                + "worst frequency up to twice the crossover"
        );
    }

    private static Judgement Heaviness(Facts f)
    {
        if (f.WorstSound is not { } worst || f.Sizes is null)
        {
            return Unknown("m", f.MissingForWallSound);
        }

        var core = f.Project.Cabinet!.CoreM!.Value;
        if (worst.LevelDb >= -45)
        {
            return new Judgement(Verdict.Holds, core, core, "m", 0, $"the walls are {Show.Level(-worst.LevelDb)} below the cone: no more than is sensible");
        }

        var (thinnest, lighter) = f.ThinnestCore;
        return new Judgement(
            Verdict.Holds,
            core,
            thinnest,
            "m",
            core - thinnest,
            thinnest < core - 5e-4
                ? $"for sound alone a core of {f.Show.Length(thinnest)} would do and save {f.Show.Mass(lighter)}; what keeps it at {f.Show.Length(core)} "
                    + "is the mix, which must flow past the keys"
                : $"the walls are {Show.Level(-worst.LevelDb)} below the cone, and no thinner core would do everything else"
        );
    }

    private static Judgement Keyed(Facts f)
    {
        if (f.Geometry is not { Sizes.Core: > 0 } geometry)
        {
            return f.Geometry is null ? Unknown("1", "cabinet.outside") : NoCore("1");
        }

        var (elsewhere, ends) = geometry.KeyedFractions();
        var (value, limit, where) =
            ends / Facts.KeyedAtEnds < elsewhere / f.Limits.KeyedFraction
                ? (ends, Facts.KeyedAtEnds, "near the ends")
                : (elsewhere, f.Limits.KeyedFraction, "away from the ends");
        return AtLeast(
            value,
            limit,
            "1",
            Nearness.Tenth,
            $"{Show.Percent(value)} of the skins are keyed {where}, {Show.Percent(limit)} wanted; below that the skin counts as slipping"
        );
    }

    private static Judgement SkinGap(Facts f)
    {
        if (f.Geometry is not { Sizes.Core: > 0 })
        {
            return f.Geometry is null ? Unknown("m", "cabinet.outside") : NoCore("m");
        }

        if (f.SkinGapM is not { } gap)
        {
            return Unknown("m", f.MissingForHeat);
        }

        var undercut = f.IsKeyed ? ((Cabinets.BuildUp.KeyHead - Cabinets.BuildUp.KeyFoot) / 2).InMetres() : 0;
        return AtMost(
            gap,
            undercut,
            "m",
            Nearness.Tenth,
            $"as it sets and cools the cast would part by {f.Show.Length(gap)} from an inner skin without keys, which then buzzes; "
                + (f.IsKeyed ? $"the keys reach {f.Show.Length(undercut)} under the core and hold it" : "the keys are too few to hold it")
        );
    }

    private static Judgement Joint(Facts f)
    {
        if (f.JointSafety is not { } safety)
        {
            return Unknown("1", f.MissingForMass);
        }

        return AtLeast(
            safety,
            f.Limits.JointSafety,
            "1",
            Nearness.Tenth,
            $"the weakest joint holds twice the cabinet's weight {Show.Number(safety, 2)} times over"
        );
    }

    private static Judgement Screws(Facts f)
    {
        if (f.Screws is not { } insert)
        {
            return Unknown("1", f.Sheet is null ? f.MissingForDriver : "driver.bolt");
        }

        var judged = AtLeast(
            insert.Safety,
            f.Limits.InsertSafety,
            "1",
            Nearness.Tenth,
            $"at {f.Show.Torque(insert.TorqueNM)} each screw pulls {f.Show.Force(insert.LoadN)} on its insert, which pulls out at about "
                + $"{f.Show.Force(insert.PullOutN)}"
        );
        if (judged.Verdict != Verdict.Fails)
        {
            return insert.GasketPa is { } gasket ? WithGasket(f, judged, gasket) : judged;
        }

        // What cone and box pressure pull stays; the rest of what the insert may carry is left for the torque.
        var allowed = insert.PullOutN / f.Limits.InsertSafety;
        var preload = Inserts.PreloadN(insert.TorqueNM, f.Sheet!.BoltM!.Value);
        var left = allowed - (insert.LoadN - preload);
        return judged with
        {
            Remedy =
                left > 0
                    ? $"tighten to {f.Show.Torque(insert.TorqueNM * left / preload)}, or pull out one of your own inserts and state what it held "
                        + "(limits.insert_pull_out)"
                    : $"more or larger screws: each may carry {f.Show.Force(allowed)}, and the cone alone pulls {f.Show.Force(insert.LoadN - preload)}",
        };
    }

    private static Judgement WithGasket(Facts f, Judgement judged, double gasket)
    {
        var because = $"{judged.Because}; {f.Show.Pressure(gasket)} press on the gasket; it needs {f.Show.Pressure(f.Limits.GasketPressurePa)}";
        return gasket < f.Limits.GasketPressurePa
            ? AtLeast(gasket, f.Limits.GasketPressurePa, "Pa", Nearness.Tenth, because) with
            {
                Remedy = "take a softer gasket and state what it needs (limits.gasket_pressure), or tighten the screws more (limits.screw_torque)",
            }
            : judged with
            {
                Because = because,
            };
    }

    private static Judgement Tipping(Facts f)
    {
        if (f.Balance is not { } tips)
        {
            return Unknown("deg", f.MissingForMass);
        }

        return AtLeast(
            tips.TippingDeg,
            f.Limits.TiltDeg,
            "deg",
            Nearness.Tenth,
            $"leaned by {Show.Number(tips.TippingDeg, 2)}° it tips over {tips.Over}; its centre of mass lies {f.Show.Length(tips.CentreDepthM)} behind "
                + "the front"
        );
    }

    private static Judgement NoCore(string unit) => new(Verdict.Holds, null, null, unit, null, "a single printed wall has no core");
}
