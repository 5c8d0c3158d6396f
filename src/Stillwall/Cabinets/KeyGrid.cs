using System.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Cabinets;

/// <summary>
/// Steps in which pieces are placed along flat walls and keys are cut across them. The inclined sides of keys then cross one another, and level lines, at
/// whole micrometres, so that keys of the ends and those between them, drawn over one another, do not bend each other's sides.
/// </summary>
/// <param name="Along">Step along the wall, mm; zero for any place.</param>
/// <param name="Across">Step across the wall, mm; zero for any height.</param>
internal readonly record struct KeyGrid(double Along, double Across)
{
    // A greater step along the wall would be seen.
    private const int MostMicrometres = 100;

    /// <summary>The steps for a core.</summary>
    /// <param name="core">Thickness of the core, mm.</param>
    internal static KeyGrid Of(double core)
    {
        var height = BuildUp.KeyHeightIn(core) * MicrometresPerMillimetre;
        var (up, over) = ((int)Math.Round(height), (int)Math.Round((BuildUp.KeyHead - BuildUp.KeyFoot) * MicrometresPerMillimetre));
        if (up < 1 || Math.Abs(up - height) > 1e-6)
        {
            return default;
        }

        // A side leans by half of `over`; two that lean against each other meet at up/over of their distance.
        var along = over / (int)BigInteger.GreatestCommonDivisor(over, up);
        var across = up / (int)BigInteger.GreatestCommonDivisor(over / 2, up);
        return along > MostMicrometres ? default : new KeyGrid(Math.Max(2, along) / MicrometresPerMillimetre, across / MicrometresPerMillimetre);
    }

    /// <summary>The nearest of the steps.</summary>
    /// <remarks>Source: geometry.</remarks>
    internal static double Nearest(double at, double step) => step > 0 ? Math.Round(at / step) * step : at;
}
