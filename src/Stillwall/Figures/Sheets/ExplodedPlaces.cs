using Stillwall.Parts;

namespace Stillwall.Figures.Sheets;

/// <summary>A part in its place in the cabinet, as far as drawing it apart needs it.</summary>
/// <param name="FrontMm">Where it begins along the depth, mm.</param>
/// <param name="RearMm">Where it ends along the depth, mm.</param>
internal sealed record PlacedPart(PartKind Kind, double FrontMm, double RearMm);

/// <summary>How far a part is moved away from the others.</summary>
internal readonly record struct ApartShift(double YMm, double ZMm);

/// <summary>The cabinet exploded along its depth: where each part goes.</summary>
internal static class ExplodedPlaces
{
    /// <summary>Where the parts go.</summary>
    /// <returns>
    /// A shift for each, in their order: kinds one behind the other from the front on, rings and braces one by one, what lies in one plane together;
    /// feet go down below the sleeve.
    /// </returns>
    /// <remarks>Source: our choice of picture.</remarks>
    public static IReadOnlyList<ApartShift> Of(IReadOnlyList<PlacedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (shifts, cursor, sleeveAt) = (new ApartShift[parts.Count], 0.0, 0.0);
        foreach (var kind in parts.Index().Where(p => Way(p.Item).Down == 0).GroupBy(p => p.Item.Kind).OrderBy(g => g.Key.Exploding?.Turn))
        {
            var way = Way(kind.First().Item);
            foreach (var group in way.OneByOne ? kind.Select(p => new[] { p }) : [kind.ToArray()])
            {
                var (from, to) = (group.Min(p => p.Item.FrontMm), group.Max(p => p.Item.RearMm));
                sleeveAt = way.CarriesFeet ? cursor - from : sleeveAt;
                foreach (var (index, _) in group)
                {
                    shifts[index] = new ApartShift(cursor - from, 0);
                }

                cursor += to - from + way.Room;
            }

            cursor += Exploding.UsualRoom - way.Room;
        }

        foreach (var (index, part) in parts.Index().Where(p => Way(p.Item).Down > 0))
        {
            shifts[index] = new ApartShift(sleeveAt, -Way(part).Down);
        }

        return shifts;
    }

    private static Exploding Way(PlacedPart part) => part.Kind.Exploding ?? new Exploding(0);
}
