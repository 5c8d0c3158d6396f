using System.Globalization;
using System.Xml.Linq;
using Stillwall.Appraisals;
using Stillwall.Files.Drawings;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Drawings;

/// <summary>The plan of a room, read back from its SVG.</summary>
public sealed class RoomMapSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly RoomGeometry Room = new(3.2, 3.9, 2.5, 0.5, 2, new Place(0.4, 0.35, 0.25), new Place(2.2, 2.9, 1.1));

    private static readonly RoomMap Map = RoomMap.Of(RoomModel.Of(Room, Air.Reference), 45, 0.001);

    private static readonly XElement Drawn = XDocument.Parse(RoomMapSvg.Of(Map, Show.Of(DemoProject.Project))).Root!;

    [Fact]
    public void The_room_is_covered_by_its_cells_to_scale()
    {
        var strips = Drawn.Element(Svg + "g")!.Elements(Svg + "rect").ToList();
        var rows = strips.GroupBy(r => r.Attribute("y")!.Value).ToList();
        Assert.Equal(Map.LevelsDb.Count, rows.Count);

        // 150 mm stand for 3.9 m, so the width is 123.08 mm; a strip is 0.05 mm wider than its cells.
        Assert.All(rows, row => Assert.Equal(150 * 3.2 / 3.9, row.Sum(r => Number(r, "width") - 0.05), 0.1));
    }

    [Fact]
    public void The_seat_lies_where_it_is_stated_and_the_length_runs_up()
    {
        var seat = Drawn.Elements(Svg + "circle").Single(c => c.Attribute("r")!.Value == "4");
        Assert.Equal(20 + (2.2 * 150 / 3.9), Number(seat, "cx"), 0.01);
        Assert.Equal(24 + 150 - (2.9 * 150 / 3.9), Number(seat, "cy"), 0.01);
    }

    [Fact]
    public void The_same_map_gives_the_same_bytes_and_sizes_follow_the_units()
    {
        Assert.Equal(RoomMapSvg.Of(Map, Show.Of(DemoProject.Project)), RoomMapSvg.Of(Map, Show.Of(DemoProject.Project)));
        Assert.Contains("length 12.8 ft", RoomMapSvg.Of(Map, Show.Of(DemoProject.Project with { DisplayUnits = DisplayUnits.Inch })), StringComparison.Ordinal);
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
