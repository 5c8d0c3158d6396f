using Stillwall.Web.Charts;

namespace Stillwall.Web.Tests.Charts;

/// <summary>While one value is being painted, only the latest waits.</summary>
public sealed class LatestOnlyTests
{
    [Fact]
    public async Task Of_those_that_arrive_while_one_is_delivered_only_the_latest_follows()
    {
        var (delivered, gates) = (new List<string>(), new Queue<TaskCompletionSource>());
        var latest = new LatestOnly<string>(value =>
        {
            delivered.Add(value);
            gates.Enqueue(new TaskCompletionSource());
            return gates.Peek().Task;
        });
        var first = latest.Offer("one");
        Assert.All(new[] { "two", "three", "four" }, value => Assert.True(latest.Offer(value).IsCompleted));
        gates.Dequeue().SetResult();
        gates.Dequeue().SetResult();
        await first;
        Assert.Equal(["one", "four"], delivered);
    }

    [Fact]
    public async Task A_delivery_that_fails_does_not_keep_the_next_one_out()
    {
        var (delivered, fails) = (new List<string>(), true);
        var latest = new LatestOnly<string>(value =>
        {
            delivered.Add(value);
            return fails ? Task.FromException(new InvalidOperationException()) : Task.CompletedTask;
        });
        await Assert.ThrowsAsync<InvalidOperationException>(() => latest.Offer("one"));
        fails = false;
        await latest.Offer("two");
        Assert.Equal(["one", "two"], delivered);
    }
}
