namespace Stillwall.Shapes;

/// <summary>An edge that the sweep line meets; it runs from its lesser to its greater point.</summary>
internal interface ISweepEdge
{
    GridPoint From { get; }

    GridPoint To { get; }
}

/// <summary>The edges that a sweep line meets, from the lowest up.</summary>
internal static class SweepStatus
{
    /// <summary>Where the edges stand that end at a point; all before them run below it. The same place twice where none ends.</summary>
    internal static (int Low, int High) EndingAt<T>(List<T> status, GridPoint v)
        where T : ISweepEdge
    {
        var (low, end) = (0, status.Count);
        while (low < end)
        {
            var middle = (low + end) / 2;
            if (GridPoint.Turn(status[middle].From, status[middle].To, v) > 0)
            {
                low = middle + 1;
            }
            else
            {
                end = middle;
            }
        }

        var high = low;
        while (high < status.Count && status[high].To == v)
        {
            high++;
        }

        return (low, high);
    }

    /// <summary>In the order of a sweep: by where they start, and there from the lowest up.</summary>
    internal static int InOrder(GridPoint fromA, GridPoint toA, GridPoint fromB, GridPoint toB) =>
        fromA != fromB ? fromA.CompareTo(fromB) : -Math.Sign(GridPoint.Turn(fromA, toA, toB));
}
