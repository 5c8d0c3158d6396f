using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Tests.Cabinets;

/// <summary>Drivers and boxes to test with.</summary>
internal static class SampleDrivers
{
    internal static readonly DriverSheet DunlinSheet = new()
    {
        Name = "Dunlin 8",
        FsHz = 30,
        Qms = 5.5,
        Qes = 0.475,
        VasM3 = 0.024,
        SdM2 = 0.0214,
        ReOhm = 3.55,
        LeH = 0.0012,
        XmaxM = 0.012,
        PowerW = 200,
        FlangeM = 0.222,
    };

    internal static readonly Driver Dunlin = DriverResolver.Resolve(DunlinSheet).Driver!;

    internal static readonly Gen<Driver> Any = Gen.Select(
            Gen.Double[2, 8],
            Gen.Double[0, 0.002],
            Gen.Double[3, 25],
            Gen.Double[0.01, 0.3],
            Gen.Double[0.0001, 0.002],
            Gen.Double[0.3, 6],
            Gen.Double[0.005, 0.09]
        )
        .Select((re, le, bl, mms, cms, rms, sd) => Mechanical(re, le, bl, mms, cms, rms, sd));

    internal static readonly Gen<double> AnyVolume = Gen.Double[0.002, 0.2];

    internal static readonly Gen<double> AnyFrequency = Gen.Double[1, 3].Select(e => Math.Pow(10, e));

    internal static readonly Gen<BoxNetwork> AnyBox = Gen.Select(
            Any,
            AnyVolume,
            Gen.Double[4, 7],
            Gen.Double[0, 5],
            Gen.Int[0, 2],
            Gen.Double[0.0005, 0.01],
            Gen.Double[0.02, 0.5],
            Gen.Double[0, 500]
        )
        .Select(
            (driver, volume, leak, loss, kind, area, length, resistance) =>
                new BoxNetwork(driver, volume, Air.Reference)
                {
                    LeakResistancePaSM3 = Math.Pow(10, leak),
                    FillLossKgS = loss,
                    Port = kind == 1 ? new PortPath(area, length, 2, resistance) : null,
                    PassiveRadiator =
                        kind == 2
                            ? new PassiveRadiator
                            {
                                SdM2 = area * 5,
                                MmsKg = length,
                                CmsMPerN = 0.0007,
                                RmsKgS = 1 + (resistance / 100),
                            }
                            : null,
                }
        );

    internal static Driver Mechanical(double re, double le, double bl, double mms, double cms, double rms, double sd) =>
        new("test", re, le, bl, mms, cms, rms, sd, 0.01, 100, new DriverSheet());
}
