using System.Globalization;
using System.Runtime.CompilerServices;

namespace Stillwall.Numerics;

/// <summary>Checks of what a caller hands in; a caller's mistake throws with name, value and accepted range.</summary>
internal static class Require
{
    /// <summary>Throws unless a value is finite and within a span.</summary>
    /// <param name="value">The value.</param>
    /// <param name="least">Least accepted value.</param>
    /// <param name="greatest">Greatest accepted value.</param>
    /// <param name="name">Name of the parameter.</param>
    /// <param name="unit">Unit of the value, for the message.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not within the span.</exception>
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
    /// <param name="value">The value.</param>
    /// <param name="name">Name of the parameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative or not a finite number.</exception>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "accepted: a finite number greater than zero");
        }
    }

    /// <summary>Throws unless a value is finite and not negative.</summary>
    /// <param name="value">The value.</param>
    /// <param name="name">Name of the parameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not a finite number.</exception>
    public static void NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "accepted: a finite number, zero or greater");
        }
    }
}
