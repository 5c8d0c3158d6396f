namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Brief: what is asked.</summary>
internal static class BriefTexts
{
    internal const string Hint = "What is asked. *Dotted* values are set here, in any unit; the drawings are to scale.";

    internal static readonly (string Name, (string Key, string Label, string? Unit, double Step)[] Keys)[] Groups =
    [
        (
            "The project",
            [
                ("name", "name", null, 1),
                ("budget", "budget", null, 10),
                ("currency", "currency", null, 1),
                ("pour_date", "day of the pour", null, 1),
                ("display_units", "units shown", null, 1),
            ]
        ),
        (
            "Aim",
            [
                ("brief.aim.lowest", "lowest note", "Hz", 1),
                ("brief.aim.crossover", "crossover to the main speakers", "Hz", 5),
                ("brief.aim.level", "level at the lowest note", "dB", 1),
                ("brief.aim.distance", "listening distance", "m", 0.1),
                ("brief.aim.system_q", "system Q", null, 0.01),
                ("brief.aim.system_q_tolerance", "give or take", null, 0.01),
            ]
        ),
        (
            "Spot",
            [
                ("brief.spot.width", "width", "mm", 10),
                ("brief.spot.height", "height", "mm", 10),
                ("brief.spot.depth", "depth", "mm", 10),
                ("brief.spot.clearance", "clearance on every side", "mm", 5),
                ("brief.spot.plug_space", "room for the plug behind", "mm", 5),
            ]
        ),
        (
            "Printer",
            [
                ("brief.printer.build_width", "build width", "mm", 1),
                ("brief.printer.build_depth", "build depth", "mm", 1),
                ("brief.printer.build_height", "build height", "mm", 1),
                ("brief.printer.edge_margin", "margin at the edge", "mm", 1),
                ("brief.printer.nozzle", "nozzle", "mm", 0.1),
                ("brief.printer.layer", "layer", "mm", 0.05),
                ("brief.printer.flow_mm3_s", "flow, mm³/s", null, 1),
                ("brief.printer.layer_pause", "pause at each layer", "s", 1),
            ]
        ),
        (
            "Amplifier",
            [
                ("brief.amplifier.power", "power at the rated load", "W", 10),
                ("brief.amplifier.rated_load", "rated load", "ohm", 1),
                ("brief.amplifier.minimum_load", "minimum load", "ohm", 0.1),
            ]
        ),
        (
            "Main speakers",
            [
                ("brief.main_speakers.corner", "low corner", "Hz", 5),
                ("brief.main_speakers.q", "Q of the corner", null, 0.05),
                ("brief.main_speakers.sensitivity", "sensitivity", "dB", 1),
            ]
        ),
        (
            "Room",
            [
                ("brief.room.width", "width", "m", 0.1),
                ("brief.room.length", "length", "m", 0.1),
                ("brief.room.height", "height", "m", 0.1),
                ("brief.room.decay_time", "decay time", "s", 0.05),
                ("brief.room.pressure_decay_time", "decay of the pressure", "s", 0.1),
                ("brief.room.cabinet_at", "cabinet at x; y; z", "m", 0.1),
                ("brief.room.seat_at", "ears at x; y; z", "m", 0.1),
            ]
        ),
        (
            "Neighbour",
            [
                ("brief.neighbour.partition", "party wall", null, 1),
                ("brief.neighbour.area", "area of the party wall", "m2", 0.5),
                ("brief.neighbour.room_volume", "volume of the neighbour's room", "m3", 1),
                ("brief.neighbour.decay_time", "decay time of the neighbour's room", "s", 0.05),
                ("brief.neighbour.curve", "limit curve", null, 1),
                ("brief.neighbour.allowance", "allowance", "dB", 1),
            ]
        ),
        (
            "Everyday and air",
            [
                ("brief.everyday.level", "everyday bass level", "dB", 1),
                ("brief.everyday.programme", "programme", null, 1),
                ("brief.everyday.hours", "hours a day", null, 1),
                ("brief.air.temperature", "temperature", "degC", 1),
                ("brief.air.pressure", "air pressure", "hPa", 5),
            ]
        ),
    ];
}
