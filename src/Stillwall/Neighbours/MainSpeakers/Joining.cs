using System.Numerics;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.MainSpeakers;

/// <summary>How the cabinet joins the main speakers best, in the free field.</summary>
/// <param name="DelayS">Delay of the main speakers against the cabinet, s; negative: the cabinet is delayed instead.</param>
/// <param name="Inverted">Whether the cabinet's polarity is turned.</param>
/// <param name="TrimDb">Passband level of the cabinet over that of the main speakers, dB.</param>
/// <param name="RippleDb">Half the span between highest and lowest level from half to twice the crossover, ± dB.</param>
/// <param name="Curve">Cabinet, mains and sum over frequency.</param>
public sealed record Joining(
    [property: ComputedBy("joining", "brief.aim.crossover", "brief.mains.corner", "brief.mains.q", "box.system_resonance_hz", "box.system_q")] double DelayS,
    bool Inverted,
    [property: ComputedBy("joining", "brief.aim.crossover", "brief.mains.corner", "brief.mains.q", "box.system_resonance_hz", "box.system_q")] double TrimDb,
    [property: ComputedBy("joining", "brief.aim.crossover", "brief.mains.corner", "brief.mains.q", "box.system_resonance_hz", "box.system_q")] double RippleDb,
    IReadOnlyList<JoiningPoint> Curve)
{
    private const int PointsPerOctave = 24;

    // Trim beyond this is not joining but covering up (our choice).
    private const double MostTrimDb = 6;

    /// <summary>Searches delay, polarity and trim for the least ripple from half to twice the crossover.</summary>
    /// <param name="inputs">Crossover 1 to 2000 Hz, resonance and corner above 0 Hz, Qs above 0.</param>
    /// <returns>The best setting found and its curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: closed box × fourth-order low-pass plus, delayed, second-order high-pass × fourth-order high-pass; delay within one period of the crossover, trim within 6 dB; a grid, then halving steps.
    /// Validity: free field, both at the same distance; the room changes it, so the ear or a sweep has the last word. Source: roll-offs Small (1972); crossover Linkwitz, JAES 24(1) 1976 (from memory); search and limits are our choice.
    /// Accuracy: ideal speakers and box far below the crossover give the closed form's zero ripple within 0.01 dB.
    /// </remarks>
    public static Joining Of(JoiningInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        Require.Within(inputs.CrossoverHz, 1, 2000, nameof(inputs.CrossoverHz), "Hz");
        var band = Points(inputs, 0.5, 2);
        var best = Refine(band, Coarse(band, inputs.CrossoverHz), inputs.CrossoverHz);
        return new(best.Delay, best.Inverted, best.Trim, best.Ripple, Drawn(Points(inputs, 0.125, 4), best));
    }

    private readonly record struct Point(double FrequencyHz, Complex Cabinet, Complex Mains);

    private readonly record struct Setting(double Delay, bool Inverted, double Trim, double Ripple);

    private static Point[] Points(JoiningInputs inputs, double from, double to)
    {
        var count = (int)Math.Round(PointsPerOctave * Math.Log2(to / from));
        return [.. Enumerable.Range(0, count + 1).Select(i =>
        {
            var f = inputs.CrossoverHz * from * Math.Pow(2, (double)i / PointsPerOctave);
            return new Point(
                f,
                Analogue.HighPass(f, inputs.SystemResonanceHz, inputs.SystemQ) * Analogue.FourthOrderLowPass(f, inputs.CrossoverHz),
                Analogue.HighPass(f, inputs.MainsCornerHz, inputs.MainsQ) * Analogue.FourthOrderHighPass(f, inputs.CrossoverHz));
        })];
    }

    private static Setting Coarse(Point[] band, double crossoverHz)
    {
        var best = new Setting(0, false, 0, double.PositiveInfinity);
        for (var step = -24; step <= 24; step++)
        {
            var delayed = new Delayed(band, step / 24.0 / crossoverHz);
            foreach (var inverted in (bool[])[false, true])
            {
                for (var trim = -MostTrimDb; trim <= MostTrimDb; trim++)
                {
                    var tried = delayed.With(inverted, trim);

                    // Between equals the least delay and trim.
                    best = tried.Ripple < best.Ripple - 1e-9 || (tried.Ripple < best.Ripple + 1e-9 && Size(tried, crossoverHz) < Size(best, crossoverHz)) ? tried : best;
                }
            }
        }

        return best;
    }

    // Steps in the eight directions of the plane of delay and trim, halved where none is better: the ripple has creases that a gradient trips over.
    private static Setting Refine(Point[] band, Setting start, double crossoverHz)
    {
        var (best, delayStep, trimStep) = (start, 1 / 48.0 / crossoverHz, 0.5);
        while (trimStep > 1e-4)
        {
            var better = best;
            for (var later = -1; later <= 1; later++)
            {
                var delayed = new Delayed(band, Math.Clamp(best.Delay + later * delayStep, -1 / crossoverHz, 1 / crossoverHz));
                for (var louder = -1; louder <= 1; louder++)
                {
                    var tried = delayed.With(best.Inverted, Math.Clamp(best.Trim + louder * trimStep, -MostTrimDb, MostTrimDb));
                    better = tried.Ripple < better.Ripple - 1e-9 ? tried : better;
                }
            }

            (delayStep, trimStep) = better.Ripple < best.Ripple ? (delayStep, trimStep) : (delayStep / 2, trimStep / 2);
            best = better;
        }

        return best;
    }

    private static double Size(Setting setting, double crossoverHz) => Math.Abs(setting.Delay * crossoverHz) + (Math.Abs(setting.Trim) / 100);

    // The band at one delay of the mains. Polarity and trim then scale the cabinet by a real factor g: |g c + m|² = g²|c|² + 2g Re(c m*) + |m|².
    private sealed class Delayed(Point[] band, double delay)
    {
        private readonly (double Cabinet, double Both, double Mains)[] powers = [.. band.Select(point =>
        {
            var both = point.Cabinet * Complex.Conjugate(Late(point, delay));
            return (Square(point.Cabinet), 2 * both.Real, Square(point.Mains));
        })];

        internal Setting With(bool inverted, double trim)
        {
            var gain = Gain(inverted, trim);
            var (least, greatest) = (double.PositiveInfinity, 0.0);
            foreach (var (cabinet, both, mains) in powers)
            {
                var power = gain * gain * cabinet + gain * both + mains;
                (least, greatest) = (Math.Min(least, power), Math.Max(greatest, power));
            }

            // Half the span of 10 log10 of the power; a notch to nothing is a great number, not infinity.
            return new(delay, inverted, trim, 5 * Math.Log10(greatest / Math.Max(least, greatest * 1e-30)));
        }

        private static double Square(Complex value) => value.Real * value.Real + value.Imaginary * value.Imaginary;
    }

    private static double Gain(bool inverted, double trim) => (inverted ? -1 : 1) * Math.Pow(10, trim / 20);

    private static Complex Late(Point point, double delay)
    {
        var (sine, cosine) = Math.SinCos(-2 * Math.PI * point.FrequencyHz * delay);
        return point.Mains * new Complex(cosine, sine);
    }

    private static JoiningPoint[] Drawn(Point[] points, Setting setting) => [.. points.Select(point => new JoiningPoint(
        point.FrequencyHz,
        Db(point.Cabinet) + setting.Trim,
        Db(point.Mains),
        Db(Gain(setting.Inverted, setting.Trim) * point.Cabinet + Late(point, setting.Delay))))];

    private static double Db(Complex value) => 20 * Math.Log10(Math.Max(value.Magnitude, 1e-15));
}
