using MathNet.Numerics.LinearAlgebra;
using Stillwall.Numerics;
using static Stillwall.Walls.DenseRows;
using static Stillwall.Walls.EdgePolynomials;

namespace Stillwall.Walls;

/// <summary>Rectangular plates that also give in shear, clamped or supported all round.</summary>
public static class ShearPlate
{
    private const int Size = Count * Count;
    private const double LeastShare = 1e-9,
        StiffBraceRatio = 0.1;

    /// <summary>Frequencies and deflections of a plate.</summary>
    /// <param name="stiffness">Stiffness against bending and shear, and inertia against turning.</param>
    /// <param name="massKgM2">Mass per area, kg/m², above 0.</param>
    /// <param name="widthM">Clear width, m, above 0.</param>
    /// <param name="heightM">Clear height, m, above 0.</param>
    /// <param name="edges">How it is held.</param>
    /// <param name="hold">What else holds it: springs against turning at supported edges, and braces; nothing where left out.</param>
    /// <returns>First six frequencies, centre and mean deflection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>
    /// Model: first-order shear plate (Reissner and Mindlin) by Rayleigh–Ritz on 12 × 12 polynomials for the deflection and for each rotation, in
    /// four classes of symmetry. The rotations are eliminated as if at rest and their inertia is kept (Guyan), which is still a Ritz process. Braces
    /// are elastic lines with mass, edge springs act on both rotations. Clamped: deflection and both rotations vanish on the edge. Supported: the
    /// deflection alone, so the twist at an edge is free.
    /// Validity: thickness up to a fifth of the shorter side, sides' ratio up to 4. Source: Mindlin 1951; Liew, Xiang and Kitipornchai 1993 for the
    /// polynomials (both from memory).
    /// Accuracy: within 0.9 % of solid finite elements on the first six modes and 1.5 % on the deflection; within 0.3 % of thin plates at a hundredth
    /// of the side.
    /// </remarks>
    public static PanelCase Solve(BendingStiffness stiffness, double massKgM2, double widthM, double heightM, PanelEdges edges, PlateHold? hold = null)
    {
        var plate = Plate.Of(stiffness, massKgM2, widthM, heightM, edges, hold);
        var squares = new List<double>();
        double centre = 0,
            mean = 0;
        if (plate.Hole is not null)
        {
            throw new ArgumentException("accepted: no hole; First and PressureModes take one", nameof(hold));
        }

        foreach (var (p, q) in ((int, int)[])[(0, 0), (0, 1), (1, 0), (1, 1)])
        {
            var (bends, follow) = Condense(plate, p, q);
            squares.AddRange(Squares(plate, bends, follow, Held(p), Held(q)));
            if (p + q == 0)
            {
                (centre, mean) = Deflection(bends, plate.Hole);
            }
        }

        return new PanelCase([.. squares.Order().Take(ThinPlate.Modes).Select(s => Math.Sqrt(s) / (2 * Math.PI))], centre, mean);
    }

    /// <summary>The first frequency and the mean deflection of a plate, without the rest: a quarter of the work.</summary>
    /// <param name="stiffness">Stiffness against bending and shear, and inertia against turning.</param>
    /// <param name="massKgM2">Mass per area, kg/m², above 0.</param>
    /// <param name="widthM">Clear width, m, above 0.</param>
    /// <param name="heightM">Clear height, m, above 0.</param>
    /// <param name="edges">How it is held.</param>
    /// <param name="hold">What else holds it; nothing where left out.</param>
    /// <returns>First frequency, Hz, and mean deflection, m/Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>
    /// Model: as <see cref="Solve"/>, on the class even in both directions, to which an even load belongs and the first mode too, and where braces
    /// are stiff also on the class odd across them. Validity: as <see cref="Solve"/>. Source: as <see cref="Solve"/>. Accuracy: the same figures.
    /// </remarks>
    public static (double FirstModeHz, double MeanDeflectionMPerPa) First(
        BendingStiffness stiffness,
        double massKgM2,
        double widthM,
        double heightM,
        PanelEdges edges,
        PlateHold? hold = null
    )
    {
        var plate = Plate.Of(stiffness, massKgM2, widthM, heightM, edges, hold);
        var (bends, follow) = Condense(plate, 0, 0);
        var least = Squares(plate, bends, follow, Held(0), Held(0)).Min();

        // Braces as stiff as a tenth of the panel can lift its even mode over the one that leaves the middle at rest.
        if (plate.Hold.Braces.Sum(b => b.BendingNm2) > StiffBraceRatio * stiffness.StiffnessNm * widthM)
        {
            var (odd, behind) = Condense(plate, 1, 0);
            least = Math.Min(least, Squares(plate, odd, behind, Held(1), Held(0)).Min());
        }

        return (Math.Sqrt(least) / (2 * Math.PI), Deflection(bends, plate.Hole).Mean);
    }

