using System.Globalization;

namespace Stillwall.Projects;

/// <summary>What one value alone cannot show: values of a project that exclude, need or outgrow one another.</summary>
public static partial class ProjectChecks
{
    // Rim of the rear panel that the terminal opening leaves, least distance of the opening from the wall, thickness of its collar, m (our choice).
    private const double TerminalRimM = 0.020,
        OpeningRoomM = 0.010,
        TerminalCollarM = 0.002;

    /// <summary>Thickness of a brace as it is drawn, m (our choice).</summary>
    internal const double BraceThicknessM = 0.008;

    // Least plastic under a driver's flange, m, and in layers (our choice).
    private const double LeastUnderFlangeM = 0.001,
        LeastLayersUnderFlange = 2;

    // Least inside that rounding does not take away, m (our choice).
    private const double LeastInsideM = 1e-4;

    // Least bay between two braces, m (our choice).
    private const double LeastBayM = 1e-3;

    // Least core that is no slip of the pen, m (our choice); whether the mix flows into it is for a finding to say.
    private const double LeastCoreM = 0.001;

    // Least amount that a price may be for, in SI or pieces (our choice).
    private const double LeastPriced = 1e-6;

    // Quantities are stated with so many figures that two of them may differ by this share and still be meant as equal (our choice).
    private const double Rounding = 1e-9;

