using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Materials;

/// <summary>A powder that sets with water, and what becomes of it.</summary>
/// <param name="Name">Name as in the project file; <c>own</c> for one of the maker's own.</param>
/// <param name="PowderDensityKgM3">Density of the powder's grains, kg/m³.</param>
/// <param name="SolidDensityKgM3">Density of the set solid without pores, kg/m³.</param>
/// <param name="BoundWaterRatio">Water bound in setting per mass of powder.</param>
/// <param name="PowderPerWaterRatio">Usual mass of powder for one of water.</param>
/// <param name="Heat">Heat of setting, or null where it is not known.</param>
/// <param name="Times">Pot life and setting times.</param>
/// <param name="Strength">How stiff and strong it is when dry.</param>
/// <param name="Thermal">How it stores and conducts heat.</param>
/// <param name="GrainM">Largest grain, m; 0 where it is a fine powder.</param>
/// <param name="SettingStrainRatio">Linear strain while setting, as a ratio.</param>
/// <param name="Dangers">What it does to whoever handles it.</param>
/// <param name="Basis">Where the figures come from.</param>
public sealed record CastMix(
    string Name,
    double PowderDensityKgM3,
    double SolidDensityKgM3,
    double BoundWaterRatio,
    double PowderPerWaterRatio,
    CastHeat? Heat,
    CastTimes Times,
    CastStrength Strength,
    CastThermal Thermal,
    double GrainM,
    double SettingStrainRatio,
    CastDangers Dangers,
    string Basis
);

/// <summary>What a mix does to whoever handles it.</summary>
[Flags]
public enum CastDangers
{
    /// <summary>Nothing of its own.</summary>
    None = 0,

    /// <summary>It burns while it sets.</summary>
    Burns = 1,

    /// <summary>It is caustic.</summary>
    Caustic = 2,

    /// <summary>Its dust has silica.</summary>
    Silica = 4,
}

/// <summary>Heat that a mix gives off while it sets, per mass of powder.</summary>
/// <param name="HeatJKg">Expected heat, J/kg.</param>
/// <param name="LowJKg">Least heat that sources give, J/kg.</param>
/// <param name="HighJKg">Greatest heat that sources give, J/kg.</param>
public sealed record CastHeat(double HeatJKg, double LowJKg, double HighJKg);

/// <summary>Times of a mix, counted from the first water.</summary>
/// <param name="PotLifeS">Until it no longer pours, s.</param>
/// <param name="InitialSetS">Until it begins to set and to warm, s.</param>
/// <param name="FinalSetS">Until it carries the next lift, s.</param>
/// <param name="HeatEndS">Until it has given off its heat, s.</param>
public sealed record CastTimes(double PotLifeS, double InitialSetS, double FinalSetS, double HeatEndS);

/// <summary>How a set and dry mix carries load, tied to one density at which it is known.</summary>
/// <param name="ReferenceDensityKgM3">Dry density at which the figures hold, kg/m³.</param>
/// <param name="ModulusPa">Young's modulus there, Pa.</param>
/// <param name="ModulusExponentFactor">Exponent of the density ratio that carries the modulus to other densities.</param>
/// <param name="BandLowFactor">Least modulus that is believable over the expected one.</param>
/// <param name="BandHighFactor">Greatest modulus that is believable over the expected one.</param>
/// <param name="CompressivePa">Compressive strength there, Pa, or null where it is not known.</param>
/// <param name="PorosityFactor">Rate at which the logarithm of the strength falls with porosity.</param>
/// <param name="WetFactor">Share of modulus and strength that is left while the cast is wet.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="LossFactor">Loss factor.</param>
public sealed record CastStrength(
    double ReferenceDensityKgM3,
    double ModulusPa,
    double ModulusExponentFactor,
    double BandLowFactor,
    double BandHighFactor,
    double? CompressivePa,
    double PorosityFactor,
    double WetFactor,
    double Poisson,
    double LossFactor
);