    /// <summary>How each of a plate's modes that give way to an even pressure answers it.</summary>
    /// <param name="stiffness">Stiffness against bending and shear, inertia against turning, and loss factor.</param>
    /// <param name="massKgM2">Mass per area, kg/m², above 0.</param>
    /// <param name="widthM">Clear width, m, above 0.</param>
    /// <param name="heightM">Clear height, m, above 0.</param>
    /// <param name="edges">How it is held.</param>
    /// <param name="hold">What else holds it; nothing where left out.</param>
    /// <returns>Static volume, frequency and loss factor of each mode, ascending; their volumes add up to area times mean deflection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>
    /// Model: modes of <see cref="Solve"/> that are even in both directions; a mode of shape φ and unit mass gives way by (∫φ)²/ω². Validity: as
    /// <see cref="Solve"/>, one loss factor for all modes. Source: modal superposition, elementary.
    /// Accuracy: as <see cref="Solve"/> for the lowest modes; the highest ones stand for the stiffness of all that are left out.
    /// </remarks>
    public static IReadOnlyList<WallMotion> PressureModes(
        BendingStiffness stiffness,
        double massKgM2,
        double widthM,
        double heightM,
        PanelEdges edges,
        PlateHold? hold = null
    ) => PressureModes([stiffness], massKgM2, widthM, heightM, edges, hold)[0];

    /// <summary>The same for several states of one plate's bond at once: what an opening leaves is integrated once.</summary>
    /// <param name="states">Stiffness and loss factor of each state, at least one.</param>
    /// <param name="massKgM2">Mass per area, kg/m², above 0.</param>
    /// <param name="widthM">Clear width, m, above 0.</param>
    /// <param name="heightM">Clear height, m, above 0.</param>
    /// <param name="edges">How it is held.</param>
    /// <param name="hold">What else holds it; nothing where left out.</param>
    /// <returns>The modes of each state.</returns>
    /// <exception cref="ArgumentException">No state, or a value that is not positive.</exception>
    /// <remarks>Model: as the former. Validity: as that. Source: as that. Accuracy: as that.</remarks>
    public static IReadOnlyList<IReadOnlyList<WallMotion>> PressureModes(
        IReadOnlyList<BendingStiffness> states,
        double massKgM2,
        double widthM,
        double heightM,
        PanelEdges edges,
        PlateHold? hold = null
    )
    {
        ArgumentNullException.ThrowIfNull(states);
        if (states.Count == 0)
        {
            throw new ArgumentException("accepted: at least one state", nameof(states));
        }

        var plate = Plate.Of(states[0], massKgM2, widthM, heightM, edges, hold);
        return [.. states.Select(s => PressureModes(plate with { Stiffness = s }, widthM * heightM))];
    }

    private static IReadOnlyList<WallMotion> PressureModes(Plate plate, double areaM2)
    {
        var (bends, follow) = Condense(plate, 0, 0);
        var loads = new DenseRows(Size, 2);
        var pressed = Load(plate.Hole);
        for (var i = 0; i < Size; i++)
        {
            (loads[i, 0], loads[i, 1]) = (pressed[i, 0], plate.Hole?.ConePush[i] ?? 0);
        }

        var evd = Standard(plate, bends, follow, Held(0), Held(0), loads).Evd(Symmetricity.Symmetric);
        var modes = Enumerable
            .Range(0, Size)
            .Select(k =>
            {
                double Push(int column) => Enumerable.Range(0, Size).Sum(i => evd.EigenVectors[i, k] * loads[i, column]);
                var (square, push) = (evd.EigenValues[k].Real, Push(0));
                return new WallMotion(
                    areaM2 / 4 * push * push / square,
                    Math.Sqrt(square) / (2 * Math.PI),
                    plate.Stiffness.LossFactor,
                    areaM2 / 4 * push * Push(1) / square
                );
            })
            .OrderBy(m => m.FirstModeHz)
            .ToList();
        var whole = modes.Sum(m => m.VolumePerPressureM3PerPa);
        return [.. modes.Where(m => m.VolumePerPressureM3PerPa > LeastShare * whole)];
    }