    private static readonly Check[] All =
    [
        new(["cabinet.net_volume", "cabinet.outside", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin"], NetVolumeAlone),
        new(["cabinet.outside", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin"], WallsStated),
        new(["cabinet.outside", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin"], WallsLeaveRoom),
        new(["cabinet.core"], CoreCanBePoured),
        new(["cabinet.outside", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin", "cabinet.braces"], BracesLeaveRoom),
        new(["cabinet.outside"], CornersFit),
        new(["cabinet.outside", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin", "cabinet.strut_pitch"], StrutsApart),
        new([], FillOneWay),
        new(["cabinet.leak"], LeakOneWay),
        new(["cabinet.port"], PortWhole),
        new([], PortOrPassiveRadiator),
        new(["cabinet.outside", "cabinet.openings.terminal", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin"], TerminalFits),
        new(["cabinet.outside", "cabinet.openings", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin"], PourOpeningFits),
        new(["cabinet.openings.recess", "cabinet.outer_skin", "cabinet.core", "cabinet.inner_skin", "brief.printer.layer"], RecessLeavesSkin),
        new(["brief.aim.lowest", "brief.aim.crossover"], CrossoverAboveLowest),
        new(
            ["brief.everyday.programme", "brief.everyday.spectrum"],
            p => Own("brief.everyday.programme", p.Brief.Everyday?.Programme, "spectrum", p.Brief.Everyday?.SpectrumDb)
        ),
        new(
            ["brief.neighbour.partition", "brief.neighbour.reduction"],
            p => Own("brief.neighbour.partition", p.Brief.Neighbour?.Partition, "reduction", p.Brief.Neighbour?.ReductionDb)
        ),
        new(["brief.neighbour.partition", "brief.neighbour.leaf", "brief.neighbour.second_leaf", "brief.neighbour.gap"], p => LeavesStated(p.Brief.Neighbour)),
        new(
            ["brief.neighbour.curve", "brief.neighbour.curve_levels"],
            p => Own("brief.neighbour.curve", p.Brief.Neighbour?.Curve, "curve_levels", p.Brief.Neighbour?.CurveDb)
        ),
        new(["materials.skin", "materials.skin_own"], p => Own("materials.skin", p.Materials?.Skin, "skin_own", p.Materials?.SkinOwn)),
        new(["materials.cast.mix", "materials.cast.own"], p => Own("materials.cast.mix", p.Materials?.Cast?.Mix, "own", p.Materials?.Cast?.Own)),
        new([], p => InRoom(p.Brief.Room, "cabinet_at", p.Brief.Room?.CabinetAtM)),
        new([], p => InRoom(p.Brief.Room, "seat_at", p.Brief.Room?.SeatAtM)),
        new([], p => InRoom(p.Brief.Room, "left_at", p.Brief.MainSpeakers?.LeftAtM, "main_speakers")),
        new([], p => InRoom(p.Brief.Room, "right_at", p.Brief.MainSpeakers?.RightAtM, "main_speakers")),
        new(["limits.fill_density_low", "limits.fill_density_high"], FillDensitiesInOrder),
        new([], PricesNamedOnce),
        new([], PricesForSomething),
    ];

    /// <summary>Every fault that shows only when values are read together.</summary>
    /// <param name="project">The project; each value is within its own range already.</param>
    /// <returns>Path in the file, and what is wrong; what is accepted.</returns>
    public static IEnumerable<(string Path, string Message)> Of(Project project) => Of(project, []);

    /// <summary>The same, but silent about what rests on a value that could not be read.</summary>
    /// <param name="project">The project as far as it could be read.</param>
    /// <param name="unread">Paths of the values that could not be read.</param>
    /// <returns>Path in the file, and what is wrong; what is accepted.</returns>
    public static IEnumerable<(string Path, string Message)> Of(Project project, IReadOnlyCollection<string> unread)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(unread);
        return All.Where(check => !check.Reads.Any(key => unread.Any(path => Touches(key, path)))).SelectMany(check => check.Faults(project));
    }

    // A check is left out when something it reads was stated but could not be read, and might then be taken for absent or zero.
    private sealed record Check(string[] Reads, Func<Project, IEnumerable<(string Path, string Message)>> Faults);

    private static bool Touches(string key, string path) => key == path || IsUnder(key, path) || IsUnder(path, key);

    private static bool IsUnder(string path, string block) =>
        path.Length > block.Length && path.StartsWith(block, StringComparison.Ordinal) && path[block.Length] is '.' or '[';

    private static IEnumerable<(string, string)> NetVolumeAlone(Project project)
    {
        if (project.Cabinet is not { NetVolumeM3: not null } cabinet)
        {
            yield break;
        }

        var besides = Stated(("outside", cabinet.Outside), ("outer_skin", cabinet.OuterSkinM), ("core", cabinet.CoreM), ("inner_skin", cabinet.InnerSkinM));
        if (besides.Length > 0)
        {
            yield return ("cabinet.net_volume", $"is stated together with {besides}; either net_volume, or outside with its walls");
        }
    }

    private static IEnumerable<(string, string)> WallsStated(Project project)
    {
        if (project.Cabinet is not { Outside: not null } cabinet)
        {
            yield break;
        }

        // With no cast between them the skins are one printed wall, whose thickness is outer_skin.
        var innerNeeded = cabinet.CoreM != 0;
        var missing = Missing(("outer_skin", cabinet.OuterSkinM), ("core", cabinet.CoreM), ("inner_skin", innerNeeded ? cabinet.InnerSkinM : 0));
        if (missing.Length > 0)
        {
            yield return ("cabinet.outside", $"has no {missing} beside it; outside with outer_skin, core and inner_skin, or net_volume alone");
        }
    }

    private static IEnumerable<(string, string)> WallsLeaveRoom(Project project)
    {
        if (project.Cabinet is not { Outside: { } outside } cabinet || WallM(cabinet) is not { } wallM)
        {
            yield break;
        }

        foreach (var (key, sizeM) in new[] { ("width", outside.WidthM), ("depth", outside.DepthM), ("height", outside.HeightM) })
        {
            if (sizeM - 2 * wallM < LeastInsideM * (1 - 1e-6))
            {
                yield return (
                    $"cabinet.outside.{key}",
                    $"{Length(sizeM)} leaves nothing inside two walls of {Length(wallM)}; at least {Length(2 * wallM + LeastInsideM)}"
                );
            }
        }
    }

    private static IEnumerable<(string, string)> CoreCanBePoured(Project project)
    {
        if (project.Cabinet?.CoreM is > 0 and < LeastCoreM and var coreM)
        {
            yield return ("cabinet.core", $"{Length(coreM)} is too thin to be poured; at least {Length(LeastCoreM)}, or 0 mm for a single printed wall");
        }
    }

    private static IEnumerable<(string, string)> BracesLeaveRoom(Project project)
    {
        if (project.Cabinet is not { Outside: { } outside, Braces: > 0 and var braces } cabinet || WallM(cabinet) is not { } wallM)
        {
            yield break;
        }

        var insideM = outside.DepthM - 2 * wallM;
        if (insideM > 0 && insideM - braces * BraceThicknessM < (braces + 1) * LeastBayM)
        {
            yield return (
                "cabinet.braces",
                $"{braces.ToString(CultureInfo.InvariantCulture)} braces of {Length(BraceThicknessM)} fill the whole depth of {Length(insideM)}; fewer "
                    + "braces, or a deeper cabinet"
            );
        }
    }

    private static IEnumerable<(string, string)> CornersFit(Project project)
    {
        if (project.Cabinet?.Outside is { } outside && outside.CornerRadiusM > Math.Min(outside.WidthM, outside.HeightM) / 2 * (1 + Rounding))
        {
            yield return (
                "cabinet.outside.corner_radius",
                $"{Length(outside.CornerRadiusM)} is more than half the smaller of width and height; 0 mm to "
                    + $"{Length(Math.Min(outside.WidthM, outside.HeightM) / 2)}"
            );
        }
    }

    // Closer struts would run into one another at the corners, where the inner skin is shorter than the outer, or leave no room between them (our
    // choice, found by drawing).
    private static IEnumerable<(string, string)> StrutsApart(Project project)
    {
        const double leastPitchPerCore = 1.6,
            leastPitchPerWeb = 2.5,
            leastTiedM = 0.024,
            tiedCoreM = 0.008;
        if (project.Cabinet is not { Outside: not null, CoreM: > 0 and { } coreM, OuterSkinM: { } skinM } cabinet || WallsLeaveRoom(project).Any())
        {
            yield break;
        }

        // A strut is as thick as the outer skin.
        var leastM = Math.Max(Math.Max(leastPitchPerCore * coreM, leastPitchPerWeb * skinM), coreM >= tiedCoreM ? leastTiedM : 0);
        if (cabinet.StrutPitchM < leastM * (1 - Rounding))
        {
            yield return (
                "cabinet.strut_pitch",
                $"{Length(cabinet.StrutPitchM)} is too close for a core of {Length(coreM)} and struts of {Length(skinM)}; at least {Length(leastM)}"
            );
        }
    }

    private static IEnumerable<(string, string)> FillOneWay(Project project)
    {
        if (project.Cabinet?.Fill is { MassKg: not null, Factor: not null })
        {
            yield return ("cabinet.fill", "has both mass and factor; one of the two");
        }
    }

    private static IEnumerable<(string, string)> LeakOneWay(Project project)
    {
        if (project.Cabinet?.Leak is not { } leak)
        {
            yield break;
        }

        (string, object?)[] slit = [("gap", leak.GapM), ("length", leak.LengthM), ("depth", leak.DepthM)];
        var stated = Stated(slit);
        if (leak.ResistancePaSM3 is not null && stated.Length > 0)
        {
            yield return ("cabinet.leak", $"has both resistance and {stated}; either resistance, or gap, length and depth");
        }
        else if (stated.Length > 0 && Missing(slit) is { Length: > 0 } missing)
        {
            yield return ("cabinet.leak", $"has {stated} but no {missing}; gap, length and depth together, or resistance");
        }
    }

    private static IEnumerable<(string, string)> PortWhole(Project project)
    {
        if (project.Cabinet?.Port is not { } port)
        {
            yield break;
        }

        if (port.AreaM2 is null == port.DiameterM is null)
        {
            yield return ("cabinet.port", $"has {(port.AreaM2 is null ? "neither area nor" : "both area and")} diameter; one of the two");
        }

        if (port.LengthM is null)
        {
            yield return ("cabinet.port", "has no length; the acoustic length, end corrections included");
        }
    }

    private static IEnumerable<(string, string)> PortOrPassiveRadiator(Project project)
    {
        if (project.Cabinet is { Port: not null, PassiveRadiator: not null })
        {
            yield return ("cabinet.passive_radiator", "is stated together with port; one of the two");
        }
    }

    private static IEnumerable<(string, string)> TerminalFits(Project project)
    {
        if (project.Cabinet is not { Outside: { } outside, Openings.TerminalM: { } terminalM } cabinet || WallM(cabinet) is not { } wallM)
        {
            yield break;
        }

        var insideM = Math.Min(outside.WidthM, outside.HeightM) - 2 * wallM;
        var greatestM = insideM - 2 * TerminalRimM;
        if (insideM > 0 && terminalM > greatestM + Rounding)
        {
            yield return (
                "cabinet.openings.terminal",
                greatestM > 0
                    ? $"{Length(terminalM)} does not fit into the rear with a rim of {Length(TerminalRimM)}; at most {Length(greatestM)}"
                    : $"{Length(terminalM)} does not fit into the rear with a rim of {Length(TerminalRimM)}; a larger cabinet, or no terminal"
            );
        }
    }

    // The terminal stands a quarter up the inside, or as low as its rim allows; the pour opening as far below the top. Between them is the terminal's collar.
    private static IEnumerable<(string, string)> PourOpeningFits(Project project)
    {
        if (project.Cabinet is not { Outside: { } outside, Openings: { PourM: { } pourM } openings, CoreM: > 0 } cabinet || WallM(cabinet) is not { } wallM)
        {
            yield break;
        }

        var (insideM, terminalM) = (outside.HeightM - 2 * wallM, openings.TerminalM ?? 0);
        var upM = wallM + Math.Min(insideM / 2, Math.Max(insideM / 4, terminalM / 2 + OpeningRoomM));
        var apartM = terminalM > 0 ? 2 * (outside.HeightM - 2 * upM) - terminalM - 2 * TerminalCollarM : double.PositiveInfinity;
        var greatestM = Math.Min(apartM, 2 * Math.Min(upM, outside.WidthM / 2) - 2 * cabinet.OuterSkinM ?? 0);
        if (insideM > 0 && pourM > greatestM + Rounding)
        {
            yield return (
                "cabinet.openings.pour",
                greatestM > 0
                    ? $"{Length(pourM)} runs into the terminal or over the edge of the rear; at most {Length(greatestM)}"
                    : $"{Length(pourM)} runs into the terminal; a smaller terminal, or a larger cabinet"
            );
        }
    }

    // The flange is screwed on to what is left: of the outer skin, or of the whole of a single printed wall.
    private static IEnumerable<(string, string)> RecessLeavesSkin(Project project)
    {
        if (project.Cabinet is not { Openings.RecessM: > 0 and { } recessM, OuterSkinM: { } skinM, CoreM: { } coreM } cabinet)
        {
            yield break;
        }

        var (plateM, what) = coreM > 0 ? (skinM, "an outer skin") : (skinM + (cabinet.InnerSkinM ?? 0), "a wall");
        var leftM = Math.Max(LeastUnderFlangeM, LeastLayersUnderFlange * project.Brief.Printer?.LayerM ?? 0);
        var greatestM = plateM - leftM;
        if (recessM > greatestM + Rounding)
        {
            yield return (
                "cabinet.openings.recess",
                $"{Length(recessM)} leaves too little of {what} of {Length(plateM)} under the flange; "
                    + (greatestM > 0 ? $"at most {Length(greatestM)}, so that {Length(leftM)} is left" : $"more than {Length(leftM)} of plastic, or no recess")
            );
        }
    }

    private static double? WallM(Cabinet cabinet) =>
        cabinet.CoreM == 0 ? cabinet.OuterSkinM + (cabinet.InnerSkinM ?? 0) : cabinet.OuterSkinM + cabinet.CoreM + cabinet.InnerSkinM;

    private static string Length(double lengthM) => Units.Write(lengthM, Dimension.Length);

    private static string Stated(params (string Key, object? Value)[] values) => string.Join(", ", values.Where(v => v.Value is not null).Select(v => v.Key));

    private static string Missing(params (string Key, object? Value)[] values) => string.Join(", ", values.Where(v => v.Value is null).Select(v => v.Key));
}
