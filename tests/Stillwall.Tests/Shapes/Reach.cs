using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

/// <summary>Which part of a space an opening leads to.</summary>
internal static class Reach
{
    /// <summary>The piece that a point lies in; null where it lies in none.</summary>
    internal static SolidPiece? From(Solid space, double x, double y, double z) => Connections.Pieces(space).FirstOrDefault(piece => piece.Contains(x, y, z));

    /// <summary>Whether a point, mm, lies in a piece or on its border.</summary>
    internal static bool Contains(this SolidPiece piece, double x, double y, double z) =>
        piece.Slabs.Any(s => z >= s.BottomMm && z <= s.TopMm && s.Region.Contains(x, y));
}
