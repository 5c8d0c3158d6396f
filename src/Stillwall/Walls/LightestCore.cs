using Stillwall.Numerics;
using Stillwall.Shapes;

namespace Stillwall.Walls;

/// <summary>The thinnest core that still does its work.</summary>
public static class LightestCore
{
    /// <summary>Step in which cores are looked at, m (our choice).</summary>
    public const double StepM = 0.001;

    /// <summary>Finds the thinnest core that passes, in steps of a millimetre.</summary>
    /// <param name="passes">Whether a core of that thickness, in m, keeps first mode and wall sound; once it passes, every thicker one must pass.</param>
    /// <param name="leastM">Least thickness, m, above 0; rounded up to a whole step.</param>
    /// <param name="greatestM">Greatest thickness, m, at least the least; rounded down to a whole step.</param>
    /// <returns>The thickness, m, or null where even the greatest does not pass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A thickness that is out of range.</exception>
    /// <remarks>
    /// Model: bisection on whole millimetres. Validity: stiffness rises with thickness, so passing is monotone. Source: elementary; the step is our
    /// choice. Accuracy: one step.
    /// </remarks>
    public static double? FindM(Func<double, bool> passes, double leastM, double greatestM)
    {
        ArgumentNullException.ThrowIfNull(passes);
        Require.Positive(leastM);
        Require.Within(greatestM, leastM, 1, nameof(greatestM), "m");
        var (low, high) = ((int)Math.Ceiling(leastM / StepM - 1e-9), (int)Math.Floor(greatestM / StepM + 1e-9));
        if (low > high || !passes(Millimetres.Whole(high)))
        {
            return null;
        }

        while (low < high)
        {
            var middle = (low + high) / 2;
            if (passes(Millimetres.Whole(middle)))
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return Millimetres.Whole(high);
    }
}
