using Stillwall.Cabinets;
using Stillwall.Projects;
using static Stillwall.Appraisals.Findings.Judgement;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the driver.</summary>
internal static class DriverFindings
{
    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Driver",
            "parameters agree with one another",
            "relations between small-signal parameters, IEC 60268-5:2003 (from memory); the limit is our choice",
            new("parameter-mismatch"),
            Agreement
        ),
        new(
            "Driver",
            "fits the front",
            "geometry: flange, bolt circle and opening against sides and skins",
            new("front-fit"),
            Front,
            [
                new Lever("cabinet.openings.recess", Toward.Less, 0.0001, "a recess of {new} instead of {old}"),
                new Lever("cabinet.outside.width", Toward.More, 0.001, "width {new} instead of {old}"),
                new Lever("cabinet.outside.height", Toward.More, 0.001, "height {new} instead of {old}"),
                new Lever("cabinet.outside.width+cabinet.outside.height", Toward.More, 0.001, "width and height {new} instead of {old}"),
            ]
        ),
        new(
            "Driver",
            "clear of braces, skins and rear",
            "geometry: depth of the driver and air behind the magnet; the distance is our choice",
            new("driver-depth"),
            Depth,
            [
                new Lever("cabinet.openings.recess", Toward.Less, 0.0001, "a recess of {new} instead of {old}"),
                new Lever("cabinet.outside.depth", Toward.More, 0.001, "depth {new} instead of {old}"),
                new Lever("cabinet.braces", Toward.Less, 1, "{new} braces instead of {old}"),
            ]
        ),
        new(
            "Driver",
            "amplifier can drive it",
            "least impedance of the network between 10 Hz and 1 kHz against the amplifier's stated load",
            new("minimum-impedance", "box.minimum_impedance_ohm"),
            Load
        ),
    ];

    private static Judgement Agreement(Facts f)
    {
        if (f.Resolution is not { Driver: not null } resolution)
        {
            return Unknown("1", f.MissingForDriver);
        }

        var limit = f.Limits.ParameterMismatch;
        if (resolution.Mismatches.MaxBy(m => Math.Abs(m.DeviationRatio)) is not { } worst)
        {
            return AtMost(0, limit, "1", Nearness.Tenth, "the data sheet states nothing twice, so nothing can disagree");
        }

        return AtMost(
            Math.Abs(worst.DeviationRatio),
            limit,
            "1",
            Nearness.Tenth,
            $"the data sheet's {KeyNames.Symbol(worst.Parameter)} is {Show.Percent(Math.Abs(worst.DeviationRatio))} from what its other figures give"
        ) with
        {
            Remedy = Math.Abs(worst.DeviationRatio) > limit ? $"measure the driver before anything is printed: one of its printed figures is wrong" : null,
        };
    }

    private static Judgement Front(Facts f)
    {
        if (f.Hollow is not { } hollow || f.Sheet is not { CutoutM: { } cutout } sheet)
        {
            return Unknown(
                "m",
                f.Hollow is null ? "cabinet.outside"
                    : f.Sheet is null ? f.MissingForDriver
                    : "driver.cutout"
            );
        }

        var worst = FrontFit.Of(hollow.Sizes, sheet, cutout)[0];
        if (hollow.Sizes.Recess > 0 && sheet.FlangeM is null && worst.SpareM >= 0)
        {
            // How wide the recess is to be nobody knows: none is drawn.
            return Unknown("m", "driver.flange");
        }

        return AtLeast(
            worst.SpareM,
            0,
            "m",
            Nearness.Fit,
            worst.SpareM >= 0
                ? $"the {worst.What} has {f.Show.Length(worst.SpareM)} to spare"
                : $"the {worst.What} lacks {f.Show.Length(-worst.SpareM)} of room"
        );
    }

    private static Judgement Depth(Facts f)
    {
        if (f.Hollow is not { } hollow)
        {
            return Unknown("m", "cabinet.outside");
        }

        if (f.Sheet is not { DepthM: { } depth } sheet)
        {
            return Unknown("m", f.Sheet is null ? f.MissingForDriver : "driver.depth");
        }

        var clearance = f.Limits.MagnetClearanceM;
        var passes = sheet.MagnetDiameterM is { } magnet && magnet + 2 * clearance <= hollow.BraceWindowM;
        var sunk = sheet.FlangeM is null ? 0 : hollow.Sizes.Recess.InMetres();
        var room = hollow.RoomForDriverM(passes) - sunk;
        return AtMost(
            depth + clearance,
            room,
            "m",
            Nearness.Fit,
            $"the driver is {f.Show.Length(depth)} deep and needs {f.Show.Length(clearance)} of air behind it; there are {f.Show.Length(room)} "
                + $"{(sunk > 0 ? "from the recess's floor " : "")}to the {(passes || hollow.Sizes.Braces == 0 ? "rear" : "first brace")}"
        );
    }

    private static Judgement Load(Facts f)
    {
        if (f.Box.MinimumImpedanceOhm is not { } least)
        {
            return Unknown("ohm", f.MissingForBox);
        }

        if (f.Project.Brief.Amplifier?.MinimumLoadOhm is not { } limit)
        {
            return Unknown("ohm", "brief.amplifier.minimum_load");
        }

        var judged = AtLeast(
            least,
            limit,
            "ohm",
            Nearness.Tenth,
            $"the impedance falls to {Show.Number(least)} ohm; the amplifier's minimum load is {Show.Number(limit)} ohm"
        );
        return judged.Verdict == Verdict.Fails
            ? judged with
            {
                Remedy = $"{Show.Number(limit - least, 2)} ohm in series, or an amplifier for {Show.Number(Math.Floor(least * 10) / 10)} ohm",
            }
            : judged;
    }
}
