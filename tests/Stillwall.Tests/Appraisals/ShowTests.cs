using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>Numbers for people, against the definitions of the units (NIST SP 811 appendix B, from memory; exact by definition).</summary>
public sealed class ShowTests
{
    private static readonly Show Metric = new(false, "EUR"),
        Inch = new(true, "USD");

    [Fact]
    public void The_inch_units_are_what_they_are_defined_to_be()
    {
        Assert.Equal("1 in", Inch.Length(0.0254));
        Assert.Equal("10.08 in", Inch.Length(0.256));
        Assert.Equal("1 ft", Inch.Distance(0.3048));
        Assert.Equal("1 ft³", Inch.Volume(0.3048 * 0.3048 * 0.3048));
        Assert.Equal("1 in³", Inch.Volume(0.0254 * 0.0254 * 0.0254));
        Assert.Equal("1 gal", Inch.Liquid(231 * 0.0254 * 0.0254 * 0.0254));
        Assert.Equal("16 fl oz", Inch.Liquid(231 * 0.0254 * 0.0254 * 0.0254 / 8));
        Assert.Equal("1 lb", Inch.Mass(0.45359237));
        Assert.Equal("8 oz", Inch.Mass(0.45359237 / 2));
        Assert.Equal("1 psi", Inch.Pressure(6894.757293168));
        Assert.Equal("100 ksi", Inch.Pressure(6894.757293168e5));
        Assert.Equal("1 lb/ft³", Inch.Density(16.01846337396));
        Assert.Equal("1 lb/ft²", Inch.SurfaceDensity(4.88242763638));
        Assert.Equal("1 lbf", Inch.Force(4.4482216152605));
        Assert.Equal("1 in·lbf", Inch.Torque(0.1129848290276));
        Assert.Equal("1 gal/min", Inch.Flow(0.003785411784 / 60));
        Assert.Equal("1 ft³/s", Inch.VolumeVelocity(0.028316846592));
        Assert.Equal("212 °F", Inch.Temperature(100));
    }

    [Fact]
    public void Metric_units_have_the_prefix_that_fits()
    {
        Assert.Equal("256 mm", Metric.Length(0.256));
        Assert.Equal("2.5 m", Metric.Distance(2.5));
        Assert.Equal("190 g", Metric.Mass(0.19));
        Assert.Equal("1.5 kg", Metric.Mass(1.5));
        Assert.Equal(["20 Pa", "4.4 kPa", "25 MPa", "4.3 GPa"], new[] { 20, 4400, 25e6, 4.3e9 }.Select(Metric.Pressure));
        Assert.Equal("5 L", Metric.Liquid(0.005));
        Assert.Equal("2 L/min", Metric.Flow(2e-3 / 60));
    }

    // The table of units that people may type is the other method: what is shown must be read back.
    [Theory]
    [InlineData("m", Dimension.Length)]
    [InlineData("m2", Dimension.Area)]
    [InlineData("m3", Dimension.Volume)]
    [InlineData("kg", Dimension.Mass)]
    [InlineData("kg/m3", Dimension.Density)]
    [InlineData("Pa", Dimension.Pressure)]
    [InlineData("degC", Dimension.Temperature)]
    [InlineData("Hz", Dimension.Frequency)]
    [InlineData("dB", Dimension.Level)]
    [InlineData("ohm", Dimension.Resistance)]
    [InlineData("H", Dimension.Inductance)]
    [InlineData("W", Dimension.Power)]
    public void What_is_shown_can_be_read_back_as_the_same_quantity(string unit, Dimension dimension) =>
        Gen.Select(Gen.Double[1e-3, 1e3], Gen.Bool)
            .Sample(
                (value, isInch) =>
                {
                    var shown = (isInch ? Inch : Metric).InUnit(value, unit, 9);
                    Assert.True(Units.TryRead(shown, dimension, out var back, out var fault), fault);
                    Assert.Equal(value, back, 1e-6 * Math.Max(1, value));
                }
            );

    [Theory]
    [InlineData(Dimension.Length)]
    [InlineData(Dimension.Mass)]
    [InlineData(Dimension.Volume)]
    [InlineData(Dimension.Density)]
    [InlineData(Dimension.Temperature)]
    [InlineData(Dimension.Time)]
    public void A_stated_value_can_be_typed_as_it_is_shown(Dimension dimension) =>
        Gen.Select(Gen.Double[1, 100], Gen.Bool)
            .Sample(
                (value, isInch) =>
                {
                    var shown = (isInch ? Inch : Metric).Kept(value, dimension);
                    Assert.True(Units.TryRead(shown, dimension, out var back, out var fault), fault);
                    Assert.Equal(value, back, 0.01 * value + 0.5 * (dimension == Dimension.Temperature ? 1 : 0));
                }
            );
}
