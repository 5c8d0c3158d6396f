using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Drivers;

/// <summary>A driver whose small-signal parameters agree with one another, or several equal ones acting as one.</summary>
/// <param name="Name">Name of the driver.</param>
/// <param name="ReOhm">Resistance of the coil at direct current, ohm, above 0.</param>
/// <param name="LeH">Inductance of the coil, H, 0 or more.</param>
/// <param name="BlTM">Force factor, N/A, above 0.</param>
/// <param name="MmsKg">Moving mass with its air load, kg, above 0.</param>
/// <param name="CmsMPerN">Compliance of the suspension, m/N, above 0.</param>
/// <param name="RmsKgS">Mechanical resistance of the suspension, kg/s, above 0.</param>
/// <param name="SdM2">Area of the cone, m², above 0.</param>
/// <param name="XmaxM">Greatest linear excursion, one way, peak, m; null where not stated.</param>
/// <param name="PowerW">Rated power, V²/R at the rated load, W; null where not stated.</param>
/// <param name="Sheet">The data sheet it was resolved from, for sizes, mass and price of one driver.</param>
/// <param name="Count">How many equal drivers act as this one.</param>
public sealed record Driver(
    string Name,
    double ReOhm,
    double LeH,
    double BlTM,
    double MmsKg,
    double CmsMPerN,
    double RmsKgS,
    double SdM2,
    double? XmaxM,
    double? PowerW,
    DriverSheet Sheet,
    int Count = 1
)
{
    /// <summary>Resonance in free air, Hz.</summary>
    public double FsHz => 1 / (2 * Math.PI * Math.Sqrt(MmsKg * CmsMPerN));

    /// <summary>Mechanical Q at the free-air resonance.</summary>
    public double Qms => Math.Sqrt(MmsKg / CmsMPerN) / RmsKgS;

    /// <summary>Electrical Q at the free-air resonance.</summary>
    public double Qes => Math.Sqrt(MmsKg / CmsMPerN) * ReOhm / (BlTM * BlTM);

    /// <summary>Total Q at the free-air resonance.</summary>
    [ComputedBy("total-q")]
    public double Qts => DriverParameters.TotalQ(Qms, Qes);

    /// <summary>Air volume with the compliance of the suspension, at 20 °C and 101 325 Pa, m³.</summary>
    public double VasM3 => VasInM3(Air.Reference);

    /// <summary>Air volume with the compliance of the suspension, in a given air.</summary>
    /// <param name="air">The air.</param>
    /// <returns>Vas, m³.</returns>
    /// <remarks>
    /// Model: Vas = ρc²Sd²Cms. Validity: small signals. Source: Small 1972, JAES 20(5) (from memory). Accuracy: exact by definition of Vas.
    /// </remarks>
    public double VasInM3(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return air.BulkModulusPa * SdM2 * SdM2 * CmsMPerN;
    }

    /// <summary>Several equal drivers in one box, wired in parallel, as one driver.</summary>
    /// <param name="n">How many, 1 to 64.</param>
    /// <returns>The driver that moves and draws current as all of them do; its excursion is that of each.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="n"/> is out of range.</exception>
    /// <remarks>
    /// Model: Re/n, Le/n, Bl, n·Mms, Cms/n, n·Rms, n·Sd, n·power. Validity: equal drivers that share the box and see the same voltage.
    /// Source: sums of forces and currents, our own algebra. Accuracy: exact for equal drivers; mutual radiation load is left out.
    /// </remarks>
    public Driver InParallel(int n)
    {
        Require.Within(n, 1, 64, nameof(n));
        return this with
        {
            ReOhm = ReOhm / n,
            LeH = LeH / n,
            MmsKg = MmsKg * n,
            CmsMPerN = CmsMPerN / n,
            RmsKgS = RmsKgS * n,
            SdM2 = SdM2 * n,
            PowerW = PowerW * n,
            Count = Count * n,
        };
    }
}
