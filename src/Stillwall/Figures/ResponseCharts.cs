using Stillwall.Appraisals;
using Stillwall.Cabinets;

namespace Stillwall.Figures;

/// <summary>The four questions to the closed box: how low, how loud, how far does the cone move, what does the amplifier feel.</summary>
public static class ResponseCharts
{
    /// <summary>Every chart that can be drawn for a project, in the order of the job.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The charts; what cannot be drawn is left out.</returns>
    /// <remarks>Source: see the catalogue.</remarks>
    public static IReadOnlyList<Chart> All(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return [.. new[] { HowLow(facts), HowLoud(facts), HowFar(facts), WhatTheAmplifierFeels(facts), NeighbourChart.Of(facts.Quiet) }.OfType<Chart>()];
    }

    /// <summary>How low: the response relative to its passband.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <param name="before">The former state, drawn as a pencil line; null leaves it out.</param>
    /// <returns>The chart; null where the box is not known.</returns>
    /// <remarks>
    /// Model: the network without leak, loss of fill and coil inductance, as the closed forms of f3 and f10 are; a second line has them in; the band
    /// is the tolerance of drivers.
    /// Validity: below the first air mode of the box. Source: see <see cref="ClosedBox"/> and <see cref="Tolerance"/>. Accuracy: as theirs.
    /// </remarks>
    public static Chart? HowLow(Facts facts, Facts? before = null)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.System is { } system ? HowLowChart.Of(facts, system, before) : null;
    }

    /// <summary>How loud: the greatest level over frequency, and what limits it where.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The chart; null where the box or one of its limits is not known.</returns>
    /// <remarks>
    /// Model: the greatest level within excursion, coil and amplifier, half space at the listening distance; with a room also at the seat, less the
    /// allowance for real walls, to 200 Hz.
    /// Validity: steady sine. Source: see <see cref="MaximumLevel"/>. Accuracy: 1 to 2 dB in half space, several decibel in a room.
    /// </remarks>
    public static Chart? HowLoud(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.System is { } system ? HowLoudChart.Of(facts, system.Network) : null;
    }

    /// <summary>How far the cone moves at the amplifier's full voltage.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The chart; null where the box or the amplifier is not known.</returns>
    /// <remarks>
    /// Model: peak excursion of the network at the amplifier's voltage. Validity: up to Xmax. Source: see <see cref="BoxNetwork.At"/>. Accuracy: as
    /// the network's.
    /// </remarks>
    public static Chart? HowFar(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.System is { } system && LimitsOf(facts, system.Network).AmplifierVoltageV is { } volts
            ? HowFarChart.Of(facts, system.Network, volts)
            : null;
    }

    /// <summary>What the amplifier feels: the impedance over frequency.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The chart; null where the box is not known.</returns>
    /// <remarks>
    /// Model: magnitude of the network's impedance. Validity: to 1 kHz, where eddy currents set in earlier in some coils. Source: see
    /// <see cref="BoxNetwork.At"/>. Accuracy: as the network's.
    /// </remarks>
    public static Chart? WhatTheAmplifierFeels(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.System is { } system ? ImpedanceChart.Of(facts, system.Network) : null;
    }

    internal static DriveLimits LimitsOf(Facts facts, BoxNetwork network) =>
        MaximumLevel.LimitsOf(network.Driver, network.PassiveRadiator, facts.Project.Brief.Amplifier);

    // The lines of a table: round frequencies, one value for each series.
    internal static ChartTable Table(string quantity, ChartAxis across, IReadOnlyList<ChartSeries> series) =>
        new(
            [$"{across.Label}, {across.Unit}", .. series.Select(s => s.Name.Length > 0 ? s.Name : quantity)],
            [
                .. across.Ticks.Select(t =>
                    (IReadOnlyList<string>)[Show.Number(t), .. series.Select(s => Covers(s, t) ? Show.Number(Math.Round(Axes.At(s.Points, t), 2)) : "")]
                ),
            ]
        );

    private static bool Covers(ChartSeries series, double x) =>
        series.Points.Count > 1 && series.Points[0].X <= x * 1.0001 && series.Points[^1].X >= x * 0.9999;
}
