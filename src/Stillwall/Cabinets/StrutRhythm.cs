namespace Stillwall.Cabinets;

/// <summary>Where along its length a strut stands and where a window leaves the core open.</summary>
/// <remarks>
/// Model: from the foot a solid length, then windows and webs in turn; each web begins with a 45° slope that grows from the outer skin inwards,
/// so that it prints without support. Source: our choice; 45° is common practice. Lengths in millimetres.
/// </remarks>
/// <param name="Core">Thickness of the core, mm: what the slope climbs.</param>
internal sealed record StrutRhythm(double Length, double Core, double Window, int Windows)
{
    /// <summary>Sets out the windows of a strut.</summary>
    /// <returns>The rhythm; a strut too short for a window has none.</returns>
    /// <remarks>Source: our choice: a window takes as much more than a web as leaves half of the strut open, its slope counted.</remarks>
    public static StrutRhythm Of(double length, double core)
    {
        var window = (BuildUp.OpenShare * BuildUp.WebLength + core / 2) / (1 - BuildUp.OpenShare) + 2;
        var left = length - BuildUp.LowestWindow;
        var windows = left < window ? 0 : 1 + (int)((left - window) / (window + BuildUp.WebLength));
        return new StrutRhythm(length, core, window, windows);
    }

    /// <summary>Length over which the strut stands in full, mm.</summary>
    public double Solid => Length - Windows * Window;

    /// <summary>Share of the strut's side that is open to the core.</summary>
    public double OpenFraction => Length <= 0 ? 1 : (Windows * Window - (SolidLengths().Count() - 1) * Core / 2) / Length;

    /// <summary>The lengths over which the strut stands in full, from its foot, mm.</summary>
    /// <returns>From and to of each length; the slope that leads up to it is not in it. None follows a window that ends where the strut does.</returns>
    public IEnumerable<(double From, double To)> SolidLengths()
    {
        var from = 0.0;
        for (var i = 0; i < Windows; i++)
        {
            var window = BuildUp.LowestWindow + i * (Window + BuildUp.WebLength);
            yield return (from, window);
            from = window + Window;
        }

        if (from < Length)
        {
            yield return (from, Length);
        }
    }
}
