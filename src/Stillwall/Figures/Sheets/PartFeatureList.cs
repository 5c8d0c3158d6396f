using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;

namespace Stillwall.Figures.Sheets;

/// <summary>Tells what is to be measured on each kind of part, from the same sizes it was drawn from.</summary>
internal sealed partial class PartFeatureList(SheetJob job)
{
    // Heights of drying holes that are told beside the section.
    private const int MostHeights = 4;

    private readonly CabinetSizes s = job.Sizes;
    private readonly SheetUnits units = job.Units;

    internal PartFeatures Of(PartKind kind) =>
        kind.Kind switch
        {
            "outer sleeve" => OuterSleeve(),
            "inner sleeve" => InnerSleeve(),
            "sleeve" => new PartFeatures
            {
                SectionAcross = [Inside(s.Wall, 0)],
                SectionUp = Grooves(),
                Notes = [Corner(), new(s.Width - s.Wall, s.Height / 2, $"wall {units.Of(s.Wall)}")],
            },
            "front outer plate" or "front plate" => Front(true),
            "rear outer plate" or "rear plate" => Rear(true),
            "front inner plate" => Front(false),
            "rear inner plate" => Rear(false),
            "brace" => Brace(),
            "trim ring" => TrimRing(),
            "accent ring" => AccentRing(kind),
            "lid" or "foot" => new PartFeatures
            {
                Notes = [Round(new Circle(0, 0, kind.Extent.Right - kind.Extent.Left), units.Diameter(DiscDiameter(kind)))],
                Centres = [new Circle(0, 0, DiscDiameter(kind))],
                IsRound = true,
            },
            "test-bar mould" => Mould(),
            "wall coupon" => Coupon(),
            "calibration strip" => Strip(),
            "calibration peg" => new PartFeatures
            {
                Across = [new(5, 15, 5, 5)],
                SectionUp = [new(0, 4, 0, 0)],
                CutAt = 10,
            },
            "spacer gauge" => new PartFeatures
            {
                Across = [new(-(s.Core - BuildUp.SpacerPlay) / 2, (s.Core - BuildUp.SpacerPlay) / 2, 0, 0)],
                Up = [new(0, BuildUp.SpacerLength, -(s.Core - BuildUp.SpacerPlay) / 2, -(s.Core - BuildUp.SpacerPlay) / 2 - BuildUp.SpacerHead)],
            },
            _ => new PartFeatures(),
        };

    private double DiscDiameter(PartKind kind) =>
        kind.Kind == "foot" ? BuildUp.FootDiameter : (job.Geometry.Rear.Layout.DryOuts is [var dry, ..] ? dry.DiameterMm : 0) - 2 * BuildUp.LidGap;

    private double Radius => s.Outline.Radius;

    // At the upper right corner, halfway round its arc.
    private Callout Corner(double inset = 0) =>
        new(
            s.Width - inset - (1 - Math.Sqrt(0.5)) * Math.Max(0, Radius - inset),
            s.Height - inset - (1 - Math.Sqrt(0.5)) * Math.Max(0, Radius - inset),
            $"R{units.Of(Math.Max(0, Radius - inset))}"
        );

    private static Callout Round(Circle circle, params string[] lines) =>
        new(circle.XMm + circle.DiameterMm / 2 * Math.Sqrt(0.5), circle.ZMm + circle.DiameterMm / 2 * Math.Sqrt(0.5), lines);

    private Length Inside(double inset, double edge) => new(inset, s.Width - inset, edge, edge);

    private IReadOnlyList<Length> Grooves()
    {
        var places = AccentRings.Places(job.Drawing);
        return [.. places.Select((at, i) => new Length(i == 0 ? 0 : places[i - 1], at, 0, 0))];
    }

    // One that is split needs no gap.
    private PartFeatures AccentRing(PartKind kind) =>
        new()
        {
            Notes =
            [
                Corner(),
                new(s.Width - s.OuterSkin / 4, s.Height * 0.4, $"{units.Of(s.OuterSkin / 2)} thick"),
                .. kind.Printed.Count == kind.Parts.Count
                    ? [new Callout(s.Width / 2 + s.AccentGap / 2, s.OuterSkin / 4, $"gap {units.Of(s.AccentGap)}")]
                    : Array.Empty<Callout>(),
            ],
        };

