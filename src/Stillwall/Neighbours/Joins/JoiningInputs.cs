using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Neighbours.Joins;

/// <summary>What joining the main speakers needs.</summary>
/// <param name="CrossoverHz">Crossover, Hz.</param>
/// <param name="SystemResonanceHz">Resonance of the closed box, Hz.</param>
/// <param name="SystemQ">Q of the closed box.</param>
/// <param name="MainSpeakersCornerHz">Low-frequency corner of the main speakers, Hz.</param>
/// <param name="MainSpeakersQ">Q of their roll-off.</param>
public sealed record JoiningInputs(double CrossoverHz, double SystemResonanceHz, double SystemQ, double MainSpeakersCornerHz, double MainSpeakersQ)
{
    /// <summary>Order of the low-pass in front of the cabinet, 2 or 4.</summary>
    public int LowPassOrder { get; init; } = 4;

    /// <summary>Order of the high-pass in front of the main speakers, 2 or 4.</summary>
    public int HighPassOrder { get; init; } = 4;

    /// <summary>The inputs as a brief states them, with the box as computed.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="systemResonanceHz">Resonance of the closed box, Hz, or null.</param>
    /// <param name="systemQ">Q of the closed box, or null.</param>
    /// <returns>The inputs; null where crossover, main speakers or box are missing.</returns>
    /// <remarks>Model: as stated. Validity: any brief. Source: our choice. Accuracy: exact.</remarks>
    public static JoiningInputs? From(Brief brief, double? systemResonanceHz, double? systemQ)
    {
        ArgumentNullException.ThrowIfNull(brief);
        return
            brief is { Aim.CrossoverHz: { } crossover, MainSpeakers: { CornerHz: { } corner } speakers }
            && systemResonanceHz is { } resonance
            && systemQ is { } q
            ? new(crossover, resonance, q, corner, speakers.Q)
            : null;
    }
}

/// <summary>One point of the sum with the main speakers.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="CabinetDb">Cabinet with its low-pass and trim, dB re the main speakers' passband.</param>
/// <param name="MainSpeakersDb">Main speakers with their high-pass, dB re their passband.</param>
/// <param name="SumDb">Both together, dB re the main speakers' passband.</param>
public sealed record JoiningPoint(
    double FrequencyHz,
    [property: ComputedBy("joining", "box.system_resonance_hz", "box.system_q")] double CabinetDb,
    [property: ComputedBy("joining")] double MainSpeakersDb,
    [property: ComputedBy("joining", "box.system_resonance_hz", "box.system_q")] double SumDb
);