    // Derivatives along x and y are those on −1 … 1 times ScaleX and ScaleY.
    private sealed record Plate(BendingStiffness Stiffness, double Mass, double ScaleX, double ScaleY, Func<int, EdgePolynomials> Turning, PlateHold Hold)
    {
        internal HolePoints? Hole { get; private init; }

        internal static Plate Of(BendingStiffness stiffness, double massKgM2, double widthM, double heightM, PanelEdges edges, PlateHold? hold)
        {
            ArgumentNullException.ThrowIfNull(stiffness);
            Require.Positive(massKgM2);
            Require.Positive(widthM);
            Require.Positive(heightM);
            (hold ?? PlateHold.None).Check(Math.Min(widthM, heightM));
            var turning = edges == PanelEdges.Clamped ? Held : (Func<int, EdgePolynomials>)Free;
            return new Plate(stiffness, massKgM2, 2 / widthM, 2 / heightM, turning, hold ?? PlateHold.None)
            {
                Hole = hold?.Hole is { } hole ? new HolePoints(hole, 2 / widthM, 2 / heightM, turning) : null,
            };
        }
    }

    // One class of symmetry: the deflection has parity (p, q), the rotation along x turns p round, that along y turns q round.
    // Returns the stiffness of the deflection alone, and how the rotations follow it.
    private static (DenseRows Bends, DenseRows Follow) Condense(Plate plate, int p, int q)
    {
        var (x, y, shear) = (plate.ScaleX, plate.ScaleY, plate.Stiffness.ShearNPerM);
        var (wx, wy) = (Held(p), Held(q));
        var (ax, ay, bx, by) = (plate.Turning(1 - p), plate.Turning(q), plate.Turning(p), plate.Turning(1 - q));
        var (turning, follow, bends) = (new DenseRows(2 * Size, 2 * Size), new DenseRows(2 * Size, Size), new DenseRows(Size, Size));
        if (plate.Hole is { } hole)
        {
            hole.AddStiffness(turning, follow, bends, plate.Stiffness, x * y);
        }
        else
        {
            AddTurning(turning, plate, ax, ay, bx, by);
            follow.AddKronecker(0, 0, shear * x, Product(ax.Values, wx.Slopes), Product(ay.Values, wy.Values));
            follow.AddKronecker(Size, 0, shear * y, Product(bx.Values, wx.Values), Product(by.Values, wy.Slopes));
            bends.AddKronecker(0, 0, shear * x * x, Product(wx.Slopes, wx.Slopes), Product(wy.Values, wy.Values));
            bends.AddKronecker(0, 0, shear * y * y, Product(wx.Values, wx.Values), Product(wy.Slopes, wy.Slopes));
        }

        AddHold(turning, plate, ax, ay, bx, by);
        turning.Factorise();
        turning.SolveForward(follow);
        bends.AddSquare(-1, follow);
        turning.SolveBackward(follow);
        return (bends, follow);
    }

    // Stiffness of the two rotations, upper half.
    private static void AddTurning(DenseRows turning, Plate plate, EdgePolynomials ax, EdgePolynomials ay, EdgePolynomials bx, EdgePolynomials by)
    {
        var (x, y, own) = (plate.ScaleX, plate.ScaleY, plate.Stiffness);
        var (bend, contract, twist) = (own.StiffnessNm, own.ContractionNm, (own.StiffnessNm - own.ContractionNm) / 2);
        turning.AddUnit(own.ShearNPerM);
        turning.AddKronecker(0, 0, bend * x * x, Product(ax.Slopes, ax.Slopes), Product(ay.Values, ay.Values));
        turning.AddKronecker(0, 0, twist * y * y, Product(ax.Values, ax.Values), Product(ay.Slopes, ay.Slopes));
        turning.AddKronecker(Size, Size, bend * y * y, Product(bx.Values, bx.Values), Product(by.Slopes, by.Slopes));
        turning.AddKronecker(Size, Size, twist * x * x, Product(bx.Slopes, bx.Slopes), Product(by.Values, by.Values));
        turning.AddKronecker(0, Size, contract * x * y, Product(ax.Slopes, bx.Values), Product(ay.Values, by.Slopes));
        turning.AddKronecker(0, Size, twist * x * y, Product(ax.Values, bx.Slopes), Product(ay.Slopes, by.Values));
    }

