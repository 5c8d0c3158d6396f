namespace Stillwall.Neighbours.Equalisers;

/// <summary>A kind of equaliser as a search sees it: which sections, and what of them may be moved.</summary>
internal sealed record EqualiserShape(params ShapePart[] Parts)
{
    // Qs of the two sections of a fourth-order Butterworth: 1/(2 cos 22.5°) and 1/(2 cos 67.5°).
    private const double MildQ = 0.54119610014619698,
        SharpQ = 1.3065629648763766;

    /// <summary>Lowest and highest middle of a cut, Hz.</summary>
    internal const double LowestCutHz = 18,
        HighestCutHz = 160;

    /// <summary>Deepest cut and shelf, dB (our choice: beyond that, turning down is the plainer way).</summary>
    internal const double DeepestDb = 24;

    /// <summary>What may be moved: octaves of frequency, octaves of Q, decibels; with bounds.</summary>
    internal IReadOnlyList<(double Least, double Greatest, double Step)> Moves { get; } = [.. Parts.SelectMany(MovesOf)];

    /// <summary>How many figures of a section may be moved.</summary>
    internal static int CountOf(ShapePart kind) => MovesOf(kind).Length;

    /// <summary>The same without one of its sections, at the same setting.</summary>
    internal (EqualiserShape Shape, double[] At) Without(int section, double[] at)
    {
        var before = Parts.Take(section).Sum(CountOf);
        return (new([.. Parts.Where((_, i) => i != section)]), [.. at.Take(before), .. at.Skip(before + CountOf(Parts[section]))]);
    }

    /// <summary>The sections at one setting, as stages.</summary>
    internal int Stages(ReadOnlySpan<double> at, Span<EqualiserStage> stages, double boxHz, double boxQ)
    {
        var (p, n) = (0, 0);
        foreach (var kind in Parts)
        {
            switch (kind)
            {
                case ShapePart.Highpass4:
                    stages[n++] = EqualiserStage.Of(SectionKind.Highpass, double.Exp2(at[p]), MildQ);
                    stages[n++] = EqualiserStage.Of(SectionKind.Highpass, double.Exp2(at[p++]), SharpQ);
                    break;
                case ShapePart.Highpass:
                    stages[n++] = EqualiserStage.Of(SectionKind.Highpass, double.Exp2(at[p++]), double.Exp2(at[p++]));
                    break;
                case ShapePart.Transform:
                    stages[n++] = EqualiserStage.Of(SectionKind.Transform, boxHz, boxQ, 0, double.Exp2(at[p++]), double.Exp2(at[p++]));
                    break;
                default:
                    stages[n++] = EqualiserStage.Of(Cut(kind), double.Exp2(at[p++]), double.Exp2(at[p++]), at[p++]);
                    break;
            }
        }

        return n;
    }

    /// <summary>The sections at one setting, as they are told.</summary>
    internal IReadOnlyList<EqualiserSection> Sections(ReadOnlySpan<double> at, double boxHz, double boxQ)
    {
        var (p, told) = (0, new List<EqualiserSection>());
        foreach (var kind in Parts)
        {
            switch (kind)
            {
                case ShapePart.Highpass4:
                    told.Add(new(SectionKind.Highpass, double.Exp2(at[p]), MildQ, 0));
                    told.Add(new(SectionKind.Highpass, double.Exp2(at[p++]), SharpQ, 0));
                    break;
                case ShapePart.Highpass:
                    told.Add(new(SectionKind.Highpass, double.Exp2(at[p++]), double.Exp2(at[p++]), 0));
                    break;
                case ShapePart.Transform:
                    told.Add(new(SectionKind.Transform, boxHz, boxQ, 0) { FpHz = double.Exp2(at[p++]), PoleQ = double.Exp2(at[p++]) });
                    break;
                default:
                    told.Add(new(Cut(kind), double.Exp2(at[p++]), double.Exp2(at[p++]), at[p++]));
                    break;
            }
        }

        return told;
    }

    private static SectionKind Cut(ShapePart part) => part == ShapePart.Lowshelf ? SectionKind.Lowshelf : SectionKind.Peaking;

    private static (double, double, double)[] MovesOf(ShapePart kind) =>
        kind switch
        {
            ShapePart.Highpass4 => [Octaves(QuietModel.LowestCornerHz, QuietModel.HighestCornerHz, 0.5)],
            ShapePart.Highpass => [Octaves(QuietModel.LowestCornerHz, QuietModel.HighestCornerHz, 0.5), Octaves(0.5, 0.75, 0.25)],
            ShapePart.Transform => [Octaves(10, 2 * QuietModel.HighestCornerHz, 0.5), Octaves(0.35, 0.75, 0.5)],
            ShapePart.Lowshelf => [Octaves(LowestCutHz, HighestCutHz, 0.5), Octaves(0.4, 1, 0.5), (-DeepestDb, 0, 3)],
            _ => [Octaves(LowestCutHz, HighestCutHz, 0.5), Octaves(0.4, 8, 1), (-DeepestDb, 0, 3)],
        };

    private static (double, double, double) Octaves(double least, double greatest, double step) => (Math.Log2(least), Math.Log2(greatest), step);
}

/// <summary>What an equaliser is made of, as a search sees it.</summary>
internal enum ShapePart
{
    Peaking,
    Lowshelf,
    Highpass,

    /// <summary>Two high-passes that are a fourth-order Butterworth together.</summary>
    Highpass4,

    /// <summary>The box made another.</summary>
    Transform,
}
