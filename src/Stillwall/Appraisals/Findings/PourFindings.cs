using Stillwall.Cabinets;
using Stillwall.Pours;
using Stillwall.Projects;
using static Stillwall.Appraisals.Findings.Judgement;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the pour.</summary>
internal static class PourFindings
{
    private static readonly Lever CloserStruts = new("cabinet.strut_pitch", Toward.Less, 0.001, "struts every {new} instead of {old}");
    private static readonly Lever ThickerSkins = new("cabinet.outer_skin+cabinet.inner_skin", Toward.More, 0.0001, "skins of {new} instead of {old}");

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Pour",
            "skins bulge",
            "liquid head (ACI 347-04) on a clamped strip; modulus of the warm skin is our choice",
            new("skin-bulge", "pour.skin_bulge_m"),
            Bulge,
            [CloserStruts, ThickerSkins]
        ),
        new(
            "Pour",
            "skins hold",
            "elementary: bending stress of a clamped strip against the strength across layers",
            new("skin-stress", "pour.form_pressure_pa"),
            Stress,
            [CloserStruts, ThickerSkins]
        ),
        new(
            "Pour",
            "inner sleeve floats",
            "elementary: Archimedes on what the first lift covers",
            new("sleeve-uplift", "pour.slurry_density_kg_m3"),
            Float,
            new Lever("materials.cast.hold_down", Toward.More, 0.1, "weigh it down with {new} instead of {old} until the first lift has set")
        ),
        new(
            "Pour",
            "batch within pot life",
            "arithmetic: soak, stir and pour of the longest batch",
            new("pour-clock", "pour.cavity_volume_m3"),
            PotLife,
            [
                new Lever("materials.cast.soak", Toward.Less, 5, "soak {new} instead of {old}"),
                new Lever("materials.cast.pour_rate", Toward.More, 1e-6, "pour {new} instead of {old}"),
            ]
        ),
        new(
            "Pour",
            "no cold joint in a lift",
            "longest pause within a lift against the pot life; common practice, no source",
            new("pour-clock", "pour.cavity_volume_m3"),
            ColdJoint,
            [
                new Lever("materials.cast.people", Toward.More, 1, "{new} people at the pour instead of {old}"),
                new Lever("materials.cast.bucket", Toward.More, 0.0005, "a bucket of {new} instead of {old}"),
            ]
        ),
        new(
            "Pour",
            "powder in stock with reserve",
            "powder for the cavity and the stated reserve against the shelf",
            new("slurry", ["pour.powder_kg"], ["supplies[\"cast powder\"].in_stock"]),
            Powder
        ),
        new(
            "Pour",
            "heat below softening",
            "elementary: heat balance through the wall between initial and final set; loss at the outer skin alone; deflection temperature of the skin",
            new("setting-heat", "pour.expected_peak_c"),
            Heat,
            [
                new Lever("materials.cast.powder_per_water", Toward.Less, 0.01, "{new} of powder to one of water instead of {old}"),
                new Lever("materials.cast.water_temperature", Toward.Less, 1, "water at {new} instead of {old}"),
                new Lever("cabinet.core", Toward.Less, 0.0005, "core {new} instead of {old}"),
            ]
        ),
        new(
            "Pour",
            "mix flows into the cavity",
            "plain rule without sand, four times the largest grain with sand; common practice, no source",
            new("least-passage"),
            Flow,
            new Lever("cabinet.core", Toward.More, 0.0005, "core {new} instead of {old}")
        ),
        new(
            "Pour",
            "dry before it is sealed",
            "dry mass by stoichiometry against the last weigh-in; the limit is our choice",
            new("dryness", "mass.dry_shells_and_cast_kg", "pour.dry_in_cabinet_kg"),
            Dry
        ),
    ];

    private static Judgement Bulge(Facts f) =>
        f.Pour is { SkinBulgeM: { } bulge, FormPressurePa: { } pressure }
            ? AtMost(
                bulge,
                f.Limits.BulgeM,
                "m",
                Nearness.Tenth,
                $"{f.Show.Pressure(pressure)} at the foot of a lift of {f.Show.Length(f.Pour.LiftHeightM ?? 0)} bulges the skin by {f.Show.Length(bulge)} "
                    + "between struts"
            )
            : Unknown("m", f.MissingForPour);

    private static Judgement Stress(Facts f)
    {
        if (f.SkinStressPa is not { } stress || f.Skin is not { } skin)
        {
            return Unknown("Pa", f.MissingForPour);
        }

        // The pour presses and is over before the setting stretches: the two are held against the limit one after the other.
        var (expansion, limit) = (f.ExpansionStressPa ?? 0, skin.StrengthPa / f.Limits.SkinStrength);
        return AtMost(
            expansion > limit ? Math.Max(stress, expansion) : stress,
            limit,
            "Pa",
            Nearness.Tenth,
            $"the skin is stressed to {f.Show.Pressure(stress)} at a "
                + $"strut{(expansion > 0 ? $", and to {f.Show.Pressure(expansion)} when the setting cast stretches it" : "")}; it breaks at "
                + $"{f.Show.Pressure(skin.StrengthPa)} across its layers, and one part in {Show.Number(f.Limits.SkinStrength, 2)} of that may be used"
        );
    }

    private static Judgement Float(Facts f)
    {
        if (f.HoldDownNeededKg is not { } needed)
        {
            return Unknown("kg", f.MissingForPour);
        }

        var because =
            $"the first lift buries the inner sleeve by {f.Show.Length(Formwork.BuriedByFirstLiftM)} and "
            + (needed > 0 ? $"lifts it with {f.Show.Mass(needed)}" : "its own mass keeps it down");
        return f.Project.Materials?.Cast?.HoldDownKg is { } stated
                ? AtMost(needed, stated, "kg", Nearness.Tenth, $"{because}; you hold it down with {f.Show.Mass(stated)}")
            : needed <= 0 ? AtMost(0, 0, "kg", Nearness.Count, because)
            : Unknown("kg", $"{because}; {KeyNames.Missing("materials.cast.hold_down")}") with
            {
                Remedy = $"lay {f.Show.Mass(Math.Ceiling(needed * 11) / 10)} on it until the first lift has set",
            };
    }

    private static Judgement PotLife(Facts f) =>
        f.Clock is { } clock
            ? AtMost(
                clock.LongestBatchS,
                f.PotLifeS,
                "s",
                Nearness.Tenth,
                $"the longest of {clock.Batches.Count} batches is poured {Show.Time(clock.LongestBatchS)} after its first water; the pot life is "
                    + $"{Show.Time(f.PotLifeS)}"
            )
            : Unknown("s", f.MissingForPour);

    private static Judgement ColdJoint(Facts f) =>
        f.Clock is { } clock
            ? AtMost(
                clock.LongestGapS,
                f.PotLifeS,
                "s",
                Nearness.Tenth,
                clock.LongestGapS > 0
                    ? $"the longest pause within a lift is {Show.Time(clock.LongestGapS)}; past the pot life of {Show.Time(f.PotLifeS)} the lift has a "
                        + "cold joint"
                    : "every lift is one batch, so there is no pause within a lift"
            )
            : Unknown("s", f.MissingForPour);

    private static Judgement Powder(Facts f)
    {
        if (f.Pour.PowderKg is not { } needed)
        {
            return Unknown("kg", f.MissingForPour);
        }

        if (f.InStock("cast powder") is not { } have)
        {
            return Unknown("kg", "stock");
        }

        var until =
            have < needed && f.Clock is { } clock
                ? PourClock.EnoughFor(clock, have) is > 0 and var full
                    ? $"; it would run out after batch {full} of {clock.Batches.Count}"
                    : "; it does not do for the first batch"
                : "";
        return AtMost(
            needed,
            have,
            "kg",
            Nearness.Tenth,
            $"{f.Show.Mass(needed)} of powder with {Show.Percent(f.Limits.CastReserve)} in reserve; {f.Show.Mass(have)} is on the shelf{until}"
        ) with
        {
            Remedy = have < needed ? $"buy {f.Show.Mass(needed - have)} of powder before you mix the first batch" : null,
        };
    }

    private static Judgement Heat(Facts f)
    {
        if (f.Pour.ExpectedPeakC is not { } peak || f.Skin is not { } skin)
        {
            return Unknown("degC", f.MissingForHeat);
        }

        return AtMost(
            peak,
            skin.SofteningC - f.Limits.HeatMarginK,
            "degC",
            Nearness.Temperature,
            $"the wall is expected to reach {f.Show.Temperature(peak)} ({f.Show.Temperature(f.Pour.AdiabaticPeakC ?? peak)} if no heat is lost), "
                + $"{Show.Time(f.Pour.PeakTimeS ?? 0)} after the first water; {skin.Name.ToUpperInvariant()} softens at {f.Show.Temperature(skin.SofteningC)}"
        );
    }

    private static Judgement Flow(Facts f)
    {
        if (f.Geometry is not { Sizes.Core: > 0 } geometry)
        {
            return f.Geometry is null
                ? Unknown("m", "cabinet.outside")
                : new Judgement(Verdict.Holds, null, null, "m", null, "a single printed wall has no cavity");
        }

        if (f.CastMix is null)
        {
            return Unknown("m", "materials.cast.mix");
        }

        var limit = Pours.Flow.WantedPassageM(f.Limits.PassageM, f.GrainM);
        return AtLeast(
            geometry.PassageM,
            limit,
            "m",
            Nearness.Tenth,
            $"{f.Show.Length(geometry.PassageM)} of passage between keys that face one another "
                + $"({f.Show.Length(BuildUp.KeyHeightIn(geometry.Sizes.Core).InMetres())} each); the mix needs {f.Show.Length(limit)}"
        );
    }

    private static Judgement Dry(Facts f) =>
        f is { Project.Cabinet.Openings.DryingHoleM: not null, Geometry: { Sizes.Core: > 0 } g } && g.DryingHoles.Count == 0
            ? WithoutHoles(Dried(f))
            : Dried(f);

    private static Judgement WithoutHoles(Judgement judged) =>
        judged with
        {
            Because = $"{judged.Because}; no drying hole finds room between keys, slots and braces, so none is drawn",
            Remedy = judged.Remedy ?? "for drying holes: smaller ones, struts further apart, or a deeper cabinet",
        };

    private static Judgement Dried(Facts f)
    {
        if (f.Geometry is { Sizes.Core: <= 0 })
        {
            return new Judgement(Verdict.Holds, null, null, "1", null, "a single printed wall has nothing to dry");
        }

        if (f.Mass.DryShellsAndCastKg is not { } dry || f.Pour.DryInCabinetKg is not { } cast)
        {
            return Unknown("1", f.MissingForMass);
        }

        return f.LastWeighInKg is not { } last
            ? Unknown("1", $"the logbook has no weigh-in of the cabinet yet; dry it should weigh {f.Show.Mass(dry)}")
            : AtMost(
                (last - dry) / cast,
                f.Limits.Dryness,
                "1",
                Nearness.Tenth,
                $"the last weigh-in shows {f.Show.Mass(last)}; shells and dry cast weigh {f.Show.Mass(dry)}, so "
                    + $"{(last > dry ? f.Show.Mass(last - dry) : "nothing")} has still to dry out"
            ) with
            {
                Remedy =
                    (last - dry) / cast > f.Limits.Dryness
                        ? $"wait until it weighs {f.Show.Mass(dry + f.Limits.Dryness * cast)}; months are normal behind closed skins"
                        : null,
            };
    }
}
