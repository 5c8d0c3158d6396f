namespace Stillwall.Figures.Sheets;

/// <summary>A part in its place in the cabinet, as far as drawing it apart needs it.</summary>
/// <param name="Name">Its name; what is behind the kind, such as " 2 of 3", does not matter.</param>
/// <param name="FrontMm">Where it begins along the depth, mm.</param>
/// <param name="RearMm">Where it ends along the depth, mm.</param>
public sealed record PlacedPart(string Name, double FrontMm, double RearMm);

/// <summary>How far a part is moved away from the others.</summary>
/// <param name="YMm">Along the depth, mm.</param>
/// <param name="ZMm">Upward, mm.</param>
public readonly record struct ApartShift(double YMm, double ZMm);

/// <summary>The cabinet exploded along its depth: where each part goes.</summary>
public static class ExplodedPlaces
{
    private const double Apart = 45,
        RingsApart = 14,
        FeetDown = 60;

    // From front to rear as it is put together; what is not named here comes before the rear.
    private static readonly string[] Order =
    [
        "trim ring",
        "front outer plate",
        "front plate",
        "front inner plate",
        "accent ring",
        "outer sleeve",
        "sleeve",
        "inner sleeve",
        "brace",
        "",
        "rear inner plate",
        "rear outer plate",
        "rear plate",
        "lid",
    ];

    private const string Foot = "foot";

    /// <summary>Where the parts go.</summary>
    /// <param name="parts">The parts in their places.</param>
    /// <returns>
    /// A shift for each, in their order: kinds one behind the other from the front on, rings and braces one by one, what lies in one plane together;
    /// feet go down below the sleeve.
    /// </returns>
    /// <exception cref="ArgumentNullException">No parts.</exception>
    /// <remarks>Model: parts shifted along the depth until 45 mm are between them, rings 14 mm, feet 60 mm down. Source: our choice of picture.</remarks>
    public static IReadOnlyList<ApartShift> Of(IReadOnlyList<PlacedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var all = parts.Select((p, i) => (Part: p, Kind: SheetJob.KindOf(p.Name), Index: i)).ToList();
        var (shifts, cursor, sleeveAt) = (new ApartShift[all.Count], 0.0, 0.0);
        foreach (var kind in all.Where(p => p.Kind != Foot).GroupBy(p => p.Kind).OrderBy(g => Rank(g.Key)))
        {
            var single = kind.Key is "accent ring" or "brace";
            foreach (var group in single ? kind.Select(p => new[] { p }) : [kind.ToArray()])
            {
                var (from, to) = (group.Min(p => p.Part.FrontMm), group.Max(p => p.Part.RearMm));
                sleeveAt = kind.Key is "outer sleeve" or "sleeve" ? cursor - from : sleeveAt;
                foreach (var part in group)
                {
                    shifts[part.Index] = new ApartShift(cursor - from, 0);
                }

                cursor += to - from + (kind.Key == "accent ring" ? RingsApart : Apart);
            }

            cursor += kind.Key == "accent ring" ? Apart - RingsApart : 0;
        }

        foreach (var foot in all.Where(p => p.Kind == Foot))
        {
            shifts[foot.Index] = new ApartShift(sleeveAt, -FeetDown);
        }

        return shifts;
    }

    private static int Rank(string kind) => Array.IndexOf(Order, kind) is >= 0 and var at ? at : Array.IndexOf(Order, "");
}
