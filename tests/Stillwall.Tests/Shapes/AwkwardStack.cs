using Stillwall.Numerics;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

/// <summary>
/// Stacks that do what meshes break on: blocks that touch in points, lines and faces, slivers of a few micrometres, needles, discs that graze one
/// another.
/// </summary>
internal static class AwkwardStack
{
    private const double Cell = 5;

    internal static Solid Of(ulong seed)
    {
        var draw = new SeededGenerator(seed);
        double Next() => draw.Next();
        int Up(int most) => (int)(Next() * most);
        var solid = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 4 * Cell, 4 * Cell, 0), 0, Cell);
        for (var i = 0; i < 7; i++)
        {
            // Whole cells touch in points and lines; a micrometre more or less makes slivers.
            var (x, y) = (Cell * Up(5) + Hair(Up(5)), Cell * Up(5) + Hair(Up(5)));
            var shape = Up(4) switch
            {
                0 => Region.RoundedRectangle(x, y, x + Cell, y + Cell, 0),
                1 => Region.Disc(x, y, Cell * (1 + Up(2))),
                2 => Region.Polygon([(x, y), (x + 4 * Cell, y + Hair(Up(5)) + 0.003), (x, y + 0.01)]),
                _ => Region.Polygon([(x, y), (x + Cell, y + Cell), (x, y + 2 * Cell), (x - Cell, y + Cell)]),
            };
            var (from, thick) = (Cell * Up(3) + Hair(Up(5)), Up(3) == 0 ? 0.002 : Cell);
            solid = Up(3) == 0 ? solid.Cut(shape, from, from + thick) : solid.Add(shape, from, from + thick);
        }

        return solid;
    }

    private static double Hair(int i) =>
        i is 1 ? 0.001
        : i is 2 ? -0.001
        : 0;
}
