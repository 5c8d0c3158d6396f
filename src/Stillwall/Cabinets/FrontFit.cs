using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>How much room one thing about the driver has on the front.</summary>
/// <param name="SpareM">Room to spare, m; negative where it is past its limit.</param>
internal sealed record FrontFit(string What, double SpareM)
{
    /// <summary>Checks a driver's sizes against the front.</summary>
    /// <returns>The checks that could be made, the worst first.</returns>
    /// <remarks>
    /// Model: flange within the outline, a recess for it with its play and a rim of 2 mm too, bosses of the bolt circle within the outer sleeve,
    /// opening within the inside, land between opening and bolts.
    /// Source: geometry of the drawn front.
    /// </remarks>
    public static IReadOnlyList<FrontFit> Of(CabinetSizes sizes, DriverSheet sheet, double cutoutM)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        ArgumentNullException.ThrowIfNull(sheet);
        var across = sizes.Width >= sizes.Height;
        var half =
            Math.Min((across ? sizes.Width / sizes.DriverCount : sizes.Width) / 2, (across ? sizes.Height : sizes.Height / sizes.DriverCount) / 2).InMetres();
        var checks = new List<FrontFit> { new("driver's opening in the inner plate", half - sizes.Wall.InMetres() - cutoutM / 2) };
        if (sheet.FlangeM is { } flange)
        {
            // Past its outer skin a single printed wall is recessed within the sleeve alone.
            var rim = BuildUp.RecessPlay / 2 + BuildUp.RecessRim + (sizes.Recess > sizes.OuterSkin ? sizes.OuterSkin : 0);
            checks.Add(sizes.Recess > 0 ? new("recess for the flange", half - flange / 2 - rim.InMetres()) : new("flange on the front", half - flange / 2));
        }

        if (sheet.BoltCircleM is { } circle)
        {
            checks.Add(new("bolt circle inside the outer skin", half - sizes.OuterSkin.InMetres() - circle / 2 - (BuildUp.Boss / 2).InMetres()));
            checks.Add(new("material between cut-out and screw holes", (circle - cutoutM) / 2 - (sheet.BoltM ?? 0.005) / 2));
        }

        return [.. checks.OrderBy(c => c.SpareM)];
    }
}
