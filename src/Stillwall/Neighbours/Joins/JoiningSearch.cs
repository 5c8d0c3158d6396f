using System.Numerics;

namespace Stillwall.Neighbours.Joins;

/// <summary>Cabinet and main speakers at one frequency, before delay, polarity and level.</summary>
internal readonly record struct JoiningPair(double FrequencyHz, Complex Cabinet, Complex MainSpeakers);

/// <summary>One way to set delay, polarity and level, and the ripple it gives.</summary>
internal readonly record struct JoiningSetting(double DelayS, bool Inverted, double TrimDb, double RippleDb);

/// <summary>Seeks delay, polarity and level of the least ripple: a grid, then halving steps.</summary>
/// <param name="band">Cabinet and main speakers at even steps of the logarithm.</param>
/// <param name="grouped">Points whose power is averaged before it counts; 1 in the free field, a third-octave in a room.</param>
internal sealed class JoiningSearch(JoiningPair[] band, int grouped)
{
    // Trim beyond this is not joining but covering up (our choice).
    private const double MostTrimDb = 6;

    internal JoiningSetting Best(double crossoverHz, double aroundS = 0) => Refine(Coarse(crossoverHz, aroundS), crossoverHz, aroundS);

    internal double RippleOf(JoiningSetting setting) => new Delayed(band, setting.DelayS, grouped).With(setting.Inverted, setting.TrimDb).RippleDb;

    /// <summary>Factor on the pressure.</summary>
    /// <remarks>Source: elementary.</remarks>
    internal static double Gain(bool inverted, double trim) => (inverted ? -1 : 1) * Math.Pow(10, trim / 20);

    internal static Complex Late(JoiningPair point, double delay)
    {
        var (sine, cosine) = Math.SinCos(-2 * Math.PI * point.FrequencyHz * delay);
        return point.MainSpeakers * new Complex(cosine, sine);
    }

    private JoiningSetting Coarse(double crossoverHz, double aroundS)
    {
        var best = new JoiningSetting(aroundS, false, 0, double.PositiveInfinity);
        for (var step = -24; step <= 24; step++)
        {
            var delayed = new Delayed(band, aroundS + step / 24.0 / crossoverHz, grouped);
            foreach (var inverted in (bool[])[false, true])
            {
                for (var trim = -MostTrimDb; trim <= MostTrimDb; trim++)
                {
                    var tried = delayed.With(inverted, trim);

                    // Between equals the least delay and trim.
                    best =
                        tried.RippleDb < best.RippleDb - 1e-9
                        || (tried.RippleDb < best.RippleDb + 1e-9 && Size(tried, crossoverHz, aroundS) < Size(best, crossoverHz, aroundS))
                            ? tried
                            : best;
                }
            }
        }

        return best;
    }

    // Steps in the eight directions of the plane of delay and trim, halved where none is better: the ripple has creases that a gradient trips over.
    private JoiningSetting Refine(JoiningSetting start, double crossoverHz, double aroundS)
    {
        var (best, delayStep, trimStep) = (start, 1 / 48.0 / crossoverHz, 0.5);
        while (trimStep > 1e-4)
        {
            var better = best;
            for (var later = -1; later <= 1; later++)
            {
                var delayed = new Delayed(band, Math.Clamp(best.DelayS + later * delayStep, aroundS - 1 / crossoverHz, aroundS + 1 / crossoverHz), grouped);
                for (var louder = -1; louder <= 1; louder++)
                {
                    var tried = delayed.With(best.Inverted, Math.Clamp(best.TrimDb + louder * trimStep, -MostTrimDb, MostTrimDb));
                    better = tried.RippleDb < better.RippleDb - 1e-9 ? tried : better;
                }
            }

            (delayStep, trimStep) = better.RippleDb < best.RippleDb ? (delayStep, trimStep) : (delayStep / 2, trimStep / 2);
            best = better;
        }

        return best;
    }

    private static double Size(JoiningSetting setting, double crossoverHz, double aroundS) =>
        Math.Abs((setting.DelayS - aroundS) * crossoverHz) + (Math.Abs(setting.TrimDb) / 100);

    // The band at one delay of the main speakers. Polarity and trim then scale the cabinet by a real factor g: |g c + m|² = g²|c|² + 2g Re(c m*) + |m|².
    private sealed class Delayed(JoiningPair[] band, double delay, int grouped)
    {
        private readonly (double Cabinet, double Both, double MainSpeakers)[] powers =
        [
            .. band.Select(point =>
            {
                var both = point.Cabinet * Complex.Conjugate(Late(point, delay));
                return (Square(point.Cabinet), 2 * both.Real, Square(point.MainSpeakers));
            }),
        ];

        internal JoiningSetting With(bool inverted, double trim)
        {
            var gain = Gain(inverted, trim);
            var (least, greatest) = (double.PositiveInfinity, 0.0);
            for (var first = 0; first + grouped <= powers.Length; first += grouped)
            {
                var power = 0.0;
                for (var i = first; i < first + grouped; i++)
                {
                    power += gain * gain * powers[i].Cabinet + gain * powers[i].Both + powers[i].MainSpeakers;
                }

                (least, greatest) = (Math.Min(least, power), Math.Max(greatest, power));
            }

            // Half the span of 10 log10 of the power; a notch to nothing is a great number, not infinity.
            return new(delay, inverted, trim, 5 * Math.Log10(greatest / Math.Max(least, greatest * 1e-30)));
        }

        private static double Square(Complex value) => value.Real * value.Real + value.Imaginary * value.Imaginary;
    }
}
