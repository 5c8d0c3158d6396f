using Stillwall.Projects;

namespace Stillwall.Tests.Projects;

public class ProjectKeysTests
{
    private static readonly Project Bare = new() { FormatVersion = 1 };

    [Fact]
    public void A_value_that_was_set_is_the_value_that_is_got()
    {
        var project = ProjectKeys.With(Bare, "cabinet.strut_pitch", "31 mm");

        Assert.Equal(0.031, ProjectKeys.Get(project, "cabinet.strut_pitch"));
        Assert.Null(Bare.Cabinet);
    }

    [Fact]
    public void A_change_leaves_everything_else_as_it_was()
    {
        var project = ProjectKeys.With(ProjectKeys.With(Bare, "brief.aim.lowest", "32 Hz"), "brief.aim.system_q", "0.8");

        Assert.Equal(
            Bare with
            {
                Brief = Bare.Brief with
                {
                    Aim = new Aim { LowestHz = 32, SystemQ = 0.8 },
                },
            },
            project
        );
    }

    [Theory]
    [InlineData("name", "Alcove", "Alcove")]
    [InlineData("materials.skin", "petg", "petg")]
    [InlineData("cabinet.braces", "2", "2")]
    [InlineData("budget", "420.5", "420.5")]
    [InlineData("pour_date", "2026-11-14", "2026-11-14")]
    [InlineData("limits.heat_margin", "10 K", "10 K")]
    [InlineData("cabinet.leak.resistance", "210000", "210000 Pa*s/m3")]
    [InlineData("cabinet.leak.resistance", "210000 Pa s/m3", "210000 Pa*s/m3")]
    public void A_value_is_written_as_it_was_stated(string key, string text, string written)
    {
        var project = ProjectKeys.With(Bare, key, text);

        Assert.Equal(written, ProjectKeys.Written(ProjectKeys.Find(key)!, ProjectKeys.Get(project, key)!));
    }

    [Fact]
    public void A_place_is_set_by_its_three_coordinates()
    {
        var project = ProjectKeys.With(Bare, "brief.room.seat_at", "2.2 m, 290 cm,1.1m");

        Assert.Equal([2.2, 2.9, 1.1], project.Brief.Room!.SeatAtM!);
        Assert.Contains(
            "2 entries",
            Assert.Throws<ArgumentException>(() => ProjectKeys.With(Bare, "brief.room.seat_at", "2 m, 3 m")).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_driver_is_chosen_by_name_or_written_in_place()
    {
        var named = ProjectKeys.With(Bare, "driver", "Dunlin 8");
        var written = ProjectKeys.With(Bare, "driver.fs", "30 Hz");

        Assert.Equal(new DriverChoice("Dunlin 8", null), named.Driver);
        Assert.Equal(30, written.Driver?.Sheet?.FsHz);
        Assert.Equal(0.475, ProjectKeys.With(written, "driver.qes", "0.475").Driver?.Sheet?.Qes);
        Assert.Equal(30d, ProjectKeys.Get(written, "driver.fs"));
        Assert.Null(ProjectKeys.Get(named, "driver.fs"));
        Assert.Contains("Dunlin 8", Assert.Throws<ArgumentException>(() => ProjectKeys.With(named, "driver.fs", "30 Hz")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cabinet.strut_pich", "31 mm", "did you mean \"cabinet.strut_pitch\"?")]
    [InlineData("cabinet.strut_pitch", "31", "has no unit")]
    [InlineData("cabinet.strut_pitch", "31 m", "is out of range; 10 mm to 1000 mm")]
    [InlineData("cabinet.braces", "1.5", "a whole number")]
    [InlineData("cabinet.outside", "big", "a block")]
    [InlineData("prices", "1", "a list of blocks")]
    [InlineData("display_units", "metrik", "did you mean \"metric\"?")]
    public void What_cannot_be_set_is_refused_with_what_is_accepted(string key, string text, string reason) =>
        Assert.Contains(reason, Assert.Throws<ArgumentException>(() => ProjectKeys.With(Bare, key, text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_value_out_of_a_block_that_is_not_there_is_not_stated() => Assert.Null(ProjectKeys.Get(Bare, "cabinet.outside.width"));

    [Fact]
    public void Asking_for_a_key_that_does_not_exist_is_the_callers_mistake() => Assert.Throws<ArgumentException>(() => ProjectKeys.Get(Bare, "cabin"));

    [Fact]
    public void Every_key_that_is_listed_is_found() => Assert.All(ProjectKeys.AllKeys(), key => Assert.NotNull(ProjectKeys.Find(key)));
}
