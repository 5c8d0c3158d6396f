using System.Globalization;
using CsCheck;
using Stillwall.Files.Tables;

namespace Stillwall.Files.Tests.Tables;

public class CsvTextTests
{
    [Fact]
    public void A_table_is_header_comma_point_line_feed() =>
        Assert.Equal(
            "frequency_hz,spl_db\n10,\n0.1,-3.25\n1E-05,1E+20\n",
            CsvText.Write(
                ["frequency_hz", "spl_db"],
                [
                    [10, null],
                    [0.1, -3.25],
                    [1e-5, 1e20],
                ]
            )
        );

    [Fact]
    public void A_number_is_read_back_as_the_same_number() =>
        Gen
            .Double.Where(double.IsFinite)
            .Sample(number =>
                Assert.Equal(
                    number,
                    double.Parse(
                        CsvText
                            .Write(
                                ["x"],
                                [
                                    [number],
                                ]
                            )
                            .Split('\n')[1],
                        CultureInfo.InvariantCulture
                    )
                )
            );

    [Fact]
    public void What_is_no_table_is_the_callers_mistake()
    {
        Assert.Throws<ArgumentException>(() =>
            CsvText.Write(
                ["a", "b"],
                [
                    [1],
                ]
            )
        );
        Assert.Throws<ArgumentException>(() =>
            CsvText.Write(
                ["a"],
                [
                    [double.NaN],
                ]
            )
        );
        Assert.Throws<ArgumentException>(() =>
            CsvText.Write(
                ["a"],
                [
                    [double.PositiveInfinity],
                ]
            )
        );
        Assert.Throws<ArgumentException>(() => CsvText.Write(["a,b"], []));
    }
}
