using Stillwall.Numerics;

namespace Stillwall.Proofs.Impedances;

/// <summary>What an impedance curve says in figures.</summary>
/// <param name="ResonanceHz">Resonance, Hz: where the moving parts neither push nor pull.</param>
/// <param name="QMechanical">Q with the coil's circuit open.</param>
/// <param name="QElectrical">Q of the coil's own braking.</param>
/// <param name="QTotal">Q with the coil's circuit closed.</param>
/// <param name="DcResistanceOhm">Resistance of the coil, ohm.</param>
/// <param name="InductanceH">Inductance of the coil at low frequencies, H.</param>
/// <param name="PeakOhm">Greatest magnitude about the resonance, ohm.</param>
public record ImpedanceFigures(
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double ResonanceHz,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double QMechanical,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double QElectrical,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double QTotal,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double DcResistanceOhm,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double InductanceH,
    [property: ComputedBy("impedance-fit", "recording", "recording.reference_ohm")] double PeakOhm
)
{
    /// <summary>Inductance under which none can be told, H: less than a metre or two of cable has (our choice).</summary>
    public const double LeastInductanceH = 1e-6;
}

/// <summary>One point of a measured impedance curve.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="ImpedanceOhm">Magnitude, ohm.</param>
/// <param name="ImpedancePhaseDeg">Phase, −180 to 180°.</param>
/// <param name="CoherenceFraction">Share of the voltage that follows from the source, 0 to 1.</param>
/// <param name="FittedOhm">Magnitude of the fitted model there, ohm.</param>
public sealed record ImpedancePoint(double FrequencyHz, double ImpedanceOhm, double ImpedancePhaseDeg, double CoherenceFraction, double FittedOhm)
{
    /// <summary>Magnitude that the plan computes there, ohm; null where it is not compared with one.</summary>
    public double? ComputedOhm { get; init; }
}

/// <summary>What an impedance recording says.</summary>
/// <param name="Figures">The figures.</param>
/// <param name="Uncertainty">Half of each figure's 95 % band, in the figure's unit.</param>
/// <param name="Model">The fitted model.</param>
/// <param name="Curve">The measured curve, thinned to about a hundred points a decade.</param>
/// <param name="MisfitRatio">What the model leaves over of the voltage ratio, root mean square.</param>
public sealed record ImpedanceResult(
    ImpedanceFigures Figures,
    ImpedanceFigures Uncertainty,
    ImpedanceModel Model,
    IReadOnlyList<ImpedancePoint> Curve,
    double MisfitRatio
) : ImpedanceFigures(Figures)
{
    /// <summary>The figures.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public ImpedanceFigures Figures { get; } = Figures;

    /// <summary>Gain of the driver's channel over the source's as the fit has it, 1 where a recording of the resistor alone told it.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public double GainRatio { get; init; } = 1;

    /// <summary>The driver's parameters by two recordings; null where there is one.</summary>
    public MeasuredDriver? Driver { get; init; }

    /// <summary>What the recording says of the cabinet; null where it is not compared with a plan.</summary>
    public CabinetProof? Cabinet { get; init; }
}

/// <summary>An impedance recording that was looked into, or why it says nothing.</summary>
/// <param name="Result">What it says; null where it says nothing.</param>
/// <param name="Trouble">Why it says nothing, and what would do; null where it says something.</param>
/// <param name="Warnings">What is to be kept in mind about what it says.</param>
public sealed record ImpedanceReading(ImpedanceResult? Result, string? Trouble, IReadOnlyList<string> Warnings)
{
    /// <summary>Why the figures may be wrong by more than their bands, each with what would settle it.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>What would narrow the bands.</summary>
    public IReadOnlyList<string> Hints { get; init; } = [];
}
