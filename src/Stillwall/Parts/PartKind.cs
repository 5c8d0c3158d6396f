namespace Stillwall.Parts;

/// <summary>What a part is printed for.</summary>
public enum PrintedFor
{
    /// <summary>It becomes part of the cabinet.</summary>
    Cabinet,

    /// <summary>The test bar that is tapped.</summary>
    TestBar,

    /// <summary>Trying the wall: print, fill, bond.</summary>
    WallTrial,

    /// <summary>Setting the printer's clearances.</summary>
    Calibration,

    /// <summary>Holding the skins apart while the core is poured.</summary>
    Pour,
}

/// <summary>One kind of part: everything that is told of it stands in the file of its kind, and the catalogue finds it there by itself.</summary>
internal abstract class PartKind
{
    private protected PartKind() { }

    /// <summary>What people call it.</summary>
    public abstract string Name { get; }

    /// <summary>Its turn in the list of parts.</summary>
    internal abstract int Turn { get; }

    internal virtual PrintedFor For => PrintedFor.Cabinet;

    /// <summary>How it goes when the cabinet is exploded; null for what is not part of it.</summary>
    internal virtual Exploding? Exploding => null;

    /// <summary>The parts of this kind that a cabinet needs, all before they are split for the printer.</summary>
    internal abstract IEnumerable<PartDraft> Of(PartJob job);

    /// <summary>Joints with other parts that are closed with sealant.</summary>
    internal virtual IEnumerable<SealedJoint> Sealed(PartJob job) => [];

    /// <summary>What is measured on it, for its sheet.</summary>
    internal virtual PartFeatures Features(FeatureJob job) => new();
}

/// <summary>How the parts of a kind go when the cabinet is exploded along its depth.</summary>
internal sealed record Exploding(int Turn)
{
    /// <summary>Room to the next, mm (our choice of picture).</summary>
    internal const double UsualRoom = 45;

    /// <summary>Whether each goes for itself; else what lies in one plane stays together.</summary>
    internal bool OneByOne { get; init; }

    /// <summary>Room between those of the kind, mm.</summary>
    internal double Room { get; init; } = UsualRoom;

    /// <summary>Whether the feet stay below it.</summary>
    internal bool CarriesFeet { get; init; }

    /// <summary>How far it goes down instead, mm.</summary>
    internal double Down { get; init; }
}

/// <summary>One joint that sealant closes.</summary>
/// <param name="Turn">When it is laid: outer skins first, openings last.</param>
internal sealed record SealedJoint(SealingTurn Turn, string Between, double LengthMm);

/// <summary>Order in which sealant is laid.</summary>
internal enum SealingTurn
{
    /// <summary>Ends of the outer sleeve.</summary>
    OuterSkins,

    /// <summary>Ends of the inner sleeve.</summary>
    InnerSkins,

    /// <summary>What is screwed into an opening.</summary>
    Openings,
}
