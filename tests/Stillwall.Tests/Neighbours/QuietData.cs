using System.Globalization;
using System.Numerics;
using System.Text.Json;
using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Tests.Neighbours;

/// <summary>Reference tables and the case that the tests of this stage share.</summary>
internal static class QuietData
{
    /// <summary>Air of the reference solutions.</summary>
    public static readonly Air Air = new(20, 101325, 343.2, 1.20411, 1.81e-5);

    public static readonly RoomGeometry ReadingRoom = new(3.2, 3.9, 2.5, 0.5, 2, new Place(0.4, 0.35, 0.25), new Place(2.2, 2.9, 1.1));

    public static readonly Neighbour BrickWall = new()
    {
        Partition = "brick-255-plastered",
        AreaM2 = 8,
        RoomVolumeM3 = 36,
        DecayTimeS = 0.5,
        Curve = "hearing-threshold",
    };

    /// <summary>The rows of a table under tests/data, cells as text; empty stays empty.</summary>
    public static IReadOnlyList<string[]> Rows(string topic, string file) =>
        [
            .. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", topic, file))
                .Skip(1)
                .Where(line => line.Length > 0)
                .Select(line => line.Split(',')),
        ];

    public static IReadOnlyList<double[]> Numbers(string topic, string file) => [.. Rows(topic, file).Select(row => row.Select(Number).ToArray())];

    public static double Number(string cell) => cell.Length == 0 ? double.NaN : double.Parse(cell, CultureInfo.InvariantCulture);

    public static IReadOnlyList<JsonElement> Cases(string topic, string file) =>
        [.. JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", topic, file))).RootElement.EnumerateArray()];

    /// <summary>The reading room with a closed box of 40 Hz and Q 0.7, everyday listening at 62 dB of music.</summary>
    public static QuietInputs Inputs(RoomModel? room = null) =>
        new()
        {
            Everyday = new Everyday { LevelDb = 62, Programme = "music" },
            CrossoverHz = 95,
            Air = Air,
            VolumeVelocityM3S = ClosedBox,
            StatedRoom = room is null ? null : new Room(),
            Room = room,
            Neighbour = BrickWall,
        };

    // Flat pressure in the half space above the box's corner: the volume velocity falls as 1/(jω).
    public static Complex ClosedBox(double frequencyHz) => 0.01 * Analogue.HighPass(frequencyHz, 40, 0.7) / new Complex(0, frequencyHz);
}