    private PartFeatures OuterSleeve()
    {
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var count = SleeveSection.StrutPlaces(s).Places.Count;
        var struts = job.Geometry.Struts;
        var head = s.Wall - s.InnerSkin - (s.Tied ? BuildUp.SlotGap : 0);
        var firstWindow = s.Core + BuildUp.LowestWindow;
        List<Callout> section = [];
        if (struts.Windows > 0)
        {
            section.Add(
                new(
                    s.Width / 2 + pitch / 2,
                    firstWindow + struts.Window / 2,
                    $"windows {units.Of(struts.Window)} high",
                    $"at the heads, {units.Of(BuildUp.WebLength)} apart"
                )
            );
        }

        if (AccentRings.Places(job.Drawing) is [var first, ..] places)
        {
            section.Add(
                new(
                    s.Width - s.OuterSkin / 2,
                    first + BuildUp.AccentWidth,
                    SheetUnits.Many(places.Count, $"groove {units.Of(BuildUp.AccentWidth)} wide,"),
                    $"{units.Of(s.OuterSkin / 2)} deep"
                )
            );
        }

        return new PartFeatures
        {
            Across = [new(s.Width / 2 - pitch / 2, s.Width / 2 + pitch / 2, s.OuterSkin, s.OuterSkin)],
            SectionAcross = [Inside(s.OuterSkin, 0)],
            SectionUp = [.. Grooves(), .. struts.Windows > 0 ? [new Length(0, firstWindow, 0, s.OuterSkin)] : Array.Empty<Length>()],
            Notes =
            [
                Corner(),
                new(s.Width, s.Height * 0.62, $"skin {units.Of(s.OuterSkin)}"),
                new(
                    s.Width / 2 + pitch / 2 + s.Web / 2,
                    s.OuterSkin + s.Core * 0.4,
                    $"{count} struts, web {units.Of(s.Web)}",
                    $"{units.Of(pitch)} apart, {units.Of(head - s.OuterSkin)} high"
                ),
                .. s.Tied
                    ?
                    [
                        new Callout(
                            s.Width / 2 + pitch / 2 + BuildUp.HeadWidth / 2,
                            head - BuildUp.HeadThickness / 2,
                            $"head {units.Of(BuildUp.HeadWidth)} × {units.Of(BuildUp.HeadThickness)}"
                        ),
                    ]
                    : Array.Empty<Callout>(),
            ],
            SectionNotes = section,
        };
    }

    private PartFeatures InnerSleeve()
    {
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var skin = s.OuterSkin + s.Core;
        var slot = 2 * BuildUp.SlotGap + BuildUp.HeadThickness;
        var seats = SleeveDrawing.BracesAt(job.Geometry).ToList();
        var seat = s.Wall + s.Outline.Inset(s.Wall).Width / 4;
        return new PartFeatures
        {
            SectionAcross = [Inside(s.Wall, 0), Inside(skin, 0)],
            SectionUp =
            [
                .. seats.Select(at => new Length(0, at, skin, s.Wall)),
                .. job.Geometry.DryingHoles.HeightsMm.Take(MostHeights).Select(at => new Length(0, at, skin, s.Wall)),
            ],
            Notes =
            [
                Corner(skin),
                new(s.Width - skin, s.Height * 0.62, $"skin {units.Of(s.InnerSkin)}"),
                .. s.Tied
                    ?
                    [
                        new Callout(
                            s.Width / 2 + pitch / 2 + BuildUp.HeadWidth / 2 + BuildUp.SlotGap,
                            skin - slot / 2,
                            $"slot {units.Of(BuildUp.HeadWidth + 2 * BuildUp.SlotGap)} × {units.Of(slot)},",
                            $"mouth {units.Of(s.Web + 2 * BuildUp.SlotGap)}, lips {units.Of(BuildUp.LipThickness)}"
                        ),
                    ]
                    : Array.Empty<Callout>(),
            ],
            SectionNotes =
            [
                .. seats.Count == 0
                    ? Array.Empty<Callout>()
                    :
                    [
                        new Callout(
                            s.Width - seat,
                            seats[0] - BuildUp.SeatDepth / 2,
                            $"{BuildUp.Seats} seats {units.Of(BuildUp.SeatWidth)} wide,",
                            $"{units.Of(BuildUp.SeatDepth)} out, for a brace"
                        ),
                    ],
                .. DryingHole(),
            ],
        };
    }

