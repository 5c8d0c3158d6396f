using Stillwall.Web.Viewer;

namespace Stillwall.Web.Tests.Viewer;

/// <summary>What was asked for last is kept, what was asked for long ago is made again.</summary>
public sealed class LatestFewTests
{
    [Fact]
    public void A_value_is_made_once_until_others_have_pushed_it_out()
    {
        var (few, made) = (new LatestFew<string, string>(2), new List<string>());
        string Get(string key) =>
            few.Get(
                key,
                () =>
                {
                    made.Add(key);
                    return key.ToUpperInvariant();
                }
            );
        Assert.All(new[] { "a", "b", "a", "b", "a", "c", "a", "b" }, key => Assert.Equal(key.ToUpperInvariant(), Get(key)));
        Assert.Equal(["a", "b", "c", "b"], made);
    }
}
