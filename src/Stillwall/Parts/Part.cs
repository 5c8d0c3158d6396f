using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>Size of a part as it is printed, mm.</summary>
internal readonly record struct PartSize(double X, double Y, double Z);

/// <summary>One part as its kind tells it.</summary>
/// <param name="VolumeM3">Volume of plastic in closed form, m³; the plastic is that of the skins.</param>
internal sealed record PartDraft(double VolumeM3, PartSize Size, Func<Blank> Draw)
{
    /// <summary>Where it goes in the cabinet; null for moulds, coupons and gauges.</summary>
    internal Placement? Place { get; init; }

    /// <summary>How far behind the front face its centre of mass lies, mm; null for what is not part of the cabinet.</summary>
    internal double? CentreMm { get; init; }
}

/// <summary>One part of the catalogue, before it is split for the printer.</summary>
internal sealed record Part(PartKind Kind, int Number, int Of, PartDraft Draft)
{
    /// <summary>What people call it.</summary>
    internal string Name => PartNames.Of(this);

    /// <summary>What is cut into it: its name and its number.</summary>
    internal string Mark => Of == 1 ? Kind.Name : FormattableString.Invariant($"{Kind.Name} {Number}");
}

/// <summary>Names of parts: words for people, made at the edge and read nowhere.</summary>
internal static class PartNames
{
    /// <summary>Name of a part: with its number where there are several.</summary>
    internal static string Of(Part part) => part.Of == 1 ? part.Kind.Name : FormattableString.Invariant($"{part.Kind.Name} {part.Number} of {part.Of}");

    /// <summary>Name of one piece of a part: a part that has a number has numbered pieces.</summary>
    internal static string Of(Part part, int piece, int pieces) =>
        pieces == 1 ? Of(part) : FormattableString.Invariant($"{Of(part)} {(part.Of > 1 ? "piece " : "")}{piece} of {pieces}");
}

/// <summary>The parts of a cabinet, in the order in which they are built in, then moulds and gauges: the one list that everything else reads.</summary>
internal static class PartCatalogue
{
    /// <summary>All kinds of parts; each stands in a file of its own in <c>Kinds</c> and needs no entry elsewhere.</summary>
    internal static IReadOnlyList<PartKind> Kinds { get; } =
        [
            .. typeof(PartKind)
                .Assembly.GetTypes()
                .Where(t => t.IsSubclassOf(typeof(PartKind)) && !t.IsAbstract)
                .Select(t => (PartKind)Activator.CreateInstance(t, nonPublic: true)!)
                .OrderBy(k => k.Turn),
        ];

    internal static IReadOnlyList<Part> Of(PartJob job) => [.. Kinds.SelectMany(kind => Numbered(kind, [.. kind.Of(job)]))];

    private static IEnumerable<Part> Numbered(PartKind kind, IReadOnlyList<PartDraft> drafts) =>
        drafts.Select((draft, i) => new Part(kind, i + 1, drafts.Count, draft));
}
