using Stillwall.Proofs.Spectra;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Tests.Proofs;

/// <summary>Spectra and deconvolution against SciPy; see tests/data/proofs/README.md.</summary>
public sealed class SpectrumTests
{
    private const double Rate = 12000;
    private const int Count = 60000;

    [Fact]
    public void The_cross_spectral_estimate_is_that_of_SciPy()
    {
        var x = Input();
        var filtered = Filtered(x);
        var y = filtered.Select((v, i) => v + (0.03 * Sine(50, i)) + (0.01 * Sine(333.3, i, 0.5))).ToArray();
        var spectrum = CrossSpectrum.Of(x, y, Rate, 4096);
        var rows = SciPy.Table(SciPy.Folder, "cross-spectrum.csv");
        Assert.Equal(16, rows.Count);
        foreach (var row in rows)
        {
            var ratio = spectrum.Cross[(int)row[0]] / spectrum.FirstPower[(int)row[0]];
            Assert.Equal(row[1], 20 * Math.Log10(ratio.Magnitude), 1e-6);
            Assert.Equal(row[2], ratio.Phase, 1e-7);
            Assert.Equal(row[3], spectrum.CoherenceFraction((int)row[0]), 1e-7);
        }
    }

    [Fact]
    public void The_deconvolution_is_that_of_SciPy()
    {
        var sweep = Sweep();
        var recorded = Filtered(sweep).Select((v, i) => v + (0.001 * Sine(50, i))).ToArray();
        var (transfer, _) = Deconvolution.Of(recorded, sweep, 131072);
        var rows = SciPy.Table(SciPy.Folder, "deconvolution.csv");
        Assert.Equal(11, rows.Count);
        Assert.All(rows, row => Assert.Equal(row[1], 20 * Math.Log10(transfer[(int)row[0]].Magnitude), 1e-5));
    }

    [Fact]
    public void The_stored_figures_are_what_SciPy_says_today()
    {
        if (SciPy.Python is null && Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip("SciPy is not there: apt-get install python3-scipy");
        }

        Assert.True(SciPy.Python is not null, "SciPy is required where CI=true: apt-get install python3-scipy");
        var folder = Directory.CreateTempSubdirectory("stillwall-scipy-");
        try
        {
            Assert.Equal(0, SciPy.Make(SciPy.Python, folder.FullName));
            foreach (var file in new[] { "cross-spectrum.csv", "deconvolution.csv" })
            {
                var (stored, made) = (SciPy.Table(SciPy.Folder, file), SciPy.Table(folder.FullName, file));
                Assert.Equal(stored.Count, made.Count);
                Assert.All(stored.Zip(made), p => Assert.All(p.First.Zip(p.Second), c => Assert.Equal(c.First, c.Second, 1e-8 * (1 + Math.Abs(c.First)))));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData(96000, 12000)]
    [InlineData(44100, 12000)]
    [InlineData(48000, 6000)]
    [InlineData(8000, 12000)]
    public void A_resampled_sine_is_the_sine_sampled_at_the_new_rate(double from, double to)
    {
        var top = 0.4 * Math.Min(from, to);
        foreach (var hertz in new[] { 20.0, 333, top })
        {
            var made = Resampling.To([.. Enumerable.Range(0, (int)from / 2).Select(i => Math.Sin(2 * Math.PI * hertz * i / from))], from, to);
            Assert.Equal((int)(to / 2), made.Length);
            Assert.All(Enumerable.Range(200, made.Length - 400), i => Assert.Equal(Math.Sin(2 * Math.PI * hertz * i / to), made[i], 2e-4));
        }
    }

    [Fact]
    public void What_would_fold_into_the_kept_band_is_a_hundred_decibels_down()
    {
        var made = Resampling.To([.. Enumerable.Range(0, 48000).Select(i => Math.Sin(2 * Math.PI * 9000 * i / 48000.0))], 48000, 12000);
        Assert.InRange(made[200..^200].Max(Math.Abs), 0, 2e-5);
    }

    [Fact]
    public void Third_octave_bands_have_the_mid_band_frequencies_of_IEC_61260()
    {
        // Exact mid-band frequencies of IEC 61260-1:2014, annex (from memory): 10^(n/10).
        var bands = FractionalOctaves.Bands(3, 20, 250);
        double[] exact = [25.119, 31.623, 39.811, 50.119, 63.096, 79.433, 100.000, 125.893, 158.489, 199.526];
        Assert.Equal(exact.Length, bands.Count);
        Assert.All(bands.Zip(exact), p => Assert.Equal(p.Second, p.First.CentreHz, 1e-3));
        Assert.All(bands.Zip(bands.Skip(1)), p => Assert.Equal(p.First.UpperHz, p.Second.LowerHz, 1e-9));
    }

    [Fact]
    public void Even_fractions_lie_half_a_step_beside_a_thousand() =>
        Assert.Contains(FractionalOctaves.Bands(24, 900, 1100), b => Math.Abs(b.CentreHz - (1000 * Math.Pow(10, 0.3 / 48))) < 1e-9);

    private static double Sine(double hertz, int i, double phase = 0) => Math.Sin((2 * Math.PI * hertz * i / Rate) + phase);

    private static double[] Sweep()
    {
        var grow = 4 / Math.Log(200);
        return [.. Enumerable.Range(0, Count).Select(i => i / Rate < 4 ? 0.5 * Math.Sin(2 * Math.PI * 10 * grow * (Math.Exp(i / Rate / grow) - 1)) : 0)];
    }

    private static double[] Input() => [.. Sweep().Select((v, i) => v + (0.1 * Sine(37, i)) + (0.05 * Sine(411, i, 1)))];

    private static double[] Filtered(double[] x)
    {
        var y = new double[x.Length];
        for (var i = 0; i < x.Length; i++)
        {
            y[i] = (0.02 * x[i]) + (i > 0 ? (0.01 * x[i - 1]) + (1.6 * y[i - 1]) : 0) - (i > 1 ? 0.7 * y[i - 2] : 0);
        }

        return y;
    }
}
