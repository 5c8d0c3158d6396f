namespace Stillwall.Tests.Cabinets;

/// <summary>The network against ngspice 39, see tests/data/circuit/README.md.</summary>
public sealed class CircuitReferenceTests
{
    private const double Decibels = 0.01;
    private const double Share = 0.0005;
    private const double Degrees = 0.05;

    public static TheoryData<string> Names => new("closed-ideal", "closed-leaky-filled", "vented", "passive-radiator");

    [Theory, MemberData(nameof(Names))]
    public void Level_and_phase_agree_with_the_circuit_solver(string name)
    {
        Each(
            name,
            (row, point) =>
            {
                Assert.InRange(point.LevelDb() - row["spl_db"], -Decibels, Decibels);
                Assert.InRange(Turn(point.PhaseDeg - row["pressure_phase_deg"]), -Degrees, Degrees);
            }
        );
    }

    [Theory, MemberData(nameof(Names))]
    public void Impedance_agrees_with_the_circuit_solver(string name)
    {
        Each(
            name,
            (row, point) =>
            {
                Near(row["impedance_ohm"], point.ImpedanceOhm.Magnitude);
                Assert.InRange(Turn((point.ImpedanceOhm.Phase * 180 / Math.PI) - row["impedance_phase_deg"]), -Degrees, Degrees);
            }
        );
    }

    [Theory, MemberData(nameof(Names))]
    public void Excursion_and_box_pressure_agree_with_the_circuit_solver(string name)
    {
        Each(
            name,
            (row, point) =>
            {
                Near(row["cone_excursion_peak_mm"], point.ExcursionPeakM * 1000);
                Near(row["box_pressure_pa_rms"], point.BoxPressurePa.Magnitude);
            }
        );
    }

    [Fact]
    public void Air_in_the_port_moves_as_the_circuit_solver_says()
    {
        Each("vented", (row, point) => Near(row["port_velocity_m_s_rms"], point.PortSpeedPeakMS!.Value / Math.Sqrt(2)));
    }

    [Fact]
    public void The_passive_radiator_moves_as_the_circuit_solver_says()
    {
        Each("passive-radiator", (row, point) => Near(row["radiator_excursion_m_rms"], point.PassiveRadiatorExcursionPeakM!.Value / Math.Sqrt(2)));
    }

    private static void Each(string name, Action<Dictionary<string, double>, Stillwall.Cabinets.NetworkPoint> check)
    {
        var (network, volts) = CircuitCases.Read(name);
        var rows = CircuitCases.Rows(name);
        Assert.True(rows.Count > 80, "two decades of forty points are expected");
        foreach (var row in rows)
        {
            check(row, network.At(row["frequency_hz"], volts));
        }
    }

    private static void Near(double expected, double actual) => Assert.InRange(actual / expected, 1 - Share, 1 + Share);

    private static double Turn(double degrees) => Math.IEEERemainder(degrees, 360);
}