    // The one furthest to the right on the upper side, which the section looks at.
    private IEnumerable<Callout> DryingHole()
    {
        var holes = job.Geometry.DryingHoles;
        if (holes.Count > 0 && holes.Rows.Where(r => r.AlongX < -0.5).MaxBy(r => r.X) is { } row)
        {
            yield return new Callout(
                row.X + holes.DiameterMm / 2,
                holes.HeightsMm[0],
                SheetUnits.Many(holes.Count, $"{units.Diameter(holes.DiameterMm)}, to dry,"),
                "taped inside to pour"
            );
        }
    }

    private Circle Mirrored(Circle c) => c with { XMm = s.Width - c.XMm };

    private PartFeatures Front(bool outer)
    {
        var layout = job.Geometry.Front.Layout;
        var openings = layout.Openings.Where(o => o.DiameterMm > 0).Select(Mirrored).ToList();
        var (bosses, pilots) = (layout.Bosses.Select(Mirrored).ToList(), layout.Pilots.Select(Mirrored).ToList());
        var plain = Plate(outer, layout, Mirrored);
        var single = s.Core <= 0;
        List<Callout> notes = [.. plain.Notes];
        if (openings is [var opening, ..])
        {
            notes.Add(
                Round(
                    opening,
                    [
                        SheetUnits.Many(openings.Count, units.Diameter(opening.DiameterMm)),
                        .. outer && !single ? [$"collar {units.Of(BuildUp.DriverCollar)}, {units.Of(s.Core)} high"] : Array.Empty<string>(),
                    ]
                )
            );
        }

        if (outer && bosses.Count > 0)
        {
            var high = bosses.OrderByDescending(b => b.XMm > s.Width / 2).ThenBy(b => Math.Abs(b.ZMm - s.Height * 0.3)).First();
            notes.Add(
                new(
                    high.XMm + BuildUp.Boss / 2,
                    high.ZMm,
                    SheetUnits.Many(bosses.Count, $"{units.Diameter(BuildUp.Boss)} on {units.Diameter(s.BoltCircle)},"),
                    pilots.Count > 0
                        ? $"hole {units.Diameter(pilots[0].DiameterMm)}, {units.Of(job.Geometry.PilotDepth - s.Sunk)} deep"
                        : "no hole: bolt not stated"
                )
            );
        }

        var recesses = outer ? layout.Recesses.Select(Mirrored).ToList() : [];
        if (recesses is [var recess, ..])
        {
            const double above = 10 * Math.PI / 180;
            notes.Add(
                new(
                    recess.XMm + recess.DiameterMm / 2 * Math.Cos(above),
                    recess.ZMm + recess.DiameterMm / 2 * Math.Sin(above),
                    SheetUnits.Many(recesses.Count, $"recess {units.Diameter(recess.DiameterMm)},"),
                    $"{units.Of(s.Sunk)} deep, in the face"
                )
            );
        }

        return plain with
        {
            Across = [.. openings.Select(o => o.XMm).Distinct().Select(x => new Length(Edge(outer), x, Radius, Edge(outer)))],
            Up = [.. openings.Select(o => o.ZMm).Distinct().Select(z => new Length(Edge(outer), z, Edge(outer), Edge(outer)))],
            SectionUp = [.. plain.SectionUp, .. recesses.Take(1).Select(r => new Length(0, s.Sunk, 0, r.XMm - r.DiameterMm / 2))],
            Notes = notes,
            Centres = [.. openings, .. outer ? pilots : []],
            Hidden = outer ? [.. pilots, .. recesses] : [],
            BoltCircles = outer && bosses.Count > 0 ? [.. openings.Select(o => o with { DiameterMm = s.BoltCircle })] : [],
            CutAt = openings.Count > 0 ? openings[0].ZMm : null,
        };
    }

