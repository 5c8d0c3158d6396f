namespace Stillwall.Appraisals.Care;

/// <summary>A step of the job at which a hand is at work, in the order of the job.</summary>
public enum WorkStep
{
    /// <summary>In the shop.</summary>
    Supplies,

    /// <summary>The driver by itself, measured.</summary>
    Driver,

    /// <summary>The calibration strip.</summary>
    CalibrationStrip,

    /// <summary>The wall coupon.</summary>
    WallCoupon,

    /// <summary>Printing the parts.</summary>
    Print,

    /// <summary>Drilling and cutting by a template.</summary>
    Template,

    /// <summary>Putting everything together dry.</summary>
    DryFit,

    /// <summary>Filling the cavity with water.</summary>
    WaterRehearsal,

    /// <summary>The pour, before its first water.</summary>
    Pour,

    /// <summary>Powder into the water.</summary>
    Soak,

    /// <summary>Stirring a batch.</summary>
    Stir,

    /// <summary>Pouring a batch.</summary>
    Fill,

    /// <summary>Tapping the walls of the form.</summary>
    TapWalls,

    /// <summary>While a lift sets.</summary>
    Set,

    /// <summary>After the pour.</summary>
    CleanUp,

    /// <summary>The cabinet on the scales.</summary>
    WeighIn,

    /// <summary>Sealing.</summary>
    Seal,

    /// <summary>Painting.</summary>
    Paint,

    /// <summary>Wiring.</summary>
    Wiring,

    /// <summary>Gasket and driver.</summary>
    Gasket,

    /// <summary>Standing it in its place.</summary>
    SetUp,

    /// <summary>Proof of the built thing.</summary>
    Proof,

    /// <summary>Playing a sound for a proof.</summary>
    Signal,

    /// <summary>The impedance by two channels.</summary>
    Impedance,

    /// <summary>The relative response.</summary>
    Sweep,

    /// <summary>The test bar, tapped.</summary>
    TapTest,

    /// <summary>The cone, pressed in and let go.</summary>
    HoldTest,

    /// <summary>Listening for rattles.</summary>
    Rattle,

    /// <summary>Which way the cone goes.</summary>
    Polarity,

    /// <summary>Level on both sides of the wall.</summary>
    PartyWall,

    /// <summary>Listening beside a neighbour.</summary>
    Quiet,

    /// <summary>Setting an equaliser.</summary>
    Equaliser,
}
