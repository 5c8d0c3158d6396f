using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Settles what values exclude or need of one another, so that a drawn project is accepted; at the very limit where there is one.</summary>
internal static class Mended
{
    // A quantity is written with twelve figures: just past a limit that was computed from other quantities.
    private const double Above = 1 + 1e-10,
        Below = 1 - 1e-10;

    private static readonly string[] Walls = ["outside", "outer_skin", "core", "inner_skin"];

    internal static Project Of(Project project, Dice dice)
    {
        for (var round = 0; round < 60; round++)
        {
            if (ProjectChecks.Of(project).Select(f => f.Path).FirstOrDefault() is not { } path)
            {
                return project;
            }

            project = Mend(project, path, dice, round);
        }

        throw new InvalidOperationException($"still not accepted: {ProjectChecks.Of(project).First()}");
    }

    private static Project Mend(Project project, string path, Dice dice, int round) =>
        path switch
        {
            "cabinet.net_volume" => dice.Falls(0.8) ? Set(project, path, null) : Walls.Aggregate(project, (p, key) => Set(p, $"cabinet.{key}", null)),
            "cabinet.outside" => Stated(project, dice),
            "cabinet.outside.corner_radius" => Set(project, path, Math.Min(project.Cabinet!.Outside!.WidthM, project.Cabinet.Outside.HeightM) / 2 * Below),
            "cabinet.braces" => Set(project, path, 0),
            "cabinet.strut_pitch" => Set(
                project,
                path,
                dice.Falls(0.5) ? 1.0 : Math.Max(Math.Max(1.6 * project.Cabinet!.CoreM!.Value, 2.5 * project.Cabinet.OuterSkinM!.Value) * Above, 0.024)
            ),
            "cabinet.core" => Set(project, path, 0.001),
            "cabinet.fill" => Set(project, dice.Falls(0.5) ? "cabinet.fill.mass" : "cabinet.fill.factor", null),
            "cabinet.leak" => Leak(project, dice),
            "cabinet.port" => Port(project, dice),
            "cabinet.passive_radiator" => Set(project, dice.Falls(0.5) ? "cabinet.passive_radiator" : "cabinet.port", null),
            "cabinet.openings.terminal" or "cabinet.openings.pour" or "cabinet.openings.recess" => Set(project, path, null),
            "brief.aim.crossover" => Set(project, path, dice.Falls(0.5) ? 1000.0 : Math.Max(20, project.Brief.Aim!.LowestHz!.Value * Above)),
            "limits.fill_density_low" => Set(project, path, project.Limits.FillDensityHighKgM3),
            _ when path.StartsWith("cabinet.outside.", StringComparison.Ordinal) => round < 20 ? Set(project, path, 2.0) : Thin(project),
            _ when path.StartsWith("prices[", StringComparison.Ordinal) => Set(project, "prices", null),
            _ when path.EndsWith(']') => InRoom(project, path[..path.IndexOf('[', StringComparison.Ordinal)]),
            _ => Set(project, path, ProjectKeys.Find(path)!.Words[0]),
        };

    private static Project Stated(Project project, Dice dice)
    {
        double[] thicknessesM = [0.0003, 0.002, 0.05];
        project = project.Cabinet!.OuterSkinM is null ? Set(project, "cabinet.outer_skin", dice.Pick(thicknessesM)) : project;
        project = project.Cabinet!.CoreM is null ? Set(project, "cabinet.core", dice.Pick([0, 1e-9, 0.001, 0.012])) : project;
        return project.Cabinet!.InnerSkinM is null ? Set(project, "cabinet.inner_skin", dice.Pick(thicknessesM)) : project;
    }

    private static Project Thin(Project project) => Set(Set(Set(project, "cabinet.outer_skin", 0.0003), "cabinet.core", 0.001), "cabinet.inner_skin", 0.0003);

    private static Project Leak(Project project, Dice dice)
    {
        var leak = project.Cabinet!.Leak!;
        return leak.ResistancePaSM3 is null || dice.Falls(0.5)
            ? Set(
                project,
                "cabinet.leak",
                new Leak
                {
                    GapM = leak.GapM ?? 0.0002,
                    LengthM = leak.LengthM ?? 1e-4,
                    DepthM = leak.DepthM ?? 0.5,
                }
            )
            : Set(project, "cabinet.leak", new Leak { ResistancePaSM3 = leak.ResistancePaSM3 });
    }

    private static Project Port(Project project, Dice dice)
    {
        var port = project.Cabinet!.Port!;
        var isRound = port.AreaM2 is null || (port.DiameterM is not null && dice.Falls(0.5));
        return Set(
            project,
            "cabinet.port",
            port with
            {
                AreaM2 = isRound ? null : port.AreaM2,
                DiameterM = isRound ? port.DiameterM ?? 0.003 : null,
                LengthM = port.LengthM ?? dice.Pick([0.001, 5]),
            }
        );
    }

    private static Project InRoom(Project project, string path)
    {
        var room = project.Brief.Room!;
        double[] sizesM = [room.WidthM ?? 100, room.LengthM ?? 100, room.HeightM ?? 100];
        var atM = (IReadOnlyList<double>)ProjectKeys.Get(project, path)!;
        return Set(project, path, atM.Select((m, axis) => Math.Min(m, sizesM[axis])).ToArray());
    }

    private static Project Set(Project project, string path, object? value) => (Project)Set(project, path.Split('.'), value)!;

    private static object? Set(object record, ReadOnlySpan<string> path, object? value)
    {
        var block = ModelBlock.Of(record.GetType());
        var field = block.Find(path[0]) ?? throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"no key {path[0]}"));
        return block.With(record, field, path.Length == 1 ? value : Set(field.Property.GetValue(record)!, path[1..], value));
    }
}
