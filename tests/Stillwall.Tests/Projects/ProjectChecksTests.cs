using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Tests.Projects;

public class ProjectChecksTests
{
    private static readonly Cabinet Sound = new()
    {
        Outside = new Outside
        {
            WidthM = 0.244,
            DepthM = 0.33,
            HeightM = 0.244,
            CornerRadiusM = 0.03,
        },
        OuterSkinM = 0.002,
        CoreM = 0.012,
        InnerSkinM = 0.002,
        Openings = new Openings { TerminalM = 0.055 },
    };

    [Fact]
    public void A_project_of_which_nothing_is_stated_has_no_fault() => Assert.Empty(ProjectChecks.Of(new Project { FormatVersion = 1 }));

    [Fact]
    public void A_sound_cabinet_has_no_fault() => Assert.Empty(Faults(Sound));

    [Fact]
    public void A_single_printed_wall_needs_no_inner_skin() => Assert.Empty(Faults(Sound with { CoreM = 0, InnerSkinM = null }));

    [Fact]
    public void A_wall_without_its_core_stated_is_a_fault() => Assert.Equal(["cabinet.outside"], Faults(Sound with { CoreM = null }));

    // 244 mm less two walls of 16 mm less two rims of 20 mm leaves 172 mm.
    [Theory]
    [InlineData(0.172, true)]
    [InlineData(0.1721, false)]
    public void The_terminal_keeps_a_rim_of_20_mm(double terminalM, bool fits) =>
        Assert.Equal(fits ? [] : ["cabinet.openings.terminal"], Faults(Sound with { Openings = new Openings { TerminalM = terminalM } }));

    // Of 244 mm the wall takes 16 mm and a quarter of the inside 53 mm, so that the centres are 106 mm apart; less the terminal's radius and its
    // collar of 2 mm that is 64 mm.
    [Theory]
    [InlineData(0.080, 0.128, true)]
    [InlineData(0.080, 0.1281, false)]
    [InlineData(0.150, 0.090, false)]
    public void The_pour_opening_keeps_clear_of_the_terminal(double terminalM, double pourM, bool fits) =>
        Assert.Equal(
            fits ? [] : ["cabinet.openings.pour"],
            Faults(
                Sound with
                {
                    Openings = new Openings { TerminalM = terminalM, PourM = pourM },
                }
            )
        );

    [Fact]
    public void An_accepted_pour_opening_and_the_terminal_as_drawn_do_not_overlap() =>
        Gen.Select(Gen.Double[0.02, 0.17], Gen.Double[0.01, 0.2])
            .Sample(
                (terminalM, pourM) =>
                {
                    var cabinet = Sound with
                    {
                        Openings = new Openings { TerminalM = terminalM, PourM = pourM },
                    };
                    var rear = PlateLayout.Rear(CabinetSizes.Of(cabinet, null)!);
                    var (terminal, pour) = (rear.Collars[0], rear.PourOpenings[0]);
                    var clear = pour.ZMm - terminal.ZMm - (terminal.DiameterMm + pour.DiameterMm) / 2;
                    Assert.Equal(clear >= -1e-6 && pour.ZMm + pour.DiameterMm / 2 <= 242 + 1e-6, !Faults(cabinet).Contains("cabinet.openings.pour"));
                }
            );

    [Theory]
    [InlineData(0.122, true)]
    [InlineData(0.1221, false)]
    public void A_corner_is_at_most_a_half_round(double radiusM, bool fits) =>
        Assert.Equal(fits ? [] : ["cabinet.outside.corner_radius"], Faults(Sound with { Outside = Sound.Outside! with { CornerRadiusM = radiusM } }));

    // Struts 1.6 times the core apart, and 24 mm where their heads need room.
    [Theory]
    [InlineData(0.012, 0.024, true)]
    [InlineData(0.012, 0.0239, false)]
    [InlineData(0.020, 0.032, true)]
    [InlineData(0.020, 0.0319, false)]
    [InlineData(0.004, 0.012, true)]
    public void Struts_keep_out_of_one_anothers_way(double coreM, double pitchM, bool fits) =>
        Assert.Equal(fits ? [] : ["cabinet.strut_pitch"], Faults(Sound with { CoreM = coreM, StrutPitchM = pitchM }));

    // Struts are as thick as the outer skin; two and a half times that lie from one to the next.
    [Theory]
    [InlineData(0.02, 0.05, true)]
    [InlineData(0.02, 0.0499, false)]
    public void Thick_struts_leave_room_between_them(double skinM, double pitchM, bool fits) =>
        Assert.Equal(fits ? [] : ["cabinet.strut_pitch"], Faults(Sound with { OuterSkinM = skinM, StrutPitchM = pitchM }));

    [Theory]
    [InlineData(0.001, true)]
    [InlineData(0.00099, false)]
    [InlineData(1e-300, false)]
    [InlineData(0, true)]
    public void A_core_can_be_poured_or_is_none(double coreM, bool can) => Assert.Equal(can ? [] : ["cabinet.core"], Faults(Sound with { CoreM = coreM }));

    [Fact]
    public void A_wall_as_thick_as_half_the_cabinet_leaves_nothing() =>
        Assert.Equal(["cabinet.outside.width", "cabinet.outside.height"], Faults(Sound with { CoreM = 0.118, Openings = null }));

    // 244 mm less two walls of 4 mm of skins and the core.
    [Theory]
    [InlineData(0.11795, true)]
    [InlineData(0.11796, false)]
    [InlineData(0.118 - 1e-17, false)]
    public void An_inside_is_at_least_a_tenth_of_a_millimetre(double coreM, bool leavesOne) =>
        Assert.Equal(
            leavesOne ? [] : ["cabinet.outside.width", "cabinet.outside.height"],
            Faults(Sound with { CoreM = coreM, Openings = null, StrutPitchM = 1 })
        );

    [Fact]
    public void What_rests_on_a_value_that_could_not_be_read_is_not_told()
    {
        var project = new Project { FormatVersion = 1, Cabinet = Sound with { CoreM = null } };

        Assert.Empty(ProjectChecks.Of(project, ["cabinet.core"]));
        Assert.NotEmpty(ProjectChecks.Of(project, ["cabinet.core_of_another_name"]));
    }

    private static IEnumerable<string> Faults(Cabinet cabinet) => ProjectChecks.Of(new Project { FormatVersion = 1, Cabinet = cabinet }).Select(f => f.Path);
}
