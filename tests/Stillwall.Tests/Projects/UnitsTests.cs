using System.Globalization;
using CsCheck;
using Stillwall.Projects;

namespace Stillwall.Tests.Projects;

public class UnitsTests
{
    public static TheoryData<string, string, double, int> Published()
    {
        var data = new TheoryData<string, string, double, int>();
        foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "units", "published-factors.csv")).Skip(1))
        {
            var cells = line.Split(',');
            data.Add(cells[0], cells[1], double.Parse(cells[2], CultureInfo.InvariantCulture), int.Parse(cells[3], CultureInfo.InvariantCulture));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Published))]
    public void A_unit_is_worth_what_the_handbook_prints(string quantity, string dimension, double si, int digits)
    {
        var value = Read(quantity, Enum.Parse<Dimension>(dimension));

        // Half a unit of the last printed digit; about zero, that digit after the point.
        var tolerance = si == 0 ? Math.Pow(10, -digits) : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(si))) + 1 - digits);
        Assert.Equal(si, value, tolerance);
    }

    [Theory]
    [InlineData("1.1 mm", Dimension.Length, 0.0011)]
    [InlineData("256mm", Dimension.Length, 0.256)]
    [InlineData("  256   mm ", Dimension.Length, 0.256)]
    [InlineData("2.56e2 mm", Dimension.Length, 0.256)]
    [InlineData("2.56E+2 mm", Dimension.Length, 0.256)]
    [InlineData("2560e-4m", Dimension.Length, 0.256)]
    [InlineData(".5 L", Dimension.Volume, 0.0005)]
    [InlineData("5. L", Dimension.Volume, 0.005)]
    [InlineData("10\"", Dimension.Length, 0.254)]
    [InlineData("10\u2033", Dimension.Length, 0.254)]
    [InlineData("+3 dB", Dimension.Level, 3)]
    [InlineData("\u22129.5\u00A0dB", Dimension.Level, -9.5)]
    [InlineData("1e\u22123 m", Dimension.Length, 0.001)]
    [InlineData("214 cm\u00B2", Dimension.Area, 0.0214)]
    [InlineData("36 m\u00B3", Dimension.Volume, 36)]
    [InlineData("4 \u03A9", Dimension.Resistance, 4)]
    [InlineData("4\u2126", Dimension.Resistance, 4)]
    [InlineData("4 k\u03A9", Dimension.Resistance, 4000)]
    [InlineData("5 \u00B5m", Dimension.Length, 5e-6)]
    [InlineData("5 \u03BCm", Dimension.Length, 5e-6)]
    [InlineData("20 °C", Dimension.Temperature, 20)]
    [InlineData("20\u202FdegC", Dimension.Temperature, 20)]
    [InlineData("12.1 T\u00B7m", Dimension.ForceFactor, 12.1)]
    [InlineData("12.1 T m", Dimension.ForceFactor, 12.1)]
    [InlineData("210000 Pa\u22C5s/m\u00B3", Dimension.AcousticResistance, 210000)]
    [InlineData("3.4 N\u00B7s/m", Dimension.MechanicalResistance, 3.4)]
    [InlineData("2 L/min", Dimension.VolumeFlow, 0.002 / 60)]
    public void A_quantity_is_read_however_it_is_typed(string text, Dimension dimension, double si) =>
        Assert.Equal(si, Read(text, dimension), 1e-15 * Math.Abs(si));

    [Theory]
    [InlineData("", "is not a quantity")]
    [InlineData("mm", "is not a quantity")]
    [InlineData("- mm", "is not a quantity")]
    [InlineData("NaN mm", "is not a quantity")]
    [InlineData("Infinity mm", "is not a quantity")]
    [InlineData("256", "has no unit")]
    [InlineData("256 kg", "has the wrong unit")]
    [InlineData("256 MM", "has the wrong unit")]
    [InlineData("1 e3 mm", "has the wrong unit")]
    [InlineData("1,5 mm", "has a decimal comma")]
    [InlineData("1e999 mm", "is beyond all reason")]
    [InlineData("1e99999999999 m", "is beyond all reason")]
    public void What_is_no_length_is_refused_with_the_reason(string text, string reason)
    {
        Assert.False(Units.TryRead(text, Dimension.Length, out var value, out var fault));

        Assert.Equal(0, value);
        Assert.Contains(reason, fault, StringComparison.Ordinal);
        Assert.Contains("mm, m, cm", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.244, Dimension.Length, "244 mm")]
    [InlineData(0.0011, Dimension.Length, "1.1 mm")]
    [InlineData(0, Dimension.Length, "0 mm")]
    [InlineData(12, Dimension.Length, "12 m")]
    [InlineData(-9.5, Dimension.Level, "-9.5 dB")]
    [InlineData(0.024, Dimension.Volume, "24 L")]
    [InlineData(0.03, Dimension.Mass, "30 g")]
    [InlineData(600, Dimension.Time, "10 min")]
    [InlineData(86400, Dimension.Time, "24 h")]
    [InlineData(130.1, Dimension.Time, "130.1 s")]
    [InlineData(4.1e9, Dimension.Pressure, "4.1 GPa")]
    [InlineData(101325, Dimension.Pressure, "101325 Pa")]
    [InlineData(2e-3 / 60, Dimension.VolumeFlow, "2 L/min")]
    [InlineData(1e12, Dimension.AcousticResistance, "1000000000000 Pa*s/m3")]
    [InlineData(1e-12, Dimension.Length, "1e-9 mm")]
    [InlineData(0.1 + 0.2, Dimension.Resistance, "0.3 ohm")]
    [InlineData(0.707, Dimension.None, "0.707")]
    public void A_value_is_written_as_a_person_would_state_it(double si, Dimension dimension, string text) => Assert.Equal(text, Units.Write(si, dimension));

    [Fact]
    public void What_is_written_in_up_to_fifteen_digits_is_read_back_exactly() =>
        Gen.Select(AnyDimension, Gen.Long[-999_999_999_999_999, 999_999_999_999_999], Gen.Int[-22, 3])
            .Select(
                (dimension, digits, exponent) =>
                    (
                        dimension,
                        si: double.Parse(
                            $"{digits.ToString(CultureInfo.InvariantCulture)}e{exponent.ToString(CultureInfo.InvariantCulture)}",
                            CultureInfo.InvariantCulture
                        )
                    )
            )
            .Sample(c => Assert.Equal(c.si, Read(Units.Write(c.si, c.dimension), c.dimension)));

    [Fact]
    public void Any_value_is_read_back_to_twelve_digits_and_then_stays() =>
        Gen.Select(AnyDimension, Gen.Double[-1e9, 1e9])
            .Sample(
                (dimension, si) =>
                {
                    var once = Read(Units.Write(si, dimension), dimension);
                    Assert.Equal(si, once, 1e-11 * Math.Abs(si));
                    Assert.Equal(once, Read(Units.Write(once, dimension), dimension));
                }
            );

    [Fact]
    public void Every_unit_of_a_kind_measures_the_same_thing() =>
        Gen.Select(AnyDimension, Gen.Double[1e-3, 1e6])
            .Sample(
                (dimension, si) =>
                {
                    foreach (var unit in Units.Of(dimension))
                    {
                        var text = $"{((si - unit.Offset) / unit.Factor).ToString("R", CultureInfo.InvariantCulture)} {unit.Name}";
                        Assert.Equal(si, Read(text, dimension), 1e-12 * Math.Max(si, 300));
                    }
                }
            );

    [Fact]
    public void Every_kind_of_quantity_has_a_unit_that_is_SI_itself() =>
        Assert.All(Measurable, dimension => Assert.Contains(Units.Of(dimension), u => u is { Factor: 1, Offset: 0 }));

    [Theory]
    [InlineData("6 kg", 6, Dimension.Mass)]
    [InlineData("3 pc", 3, Dimension.Count)]
    [InlineData("2 m", 2, Dimension.Length)]
    [InlineData("2 m2", 2, Dimension.Area)]
    [InlineData("2 L", 0.002, Dimension.Volume)]
    public void An_amount_is_what_its_unit_says(string text, double value, Dimension dimension)
    {
        Assert.True(Units.TryReadAmount(text, out var amount, out _));

        Assert.Equal(new Amount(value, dimension), amount);
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

            Assert.Equal(0.0015, Read("1.5 mm", Dimension.Length));
            Assert.False(Units.TryRead("1,5 mm", Dimension.Length, out _, out _));
            Assert.Equal("1.5 mm", Units.Write(0.0015, Dimension.Length));
            Assert.Equal("0.707", Units.Write(0.707, Dimension.None));
            Assert.Equal(" (did you mean \"minimum_load\"?)", NearestWord.Suggest("MINIMUM_LOAD", ["minimum_load"]));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static readonly Dimension[] Measurable = [.. Enum.GetValues<Dimension>().Where(d => d != Dimension.None)];

    private static readonly Gen<Dimension> AnyDimension = Gen.Int[0, Measurable.Length - 1].Select(i => Measurable[i]);

    private static double Read(string text, Dimension dimension)
    {
        Assert.True(Units.TryRead(text, dimension, out var value, out var fault), fault);
        return value;
    }
}
