namespace Stillwall.Proofs.Polarities;

/// <summary>Two recordings beside each other.</summary>
/// <param name="IsPositive">Whether the first swing goes up in the recording.</param>
/// <param name="IsSame">Whether it goes the same way in the other; null without another.</param>
public sealed record PolarityReport(bool IsPositive, bool? IsSame);
