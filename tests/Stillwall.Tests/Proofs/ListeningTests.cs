using Stillwall.Projects;
using Stillwall.Proofs;

namespace Stillwall.Tests.Proofs;

public sealed class ListeningTests
{
    [Fact]
    public void Without_an_entry_nobody_has_listened() => Assert.Null(Listening.Of([Entry(1, "weigh-in"), Entry(2, "proof")]));

    [Fact]
    public void The_last_entry_about_a_part_counts()
    {
        Assert.Equal(["rear", "grille"], Rattling(Entry(1, "rattle", "rear"), Entry(1, "rattle", "grille")));
        Assert.Equal(["grille"], Rattling(Entry(2, "no rattle", "rear"), Entry(1, "rattle", "rear"), Entry(1, "rattle", "grille")));
        Assert.Equal(["rear"], Rattling(Entry(3, "rattle", "Rear"), Entry(2, "no rattle", "rear")), StringComparer.OrdinalIgnoreCase);
    }

    [Fact]
    public void That_nothing_rattles_clears_the_whole_cabinet()
    {
        Assert.Empty(Rattling(Entry(1, "rattle", "rear"), Entry(2, "No rattle")));
        Assert.Empty(Rattling(Entry(1, "rattle", "rear"), Entry(2, "no rattle", "cabinet")));
    }

    [Fact]
    public void Of_two_entries_of_one_day_the_later_in_the_list_counts() => Assert.Equal(["cabinet"], Rattling(Entry(1, "no rattle"), Entry(1, "rattle")));

    [Fact]
    public void A_part_that_rattles_twice_is_told_once_with_the_last_day()
    {
        var heard = Listening.Of([Entry(1, "rattle", "rear"), Entry(5, "rattle", "rear")])!;
        Assert.Single(heard.Rattling);
        Assert.Equal(new DateOnly(2026, 12, 5), heard.Last);
    }

    private static IReadOnlyList<string> Rattling(params LogEntry[] logbook) => Listening.Of(logbook)!.Rattling;

    private static LogEntry Entry(int day, string kind, string? part = null) =>
        new()
        {
            Date = new DateOnly(2026, 12, day),
            Kind = kind,
            Part = part,
        };
}
