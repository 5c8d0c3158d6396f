using Stillwall.Numerics;

namespace Stillwall.Proofs.Spectra;

/// <summary>One band of a fraction of an octave.</summary>
/// <param name="CentreHz">Exact mid-band frequency, Hz.</param>
internal sealed record OctaveBand(double CentreHz, double LowerHz, double UpperHz);

/// <summary>Bands of a fraction of an octave, and the mean energy in them.</summary>
internal static class FractionalOctaves
{
    // G = 10^0.3: an octave of base ten (IEC 61260-1:2014, 5.2).
    private static readonly double Octave = Math.Pow(10, 0.3);

    /// <summary>The bands that lie wholly within a span.</summary>
    /// <returns>The bands in rising order.</returns>
    /// <remarks>
    /// Model: f = 1000·G^(x/b) for odd b, 1000·G^((2x + 1)/(2b)) for even b, edges half a step away, G = 10^0.3. Source: IEC 61260-1:2014, 5.4 and 5.5
    /// (from memory).
    /// </remarks>
    public static IReadOnlyList<OctaveBand> Bands(int perOctave, double fromHz, double toHz)
    {
        Require.Within(perOctave, 1, 96, nameof(perOctave));
        Require.Positive(fromHz);
        Require.Within(toHz, fromHz, 1e6, nameof(toHz), "Hz");
        var shift = perOctave % 2 == 0 ? 0.5 : 0;
        double At(double steps) => 1000 * Math.Pow(Octave, steps / perOctave);
        var first = (int)Math.Floor(perOctave * Math.Log(fromHz / 1000) / Math.Log(Octave)) - 1;
        var bands = new List<OctaveBand>();
        for (var x = first; At(x + shift + 0.5) <= toHz * (1 + 1e-9); x++)
        {
            if (At(x + shift - 0.5) >= fromHz * (1 - 1e-9))
            {
                bands.Add(new OctaveBand(At(x + shift), At(x + shift - 0.5), At(x + shift + 0.5)));
            }
        }

        return bands;
    }

    /// <summary>Mean of an energy over a band.</summary>
    /// <param name="energies">Energy on lines of equal distance, the first at 0.</param>
    /// <remarks>
    /// Model: integral of the straight lines between the points, over the band's width. Validity: lines closer than the energy changes. Source: our
    /// choice. Accuracy: exact for straight lines.
    /// </remarks>
    public static double MeanEnergy(IReadOnlyList<double> energies, double spacingHz, OctaveBand band)
    {
        ArgumentNullException.ThrowIfNull(energies);
        ArgumentNullException.ThrowIfNull(band);
        Require.Positive(spacingHz);
        Require.Within(band.UpperHz, 0, (energies.Count - 1) * spacingHz, nameof(band), "Hz");
        var (from, to, sum) = (band.LowerHz / spacingHz, band.UpperHz / spacingHz, 0.0);
        double At(double x) => energies[(int)x] + ((x - (int)x) * (energies[Math.Min((int)x + 1, energies.Count - 1)] - energies[(int)x]));
        for (var x = from; x < to;)
        {
            var next = Math.Min(Math.Floor(x) + 1, to);
            sum += (next - x) * (At(x) + At(next)) / 2;
            x = next;
        }

        return sum / (to - from);
    }
}