    private double Edge(bool outer) => outer || s.Core <= 0 ? 0 : s.OuterSkin + s.Core;

    private PartFeatures Rear(bool outer)
    {
        var layout = job.Geometry.Rear.Layout;
        var plain = Plate(outer, layout, c => c);
        var edge = Edge(outer);
        var notes = plain.Notes.ToList();
        var terminal = layout.Openings.FirstOrDefault(o => o.DiameterMm > 0);
        var round = new List<Circle>();
        if (terminal is not null)
        {
            notes.Add(
                Round(
                    terminal,
                    [
                        units.Diameter(terminal.DiameterMm),
                        .. outer && s.Core > 0 ? [$"collar {units.Of(BuildUp.TerminalCollar)}, {units.Of(s.Core)} high"] : Array.Empty<string>(),
                    ]
                )
            );
            round.Add(terminal);
        }

        var heights = new List<Length>(terminal is null ? [] : [new(edge, terminal.ZMm, edge, edge)]);
        var across = new List<Length>(plain.Across);
        if (outer)
        {
            foreach (var pour in layout.PourOpenings.Where(p => p.DiameterMm > 0))
            {
                notes.Add(Round(pour, $"{units.Diameter(pour.DiameterMm)}, to pour"));
                heights.Add(new(0, pour.ZMm, 0, 0));
                round.Add(pour);
            }

            if (layout.Vents is [var vent, ..])
            {
                var shown = layout.Vents.OrderByDescending(v => v.XMm).ThenBy(v => Math.Abs(v.ZMm - s.Height * 0.35)).First();
                notes.Add(new(shown.XMm + vent.DiameterMm / 2, shown.ZMm, SheetUnits.Many(layout.Vents.Count, $"{units.Diameter(vent.DiameterMm)}, vent")));
            }

            if (layout.DryOuts is [var dry, ..])
            {
                var shown = layout.DryOuts.OrderByDescending(d => d.XMm).ThenByDescending(d => d.ZMm).First();
                notes.Add(Round(shown, SheetUnits.Many(layout.DryOuts.Count, $"{units.Diameter(dry.DiameterMm)}, to dry")));
                round.AddRange(layout.DryOuts);
                var rows = layout.DryOuts.Where(d => Math.Abs(d.XMm - dry.XMm) < 0.01).Select(d => d.ZMm).Order().ToList();
                heights.AddRange(Chain(rows, dry.XMm - dry.DiameterMm / 2));
                var columns = layout.DryOuts.Select(d => d.XMm).Distinct().Order().ToList();
                var lowest = layout.DryOuts.Min(d => d.ZMm - d.DiameterMm / 2);
                across.AddRange(columns.Select((x, i) => new Length(i == 0 ? 0 : columns[i - 1], x, i == 0 ? Radius : lowest, lowest)));
            }
        }

        return plain with
        {
            Across = across,
            Up = heights,
            Notes = notes,
            Centres = round,
            CutAt = terminal?.ZMm,
        };
    }

    // From the edge to the first, then from each to the next; many at equal distances as one.
    private IEnumerable<Length> Chain(List<double> places, double edge)
    {
        var (first, pitch) = (new Length(0, places[0], 0, edge), places.Count > 1 ? places[1] - places[0] : 0);
        var even = places.Count > 3 && places.Zip(places.Skip(1)).All(p => Math.Abs(p.Second - p.First - pitch) < 0.01);
        return even
            ? [first, new(places[0], places[^1], edge, edge, $" = {places.Count - 1} × {units.Of(pitch)}")]
            : [first, .. places.Zip(places.Skip(1)).Select(p => new Length(p.First, p.Second, edge, edge))];
    }
}
