namespace Stillwall.Walls;

/// <summary>Acceleration of free fall.</summary>
internal static class StandardGravity
{
    /// <summary>Standard acceleration of free fall, m/s² (CGPM 1901).</summary>
    internal const double AccelerationMS2 = 9.80665;
}
