namespace Stillwall.Appraisals.Care;

/// <summary>What can hurt somebody, or spoil the work, the worst first.</summary>
public enum Hazard
{
    /// <summary>Setting plaster is hot.</summary>
    PlasterHeat,

    /// <summary>Cement eats skin and eyes.</summary>
    Caustic,

    /// <summary>Dust of a mix with sand.</summary>
    SilicaDust,

    /// <summary>Dust of powder and of sanding.</summary>
    Dust,

    /// <summary>Household electricity.</summary>
    Mains,

    /// <summary>A cabinet that falls over.</summary>
    Falling,

    /// <summary>The cabinet with its wet cast is heavy.</summary>
    HeavyWet,

    /// <summary>The finished cabinet is heavy.</summary>
    Heavy,

    /// <summary>Plaster or lime in eyes and on skin.</summary>
    Splash,

    /// <summary>An amplifier of which neither terminal is ground.</summary>
    BridgedAmplifier,

    /// <summary>More voltage than an input takes.</summary>
    OverloadedInput,

    /// <summary>Drill and saw.</summary>
    PowerTools,

    /// <summary>Epoxy that heats itself.</summary>
    EpoxyHeat,

    /// <summary>A mix that sets in the bucket.</summary>
    ThickMix,

    /// <summary>A skin that gives way to the mix.</summary>
    Bulge,

    /// <summary>The printer's fumes and heat.</summary>
    Printing,

    /// <summary>Inserts that are melted in.</summary>
    HotInserts,

    /// <summary>A soldering iron and its solder.</summary>
    Solder,

    /// <summary>Glue, sealant and paint.</summary>
    Vapours,

    /// <summary>A cone that moves by itself.</summary>
    LiveCone,

    /// <summary>Too loud at once.</summary>
    Volume,

    /// <summary>Loud bass for long.</summary>
    Hearing,

    /// <summary>An equaliser that lifts the lowest notes.</summary>
    Boost,

    /// <summary>Rules and rights where the cabinet stands.</summary>
    LocalRules,

    /// <summary>A mix that sets in the drain.</summary>
    Drain,

    /// <summary>Drying holes that stay open.</summary>
    OpenHoles,
}
