using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>Where a view lies on the paper.</summary>
/// <param name="LeftMm">Where the left end of the thing is drawn, mm.</param>
/// <param name="BottomMm">Where its lower end is drawn, mm from the top of the paper.</param>
/// <param name="ScaleRatio">Length on the paper over length of the thing.</param>
internal sealed record SheetView(double LeftMm, double BottomMm, double ScaleRatio, (double Left, double Bottom, double Right, double Top) Box)
{
    internal double RightMm => X(Box.Right);

    internal double TopMm => Y(Box.Top);

    internal double X(double u) => LeftMm + (u - Box.Left) * ScaleRatio;

    internal double Y(double v) => BottomMm - (v - Box.Bottom) * ScaleRatio;

    internal double U(double x) => Box.Left + (x - LeftMm) / ScaleRatio;

    internal double V(double y) => Box.Bottom + (BottomMm - y) / ScaleRatio;

    internal SheetPoint At(double u, double v) => new(X(u), Y(v));

    /// <summary>The rings of a region on the paper; corners that matter less than a hundredth of a millimetre there are left out.</summary>
    internal IReadOnlyList<IReadOnlyList<SheetPoint>> Rings(Region region) =>
        [.. region.Rings.Select(ring => (IReadOnlyList<SheetPoint>)[.. ring.Select(p => At(p.X.OffGrid(), p.Y.OffGrid()))])];

    /// <summary>Seen lines on the paper, ends that meet put together.</summary>
    internal IReadOnlyList<IReadOnlyList<SheetPoint>> Chained(IEnumerable<SeenLine> lines) =>
        LineChains.Of(lines.Select(l => (At(l.FromU, l.FromV), At(l.ToU, l.ToV))));
}

/// <summary>Puts short lines together where their ends meet.</summary>
internal static class LineChains
{
    private const double Grid = 100;

    internal static IReadOnlyList<IReadOnlyList<SheetPoint>> Of(IEnumerable<(SheetPoint From, SheetPoint To)> lines)
    {
        var different = new List<(SheetPoint From, SheetPoint To)>();
        var known = new HashSet<((long, long), (long, long))>();
        foreach (var line in lines)
        {
            var (a, b) = (Key(line.From), Key(line.To));
            if (a != b && known.Add(a.CompareTo(b) < 0 ? (a, b) : (b, a)))
            {
                different.Add(line);
            }
        }

        var ends = new Dictionary<(long, long), List<int>>();
        for (var i = 0; i < different.Count; i++)
        {
            foreach (var key in new[] { Key(different[i].From), Key(different[i].To) })
            {
                ends.TryAdd(key, []);
                ends[key].Add(i);
            }
        }

        var used = new bool[different.Count];
        var chains = new List<IReadOnlyList<SheetPoint>>();
        for (var i = 0; i < different.Count; i++)
        {
            if (!used[i])
            {
                used[i] = true;
                var chain = new LinkedList<SheetPoint>([different[i].From, different[i].To]);
                while (Next(chain.Last!.Value) is { } next)
                {
                    chain.AddLast(next);
                }

                while (Next(chain.First!.Value) is { } next)
                {
                    chain.AddFirst(next);
                }

                chains.Add([.. chain]);
            }
        }

        return chains;

        SheetPoint? Next(SheetPoint at)
        {
            foreach (var i in ends[Key(at)].Where(i => !used[i]))
            {
                used[i] = true;
                return Key(different[i].From) == Key(at) ? different[i].To : different[i].From;
            }

            return null;
        }
    }

    private static (long, long) Key(SheetPoint p) => ((long)Math.Round(p.XMm * Grid), (long)Math.Round(p.YMm * Grid));
}
