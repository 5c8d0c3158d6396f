using System.Numerics;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Tests.Cabinets;

/// <summary>Systems nobody chose, solved by ngspice as the test runs.</summary>
public sealed class LiveCircuitTests
{
    [Theory]
    [InlineData(11, false, false)]
    [InlineData(12, true, false)]
    [InlineData(13, false, true)]
    [InlineData(14, true, true)]
    public void A_drawn_system_agrees_with_ngspice(int seed, bool hasPort, bool hasPassiveRadiator)
    {
        var program = CircuitSolver.Program;
        if (program is null && Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip("ngspice is not on the path: apt-get install ngspice");
        }

        Assert.True(program is not null, "ngspice is required where CI=true: apt-get install ngspice");
        var network = Drawn(new SeededGenerator((ulong)seed), hasPort, hasPassiveRadiator);
        var points = CircuitSolver.Solve(program, network, 2.83);
        Assert.Equal(41, points.Count);
        foreach (var expected in points)
        {
            var actual = network.At(expected.FrequencyHz, 2.83);
            Near(expected.ImpedanceOhm, actual.ImpedanceOhm);
            Near(expected.ConeVelocityMS, actual.ConeVelocityMS);
            Near(expected.BoxPressurePa, actual.BoxPressurePa);
            Near(expected.OutwardVolumeVelocityM3S, actual.OutwardVolumeVelocityM3S);
        }
    }

    private static BoxNetwork Drawn(SeededGenerator random, bool hasPort, bool hasPassiveRadiator)
    {
        double Between(double least, double greatest) => least * Math.Pow(greatest / least, random.Next());
        var driver = SampleDrivers.Mechanical(
            Between(2, 8),
            Between(1e-4, 2e-3),
            Between(4, 20),
            Between(0.01, 0.2),
            Between(2e-4, 1.5e-3),
            Between(0.5, 5),
            Between(0.008, 0.08)
        );
        return new BoxNetwork(driver, Between(0.005, 0.1), Air.Reference)
        {
            LeakResistancePaSM3 = Between(2e4, 1e7),
            FillLossKgS = Between(0.1, 3),
            Port = hasPort ? new PortPath(Between(5e-4, 8e-3), Between(0.05, 0.4), 2, Between(1, 500)) : null,
            PassiveRadiator = hasPassiveRadiator
                ? new PassiveRadiator
                {
                    SdM2 = Between(0.01, 0.08),
                    MmsKg = Between(0.03, 0.4),
                    CmsMPerN = Between(3e-4, 1.5e-3),
                    RmsKgS = Between(0.5, 4),
                }
                : null,
        };
    }

    // 0.01 dB in magnitude and 0.05° in phase.
    private static void Near(Complex expected, Complex actual)
    {
        var ratio = actual / expected;
        Assert.InRange(20 * Math.Log10(ratio.Magnitude), -0.01, 0.01);
        Assert.InRange(ratio.Phase * 180 / Math.PI, -0.05, 0.05);
    }
}
