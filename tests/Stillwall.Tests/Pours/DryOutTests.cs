using CsCheck;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class DryOutTests
{
    // 60 g per m² and hour: 2.883 kg through 0.05 m² take 961 hours.
    [Fact]
    public void Open_faces_let_water_out_at_their_own_pace_and_closed_skins_never()
    {
        Assert.Equal(961 / 24.0, DryOut.FirstStageDays(2.883, 0.05)!.Value, 1e-4);
        Assert.Null(DryOut.FirstStageDays(2.883, 0));
    }

    [Fact]
    public void Weighings_on_an_exponential_give_it_back()
    {
        Gen.Select(Gen.Double[5, 15], Gen.Double[0.5, 4], Gen.Double[3, 30], Gen.Double[0, 40])
            .Sample(
                (dry, excess, tau, first) =>
                {
                    var weighIns = Enumerable.Range(0, 5).Select(i => new WeighIn(first + i * tau / 3, dry + excess * Math.Exp(-i / 3.0))).ToArray();
                    var fit = DryOut.Fit(weighIns)!;
                    Assert.Equal(dry, fit.DryMassKg, 1e-5);
                    Assert.Equal(tau, fit.TimeConstantDays, 1e-4 * tau);
                    Assert.Equal(excess, fit.ExcessKg, 1e-5);
                }
            );
    }

    [Fact]
    public void The_ready_day_is_when_the_curve_is_that_near_its_end()
    {
        var fit = new DryOutFit(8, 2, 10, 3, 0);
        Assert.Equal(8 * 0.05, 2 * Math.Exp(-(fit.ReadyDays(0.05) - 3) / 10), 1e-12);
        Assert.Equal(3, fit.ReadyDays(0.5));
    }

    [Fact]
    public void A_gram_of_error_on_the_scales_moves_the_dry_mass_by_less_than_half_a_percent()
    {
        double[] errors = [0.001, -0.001, 0.0005, 0.001, -0.001, 0.0005];
        var fit = DryOut.Fit([.. errors.Select((e, i) => new WeighIn(i * 3, 8 + 2 * Math.Exp(-i * 3 / 15.0) + e))])!;
        Assert.Equal(8, fit.DryMassKg, 0.04);
        Assert.InRange(fit.ResidualKg!.Value, 1e-5, 0.0015);
    }

    // The band is honest: with scales that err by 5 g, the true dry mass and the true day lie in their 95 % bands about as often as said.
    [Fact]
    public void The_true_dry_mass_and_day_lie_in_their_bands_as_often_as_said()
    {
        var draw = new Stillwall.Numerics.SeededGenerator(7);
        double Noise() => Enumerable.Range(0, 12).Sum(_ => draw.Next()) - 6;
        var (dry, excess, tau) = (8.0, 1.6, 14.0);
        var day = tau * Math.Log(excess / (0.05 * dry));
        var (mass, ready, all) = (0, 0, 0);
        for (var seed = 0; seed < 400; seed++)
        {
            if (DryOut.Fit([.. Enumerable.Range(0, 9).Select(i => new WeighIn(3 * i, dry + excess * Math.Exp(-3 * i / tau) + 0.005 * Noise()))]) is { } fit)
            {
                all++;
                mass += Math.Abs(fit.DryMassKg - dry) <= fit.DryMassDoubtKg ? 1 : 0;
                ready += Math.Abs(fit.ReadyDays(0.05) - day) <= fit.ReadyDoubtDays(0.05) ? 1 : 0;
            }
        }

        Assert.True(all > 390, $"{all}");
        Assert.InRange(mass / (double)all, 0.88, 0.99);
        Assert.InRange(ready / (double)all, 0.88, 0.99);
    }

    [Fact]
    public void Too_few_weighings_a_straight_line_and_a_cast_that_gains_have_no_dry_mass()
    {
        Assert.Null(DryOut.Fit([new WeighIn(0, 10), new WeighIn(1, 9)]));
        Assert.Null(DryOut.Fit([new WeighIn(0, 10), new WeighIn(0, 10), new WeighIn(1, 9)]));
        Assert.Null(DryOut.Fit([new WeighIn(0, 10), new WeighIn(1, 9), new WeighIn(2, 8)]));
        Assert.Null(DryOut.Fit([new WeighIn(0, 8), new WeighIn(1, 8.5), new WeighIn(2, 8.7)]));
        Assert.Null(DryOut.Fit([new WeighIn(0, 10), new WeighIn(1, 9.9), new WeighIn(2, 9.7)]));
        Assert.Null(DryOut.Fit([new WeighIn(0, 9), new WeighIn(1, 9), new WeighIn(2, 9)]));
    }

    [Fact]
    public void Three_weighings_that_bend_are_enough_and_say_nothing_of_their_error()
    {
        var fit = DryOut.Fit([new WeighIn(0, 10), new WeighIn(5, 9), new WeighIn(10, 8.5)])!;
        // Differences halve every five days, so the end is 8 and the time constant 5/ln 2.
        Assert.Equal(8, fit.DryMassKg, 1e-5);
        Assert.Equal(5 / Math.Log(2), fit.TimeConstantDays, 1e-4);
        Assert.Null(fit.ResidualKg);
    }
}