/// <summary>How a mix stores and conducts heat.</summary>
/// <param name="SpecificHeatJKgK">Specific heat of the set solid, J/(kg·K).</param>
/// <param name="ConductivityWMK">Thermal conductivity while it is wet, W/(m·K).</param>
/// <param name="ExpansionPerK">Linear thermal expansion when set, 1/K.</param>
public sealed record CastThermal(double SpecificHeatJKgK, double ConductivityWMK, double ExpansionPerK);

/// <summary>The mixes that are known, as data.</summary>
/// <remarks>
/// Hemihydrate and dihydrate: molar masses 145.149 and 172.171 g/mol, so 0.1862 kg of water is bound per kg; grains 2640 kg/m³ (2757 for the alpha
/// form), gypsum 2320 kg/m³, all three from memory; specific heat of gypsum 186.2 J/(mol·K), Blanc 2012. Heat of setting from formation enthalpies:
/// 112 (Blanc 2012) to 133 kJ/kg (NBS 1982, from memory), the middle is carried. Modulus of gypsum: a power law of density through 1.62 GPa at
/// 650 kg/m³ (Hopkins 2007, table A2) and 4.3 GPa at the usual 1.5:1 (middle of 3 to 7 GPa, from memory). Strength and setting strain of gypsum: Glass
/// Tips 2009, a transcription that names no author. Loss factor of gypsum: an estimate of Hopkins 2007. Modulus of cement: a power law of density
/// through mortar and concrete of Hopkins 2007, table A2. Pot lives and setting times are from memory and yield to the bag.
/// </remarks>
public static class CastMixes
{
    /// <summary>Density of the mixing water at 20 °C, kg/m³.</summary>
    public const double WaterDensityKgM3 = 998;

    /// <summary>Specific heat of water, J/(kg·K).</summary>
    public const double WaterSpecificHeatJKgK = 4180;

    /// <summary>Water bound by hemihydrate, by mass: one and a half moles to the mole.</summary>
    public const double HemihydrateBoundRatio = 0.1862;

    private const double Gypsum = 2320;
    private const double Quartz = 2650;
    private const double Hemihydrate = 2640;

    private static readonly CastHeat HemihydrateHeat = new(122.5e3, 112e3, 133e3);
    private static readonly CastStrength GypsumStrength = new(
        ReferenceDensityKgM3: 1133,
        ModulusPa: 4.3e9,
        ModulusExponentFactor: 1.757,
        BandLowFactor: 0.7,
        BandHighFactor: 1.6,
        CompressivePa: 14.9e6,
        PorosityFactor: 5.58,
        WetFactor: 0.5,
        Poisson: 0.2,
        LossFactor: 0.012
    );
    private static readonly CastThermal GypsumThermal = new(1080, 0.6, 17e-6);

    /// <summary>Casting plaster: beta hemihydrate.</summary>
    public static CastMix Plaster { get; } =
        new(
            Name: "plaster",
            PowderDensityKgM3: Hemihydrate,
            SolidDensityKgM3: Gypsum,
            BoundWaterRatio: HemihydrateBoundRatio,
            PowderPerWaterRatio: 1.5,
            Heat: HemihydrateHeat,
            Times: new CastTimes(600, 720, 1800, 1800),
            Strength: GypsumStrength,
            Thermal: GypsumThermal,
            GrainM: 0,
            SettingStrainRatio: 0.002,
            Dangers: CastDangers.Burns,
            Basis: "heat Blanc 2012, and NBS 1982 from memory; strength and setting strain Glass Tips 2009, whose author is unknown; loss factor an estimate "
                + "(Hopkins 2007); densities, modulus and times from memory"
        );

    /// <summary>Hard gypsum: alpha hemihydrate, poured with little water.</summary>
    public static CastMix HardGypsum { get; } =
        new(
            Name: "hard-gypsum",
            PowderDensityKgM3: 2757,
            SolidDensityKgM3: Gypsum,
            BoundWaterRatio: HemihydrateBoundRatio,
            PowderPerWaterRatio: 2.8,
            Heat: HemihydrateHeat,
            Times: new CastTimes(600, 900, 2400, 2400),
            Strength: GypsumStrength with
            {
                BandHighFactor = 2,
            },
            Thermal: GypsumThermal,
            GrainM: 0,
            SettingStrainRatio: 0.0015,
            Dangers: CastDangers.Burns,
            Basis: "as plaster; density of the alpha form, ratio and times from memory; modulus carried over by density"
        );

