using System.Numerics;
using System.Text.Json;
using CsCheck;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Numerics;

namespace Stillwall.Tests.Neighbours;

public class EqualiserTests
{
    public static TheoryData<string> Cases => [.. QuietData.Cases("filters", "filter-cases.json").Select(c => c.GetProperty("name").GetString()!)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Sections_agree_with_SciPy(string name)
    {
        var stated = QuietData.Cases("filters", "filter-cases.json").Single(c => c.GetProperty("name").GetString() == name);
        var section = FilterDesign.Of(Inputs(stated));
        var cascade = stated.TryGetProperty("cascade", out var times) ? times.GetInt32() : 1;
        var isTarget = stated.GetProperty("kind").GetString() == "transform";
        foreach (
            var row in File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", "filters", $"{name}.csv"))
                .Skip(1)
                .Select(line => line.Split(',').Select(QuietData.Number).ToArray())
        )
        {
            if (isTarget && row[0] > 200)
            {
                continue;
            }

            Assert.Equal(row[1], cascade * section.MagnitudeDb(row[0])!.Value, isTarget ? 0.001 : 0.00001);
            Assert.Equal(0, Math.IEEERemainder((cascade * section.PhaseDeg(row[0])) - row[2], 360), isTarget ? 0.01 : 0.0002);
        }
    }

    [Fact]
    public void Coefficients_agree_with_those_of_a_second_program()
    {
        foreach (var row in QuietData.Rows("filters", "vectors.csv"))
        {
            double[] n = [.. row.Skip(1).Select(QuietData.Number)];
            var section = FilterDesign.Of(
                new FilterInputs
                {
                    Kind = Kind(row[0]),
                    F0Hz = n[0],
                    Q = row[2].Length == 0 ? null : n[1],
                    GainDb = n[2],
                    SlopeFactor = n[3],
                }
            );
            foreach (var (expected, actual) in n[4..].Zip(section.B.Concat(section.A.Skip(1))))
            {
                Assert.Equal(expected, actual, 5e-12 * Math.Max(1, Math.Abs(expected)));
            }
        }
    }

    [Theory]
    [InlineData(SectionKind.Lowpass, 80, 0, 20, -0.01693)]
    [InlineData(SectionKind.Lowpass, 80, 0, 160, -12.30494)]
    [InlineData(SectionKind.Highpass, 80, 0, 20, -24.09948)]
    [InlineData(SectionKind.Highpass, 80, 0, 160, -0.26326)]
    [InlineData(SectionKind.Lowshelf, 60, 6, 60, 3)]
    [InlineData(SectionKind.Highshelf, 60, 6, 60, 3)]
    [InlineData(SectionKind.Lowshelf, 60, 6, 1000, 0.00008)]
    [InlineData(SectionKind.Highshelf, 60, 6, 1, 0)]
    [InlineData(SectionKind.Highshelf, 60, 6, 20000, 6)]
    public void Levels_agree_with_the_cookbooks_at_a_few_frequencies(SectionKind kind, double f0, double gain, double at, double expected) =>
        Assert.Equal(
            expected,
            FilterDesign
                .Of(
                    new FilterInputs
                    {
                        Kind = kind,
                        F0Hz = f0,
                        GainDb = gain,
                    }
                )
                .MagnitudeDb(at)!
                .Value,
            0.00001
        );

    [Fact]
    public void The_replacement_turns_one_closed_box_into_another()
    {
        // A 55 Hz, Q 0.9 box made a 25 Hz, Q 0.707 one: the cascade's levels worked by hand, −16.0274, −3.0103, −0.1815, −0.0169 dB;
        // the section alone gains 13.6958, 10.1538 and 0.7336 dB at 1, 25 and 55 Hz.
        var section = Biquad.Transform(55, 0.9, 25, 0.70711, 48000);
        foreach (var (f, expected) in new[] { (10.0, -16.0274), (25, -3.0103), (55, -0.1815), (100, -0.0169) })
        {
            Assert.Equal(expected, section.MagnitudeDb(f)!.Value + (20 * Math.Log10(Analogue.HighPass(f, 55, 0.9).Magnitude)), 0.0002);
        }

        foreach (var (f, expected) in new[] { (1.0, 13.6958), (25, 10.1538), (55, 0.7336) })
        {
            Assert.Equal(expected, section.MagnitudeDb(f)!.Value, 0.0002);
        }
    }

    [Fact]
    public void Prototypes_and_sections_are_the_same_filter_at_low_frequency() =>
        Gen.Select(Gen.Double[10, 150], Gen.Double[0.4, 3], Gen.Double[5, 200])
            .Sample(
                (f0, q, f) =>
                {
                    Assert.Equal(0, (Analogue.HighPass(f, f0, q) - Biquad.HighPass(f0, q, 48000).Response(f)).Magnitude, 1e-3);
                    Assert.Equal(0, (Analogue.LowPass(f, f0, q) - Biquad.LowPass(f0, q, 48000).Response(f)).Magnitude, 1e-3);
                }
            );

    [Fact]
    public void Every_section_is_stable() =>
        Gen.Select(
                Kind(SectionKind.Highpass, SectionKind.Lowpass, SectionKind.Peaking, SectionKind.Lowshelf, SectionKind.Highshelf, SectionKind.Transform),
                Gen.Double[5, 500],
                Gen.Double[0.3, 10],
                Gen.Double[-24, 24],
                Gen.Double[5, 500]
            )
            .Sample(
                (kind, f0, q, gain, fp) =>
                {
                    var section = FilterDesign.Of(
                        new FilterInputs
                        {
                            Kind = kind,
                            F0Hz = f0,
                            Q = q,
                            GainDb = gain,
                            FpHz = fp,
                        }
                    );
                    Assert.True(Math.Abs(section.A[2]) < 1 && Math.Abs(section.A[1]) < 1 + section.A[2]);
                    Assert.Equal(1, section.A[0]);
                }
            );

    [Fact]
    public void A_cut_undoes_the_boost_of_the_same_figures() =>
        Gen.Select(Kind(SectionKind.Peaking, SectionKind.Lowshelf, SectionKind.Highshelf), Gen.Double[10, 500], Gen.Double[-20, 20], Gen.Double[5, 2000])
            .Sample(
                (kind, f0, gain, f) =>
                {
                    var inputs = new FilterInputs
                    {
                        Kind = kind,
                        F0Hz = f0,
                        Q = 1.3,
                        GainDb = gain,
                    };
                    Assert.Equal(
                        0,
                        (Complex.One - (FilterDesign.Of(inputs).Response(f) * FilterDesign.Of(inputs with { GainDb = -gain }).Response(f))).Magnitude,
                        1e-7
                    );
                }
            );

    [Fact]
    public void Fourth_order_halves_meet_at_half_level_in_phase_and_add_up_to_an_all_pass()
    {
        Assert.Equal(-6.0206, 20 * Math.Log10(Analogue.FourthOrderLowPass(95, 95).Magnitude), 0.0001);
        foreach (var f in new[] { 20.0, 60, 95, 150, 400 })
        {
            Assert.Equal(1, (Analogue.FourthOrderLowPass(f, 95) + Analogue.FourthOrderHighPass(f, 95)).Magnitude, 1e-12);
        }
    }

    [Fact]
    public void What_makes_no_section_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Biquad.HighPass(24000, 0.7, 48000));
        Assert.Throws<ArgumentOutOfRangeException>(() => Biquad.HighPass(30, 0, 48000));
        Assert.Throws<ArgumentOutOfRangeException>(() => Biquad.ShelfQ(12, 6));
        Assert.Contains(
            "fp",
            Assert.Throws<ArgumentException>(() => FilterDesign.Of(new FilterInputs { Kind = SectionKind.Transform, F0Hz = 50 })).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "peaking",
            Assert.Throws<ArgumentException>(() => FilterDesign.Of(new FilterInputs { Kind = (SectionKind)99, F0Hz = 50 })).Message,
            StringComparison.Ordinal
        );
    }

    private static SectionKind Kind(string word) => EnumWords.Find<SectionKind>(word)!.Value;

    private static Gen<SectionKind> Kind(params SectionKind[] kinds) => Gen.Int[0, kinds.Length - 1].Select(i => kinds[i]);

    private static FilterInputs Inputs(JsonElement stated)
    {
        double? Maybe(string key) => stated.TryGetProperty(key, out var value) ? value.GetDouble() : null;
        return new FilterInputs
        {
            Kind = Kind(stated.GetProperty("kind").GetString()!),
            F0Hz = stated.GetProperty("f0_hz").GetDouble(),
            Q = Maybe("q") ?? Maybe("q0"),
            GainDb = Maybe("gain_db") ?? 0,
            SlopeFactor = Maybe("slope") ?? 1,
            FpHz = Maybe("fp_hz"),
            PoleQ = Maybe("qp") ?? Analogue.ButterworthQ,
        };
    }
}
