using System.Globalization;
using System.Text;
using Stillwall.Files.Tables;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Tables;

public class DriverTableTests
{
    private const string Header = "name,re_ohm,fs_hz,qms,qes,vas_l,sd_cm2";
    private const string Row = "Wren,3.4,52,4.2,0.42,5.2,85";

    // They stand in the demo so that a contradiction can be seen; its README names them.
    private static readonly string[] Odd = ["Coot 8", "Smew 8", "Ruff 6"];

    private static readonly DriverTable Demo = DriverTable.Read(File.ReadAllBytes(TestData.Demo("drivers.csv")));

    [Fact]
    public void A_table_as_wide_or_as_long_as_no_table_of_drivers_is_refused_in_one_line()
    {
        Assert.Contains(
            "at most 100",
            Assert.Single(DriverTable.Read(string.Join(',', Enumerable.Repeat("name", 200_000))).AllFaults).Message,
            StringComparison.Ordinal
        );
        Assert.Contains("at most 16 MB", Assert.Single(DriverTable.Read(new byte[DriverTable.GreatestLength + 1]).AllFaults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_has_forty_eight_drivers_and_no_fault()
    {
        Assert.Empty(Demo.AllFaults);
        Assert.Equal(48, Demo.Rows.Count);
        Assert.Equal(Enumerable.Range(2, 48), Demo.Rows.Select(r => r.Line));
    }

    [Fact]
    public void The_driver_to_start_from_is_read_cell_by_cell() =>
        Assert.Equal(
            new DriverSheet
            {
                Name = "Dunlin 8",
                DiameterM = 0.2,
                ReOhm = 3.55,
                LeH = 0.0012,
                FsHz = 30,
                Qms = 5.5,
                Qes = 0.475,
                Qts = 0.437,
                VasM3 = 0.024,
                SdM2 = 0.0214,
                XmaxM = 0.012,
                BlTM = 10.4,
                MmsKg = 0.07617,
                PowerW = 200,
                DepthM = 0.13,
                CutoutM = 0.186,
                FlangeM = 0.222,
                FlangeThicknessM = 0.006,
                MagnetDiameterM = 0.12,
                BoltCircleM = 0.209,
                Bolts = 8,
                BoltM = 0.005,
                DisplacementM3 = 0.00125,
                MassKg = 3.1,
                Price = 119,
            },
            Demo.Rows.Single(r => r.Sheet.Name == "Dunlin 8").Sheet
        );

    // IEC 60268-5: Cms = Vas/(ρc²Sd²), Mms = 1/((2πfs)²Cms), Bl = √(2πfs·Mms·Re/Qes), Qts = Qms·Qes/(Qms + Qes).
    [Fact]
    public void The_drivers_of_the_demo_agree_with_themselves_within_one_per_cent_but_for_three() =>
        Assert.All(
            Demo.Rows.Select(r => r.Sheet).Where(d => !Odd.Contains(d.Name)),
            d =>
            {
                var omega = 2 * Math.PI * d.FsHz!.Value;
                var complianceMPerN = d.VasM3!.Value / (Air.Reference.BulkModulusPa * d.SdM2!.Value * d.SdM2.Value);
                var massKg = 1 / (omega * omega * complianceMPerN);

                Assert.Equal(massKg, d.MmsKg!.Value, 0.01 * massKg);
                Assert.Equal(Math.Sqrt(omega * massKg * d.ReOhm!.Value / d.Qes!.Value), d.BlTM!.Value, 0.01 * d.BlTM.Value);
                Assert.Equal(d.Qms!.Value * d.Qes.Value / (d.Qms.Value + d.Qes.Value), d.Qts!.Value, 0.01 * d.Qts.Value);
                Assert.InRange(d.BlTM.Value, 5, 26);
                Assert.True(d.CutoutM < d.BoltCircleM && d.BoltCircleM < d.FlangeM && d.MagnetDiameterM < d.CutoutM, d.Name);
            }
        );

    [Theory]
    [InlineData("Coot 8", "bl", 0.22)]
    [InlineData("Smew 8", "mms", -0.18)]
    [InlineData("Ruff 6", "qts", 0.17)]
    public void Three_drivers_of_the_demo_contradict_themselves_in_one_printed_figure_each(string name, string parameter, double deviation)
    {
        var mismatches = Stillwall.Drivers.DriverResolver.Resolve(Demo.Rows.Single(r => r.Sheet.Name == name).Sheet).Mismatches;

        Assert.Equal(deviation, mismatches.Single(m => m.Parameter == parameter).DeviationRatio, 0.01);
        Assert.All(mismatches.Where(m => m.Parameter != parameter), m => Assert.InRange(m.DeviationRatio, -0.01, 0.01));
    }

    [Fact]
    public void The_order_of_the_columns_changes_nothing()
    {
        var turned = string.Join(
            '\n',
            File.ReadAllText(TestData.Demo("drivers.csv")).TrimEnd('\n').Split('\n').Select(line => string.Join(',', line.Split(',').Reverse()))
        );

        Assert.Equal(Demo.Rows.Select(r => r.Sheet), DriverTable.Read(turned).Rows.Select(r => r.Sheet));
    }

    [Theory]
    [InlineData("\uFEFF" + Header + "\r\n" + Row + "\r\n")]
    [InlineData(Header + "\n" + Row)]
    [InlineData("\n" + Header + "\n\n" + Row + "\n\n\n,,,,,,\n  \n")]
    [InlineData("\"name\", re_ohm ,fs_hz,qms,qes,vas_l,sd_cm2\n\"Wren\", 3.4 ,\"52\",4.2,0.42,5.2e0,+85\n")]
    public void Quotes_line_ends_and_blanks_change_nothing(string text)
    {
        var table = DriverTable.Read(text);

        Assert.Empty(table.AllFaults);
        Assert.Equal(
            new DriverSheet
            {
                Name = "Wren",
                ReOhm = 3.4,
                FsHz = 52,
                Qms = 4.2,
                Qes = 0.42,
                VasM3 = 0.0052,
                SdM2 = 0.0085,
            },
            Assert.Single(table.Rows).Sheet
        );
    }

    [Fact]
    public void A_quoted_name_may_hold_a_comma_and_a_quotation_mark() =>
        Assert.Equal(
            "Wren, the \"small\" one",
            Assert.Single(DriverTable.Read($"{Header}\n\"Wren, the \"\"small\"\" one\",3.4,52,4.2,0.42,5.2,85\n").Rows).Sheet.Name
        );

    [Fact]
    public void An_empty_cell_is_not_stated()
    {
        var row = Assert.Single(DriverTable.Read($"{Header},xmax_mm,bolts\n{Row},,\n").Rows);

        Assert.Empty(row.Faults);
        Assert.Null(row.Sheet.XmaxM);
        Assert.Null(row.Sheet.Bolts);
    }

    // A light, loose, over-sized or undamped driver is odd, not impossible.
    [Theory]
    [InlineData("Odd,0.5,8,40,30,900,60")]
    [InlineData("Odd,60,400,0.3,0.05,0.02,3")]
    public void What_is_odd_but_possible_is_read(string row) => Assert.Empty(DriverTable.Read($"{Header}\n{row}\n").AllFaults);

    [Fact]
    public void One_bad_row_leaves_the_others_as_they_are()
    {
        var table = DriverTable.Read($"{Header}\n{Row}\nDipper,x,52,4.2,0.42,5.2,85\nGodwit,3.4,52,4.2,0.42,5.2,85\n");

        Assert.Equal([0, 1, 0], table.Rows.Select(r => r.Faults.Count));
        Assert.Empty(table.Faults);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_language_of_the_machine_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);

            Assert.Equal(Demo.Rows.Select(r => r.Sheet), DriverTable.Read(File.ReadAllBytes(TestData.Demo("drivers.csv"))).Rows.Select(r => r.Sheet));
            Assert.Equal(
                "f,x\n10.5,\n",
                CsvText.Write(
                    ["f", "x"],
                    [
                        [10.5, null],
                    ]
                )
            );
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Twenty_thousand_rows_are_read_and_one_more_is_a_fault()
    {
        var rows = Many(DriverTable.MostRows);

        Assert.Equal(DriverTable.MostRows, DriverTable.Read(rows).Rows.Count);
        Assert.Empty(DriverTable.Read(rows).AllFaults);
        Assert.Contains("more than 20000 rows", Assert.Single(DriverTable.Read(rows + Row + "\n").AllFaults).Message, StringComparison.Ordinal);
    }

    // Two readings first, so that the figure is of the reading and not of the compiler; the best of five, so that it is not of the machine's other work.
    [Fact]
    public void Ten_thousand_rows_are_all_read()
    {
        var full = File.ReadAllLines(TestData.Demo("drivers.csv"));
        var text = Encoding.UTF8.GetBytes(
            full[0]
                + "\n"
                + string.Concat(
                    Enumerable
                        .Range(0, 10_000)
                        .Select(i => "N" + i.ToString(CultureInfo.InvariantCulture) + full[5][full[5].IndexOf(',', StringComparison.Ordinal)..] + "\n")
                )
        );
        var table = DriverTable.Read(text, "many.csv");
        Assert.Empty(table.AllFaults);
        Assert.Equal("N9999", table.Rows[9_999].Sheet.Name);
    }

    [Fact]
    public void A_hostile_table_gives_faults_of_one_short_line() =>
        Assert.All(
            (string[])
                [
                    new string(',', 1_000_000),
                    Header + "\n\"" + new string('x', 5_000_000),
                    Header + "\n" + new string('9', 1_000_000) + "," + new string('9', 1_000_000) + ",1e308,-1e308,1e999,\u0000,\u202e\n",
                    new string('k', 100_000) + "\n",
                    "name\u2028,\u0007\n",
                ],
            text =>
                Assert.All(
                    DriverTable.Read(text).AllFaults.Select(f => f.ToString()).DefaultIfEmpty(""),
                    line =>
                    {
                        Assert.InRange(line.Length, 1, 300);
                        Assert.DoesNotContain(line, c => char.IsControl(c) || c is '\u2028' or '\u202e');
                    }
                )
        );

    private static string Many(int count) =>
        Header + "\n" + string.Concat(Enumerable.Range(0, count).Select(i => "N" + i.ToString(CultureInfo.InvariantCulture) + Row[4..] + "\n"));
}