    /// <summary>Gypsum binder: hemihydrate with three parts in ten of mineral filler.</summary>
    public static CastMix GypsumBinder { get; } =
        Filled(
            name: "gypsum-binder",
            share: 0.7,
            fillerKgM3: 2700,
            ratio: 1.6,
            times: new CastTimes(1200, 1500, 3600, 3600),
            strength: new CastStrength(
                ReferenceDensityKgM3: 1130,
                ModulusPa: 4.0e9,
                ModulusExponentFactor: 1.757,
                BandLowFactor: 0.6,
                BandHighFactor: 1.7,
                CompressivePa: 12e6,
                PorosityFactor: 5.58,
                WetFactor: 0.5,
                Poisson: 0.2,
                LossFactor: 0.012
            ),
            grainM: 0,
            strain: 0.0015,
            dangers: CastDangers.Burns,
            basis: "hemihydrate with 30 % filler, the share and the rest from memory; chemistry in proportion"
        );

    /// <summary>Sand plaster: equal masses of plaster and fine sand.</summary>
    public static CastMix SandPlaster { get; } =
        Filled(
            name: "sand-plaster",
            share: 0.5,
            fillerKgM3: Quartz,
            ratio: 2.7,
            times: new CastTimes(600, 720, 1800, 1800),
            strength: new CastStrength(
                ReferenceDensityKgM3: 1460,
                ModulusPa: 6.0e9,
                ModulusExponentFactor: 1.757,
                BandLowFactor: 0.5,
                BandHighFactor: 2,
                CompressivePa: 12e6,
                PorosityFactor: 5.58,
                WetFactor: 0.5,
                Poisson: 0.2,
                LossFactor: 0.012
            ),
            grainM: 0.0005,
            strain: 0.0015,
            dangers: CastDangers.Burns | CastDangers.Silica,
            basis: "equal masses of plaster and sand of 0.5 mm; chemistry in proportion, modulus and strength from memory"
        );

    /// <summary>Cement grout: equal masses of Portland cement and fine sand, heat of the first two days.</summary>
    public static CastMix CementGrout { get; } =
        new(
            Name: "cement-grout",
            PowderDensityKgM3: 2880,
            SolidDensityKgM3: 2550,
            BoundWaterRatio: 0.10,
            PowderPerWaterRatio: 4.0,
            Heat: new CastHeat(110e3, 90e3, 130e3),
            Times: new CastTimes(2700, 10800, 21600, 172800),
            Strength: new CastStrength(
                ReferenceDensityKgM3: 2000,
                ModulusPa: 21.3e9,
                ModulusExponentFactor: 3.76,
                BandLowFactor: 0.6,
                BandHighFactor: 1.5,
                CompressivePa: 35e6,
                PorosityFactor: 5,
                WetFactor: 0.9,
                Poisson: 0.2,
                LossFactor: 0.01
            ),
            Thermal: new CastThermal(850, 1.2, 11e-6),
            GrainM: 0.001,
            SettingStrainRatio: -0.0005,
            Dangers: CastDangers.Caustic | CastDangers.Silica,
            Basis: "cement and sand 1:1 at a water–cement ratio of one half, bound water, heat, times and strength from memory; modulus Hopkins 2007, table A2"
        );

    /// <summary>Every known mix, in the order of the project file's words.</summary>
    public static IReadOnlyList<CastMix> All { get; } = [Plaster, HardGypsum, GypsumBinder, SandPlaster, CementGrout];

    /// <summary>Finds a mix by its name in the project file.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The mix, or null where none has that name.</returns>
    public static CastMix? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    /// <summary>The mix that a project states, with the ratio, pot life and grain it states.</summary>
    /// <param name="stated">What the project states; absent gives null.</param>
    /// <returns>The mix, or null where it is not stated or its own figures are missing.</returns>
    public static CastMix? Of(Cast? stated)
    {
        var mix = stated?.Mix switch
        {
            null => null,
            "own" => stated.Own is null ? null : FromOwn(stated.Own),
            var name => Find(name),
        };
        return mix is null || stated is null
            ? null
            : mix with
            {
                PowderPerWaterRatio = stated.PowderPerWater ?? mix.PowderPerWaterRatio,
                Times = stated.PotLifeS is { } life ? Stretched(mix.Times, life) : mix.Times,
                GrainM = stated.GrainM ?? mix.GrainM,
            };
    }

