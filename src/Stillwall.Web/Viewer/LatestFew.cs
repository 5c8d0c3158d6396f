namespace Stillwall.Web.Viewer;

/// <summary>Keeps the values of the keys that were asked for last; each is made once, even when several ask at a time.</summary>
internal sealed class LatestFew<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly Lock gate = new();
    private readonly List<(TKey Key, Lazy<TValue> Value)> kept = [];

    internal TValue Get(TKey key, Func<TValue> make)
    {
        Lazy<TValue> value;
        lock (gate)
        {
            var at = kept.FindIndex(k => k.Key.Equals(key));
            value = at < 0 ? new Lazy<TValue>(make) : kept[at].Value;
            if (at >= 0)
            {
                kept.RemoveAt(at);
            }

            kept.Insert(0, (key, value));
            kept.RemoveRange(Math.Min(most, kept.Count), Math.Max(0, kept.Count - most));
        }

        return value.Value;
    }
}
