using System.Globalization;

namespace Stillwall.Projects;

/// <summary>What is checked of the brief, the limits and the prices.</summary>
public static partial class ProjectChecks
{
    private static IEnumerable<(string, string)> CrossoverAboveLowest(Project project)
    {
        if (project.Brief.Aim is { LowestHz: { } lowestHz, CrossoverHz: { } crossoverHz } && crossoverHz <= lowestHz)
        {
            yield return (
                "brief.aim.crossover",
                $"{Units.Write(crossoverHz, Dimension.Frequency)} is not above the lowest note; more than {Units.Write(lowestHz, Dimension.Frequency)}"
            );
        }
    }

    private static IEnumerable<(string, string)> LeavesStated(Neighbour? neighbour)
    {
        var missing = neighbour switch
        {
            { Partition: "one-leaf" or "two-leaves", LeafKgM2: null } => "leaf",
            { Partition: "two-leaves", SecondLeafKgM2: null } => "second_leaf",
            { Partition: "two-leaves", GapM: null } => "gap",
            _ => null,
        };
        if (missing is not null)
        {
            yield return ("brief.neighbour.partition", $"is \"{neighbour!.Partition}\" but {missing} is not stated; {missing} beside it, or another word");
        }
    }

    private static IEnumerable<(string, string)> Own(string path, string? word, string key, object? own)
    {
        if (word == "own" && own is null)
        {
            yield return (path, $"is \"own\" but {key} is not stated; {key} beside it, or another word");
        }
    }

    private static IEnumerable<(string, string)> InRoom(Room? room, string key, IReadOnlyList<double>? at, string block = "room")
    {
        if (room is null || at is not { Count: 3 })
        {
            yield break;
        }

        double?[] sizesM = [room.WidthM, room.LengthM, room.HeightM];
        for (var axis = 0; axis < 3; axis++)
        {
            if (sizesM[axis] is { } sizeM && at[axis] > sizeM)
            {
                yield return (
                    $"brief.{block}.{key}[{axis.ToString(CultureInfo.InvariantCulture)}]",
                    $"{Length(at[axis])} is outside the room; 0 mm to {Length(sizeM)}"
                );
            }
        }
    }

    private static IEnumerable<(string, string)> FillDensitiesInOrder(Project project)
    {
        if (project.Limits.FillDensityLowKgM3 > project.Limits.FillDensityHighKgM3)
        {
            yield return (
                "limits.fill_density_low",
                $"is above fill_density_high; at most {Units.Write(project.Limits.FillDensityHighKgM3, Dimension.Density)}"
            );
        }
    }

    private static IEnumerable<(string, string)> PricesNamedOnce(Project project)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (price, index) in (project.Prices ?? []).Select((price, index) => (price, index)))
        {
            if (price.Item is { } item && !seen.Add(item))
            {
                yield return (
                    $"prices[{index.ToString(CultureInfo.InvariantCulture)}].item",
                    $"{ModelField.Shorten(price.Item, false)} has a price already; each item once"
                );
            }
        }
    }

    // A price for nothing gives no price for anything.
    private static IEnumerable<(string, string)> PricesForSomething(Project project) =>
        (project.Prices ?? [])
            .Select((price, index) => (price.Per, index))
            .Where(entry => entry.Per.Value < LeastPriced)
            .Select(entry => ($"prices[{entry.index.ToString(CultureInfo.InvariantCulture)}].per", "is next to nothing; an amount of more than a millionth"));
}
