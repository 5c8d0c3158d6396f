using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <summary>Where a part goes in the assembly: turned by quarter turns, then shifted. Exact on the grid.</summary>
internal sealed record Placement
{
    private static readonly Placement None = new([1, 0, 0, 0, 1, 0, 0, 0, 1], new MeshPoint(0, 0, 0));

    private readonly int[] turn;
    private readonly MeshPoint shift;

    private Placement(int[] turn, MeshPoint shift)
    {
        this.turn = turn;
        this.shift = shift;
    }

    /// <summary>The part stays as it is printed.</summary>
    public static Placement AsPrinted => None;

    /// <summary>Rows of the turn and, last, the shift in mm: twelve numbers, as a transform that multiplies a row vector.</summary>
    public IReadOnlyList<double> RowsMm =>
        [turn[0], turn[3], turn[6], turn[1], turn[4], turn[7], turn[2], turn[5], turn[8], shift.X.OffGrid(), shift.Y.OffGrid(), shift.Z.OffGrid()];

    /// <summary>Turned about x, from y towards z, after what came before.</summary>
    public Placement TurnedAboutX(int quarters) => Then(quarters, (c, s) => [1, 0, 0, 0, c, -s, 0, s, c]);

    /// <summary>Turned about z, from x towards y, after what came before.</summary>
    public Placement TurnedAboutZ(int quarters) => Then(quarters, (c, s) => [c, -s, 0, s, c, 0, 0, 0, 1]);

    /// <summary>Shifted, after what came before.</summary>
    public Placement Shifted(double x, double y, double z) =>
        new(turn, new MeshPoint(shift.X + OnGrid(x, nameof(x)), shift.Y + OnGrid(y, nameof(y)), shift.Z + OnGrid(z, nameof(z))));

    /// <summary>Shifted before all else: for a piece that was lowered to the bed.</summary>
    public Placement ShiftedFirst(double x, double y, double z) =>
        new(turn, Apply(new MeshPoint(OnGrid(x, nameof(x)), OnGrid(y, nameof(y)), OnGrid(z, nameof(z)))));

    /// <summary>Turned about the part's own z before all else, from x towards y.</summary>
    public Placement TurnedFirst(int quarters)
    {
        var first = None.TurnedAboutZ(quarters).turn;
        return new Placement([.. Enumerable.Range(0, 9).Select(i => Enumerable.Range(0, 3).Sum(k => turn[i / 3 * 3 + k] * first[k * 3 + i % 3]))], shift);
    }

    /// <summary>Where a point goes.</summary>
    public MeshPoint Apply(MeshPoint point)
    {
        var p = Turned(turn, point);
        return new MeshPoint(p.X + shift.X, p.Y + shift.Y, p.Z + shift.Z);
    }

    /// <summary>Whether two placements put every point in the same place.</summary>
    /// <returns>True for the same turn and shift.</returns>
    public bool Equals(Placement? other) => other is not null && shift == other.shift && turn.AsSpan().SequenceEqual(other.turn);

    /// <summary>A number that is the same for equal placements.</summary>
    public override int GetHashCode() => shift.GetHashCode();

    private static MeshPoint Turned(int[] m, MeshPoint p) =>
        new(m[0] * p.X + m[1] * p.Y + m[2] * p.Z, m[3] * p.X + m[4] * p.Y + m[5] * p.Z, m[6] * p.X + m[7] * p.Y + m[8] * p.Z);

    private Placement Then(int quarters, Func<int, int, int[]> about)
    {
        var (c, s) = (((quarters % 4) + 4) % 4) switch
        {
            0 => (1, 0),
            1 => (0, 1),
            2 => (-1, 0),
            _ => (0, -1),
        };
        var m = about(c, s);
        var product = new int[9];
        for (var i = 0; i < 9; i++)
        {
            product[i] = Enumerable.Range(0, 3).Sum(k => m[i / 3 * 3 + k] * turn[k * 3 + i % 3]);
        }

        return new Placement(product, Turned(m, shift));
    }
}
