namespace Stillwall.Neighbours.Joins;

/// <summary>One way to join by the orders of its two halves, at its best setting.</summary>
/// <param name="LowPassOrder">Order of the low-pass in front of the cabinet.</param>
/// <param name="HighPassOrder">Order of the high-pass in front of the main speakers.</param>
/// <param name="DelayS">Delay of the main speakers against the cabinet, s; negative: the cabinet is delayed instead.</param>
/// <param name="Inverted">Whether the cabinet's polarity is turned.</param>
/// <param name="TrimDb">Passband level of the cabinet over that of the main speakers, dB.</param>
/// <param name="RippleDb">Half the span of the sum from half to twice the crossover, ± dB.</param>
public sealed record JoiningWay(int LowPassOrder, int HighPassOrder, double DelayS, bool Inverted, double TrimDb, double RippleDb);

/// <summary>The joining to set, beside the other ways and what becomes of it at the seat.</summary>
/// <param name="DelayS">Delay of the main speakers against the cabinet, s; negative: the cabinet is delayed instead.</param>
/// <param name="Inverted">Whether the cabinet's polarity is turned.</param>
/// <param name="TrimDb">Passband level of the cabinet over that of the main speakers, dB.</param>
/// <param name="RippleDb">Half the span of the sum from half to twice the crossover in the free field, ± dB.</param>
/// <param name="Curve">Cabinet, main speakers and sum over frequency.</param>
/// <param name="Ways">Second and fourth orders on either side, the least ripple first.</param>
/// <param name="Seat">The same at the seat; null where room or main speakers are not placed.</param>
public sealed record JoiningReport(
    double DelayS,
    bool Inverted,
    double TrimDb,
    double RippleDb,
    IReadOnlyList<JoiningPoint> Curve,
    IReadOnlyList<JoiningWay> Ways,
    SeatJoining? Seat
)
{
    /// <summary>The report of a joining.</summary>
    /// <param name="joining">The joining to set.</param>
    /// <param name="ways">The ways beside it.</param>
    /// <param name="seat">The same at the seat, or null.</param>
    /// <returns>The report.</returns>
    /// <remarks>Model: the joinings' own figures. Validity: as theirs. Source: our choice of what is told. Accuracy: exact.</remarks>
    public static JoiningReport Of(Joining joining, IReadOnlyList<Joining> ways, SeatJoining? seat)
    {
        ArgumentNullException.ThrowIfNull(joining);
        ArgumentNullException.ThrowIfNull(ways);
        return new(
            DelayS: joining.DelayS,
            Inverted: joining.Inverted,
            TrimDb: joining.TrimDb,
            RippleDb: joining.RippleDb,
            Curve: joining.Curve,
            Ways: [.. ways.Select(w => new JoiningWay(w.LowPassOrder, w.HighPassOrder, w.DelayS, w.Inverted, w.TrimDb, w.RippleDb))],
            Seat: seat
        );
    }
}
