using Stillwall.Cabinets;
using Stillwall.Walls;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>How far the cabinet may lean before it tips.</summary>
/// <param name="TippingDeg">Angle at which it tips over, °.</param>
/// <param name="CentreDepthM">How far behind the front its centre of mass lies, m.</param>
internal sealed record Balance(double TippingDeg, string Over, double CentreDepthM)
{
    private const double LeastReachM = 1e-3;

    /// <summary>The balance of a drawn cabinet.</summary>
    /// <returns>Angle, edge and centre of mass.</returns>
    /// <remarks>
    /// Model: the height of all that counts is the middle; along the depth each part's mass lies where the catalogue tells, the cast in its zones, fill in the
    /// middle, a driver's at its magnet, two thirds of its depth behind its flange. It tips over the nearest pair of feet, see <see cref="Footing"/>.
    /// Validity: a level floor, feet that do not slide. Source: elementary statics; the places are our choice. Accuracy: a few millimetres of the centre.
    /// </remarks>
    public static Balance Of(PartJob job, IReadOnlyList<PartFigures> parts, double castKg)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(parts);
        var (s, footing) = (job.Sizes, Footing.Of(job.Sizes, job.Cabinet.Feet));
        var centre = Tilt.CentreDepthM([.. Printed(parts), .. Cast(job.Geometry, castKg), .. Others(job)]);
        var (side, along) = ((s.Width / 2 - footing.AcrossMm).InMetres(), footing.AlongMm.InMetres());
        (double To, string Over)[] edges = [(side, "a side"), (centre - along, "the front"), (s.Depth.InMetres() - centre - along, "the rear")];
        var (to, over) = edges.MinBy(e => e.To);
        return new Balance(Tilt.TippingDeg((s.Height / 2 + footing.HeightMm).InMetres(), Math.Max(LeastReachM, to)), over, centre);
    }

    private static IEnumerable<MassAt> Printed(IReadOnlyList<PartFigures> parts) =>
        parts.Where(p => p.CentreMm is not null).Select(p => new MassAt(Math.Max(0, p.MassKg ?? 0), p.CentreMm!.Value.InMetres()));

    private static IEnumerable<MassAt> Cast(CabinetGeometry g, double castKg)
    {
        var (depth, skin) = (g.Sizes.Depth.InMetres(), g.Sizes.OuterSkin.InMetres());
        var density = g.CavityM3 > 0 ? castKg / g.CavityM3 : 0;
        var (front, rear) = (g.Front.CoreM2 * g.CoreM, g.Rear.CoreM2 * g.CoreM);
        return
        [
            new(density * front, skin + g.CoreM / 2),
            new(density * rear, depth - skin - g.CoreM / 2),
            new(density * Math.Max(0, g.CavityM3 - front - rear), depth / 2),
        ];
    }

    private static IEnumerable<MassAt> Others(PartJob job) =>
        [
            new(job.Sizes.DriverCount * (job.Sheet?.MassKg ?? 0), (job.Sheet?.DepthM ?? 0) * 2 / 3 + job.Sizes.Sunk.InMetres()),
            new(job.Cabinet.Fill?.MassKg ?? 0, job.Sizes.Depth.InMetres() / 2),
        ];
}
