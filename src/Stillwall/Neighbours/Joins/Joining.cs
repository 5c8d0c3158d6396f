using System.Numerics;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Joins;

/// <summary>How the cabinet joins the main speakers best, in the free field.</summary>
/// <param name="DelayS">Delay of the main speakers against the cabinet, s; negative: the cabinet is delayed instead.</param>
/// <param name="Inverted">Whether the cabinet's polarity is turned.</param>
/// <param name="TrimDb">Passband level of the cabinet over that of the main speakers, dB.</param>
/// <param name="RippleDb">Half the span between highest and lowest level from half to twice the crossover, ± dB.</param>
/// <param name="Curve">Cabinet, main speakers and sum over frequency.</param>
public sealed record Joining(
    [property: ComputedBy("joining", "box.system_resonance_hz", "box.system_q")] double DelayS,
    bool Inverted,
    [property: ComputedBy("joining", "box.system_resonance_hz", "box.system_q")] double TrimDb,
    [property: ComputedBy("joining", "box.system_resonance_hz", "box.system_q")] double RippleDb,
    IReadOnlyList<JoiningPoint> Curve
)
{
    internal const int PointsPerOctave = 24;

    /// <summary>Order of the low-pass in front of the cabinet, 2 or 4.</summary>
    public int LowPassOrder { get; private init; } = 4;

    /// <summary>Order of the high-pass in front of the main speakers, 2 or 4.</summary>
    public int HighPassOrder { get; private init; } = 4;

    /// <summary>The four ways to join with orders 2 and 4 on either side, the least ripple first.</summary>
    /// <param name="inputs">As for <see cref="Of"/>; the orders in it are not looked at.</param>
    /// <returns>The best setting of each way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: <see cref="Of"/>; a second-order half is two first-order ones, −6 dB at the crossover, so that the two halves sum flat with one of them
    /// inverted. Validity: as there.
    /// Source: Linkwitz 1976 (from memory). Accuracy: as there.
    /// </remarks>
    public static IReadOnlyList<Joining> Ways(JoiningInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        int[] orders = [4, 2];
        return
        [
            .. orders
                .SelectMany(low => orders.Select(high => Of(inputs with { LowPassOrder = low, HighPassOrder = high })))
                .OrderBy(joining => joining.RippleDb),
        ];
    }

    /// <summary>Searches delay, polarity and trim for the least ripple from half to twice the crossover.</summary>
    /// <param name="inputs">Crossover 1 to 2000 Hz, resonance and corner above 0 Hz, Qs above 0.</param>
    /// <returns>The best setting found and its curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: closed box × fourth-order low-pass plus, delayed, second-order high-pass × fourth-order high-pass; delay within one period of the
    /// crossover, trim within 6 dB; a grid, then halving steps.
    /// Validity: free field, both at the same distance; the room changes it, so the ear or a sweep has the last word. Source: roll-offs Small 1972,
    /// JAES 20(10); crossover Linkwitz 1976 (from memory); search and limits are our choice.
    /// Accuracy: ideal speakers and box far below the crossover give the closed form's zero ripple within 0.01 dB.
    /// </remarks>
    public static Joining Of(JoiningInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        Require.Within(inputs.CrossoverHz, 1, 2000, nameof(inputs.CrossoverHz), "Hz");
        Require.Within(inputs.LowPassOrder, 2, 4, nameof(inputs.LowPassOrder));
        Require.Within(inputs.HighPassOrder, 2, 4, nameof(inputs.HighPassOrder));
        var best = new JoiningSearch(Points(inputs, 0.5, 2), 1).Best(inputs.CrossoverHz);
        return new(best.DelayS, best.Inverted, best.TrimDb, best.RippleDb, Drawn(Points(inputs, 0.125, 4), best))
        {
            LowPassOrder = inputs.LowPassOrder,
            HighPassOrder = inputs.HighPassOrder,
        };
    }

    internal static JoiningPair[] Points(JoiningInputs inputs, double from, double to)
    {
        var count = (int)Math.Round(PointsPerOctave * Math.Log2(to / from));
        return
        [
            .. Enumerable
                .Range(0, count + 1)
                .Select(i =>
                {
                    var f = inputs.CrossoverHz * from * Math.Pow(2, (double)i / PointsPerOctave);
                    return new JoiningPair(
                        f,
                        Analogue.HighPass(f, inputs.SystemResonanceHz, inputs.SystemQ) * LowPass(f, inputs),
                        Analogue.HighPass(f, inputs.MainSpeakersCornerHz, inputs.MainSpeakersQ) * HighPass(f, inputs)
                    );
                }),
        ];
    }

    private static Complex LowPass(double f, JoiningInputs inputs) =>
        inputs.LowPassOrder == 4 ? Analogue.FourthOrderLowPass(f, inputs.CrossoverHz) : Analogue.LowPass(f, inputs.CrossoverHz, 0.5);

    private static Complex HighPass(double f, JoiningInputs inputs) =>
        inputs.HighPassOrder == 4 ? Analogue.FourthOrderHighPass(f, inputs.CrossoverHz) : Analogue.HighPass(f, inputs.CrossoverHz, 0.5);

    private static JoiningPoint[] Drawn(JoiningPair[] points, JoiningSetting setting) =>
        [
            .. points.Select(point => new JoiningPoint(
                point.FrequencyHz,
                Db(point.Cabinet) + setting.TrimDb,
                Db(point.MainSpeakers),
                Db(JoiningSearch.Gain(setting.Inverted, setting.TrimDb) * point.Cabinet + JoiningSearch.Late(point, setting.DelayS))
            )),
        ];

    private static double Db(Complex value) => 20 * Math.Log10(Math.Max(value.Magnitude, 1e-15));
}
