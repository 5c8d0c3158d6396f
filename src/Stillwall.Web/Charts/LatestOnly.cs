namespace Stillwall.Web.Charts;

/// <summary>Hands values on one at a time; of those that arrive meanwhile only the latest is handed on.</summary>
/// <param name="deliver">Takes one value and ends when the next may come.</param>
/// <remarks>To be called from one thread at a time, as a page's events are.</remarks>
internal sealed class LatestOnly<T>(Func<T, Task> deliver)
    where T : class
{
    private T? waiting;
    private bool busy;

    internal async Task Offer(T value)
    {
        waiting = value;
        if (busy)
        {
            return;
        }

        busy = true;
        try
        {
            while (waiting is { } next)
            {
                waiting = null;
                await deliver(next);
            }
        }
        finally
        {
            busy = false;
        }
    }
}
