using CsCheck;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class TransientWallTests
{
    // A slab closed on one face, losing heat through the other: rise = Σ Aₙ cos(ζₙx/L)·(qL²/kζₙ²)·(1 − e^(−ζₙ²Fo)), ζ tan ζ = Bi, Aₙ = 4 sin ζ/(2ζ +
    // sin 2ζ).
    // Source: the series of a slab with convection, Carslaw and Jaeger, Conduction of Heat in Solids, chapter 3 (from memory), integrated over an
    // even release; summed here over 200 terms.
    [Theory]
    [InlineData(0.012, 0.6, 2.2e6, 8, 1080)]
    [InlineData(0.040, 0.6, 2.2e6, 8, 1080)]
    [InlineData(0.020, 0.2, 1.5e6, 50, 3600)]
    [InlineData(0.012, 1.2, 2.5e6, 8, 172800)]
    public void The_peak_is_that_of_the_exact_series_of_a_slab(double thicknessM, double conductivity, double capacity, double loss, double releaseS)
    {
        var power = 3e5 * 1080 / releaseS;
        var warm = TransientWall.Warm([new HeatLayer(thicknessM, conductivity, capacity, power)], releaseS, loss)!;
        var biot = loss * thicknessM / conductivity;
        double exact = 0,
            face = 0;
        for (var n = 0; n < 200; n++)
        {
            var zeta = Root(n, biot);
            var share =
                4
                * Math.Sin(zeta)
                / (2 * zeta + Math.Sin(2 * zeta))
                * power
                * thicknessM
                * thicknessM
                / conductivity
                / zeta
                / zeta
                * (
                    Math.Exp(-zeta * zeta * conductivity / capacity * (warm.PeakTimeS - releaseS) / thicknessM / thicknessM)
                    - Math.Exp(-zeta * zeta * conductivity / capacity * warm.PeakTimeS / thicknessM / thicknessM)
                );
            exact += share;
            face += share * Math.Cos(zeta);
        }

        Assert.InRange(warm.PeakRiseK / exact, 0.999, 1.001);
        Assert.InRange(warm.OuterFaceRiseK / face, 0.998, 1.002);
        Assert.InRange(warm.PeakTimeS / releaseS, 1, 1.5);
    }

    [Fact]
    public void Heat_released_is_heat_stored_and_heat_lost()
    {
        Gen.Select(Gen.Double[0.001, 0.004], Gen.Double[0.004, 0.05], Gen.Double[0.1, 2], Gen.Double[600, 20000], Gen.Double[0, 30], Gen.Double[0, 10])
            .Sample(
                (skin, core, conducts, release, outer, inner) =>
                {
                    HeatLayer plastic = new(skin, 0.2, 1.5e6);
                    var warm = TransientWall.Warm([plastic, new HeatLayer(core, conducts, 2e6, 1e5), plastic], release, outer, inner)!;
                    Assert.Equal(1e5 * core * release, warm.ReleasedJM2, 1e-6 * warm.ReleasedJM2);
                    Assert.Equal(warm.ReleasedJM2, warm.StoredJM2 + warm.LostJM2, 1e-3 * warm.ReleasedJM2);
                    Assert.True(outer + inner < 0.1 || warm.LostJM2 > 0);
                }
            );
    }

    [Fact]
    public void A_closed_wall_keeps_all_its_heat_and_evens_out()
    {
        HeatLayer plastic = new(0.002, 0.2, 1.5e6);
        var warm = TransientWall.Warm([plastic, new HeatLayer(0.012, 0.6, 2e6, 1e5), plastic], 1080, 0)!;
        Assert.Equal(0, warm.LostJM2);
        Assert.InRange(warm.PeakRiseK, 1e5 * 0.012 * 1080 / (0.012 * 2e6 + 0.004 * 1.5e6), 1e5 * 1080 / 2e6);
    }

    // Two walls that meet at right angles, in squares with explicit steps: both outer faces lose heat, the inner ones nothing. A second dimension
    // that the library leaves out.
    [Fact]
    public void The_edge_where_two_walls_meet_is_cooler_than_the_wall_though_it_is_thicker()
    {
        const int Across = 8,
            Side = 5 * Across;
        const double Thickness = 0.012,
            Conducts = 0.6,
            Capacity = 2.2e6,
            Power = 3e5,
            Release = 1080,
            Loss = 7.4,
            Size = Thickness / Across,
            Step = 0.5;
        var wall = TransientWall.Warm([new HeatLayer(Thickness, Conducts, Capacity, Power)], Release, Loss)!;
        var rise = new double[Side, Side];
        for (var t = 0.0; t < Release; t += Step)
        {
            var next = new double[Side, Side];
            for (var i = 0; i < Side; i++)
            {
                for (var j = 0; j < Side; j++)
                {
                    if (i < Across || j < Across)
                    {
                        next[i, j] =
                            rise[i, j]
                            + Step
                                / Capacity
                                * (Power + (Towards(i, j, i - 1, j) + Towards(i, j, i + 1, j) + Towards(i, j, i, j - 1) + Towards(i, j, i, j + 1)) / Size);
                    }
                }
            }

            rise = next;
        }

        Assert.InRange(rise[Across - 1, Side - 1] / wall.PeakRiseK, 0.98, 1.005);
        Assert.InRange(rise[Across - 1, Across - 1] / wall.PeakRiseK, 0.9, 0.99);
        Assert.True(rise.Cast<double>().Max() <= 1.005 * wall.PeakRiseK);

        double Towards(int i, int j, int k, int l) =>
            k < 0 || l < 0 ? -rise[i, j] / (1 / Loss + Size / 2 / Conducts)
            : k >= Side || l >= Side || (k >= Across && l >= Across) ? 0
            : (rise[k, l] - rise[i, j]) * Conducts / Size;
    }

    [Fact]
    public void What_it_cannot_take_is_refused()
    {
        Assert.Throws<ArgumentException>(() => TransientWall.Warm([], 1000, 8));
        Assert.Throws<ArgumentException>(() => TransientWall.Warm([new HeatLayer(0.01, 1, 1e6)], 1000, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => TransientWall.Warm([new HeatLayer(0, 1, 1e6, 1)], 1000, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => TransientWall.Warm([new HeatLayer(0.01, 1, 1e6, 1)], 0, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => TransientWall.Warm([new HeatLayer(0.01, 1, 1e6, 1)], 1000, -1));
    }

    private static double Root(int n, double biot)
    {
        var (low, high) = (n * Math.PI, (n + 0.5) * Math.PI);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = middle * Math.Sin(middle) < biot * Math.Cos(middle) == (n % 2 == 0) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
