using System.Text.Json;
using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.Ranking;
using Stillwall.Cabinets;
using Stillwall.Figures;
using Stillwall.Neighbours;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Figures;

public sealed class ChartDataTests
{
    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All);

    [Fact]
    public void The_response_is_the_second_order_high_pass_of_the_boxs_own_resonance_and_q()
    {
        // Small 1972, JAES 20(10), written out anew: |H|² = x⁴/[(x² − 1)² + x²/Q²] with x = f/fc.
        var line = MainLine(ResponseCharts.HowLow(Demo)!);
        var (fc, q) = (Demo.Box.SystemResonanceHz!.Value, Demo.Box.SystemQ!.Value);
        Assert.All(
            line,
            p =>
            {
                var x = p.X / fc;
                Assert.Equal(10 * Math.Log10(Math.Pow(x, 4) / (Math.Pow((x * x) - 1, 2) + Math.Pow(x / q, 2))), p.Y, 0.001);
            }
        );
    }

    [Fact]
    public void In_inch_the_cone_moves_in_inches()
    {
        var inch = ResponseCharts.HowFar(new Facts(DemoProject.Project with { DisplayUnits = DisplayUnits.Inch }, DemoDrivers.All))!;
        Assert.Equal("in", inch.Up.Unit);
        Assert.All(MainLine(inch).Zip(MainLine(ResponseCharts.HowFar(Demo)!)), pair => Assert.Equal(pair.Second.Y / 25.4, pair.First.Y, 1e-9));
        Assert.Contains(" in ", inch.Answer, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "mm",
            inch.Answer + string.Concat(inch.Limits.Select(l => l.Name)) + string.Concat(inch.Landmarks.Select(l => l.Label)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_marks_at_3_and_10_decibels_lie_on_the_line()
    {
        var chart = ResponseCharts.HowLow(Demo)!;
        Assert.Equal(2, chart.Landmarks.Count);
        Assert.All(chart.Landmarks, l => Assert.Equal(At(MainLine(chart), l.At.X), l.At.Y, 0.02));
        Assert.Equal(-10, chart.Landmarks[0].At.Y);
        Assert.Equal(-3.0103, chart.Landmarks[1].At.Y, 0.0001);
    }

    [Fact]
    public void The_band_of_drivers_holds_the_line_and_is_widest_where_the_suspension_rules()
    {
        var band = ResponseCharts.HowLow(Demo)!.Series.Single(s => s.Role == StyleRole.Band);
        var line = MainLine(ResponseCharts.HowLow(Demo)!);
        Assert.All(band.Points.Zip(band.UpperPoints), e => Assert.InRange(At(line, e.First.X), e.First.Y, e.Second.Y));
        double Width(int k) => band.UpperPoints[k].Y - band.Points[k].Y;
        Assert.True(Width(0) > Width(band.Points.Count - 1));
    }

    [Fact]
    public void The_former_state_is_a_pencil_line_that_starts_lower_for_a_smaller_box()
    {
        var cabinet = DemoProject.Project.Cabinet!;
        var smaller = Demo.With(
            DemoProject.Project with
            {
                Cabinet = cabinet with { Outside = cabinet.Outside! with { DepthM = cabinet.Outside.DepthM - 0.05 } },
            }
        );
        var chart = ResponseCharts.HowLow(Demo, smaller)!;
        var pencil = chart.Series.Single(s => s.Role == StyleRole.Pencil);
        Assert.True(pencil.Points[0].Y < MainLine(chart)[0].Y - 0.5);
        Assert.DoesNotContain(ResponseCharts.HowLow(Demo)!.Series, s => s.Role == StyleRole.Pencil);
    }

    [Fact]
    public void The_lines_of_the_greatest_level_meet_where_another_limit_takes_over()
    {
        var runs = ResponseCharts.HowLoud(Demo)!.Series.Where(s => s.Role == StyleRole.Main).ToList();
        Assert.True(runs.Count >= 2);
        Assert.All(runs.Zip(runs.Skip(1)), pair => Assert.Equal(pair.First.Points[^1], pair.Second.Points[0]));
        Assert.Equal(10, runs[0].Points[0].X, 1e-9);
        Assert.Equal(500, runs[^1].Points[^1].X, 1e-6);
    }

    [Fact]
    public void Where_the_cone_gives_out_its_level_rises_by_forty_decibels_a_decade()
    {
        // Constant excursion: pressure goes with acceleration, so with the square of the frequency, in any closed box.
        var project = DemoProject.Project with
        {
            Brief = DemoProject.Project.Brief with
            {
                Amplifier = new Amplifier { PowerW = 20000, RatedLoadOhm = 4 },
            },
            Cabinet = DemoProject.Project.Cabinet! with { Leak = null },
        };
        var sheet = DemoDrivers.All.Single(d => d.Name == "Dunlin 8") with { PowerW = 20000 };
        var run = ResponseCharts.HowLoud(new Facts(project with { Driver = new DriverChoice(null, sheet) }, []))!.Series.First(s => s.Role == StyleRole.Main);
        Assert.Contains("excursion", run.Name, StringComparison.Ordinal);
        Assert.Equal(40 * Math.Log10(run.Points[^1].X / run.Points[0].X), run.Points[^1].Y - run.Points[0].Y, 0.001);
    }

    [Fact]
    public void The_marks_of_loudness_are_the_appraisals_own_numbers_on_their_lines()
    {
        var chart = ResponseCharts.HowLoud(Demo)!;
        var lowest = DemoProject.Project.Brief.Aim!.LowestHz!.Value;
        Assert.Equal([Demo.Box.MaxSplAtLowestDb!.Value, Demo.Box.MaxSplAtSeatDb!.Value], chart.Landmarks.Select(l => l.At.Y));
        Assert.Equal(chart.Landmarks[0].At.Y, At(chart.Series.Last(s => s.Role == StyleRole.Main).Points, lowest), 0.05);
        Assert.Equal(chart.Landmarks[1].At.Y, At(chart.Series.Single(s => s.Role == StyleRole.Second).Points, lowest), 0.05);
    }

    [Fact]
    public void Excursion_and_level_tell_the_same_story_of_where_the_cone_gives_out()
    {
        // Two ways to one frequency: excursion at full voltage against Xmax, and the change of the limit that sets the greatest level.
        var far = MainLine(ResponseCharts.HowFar(Demo)!);
        var past = far.Last(p => p.Y > Demo.Driver!.XmaxM * 1e3).X;
        var change = ResponseCharts.HowLoud(Demo)!.Series.First(s => s.Role == StyleRole.Main).Points[^1].X;
        Assert.Equal(past, change, 0.5);
    }

    [Fact]
    public void The_impedance_falls_to_the_appraisals_minimum_and_never_under_it()
    {
        var chart = ResponseCharts.WhatTheAmplifierFeels(Demo)!;
        Assert.Equal(Demo.Box.MinimumImpedanceOhm!.Value, MainLine(chart).Min(p => p.Y), 0.001);
        Assert.Equal(3.2, Assert.Single(chart.Limits).Edge[0].Y);
    }

    [Fact]
    public void Without_a_driver_nothing_is_drawn_of_it_and_without_an_aim_there_is_no_limit()
    {
        Assert.Empty(ResponseCharts.All(new Facts(DemoProject.Project with { Driver = null }, [])));
        var aimless = new Facts(DemoProject.Project with { Brief = DemoProject.Project.Brief with { Aim = null, Amplifier = null } }, DemoDrivers.All);
        Assert.Empty(ResponseCharts.HowLow(aimless)!.Limits);
        Assert.Null(ResponseCharts.HowLoud(aimless));
        Assert.Null(ResponseCharts.HowFar(aimless));
        Assert.Empty(ResponseCharts.WhatTheAmplifierFeels(aimless)!.Limits);
    }

    [Fact]
    public void Every_cabinet_gives_charts_of_finite_numbers_within_their_axes()
    {
        Gen.Select(Gen.Double[2e-3, 0.2], Gen.Int[0, DemoDrivers.All.Count - 1], Gen.Double[15, 80])
            .Sample(
                (volume, driver, lowest) =>
                {
                    var project = DemoProject.Project with
                    {
                        Driver = new DriverChoice(DemoDrivers.All[driver].Name, null),
                        Cabinet = new Cabinet { NetVolumeM3 = volume },
                        Brief = DemoProject.Project.Brief with { Aim = DemoProject.Project.Brief.Aim! with { LowestHz = lowest } },
                    };
                    foreach (var chart in ResponseCharts.All(new Facts(project, DemoDrivers.All)))
                    {
                        Assert.True(chart.Up.Low < chart.Up.High && chart.Across.Low < chart.Across.High);
                        Assert.All(
                            chart.Series.SelectMany(s => s.Points.Concat(s.UpperPoints)),
                            p => Assert.True(double.IsFinite(p.X) && double.IsFinite(p.Y) && p.Y <= chart.Up.High)
                        );
                        Assert.All(chart.Limits.SelectMany(l => l.Region), p => Assert.InRange(p.Y, chart.Up.Low - 1e-9, chart.Up.High + 1e-9));
                        Assert.All(chart.Table.Rows, r => Assert.Equal(chart.Table.Columns.Count, r.Count));
                        Assert.All(chart.Across.Ticks, t => Assert.InRange(t, chart.Across.Low, chart.Across.High));
                    }
                },
                iter: 12,
                threads: 1
            );
    }

    [Fact]
    public void The_neighbours_bars_and_curve_are_the_bands_numbers()
    {
        var chart = NeighbourChart.Of(Demo.Quiet)!;
        Assert.Equal(Demo.Quiet.Bands.Select(b => b.NeighbourDb!.Value), chart.Series[0].Points.Select(p => p.Y));
        Assert.Equal(Demo.Quiet.Bands.SelectMany(b => new[] { b.CurveDb!.Value, b.CurveDb!.Value }), Assert.Single(chart.Limits).Edge.Select(p => p.Y));
        Assert.All(
            chart.Series[1].Points.Zip(chart.Series[1].UpperPoints).Zip(Demo.Quiet.Bands),
            p => Assert.Equal(2 * p.Second.UncertaintyDb!.Value, p.First.Second.Y - p.First.First.Y, 1e-9)
        );
    }

    [Fact]
    public void Third_octaves_join_without_a_gap_about_the_exact_middles_of_the_standard()
    {
        // IEC 61260-1, base ten: 31.5 Hz stands for 31.623 Hz, edges 28.184 and 35.481 Hz.
        var edge = NeighbourChart.Of(Demo.Quiet)!.Limits[0].Edge;
        Assert.Equal((28.184, 35.481), (Math.Round(edge[4].X, 3), Math.Round(edge[5].X, 3)));
        Assert.All(Enumerable.Range(1, 9), k => Assert.Equal(edge[(2 * k) - 1].X, edge[2 * k].X, 1e-9));
    }

    [Fact]
    public void A_vented_box_answers_from_its_own_line_not_from_the_closed_boxs_formula()
    {
        // Below its tuning a vented box falls by 24 dB an octave, a closed one by 12 (Small 1973, JAES 21(5)): 10 and 15 Hz lie well under 40 Hz.
        var vented = new Facts(
            DemoProject.Project with
            {
                Cabinet = new Cabinet
                {
                    NetVolumeM3 = 0.03,
                    Port = new Port { DiameterM = 0.07, LengthM = 0.15 },
                },
            },
            DemoDrivers.All
        );
        var chart = ResponseCharts.HowLow(vented)!;
        Assert.Empty(chart.Landmarks);
        Assert.InRange((At(MainLine(chart), 15) - At(MainLine(chart), 10)) / Math.Log2(1.5), 22, 29);
        var said = double.Parse(chart.Answer.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(-10, At(MainLine(chart), said), 0.2);
    }

    [Fact]
    public void The_result_behind_every_answer_and_line_is_there()
    {
        var ofCurve = typeof(CurvePoint).GetProperties().Select(p => $"curve.{JsonNamingPolicy.SnakeCaseLower.ConvertName(p.Name)}").ToList();
        Chart[] charts = [.. ResponseCharts.All(Demo), WallSoundChart.Of(Demo)!, WarmthChart.Of(Demo)!];
        Assert.All(
            charts.SelectMany(c => new[] { c.AnswerFrom, c.LineFrom }),
            of => Assert.True(ofCurve.Contains(of) || Why.Of(Demo, of).Value is not null, of)
        );
    }

    [Fact]
    public void No_band_no_picture()
    {
        var nothing = new Quiet([new QuietBand(20, null, null, null, null, null, null, null)], null, null, null, null, null, null, null, ["brief.room"]);
        Assert.Null(NeighbourChart.Of(nothing));
    }

    [Fact]
    public void The_front_steps_up_from_the_cheapest_to_the_loudest_and_leaves_no_driver_out_of_the_table()
    {
        static RankedDriver Ranked(string name, double? price, double levelDb, Verdict verdict, bool front) =>
            new(name, verdict, [], [], [], null, null, null, null, levelDb, null, price, front);
        RankedDriver[] drivers =
        [
            Ranked("Knot", 90, 92, Verdict.Holds, true),
            Ranked("Ruff", 50, 88, Verdict.Tight, true),
            Ranked("Stint", 95, 91, Verdict.Holds, false),
            Ranked("Smew", null, 99, Verdict.Unknown, false),
            Ranked("Garganey", 70, 95, Verdict.Fails, false),
        ];
        var chart = BestBuyChart.Of(drivers, Show.Of(DemoProject.Project), 90)!;
        Assert.Equal([new ChartPoint(50, 88), new ChartPoint(90, 88), new ChartPoint(90, 92)], chart.Series[0].Points);
        Assert.Equal(["Knot", "Ruff", "Stint", ""], chart.Landmarks.Select(l => l.Label));
        Assert.Equal(["Knot", "Ruff", "Stint", "Garganey"], chart.Landmarks.Select(l => l.Name));
        Assert.Equal(5, chart.Table.Rows.Count);
        Assert.Equal(LandmarkMark.Fails, chart.Landmarks[3].Mark);
        Assert.Contains("Ruff, 88.0 dB for 50 EUR, up to Knot, 92.0 dB for 90 EUR", chart.Answer, StringComparison.Ordinal);
        Assert.Contains("1 without a price or a level is not drawn", chart.Answer, StringComparison.Ordinal);
        Assert.Null(BestBuyChart.Of([], Show.Of(DemoProject.Project)));
    }

    private static IReadOnlyList<ChartPoint> MainLine(Chart chart) => chart.Series.Last(s => s.Role == StyleRole.Main).Points;

    private static double At(IReadOnlyList<ChartPoint> line, double x)
    {
        var k = Enumerable.Range(1, line.Count - 1).First(i => line[i].X >= x || i == line.Count - 1);
        return line[k - 1].Y + ((line[k].Y - line[k - 1].Y) * (x - line[k - 1].X) / (line[k].X - line[k - 1].X));
    }
}
