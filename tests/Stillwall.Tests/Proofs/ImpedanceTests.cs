using System.Numerics;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Signals;

namespace Stillwall.Tests.Proofs;

public sealed class ImpedanceTests(ITestOutputHelper output)
{
    [Fact]
    public void Explore()
    {
        foreach (var (name, z, truth) in new[] { ("demo", (Func<double, Complex>)(f => Z(f, 3.55, 30, 5.5, 0.475, 1.2e-3)), new[] { 30, 5.5, 0.475, 3.55, 1.2e-3 }), ("sharp", f => Z(f, 6, 22, 15, 0.4, 0.8e-3), new[] { 22, 15, 0.4, 6, 0.8e-3 }), ("small", f => Z(f, 3.2, 90, 3, 0.7, 0.1e-3), new[] { 90, 3, 0.7, 3.2, 1e-4 }), ("box", f => Z(f, 3.55, 52, 3.2, 0.8, 1.2e-3), [52, 3.2, 0.8, 3.55, 1.2e-3]) })
        foreach (var rate in new[] { 48000.0 })
        foreach (var sig in new[] { "sweep10", "sweep5", "sweepwide", "noise", "tone10" })
        foreach (var noisy in new[] { false, true })
        {
            var s = sig switch { "sweep10" => new ExponentialSweep(5, 1000, 10).Samples(rate, -6), "sweep5" => new ExponentialSweep(10, 2000, 5).Samples(rate, -6), "sweepwide" => new ExponentialSweep(10, 20000, 10).Samples(rate, -6), "tone10" => Bare(10,20000,10,rate), _ => TestSignals.PinkNoise(5, 2000, 10, rate, -6) };
            var r = Synthetic.Impedance(s, rate, 10, z);
            if (noisy) r = r.WithNoise(-61, 3).WithHum(-61).Rounded(16);
            var sw = System.Diagnostics.Stopwatch.StartNew();
            var read = ImpedanceRecording.Of(r, 10);
            if (read.Result is not { } x) { output.WriteLine($"{name} {rate} {sig} {noisy}: {read.Trouble}"); continue; }
            double[] got = [x.ResonanceHz, x.QMechanical, x.QElectrical, x.DcResistanceOhm, x.InductanceH];
            double[] u = [x.Uncertainty.ResonanceHz, x.Uncertainty.QMechanical, x.Uncertainty.QElectrical, x.Uncertainty.DcResistanceOhm, x.Uncertainty.InductanceH];
            output.WriteLine($"{name} {rate} {sig} {(noisy ? "noisy" : "clean")}: {string.Join(" ", got.Zip(truth, (a, b) => $"{100 * (a / b - 1):f3}%"))} bands {string.Join(" ", u.Zip(truth, (a, b) => $"{100 * a / b:f3}%"))} misfit {x.MisfitRatio:g3} {(x.Model.LossOhm > 0 ? "lossy" : "")} {sw.ElapsedMilliseconds} ms {string.Join("|", read.Warnings)}");
        }
    }

    private static double[] Bare(double f1, double f2, double T, double rate) { var L = T / Math.Log(f2 / f1); return [.. Enumerable.Range(0, (int)(T * rate)).Select(i => 0.5 * Math.Sin(2 * Math.PI * f1 * L * (Math.Exp(i / rate / L) - 1)))]; }
    [Fact]
    public void Coverage()
    {
        foreach (var sig in new[] { "sweep", "noise" }) foreach (var (q, f0) in new[] { (5.5, 30.0), (3, 55) }) {
        Func<double, Complex> z = f => Z(f, 3.55, f0, q, 0.475, 1.2e-3);
        var s = sig == "sweep" ? new ExponentialSweep(5, 1000, 8).Samples(12000, -6) : TestSignals.PinkNoise(5, 1000, 8, 12000, -6);
        var clean = Synthetic.Impedance(s, 12000, 10, z);
        var inside = new int[7];
        var truth = new ImpedanceModel(3.55, f0, q, 3.55 * q / 0.475, 1.2e-3).Figures();
        for (ulong seed = 1; seed <= 200; seed++) {
            var x = ImpedanceRecording.Of(clean.WithNoise(-61, seed), 10).Result!;
            double[] a = V(x), t = V(truth), u = V(x.Uncertainty);
            for (var i = 0; i < 7; i++) inside[i] += Math.Abs(a[i] - t[i]) <= u[i] ? 1 : 0;
        }
        output.WriteLine($"{sig} {q}: {string.Join(" ", inside.Select(i => i / 2.0))}"); }
    }
    private static double[] V(ImpedanceFigures f) => [f.ResonanceHz, f.QMechanical, f.QElectrical, f.QTotal, f.DcResistanceOhm, f.InductanceH, f.PeakOhm];
    private static double[] White(int n) { var r = new Stillwall.Numerics.SeededGenerator(5); return [.. Enumerable.Range(0, n).Select(_ => 0.15 * Synthetic.Gaussian(r))]; }

    internal static Complex Z(double f, double re, double f0, double qms, double qes, double le)
    {
        var s = new Complex(0, f / f0);
        return re + new Complex(0, 2 * Math.PI * f * le) + re * qms / qes * (s / qms) / (s * s + s / qms + 1);
    }
}