    /// <summary>A mix of one's own: what is stated, and for the rest what plaster has.</summary>
    /// <param name="own">Stated figures.</param>
    /// <returns>The mix; its heat is null where none is stated, its modulus does not change with density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stated figure is not positive.</exception>
    /// <remarks>
    /// Model: solid density from powder and bound water without contraction; ratio, times, specific heat and conductivity as plaster's.
    /// Validity: powders that set with water within the hour. Source: our choice. Accuracy: as good as what is stated.
    /// </remarks>
    public static CastMix FromOwn(OwnMix own)
    {
        ArgumentNullException.ThrowIfNull(own);
        Require.Positive(own.PowderDensityKgM3);
        Require.NotNegative(own.BoundWater);
        Require.Positive(own.ModulusPa);
        var solid = (1 + own.BoundWater) / (1 / own.PowderDensityKgM3 + own.BoundWater / WaterDensityKgM3);
        var heat = own.HeatJKg is { } stated ? new CastHeat(stated, stated, stated) : null;
        var strength = new CastStrength(
            ReferenceDensityKgM3: solid,
            ModulusPa: own.ModulusPa,
            ModulusExponentFactor: 0,
            BandLowFactor: 1,
            BandHighFactor: 1,
            CompressivePa: null,
            PorosityFactor: 0,
            WetFactor: 0.5,
            Poisson: own.Poisson,
            LossFactor: own.LossFactor
        );
        return new CastMix(
            Name: "own",
            PowderDensityKgM3: own.PowderDensityKgM3,
            SolidDensityKgM3: solid,
            BoundWaterRatio: own.BoundWater,
            PowderPerWaterRatio: Plaster.PowderPerWaterRatio,
            Heat: heat,
            Times: Plaster.Times,
            Strength: strength,
            Thermal: GypsumThermal,
            GrainM: 0,
            SettingStrainRatio: 0.002,
            Dangers: CastDangers.Burns | CastDangers.Caustic | CastDangers.Silica, // What is in it is not stated: everything may be.
            Basis: "stated; the rest as plaster, our choice"
        );
    }

    // A stated pot life says how fast this bag is: the setting times move with it (our choice).
    private static CastTimes Stretched(CastTimes times, double potLifeS)
    {
        var ratio = potLifeS / times.PotLifeS;
        return new CastTimes(potLifeS, times.InitialSetS * ratio, times.FinalSetS * ratio, times.HeatEndS * ratio);
    }

    private static CastMix Filled(
        string name,
        double share,
        double fillerKgM3,
        double ratio,
        CastTimes times,
        CastStrength strength,
        double grainM,
        double strain,
        CastDangers dangers,
        string basis
    )
    {
        var powder = 1 / (share / Hemihydrate + (1 - share) / fillerKgM3);
        var bound = share * HemihydrateBoundRatio;
        var solid = (1 + bound) / (share * (1 + HemihydrateBoundRatio) / Gypsum + (1 - share) / fillerKgM3);
        var heat = new CastHeat(share * HemihydrateHeat.HeatJKg, share * HemihydrateHeat.LowJKg, share * HemihydrateHeat.HighJKg);
        var specific = (share * (1 + HemihydrateBoundRatio) * 1080 + (1 - share) * 800) / (1 + bound);
        return new CastMix(
            Name: name,
            PowderDensityKgM3: powder,
            SolidDensityKgM3: solid,
            BoundWaterRatio: bound,
            PowderPerWaterRatio: ratio,
            Heat: heat,
            Times: times,
            Strength: strength,
            Thermal: new CastThermal(specific, 0.8, 15e-6),
            GrainM: grainM,
            SettingStrainRatio: strain,
            Dangers: dangers,
            Basis: basis
        );
    }
}
