using CsCheck;
using Stillwall.Drivers;
using Stillwall.Projects;
using Stillwall.Tests.Cabinets;

namespace Stillwall.Tests.Drivers;

public sealed class DriverTests
{
    private static readonly DriverSheet Whole = SampleDrivers.DunlinSheet;

    [Fact]
    public void The_base_set_comes_back_out_of_the_mechanical_parameters()
    {
        var driver = DriverResolver.Resolve(Whole).Driver!;
        Assert.Equal((30, 5.5, 0.475, 0.024), (Round(driver.FsHz), Round(driver.Qms), Round(driver.Qes), Round(driver.VasM3)));
    }

    // Worked by hand with ρc² = 141 826 Pa: Cms = 0.024/(141 826·0.0214²) = 0.36951 mm/N, Mms = 1/[(60π)²Cms] = 76.17 g,
    // Rms = 60π·Mms/5.5 = 2.6105 kg/s, Bl = √(60π·Mms·3.55/0.475) = 10.359 N/A.
    [Fact]
    public void Mechanical_parameters_are_those_worked_by_hand()
    {
        var driver = DriverResolver.Resolve(Whole).Driver!;
        Assert.InRange(driver.CmsMPerN, 3.694e-4, 3.697e-4);
        Assert.InRange(driver.MmsKg, 0.0761, 0.0763);
        Assert.InRange(driver.RmsKgS, 2.608, 2.613);
        Assert.InRange(driver.BlTM, 10.35, 10.37);
    }

    [Fact]
    public void Any_sheet_that_determines_the_driver_gives_the_same_driver() =>
        Gen.Select(SampleDrivers.Any, Gen.Int[0, 6])
            .Sample(
                (driver, form) =>
                {
                    var found = DriverResolver.Resolve(Forms(driver)[form]);
                    Assert.Empty(found.Missing);
                    Assert.Empty(found.Impossible);
                    Close(driver.ReOhm, found.Driver!.ReOhm);
                    Close(driver.BlTM, found.Driver.BlTM);
                    Close(driver.MmsKg, found.Driver.MmsKg);
                    Close(driver.CmsMPerN, found.Driver.CmsMPerN);
                    Close(driver.RmsKgS, found.Driver.RmsKgS);
                    Close(driver.SdM2, found.Driver.SdM2);
                }
            );

    [Fact]
    public void A_sheet_that_disagrees_with_itself_is_resolved_by_its_base_set_and_reported()
    {
        var found = DriverResolver.Resolve(Whole with { BlTM = 11.8, MmsKg = 0.0762, Qts = 0.40 });
        Assert.Equal(DriverResolver.Resolve(Whole).Driver!.BlTM, found.Driver!.BlTM);
        Assert.Equal(["bl", "mms", "qts"], found.Mismatches.Select(m => m.Parameter));
        Assert.InRange(found.Mismatches[0].DeviationRatio, 0.13, 0.15);
        Assert.InRange(found.Mismatches[2].DeviationRatio, -0.09, -0.08);
        Assert.Equal(found.Mismatches[0].DeviationRatio, found.WorstDeviationRatio);
    }

    [Fact]
    public void A_sheet_that_states_nothing_twice_has_nothing_to_disagree() => Assert.Null(DriverResolver.Resolve(Whole).WorstDeviationRatio);

    [Fact]
    public void What_cannot_be_known_is_named()
    {
        Assert.Equal(["re", "sd", "fs", "qms", "qes", "vas"], DriverResolver.Resolve(new DriverSheet()).Missing);
        Assert.Equal(["re"], DriverResolver.Resolve(Whole with { ReOhm = null }).Missing);
        Assert.Equal(["qms"], DriverResolver.Resolve(Whole with { Qms = null }).Missing);
        Assert.Equal(["vas"], DriverResolver.Resolve(Whole with { VasM3 = null }).Missing);
    }

    [Fact]
    public void What_cannot_be_is_refused_with_its_reason()
    {
        var large = DriverResolver.Resolve(Whole with { SdM2 = 0.05 });
        Assert.Null(large.Driver);
        Assert.StartsWith("sd:", Assert.Single(large.Impossible), StringComparison.Ordinal);
        var q = DriverResolver.Resolve(Whole with { Qms = null, Qts = 0.5 });
        Assert.Null(q.Driver);
        Assert.StartsWith("qts:", Assert.Single(q.Impossible), StringComparison.Ordinal);
    }

    [Fact]
    public void A_negative_parameter_is_the_callers_mistake() =>
        Assert.Equal("qes", Assert.Throws<ArgumentOutOfRangeException>(() => DriverResolver.Resolve(Whole with { Qes = -1 })).ParamName);

    [Fact]
    public void Equal_drivers_in_parallel_keep_resonance_and_Q_and_multiply_the_air_they_move() =>
        Gen.Select(SampleDrivers.Any, Gen.Int[1, 8])
            .Sample(
                (driver, n) =>
                {
                    var many = driver.InParallel(n);
                    Close(driver.FsHz, many.FsHz);
                    Close(driver.Qms, many.Qms);
                    Close(driver.Qes, many.Qes);
                    Close(driver.VasM3 * n, many.VasM3);
                    Close(driver.PowerW!.Value * n, many.PowerW!.Value);
                    Assert.Equal(n, many.Count);
                }
            );

    // IEC 60028 gives 17.241 Ω·mm²/km at 20 °C: 8 m there and back of 2.5 mm² are 55.17 mΩ, 1.55 % of 3.55 ohm.
    [Fact]
    public void Four_metres_of_cable_raise_the_electrical_Q_as_worked_by_hand()
    {
        const double ohm = 2 * 1.7241e-8 * 4 / 2.5e-6;
        var wired = SampleDrivers.Dunlin with { ReOhm = SampleDrivers.Dunlin.ReOhm + ohm };
        Assert.Equal(0.475 * (3.55 + ohm) / 3.55, wired.Qes, 9);
        Assert.Equal(5.5, wired.Qms, 9);
    }

    private static DriverSheet[] Forms(Driver d)
    {
        var cone = new DriverSheet { ReOhm = d.ReOhm, SdM2 = d.SdM2 };
        return
        [
            cone with
            {
                FsHz = d.FsHz,
                Qms = d.Qms,
                Qes = d.Qes,
                VasM3 = d.VasM3,
            },
            cone with
            {
                BlTM = d.BlTM,
                MmsKg = d.MmsKg,
                CmsMPerN = d.CmsMPerN,
                RmsKgS = d.RmsKgS,
            },
            cone with
            {
                MmsKg = d.MmsKg,
                CmsMPerN = d.CmsMPerN,
                Qms = d.Qms,
                BlTM = d.BlTM,
            },
            cone with
            {
                FsHz = d.FsHz,
                Qms = d.Qms,
                Qts = d.Qts,
                VasM3 = d.VasM3,
            },
            cone with
            {
                FsHz = d.FsHz,
                Qms = d.Qms,
                MmsKg = d.MmsKg,
                BlTM = d.BlTM,
            },
            cone with
            {
                FsHz = d.FsHz,
                Qes = d.Qes,
                BlTM = d.BlTM,
                RmsKgS = d.RmsKgS,
            },
            new DriverSheet
            {
                FsHz = d.FsHz,
                Qms = d.Qms,
                Qes = d.Qes,
                VasM3 = d.VasM3,
                CmsMPerN = d.CmsMPerN,
                BlTM = d.BlTM,
            },
        ];
    }

    private static double Round(double value) => Math.Round(value, 9);

    private static void Close(double expected, double actual) => Assert.InRange(actual / expected, 1 - 1e-9, 1 + 1e-9);
}
