using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Text;
using Stillwall.Cabinets;

namespace Stillwall.Tests.Cabinets;

/// <summary>One row of what ngspice says of a network; rms throughout.</summary>
internal sealed record SolvedPoint(double FrequencyHz, Complex ImpedanceOhm, Complex ConeVelocityMS, Complex BoxPressurePa, Complex OutwardVolumeVelocityM3S);

/// <summary>Writes a network as a netlist and has ngspice solve it.</summary>
internal static class CircuitSolver
{
    internal static string? Program =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "ngspice.exe" : "ngspice"))
            .FirstOrDefault(File.Exists);

    internal static IReadOnlyList<SolvedPoint> Solve(string program, BoxNetwork network, double volts)
    {
        var folder = Directory.CreateTempSubdirectory("stillwall-circuit-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "box.cir"), Netlist(network, volts));
            Run(program, folder.FullName);
            var lines = File.ReadAllLines(Path.Combine(folder.FullName, "box.data"));
            return [.. lines.Where(l => l.Length > 0).Select(l => PointOf(l, network, volts))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Run(string program, string folder)
    {
        var start = new ProcessStartInfo(program, "-b box.cir")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        using var process = Process.Start(start)!;
        var messages = Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        if (!process.WaitForExit(60_000))
        {
            process.Kill();
            throw new TimeoutException("ngspice took more than a minute");
        }

        Assert.True(File.Exists(Path.Combine(folder, "box.data")), "ngspice wrote nothing: " + string.Join('\n', messages.GetAwaiter().GetResult()));
    }

    // Currents stand for velocities, voltages for forces and pressures; each zero-volt source is an ammeter.
    private static string Netlist(BoxNetwork network, double volts)
    {
        var (driver, air) = (network.Driver, network.Air);
        var text = new StringBuilder("driver in a box\n");
        void Add(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Add($"Vg in 0 dc 0 ac {volts:R}");
        Add($"Re in e1 {driver.ReOhm:R}");
        Add($"Le e1 e2 {driver.LeH:R}");
        Add($"Vi e2 e3 0");
        Add($"Hb e3 0 Vu {driver.BlTM:R}");
        Add($"Hf m0 0 Vi {driver.BlTM:R}");
        Add($"Vu m0 m1 0");
        Add($"Rm m1 m2 {driver.RmsKgS + network.FillLossKgS:R}");
        Add($"Lm m2 m3 {driver.MmsKg:R}");
        Add($"Cm m3 m4 {driver.CmsMPerN:R}");
        Add($"Es m4 0 a 0 {driver.SdM2:R}");
        Add($"Fs 0 a Vu {driver.SdM2:R}");
        Add($"Cb a 0 {network.EffectiveVolumeM3 / (air.DensityKgM3 * air.SpeedOfSoundMS * air.SpeedOfSoundMS):R}");
        Add($"Vl a l 0");
        Add($"Rl l 0 {network.LeakResistancePaSM3!.Value:R}");
        Add($"Vp a p1 0");
        Add($"Vc c0 {(network.PassiveRadiator is null ? "0" : "c1")} 0");
        if (network.Port is { } port)
        {
            Add($"Rp p1 p2 {port.ResistancePaSM3:R}");
            Add($"Lp p2 0 {air.DensityKgM3 * port.LengthM / (port.AreaM2 * port.Count):R}");
        }

        if (network.PassiveRadiator is { } cone)
        {
            Add($"Ec c0 0 a 0 {cone.SdM2:R}");
            Add($"Rc c1 c2 {cone.RmsKgS:R}");
            Add($"Lc c2 c3 {cone.MmsKg:R}");
            Add($"Cc c3 0 {cone.CmsMPerN:R}");
            Add($"Fc a 0 Vc {cone.SdM2:R}");
        }

        text.Append(
            ".ac dec 20 10 1000\n.control\nset wr_singlescale\nset numdgt=12\nrun\nwrdata box.data i(Vi) i(Vu) v(a) i(Vl) i(Vp) i(Vc)\nquit\n.endc\n.end\n"
        );
        return text.ToString();
    }

    private static SolvedPoint PointOf(string line, BoxNetwork network, double volts)
    {
        var cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray();
        Complex Vector(int index) => new(cells[1 + (2 * index)], cells[2 + (2 * index)]);
        var (current, velocity, pressure) = (Vector(0), Vector(1), -Vector(2));
        var outward =
            (network.Driver.SdM2 * velocity)
            - Vector(3)
            - (network.Port is null ? 0 : Vector(4))
            - (network.PassiveRadiator is { } cone ? cone.SdM2 * Vector(5) : 0);
        return new SolvedPoint(cells[0], volts / current, velocity, pressure, outward);
    }
}
