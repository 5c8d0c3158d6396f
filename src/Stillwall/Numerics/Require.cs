using System.Globalization;
using System.Runtime.CompilerServices;

namespace Stillwall.Numerics;

/// <summary>Checks of what a caller hands in; a caller's mistake throws with name, value and accepted range.</summary>
internal static class Require
{
    /// <summary>Throws unless a value is finite and within a span.</summary>
    public static void Within(double value, double least, double greatest, string name, string unit = "")
    {
        if (!(value >= least && value <= greatest))
        {
            throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(CultureInfo.InvariantCulture, $"accepted: {least} to {greatest} {unit}").TrimEnd()
            );
        }
    }

    /// <summary>Throws unless a value is finite and greater than zero.</summary>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "accepted: a finite number greater than zero");
        }
    }

    /// <summary>Throws unless a value is finite and not negative.</summary>
    public static void NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "accepted: a finite number, zero or greater");
        }
    }
}
