using Stillwall.Cabinets;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the closed box.</summary>
internal static class CabinetFindings
{
    private static readonly Lever Deeper = new("cabinet.outside.depth", Toward.Either, 0.001, "depth {new} instead of {old}");
    private static readonly Lever Larger = new("cabinet.net_volume", Toward.Either, 0.0001, "{new} of net volume instead of {old}");

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Cabinet",
            "system Q as wanted",
            "Small 1972, JAES 20(10) (from memory); lossless",
            new("system-q", "box.system_q"),
            SystemQ,
            [
                Deeper,
                Larger,
                new Lever("cabinet.outside.width+cabinet.outside.height", Toward.Either, 0.001, "width and height {new} instead of {old}"),
                new Lever("brief.aim.system_q", Toward.Either, 0.01, "a wanted Q of {new} instead of {old}"),
            ]
        ),
        new(
            "Cabinet",
            "reaches the lowest note",
            "Small 1972, JAES 20(10) (from memory); f10 at or under it counts as reached (our choice)",
            new("f10", "box.f10_hz"),
            Lowest,
            [Deeper, Larger, new Lever("brief.aim.lowest", Toward.More, 0.5, "a lowest note of {new} instead of {old}")]
        ),
        new(
            "Cabinet",
            "loud enough, and what gives out first",
            "limits of excursion, coil and amplifier; at the seat the room's modal sum less an allowance for real walls, our choice",
            new("maximum-level-at-seat", "box.max_spl_at_seat_db", "box.max_spl_at_lowest_db"),
            Loud,
            [
                new Lever("brief.amplifier.power", Toward.More, 5, "an amplifier of {new} instead of {old}"),
                new Lever("brief.aim.level", Toward.Less, 0.5, "a wanted level of {new} instead of {old}"),
            ]
        ),
        new(
            "Cabinet",
            "airtight enough",
            "viscous flow in a slit (Beranek 1954, from memory); the limit is our choice",
            new("leak-q", "box.leak_q"),
            Airtight,
            [
                new Lever("cabinet.leak.gap", Toward.Less, 0.00001, "seal the joints to a gap of {new} instead of {old}"),
                new Lever("cabinet.leak.resistance", Toward.More, 1000, "seal the joints to a leak of {new} instead of {old}"),
                new Lever("measured.leak_resistance", Toward.More, 1000, "seal the joints to a leak of {new} instead of {old}, and measure it again"),
            ]
        ),
        new(
            "Cabinet",
            "fill sensible",
            "common practice, no source",
            new("fill-density", "box.fill_density_kg_m3"),
            Fill,
            new Lever("cabinet.fill.mass", Toward.Either, 0.01, "{new} of fill instead of {old}")
        ),
        new(
            "Cabinet",
            "first air mode inside above the working range",
            "elementary: half a wavelength along the longest inside length; the limit is our choice",
            new("air-mode", "box.lowest_air_mode_hz"),
            AirMode,
            new Lever("cabinet.outside.depth", Toward.Less, 0.001, "depth {new} instead of {old}")
        ),
        new(
            "Cabinet",
            "tolerance of drivers",
            "1,000 seeded draws, Cms ±20 %, Bl, Mms, Re ±5 %, Rms ±30 % (our choice)",
            new("tolerance", "box.system_q_band[0]", "box.system_q_band[1]"),
            Tolerance,
            [Deeper, Larger]
        ),
    ];

    private static Judgement SystemQ(Facts f)
    {
        if (f.Box.SystemQ is not { } q)
        {
            return Unknown("1", f.MissingForBox);
        }

        if (f.Project.Brief.Aim is not { } aim)
        {
            return Unknown("1", "brief.aim");
        }

        var judged = Near(
            q,
            aim.SystemQ,
            aim.SystemQTolerance,
            "1",
            $"Qtc comes out at {Show.Number(q)}; wanted is {Show.Number(aim.SystemQ)} ± {Show.Number(aim.SystemQTolerance)}"
        );
        return judged.Verdict == Verdict.Holds
            ? judged
            : judged with
            {
                Because = $"{judged.Because}, which this driver has in {Box(f, ClosedBox.VolumeForSystemQM3(f.System!.Network.Driver, aim.SystemQ, f.Air))}",
            };
    }

    // Net volume of a closed box that has so much effective volume, filled as the stated one is.
    private static string Box(Facts f, double? effectiveM3) =>
        effectiveM3 is { } volume && f.NetVolumeM3 is { } net ? $"{f.Show.Volume(volume * net / f.System!.Network.EffectiveVolumeM3)} net" : "no closed box";

    private static Judgement Lowest(Facts f)
    {
        if (f.Box is not { F10Hz: { } f10, F3Hz: { } f3 })
        {
            return Unknown("Hz", f.MissingForBox);
        }

        if (f.Project.Brief.Aim?.LowestHz is not { } lowest)
        {
            return Unknown("Hz", "brief.aim.lowest");
        }

        var judged = AtMost(
            f10,
            lowest,
            "Hz",
            Nearness.Tenth,
            $"f10 (−10 dB) is {Show.Frequency(f10)} and f3 (−3 dB) {Show.Frequency(f3)}; the lowest note is {Show.Frequency(lowest)}"
        );
        if (judged.Verdict != Verdict.Fails)
        {
            return judged;
        }

        var driver = f.System!.Network.Driver;
        var (ten, three) = (ClosedBox.VolumeForF10M3(driver, lowest, f.Air), ClosedBox.VolumeForF3M3(driver, lowest, f.Air));
        return judged with { Because = $"{judged.Because}: this driver is 10 dB down there in {Box(f, ten)}, 3 dB down in {Box(f, three)}" };
    }

    private static Judgement Loud(Facts f)
    {
        var aim = f.Project.Brief.Aim;
        if (aim is not { LevelDb: { } wanted, LowestHz: { } lowest })
        {
            return Unknown("dB", aim?.LowestHz is null ? "brief.aim.lowest" : "brief.aim.level");
        }

        if ((f.Box.MaxSplAtSeatDb ?? f.Box.MaxSplAtLowestDb) is not { } level)
        {
            return Unknown("dB", f.MissingForLevel);
        }

        var where = f.Box.MaxSplAtSeatDb is null ? $"in half space at {f.Show.Distance(aim.DistanceM)}" : "at the seat";
        return AtLeast(
            level,
            wanted,
            "dB",
            Nearness.Level,
            $"at {Show.Frequency(lowest)} it reaches {Show.Level(level)} {where}, limited by {Show.Limit(f.Box.LimitedByAtLowest)}; wanted is "
                + $"{Show.Level(wanted)}"
        );
    }

    private static Judgement Airtight(Facts f)
    {
        if (f.Box.SystemResonanceHz is null)
        {
            return Unknown("1", f.MissingForBox);
        }

        return f.Box.LeakQ is { } q
            ? AtLeast(
                q,
                f.Limits.LeakQ,
                "1",
                Nearness.Tenth,
                $"the leak has a Q of {Show.Number(q, 2)} at the resonance; below {Show.Number(f.Limits.LeakQ)} it costs bass and hisses"
            )
            : new Judgement(Verdict.Holds, null, f.Limits.LeakQ, "1", null, "no leak is stated: it counts as airtight until the hold test says otherwise");
    }

    private static Judgement Fill(Facts f)
    {
        var (low, high) = (f.Limits.FillDensityLowKgM3, f.Limits.FillDensityHighKgM3);
        if (f.Project.Cabinet is not { } cabinet)
        {
            return Unknown("kg/m3", "cabinet");
        }

        if (cabinet.Fill is not { } fill)
        {
            return new Judgement(Verdict.Holds, null, null, "kg/m3", null, "no fill is stated: the box counts as empty");
        }

        if (f.Box.FillDensityKgM3 is not { } density)
        {
            return Unknown("kg/m3", fill.MassKg is null ? "cabinet.fill.mass" : f.MissingForBox);
        }

        return Near(
            density,
            (low + high) / 2,
            (high - low) / 2,
            "kg/m3",
            $"{f.Show.Mass(fill.MassKg ?? 0)} of fill makes {f.Show.Density(density, 2)} in the box; {f.Show.Density(low, 2)} to "
                + $"{f.Show.Density(high, 2)} works well"
        );
    }

    private static Judgement AirMode(Facts f)
    {
        if (f.Box.LowestAirModeHz is not { } mode)
        {
            return Unknown("Hz", "cabinet.outside");
        }

        return f.WorkingRangeHz(f.Limits.AirModeRatio) is not { } limit
            ? Unknown("Hz", "brief.aim.crossover")
            : AtLeast(
                mode,
                limit,
                "Hz",
                Nearness.Tenth,
                $"the air inside first resonates at {Show.Frequency(mode)}; the cabinet works up to {Show.Frequency(limit)}"
            );
    }

    private static Judgement Tolerance(Facts f)
    {
        if (f.Box.SystemQBand is not [var low, var high])
        {
            return Unknown("1", f.MissingForBox);
        }

        if (f.Project.Brief.Aim is not { } aim)
        {
            return Unknown("1", "brief.aim");
        }

        var (least, greatest) = (aim.SystemQ - aim.SystemQTolerance, aim.SystemQ + aim.SystemQTolerance);
        var margin = Math.Min(low - least, greatest - high);
        var verdict =
            low > greatest || high < least ? Verdict.Fails
            : margin < 0 ? Verdict.Tight
            : Verdict.Holds;
        var (worst, limit) = low - least < greatest - high ? (low, least) : (high, greatest);
        return new Judgement(
            verdict,
            worst,
            limit,
            "1",
            margin,
            $"nine drivers out of ten come out between Qtc {Show.Number(low)} and {Show.Number(high)}; wanted is {Show.Number(least)} to "
                + $"{Show.Number(greatest)}"
        );
    }
}