    private static void AddHold(DenseRows turning, Plate plate, EdgePolynomials ax, EdgePolynomials ay, EdgePolynomials bx, EdgePolynomials by)
    {
        var (x, y) = (plate.ScaleX, plate.ScaleY);
        AddEdges(turning, plate, ax, ay, 0);
        AddEdges(turning, plate, bx, by, Size);
        foreach (var brace in plate.Hold.Braces)
        {
            // A beam along the height bends as the rotation along it does; a line measures the scale across it against the area.
            turning.AddKronecker(Size, Size, brace.BendingNm2 * y * y * x, bx.Squares(brace.PlaceRatio), Product(by.Slopes, by.Slopes));
        }
    }

    // A spring along each of the four edges, against either rotation: opposite edges count alike within a class of symmetry.
    private static void AddEdges(DenseRows turning, Plate plate, EdgePolynomials alongX, EdgePolynomials alongY, int from)
    {
        if (plate.Hold.EdgeN > 0)
        {
            turning.AddKronecker(from, from, 2 * plate.Hold.EdgeN * plate.ScaleX, alongX.Squares(1), Product(alongY.Values, alongY.Values));
            turning.AddKronecker(from, from, 2 * plate.Hold.EdgeN * plate.ScaleY, Product(alongX.Values, alongX.Values), alongY.Squares(1));
        }
    }

    // The polynomials are orthonormal, so that mass is a unit matrix and the rotations' inertia a square.
    private static IEnumerable<double> Squares(Plate plate, DenseRows bends, DenseRows follow, EdgePolynomials wx, EdgePolynomials wy) =>
        Standard(plate, bends, follow, wx, wy, null).Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real);

    // The stiffness over the mass; loads are turned along with it.
    private static Matrix<double> Standard(Plate plate, DenseRows bends, DenseRows follow, EdgePolynomials wx, EdgePolynomials wy, DenseRows? loads)
    {
        var mass = new DenseRows(Size, Size);
        if (plate.Hole is { } hole)
        {
            hole.AddMass(mass, follow, plate.Mass, plate.Stiffness.RotaryInertiaKg);
        }
        else
        {
            mass.AddUnit(plate.Mass);
            mass.AddSquare(plate.Stiffness.RotaryInertiaKg, follow);
        }

        foreach (var brace in plate.Hold.Braces)
        {
            mass.AddKronecker(0, 0, brace.MassKgM * plate.ScaleX, wx.Squares(brace.PlaceRatio), Product(wy.Values, wy.Values));
        }

        mass.Factorise();
        var half = bends.Copy();
        mass.SolveForward(half);
        var standard = half.Transposed();
        mass.SolveForward(standard);
        if (loads is not null)
        {
            mass.SolveForward(loads);
        }

        return Matrix<double>.Build.Dense(Size, Size, standard.Symmetric());
    }

    private static (double Centre, double Mean) Deflection(DenseRows bends, HolePoints? hole)
    {
        var (load, shape, factor) = (Load(hole), Load(hole), bends.Copy());
        factor.Factorise();
        factor.SolveForward(shape);
        factor.SolveBackward(shape);
        var middle = Spread(Held(0).Middles);
        var rows = Enumerable.Range(0, Size);
        return (rows.Sum(i => shape[i, 0] * middle[i, 0]), rows.Sum(i => shape[i, 0] * load[i, 0]) / 4);
    }

    private static DenseRows Load(HolePoints? hole)
    {
        var load = Spread(Held(0).Integrals);
        for (var i = 0; i < Size && hole is not null; i++)
        {
            load[i, 0] = hole.Push[i];
        }

        return load;
    }

    private static DenseRows Spread(IReadOnlyList<double> line)
    {
        var column = new DenseRows(Size, 1);
        for (var i = 0; i < Size; i++)
        {
            column[i, 0] = line[i / Count] * line[i % Count];
        }

        return column;
    }
}
