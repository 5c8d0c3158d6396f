using System.Numerics;
using Stillwall.Materials;
using Stillwall.Neighbours;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Tests.Neighbours;

/// <summary>The equaliser that is found, held against a plain high-pass found here by halving, with the digital sections at 48 kHz.</summary>
public class EqualiserSearchTests(ITestOutputHelper told)
{
    private sealed record Case(string Name, QuietInputs Inputs);

    private sealed record Measured(double OverDb, double AudibleLossDb, double SeatLossDb);

    private static readonly Case[] Cases =
    [
        new("brick, music", At(78)),
        new("brick, pink", At(80, "pink")),
        new("brick, deep music", At(84, "deep-music")),
        new("half a brick, acoustic music", At(72, "acoustic-music") with { Neighbour = QuietData.BrickWall with { Partition = "brick-125-plastered" } }),
        new("studs, music", At(62) with { Neighbour = QuietData.BrickWall with { Partition = "studs-plaster" } }),
        new("concrete, music, night curve", At(86) with { Neighbour = QuietData.BrickWall with { Partition = "concrete-200", Curve = "night-rooms-se-2014" } }),
        new("no room", At(80) with { Room = null, StatedRoom = null }),
        new(
            "large room, pink",
            At(82, "pink") with
            {
                Room = RoomModel.Of(new RoomGeometry(4.4, 6.1, 2.6, 0.6, 2, new Place(0.5, 0.4, 0.3), new Place(2.4, 4.2, 1.1)), QuietData.Air),
            }
        ),
        new(
            "lowest octave too loud",
            At(75, "deep-music") with
            {
                Neighbour = QuietData.BrickWall with { Curve = "own", CurveDb = [10, 12, 14, 90, 90, 90, 90, 90, 90, 90] },
            }
        ),
        new("limit in dB(A)", At(76) with { Neighbour = QuietData.BrickWall with { Curve = null, AWeightedLimitDb = 12 } }),
    ];

    [Fact]
    public void It_leaves_nothing_over_and_takes_less_from_the_seat_than_a_plain_high_pass_in_eight_cases_of_ten_and_never_more()
    {
        var less = 0;
        foreach (var (name, inputs) in Cases)
        {
            var quiet = QuietModel.Of(inputs);
            var (found, plain) = (
                Measure(inputs, quiet, quiet.Equaliser!.Select(section => FilterDesign.Of(section.At(48000))).ToArray()),
                PlainHighPass(inputs, quiet)
            );
            told.WriteLine(
                $"{name}: {string.Join(" + ", quiet.Equaliser!.Select(s => $"{s.Kind} {s.F0Hz:F1} Hz Q {s.Q:F2} {s.GainDb:F1} dB"))}; over "
                    + $"{found.OverDb:F3}, audible {found.AudibleLossDb:F2} against {plain.AudibleLossDb:F2}, level {found.SeatLossDb:F2} against "
                    + $"{plain.SeatLossDb:F2}"
            );
            Assert.True(quiet.LoudestPoliteLevelDb < inputs.Everyday!.LevelDb, $"{name} needs an equaliser");
            Assert.InRange(found.OverDb, -3, 0.01);
            Assert.Equal(found.AudibleLossDb, quiet.AudibleLossDb!.Value, 0.01);
            Assert.Equal(found.SeatLossDb, quiet.SeatLossDb!.Value, 0.01);
            Assert.True(found.AudibleLossDb <= plain.AudibleLossDb + 0.01, $"{name}: {found.AudibleLossDb} dB against {plain.AudibleLossDb} dB");
            Assert.True(found.SeatLossDb <= plain.SeatLossDb + 0.01, $"{name}: {found.SeatLossDb} dB against {plain.SeatLossDb} dB");
            less += found.AudibleLossDb < plain.AudibleLossDb - 0.1 && found.SeatLossDb < plain.SeatLossDb - 0.1 ? 1 : 0;
        }

        Assert.InRange(less, 8, Cases.Length);
    }

    [Fact]
    public void The_plain_high_pass_beside_it_is_the_one_that_halving_finds()
    {
        foreach (var (_, inputs) in Cases.Take(4))
        {
            var quiet = QuietModel.Of(inputs);
            var plain = PlainHighPass(inputs, quiet);
            Assert.Equal(plain.AudibleLossDb, quiet.PlainHighPass!.AudibleLossDb, 0.01);
            Assert.Equal(plain.SeatLossDb, quiet.PlainHighPass.SeatLossDb, 0.01);
        }
    }

    [Fact]
    public void Every_section_answers_alike_before_and_after_it_is_made_digital() =>
        Assert.All(
            Cases.SelectMany(c => QuietModel.Of(c.Inputs).Equaliser!),
            section =>
                Assert.All(
                    (double[])[15, 20, 31.5, 50, 80, 125, 178],
                    f => Assert.Equal(20 * Math.Log10(section.Response(f).Magnitude), FilterDesign.Of(section.At(44100)).MagnitudeDb(f)!.Value, 0.01)
                )
        );

    [Fact]
    public void An_equaliser_of_ones_own_is_judged_as_the_sought_one_is()
    {
        foreach (var (_, inputs) in Cases.Take(3))
        {
            var sought = QuietModel.Of(inputs);
            var again = QuietModel.With(inputs, sought.Equaliser!);
            Assert.Equal(
                (sought.LoudestPoliteLevelWithEqualiserDb, sought.SeatLossDb, sought.AudibleLossDb, sought.LoudestPoliteLevelDb),
                (again.LoudestPoliteLevelWithEqualiserDb, again.SeatLossDb, again.AudibleLossDb, again.LoudestPoliteLevelDb)
            );
            Assert.Equal(sought.BandsWithEqualiser, again.BandsWithEqualiser!);

            // A section without gain changes nothing.
            var none = QuietModel.With(inputs, [new EqualiserSection(SectionKind.Peaking, 50, 1, 0)]);
            Assert.Equal(none.LoudestPoliteLevelDb!.Value, none.LoudestPoliteLevelWithEqualiserDb!.Value, 1e-9);
        }

        Assert.Throws<InvalidOperationException>(() => QuietModel.With(Cases[0].Inputs, [new EqualiserSection(SectionKind.Lowpass, 50, 1, 0)]));
    }

    [Fact]
    public void At_another_volume_setting_a_band_is_what_another_everyday_level_makes_it()
    {
        var (soft, loud) = (QuietModel.Of(At(60)), QuietModel.Of(At(66.5)));
        Assert.All(
            soft.Bands.Zip(loud.Bands),
            pair =>
            {
                var moved = pair.First.Louder(6.5);
                Assert.Equal(pair.Second.OverDb!.Value, moved.OverDb!.Value, 1e-9);
                Assert.Equal(pair.Second.SeatDb!.Value, moved.SeatDb!.Value, 1e-9);
                Assert.Equal(pair.Second.CurveDb, moved.CurveDb);
            }
        );
    }

    [Fact]
    public void The_box_may_play_lower_until_the_first_of_three_stops_it()
    {
        // The neighbour far from the curve; the cone has 20 dB, so it stops the extension; then the amplifier; then the neighbour's own limit.
        var lenient = At(50) with
        {
            Amplifier = new Amplifier { PowerW = 1e4, RatedLoadOhm = 4 },
            ExcursionPeakM = f => 0.001 * 1600 / ((f * f) + 1600),
            XmaxM = 0.01,
        };
        var free = QuietModel.Of(lenient with { XmaxM = 1e3 });
        Assert.Equal(("search", 20.0), (free.Extension!.StoppedBy, free.Extension.FpHz));
        Assert.Equal(40 * Math.Log10(2), free.Extension.BoostDb, 1e-9);

        var cone = QuietModel.Of(lenient with { XmaxM = Math.Pow(10, -(free.Headroom!.ExcursionDb!.Value - 3) / 20) * 1e3 });
        Assert.Equal("excursion", cone.Extension!.StoppedBy);
        Assert.InRange(cone.Extension.FpHz, 20, 40);

        var near = QuietModel.Of(
            lenient with
            {
                XmaxM = 1e3,
                Neighbour = QuietData.BrickWall with { Curve = "own", CurveDb = [.. free.Bands.Select((b, i) => i < 3 ? b.NeighbourDb!.Value + 3 : 90)] },
            }
        );
        Assert.Equal("neighbour", near.Extension!.StoppedBy);

        // At the corner found the boost of the band that stops it is the three decibels it had.
        var boost = ThirdOctaves
            .Bands.Take(3)
            .Max(band =>
                ThirdOctaves.FrequenciesHz(band, 15).Max(f => 20 * Math.Log10(Analogue.Transform(f, 40, 0.7, near.Extension.FpHz, Math.Sqrt(0.5)).Magnitude))
            );
        Assert.InRange(boost, 3, 3.7);
    }

    [Fact]
    public void Cuts_cost_no_headroom()
    {
        var inputs = At(78) with
        {
            Amplifier = new Amplifier { PowerW = 100, RatedLoadOhm = 4 },
            ExcursionPeakM = f => 0.001 * 40 * 40 / ((f * f) + 1600),
            XmaxM = 0.01,
        };
        var quiet = QuietModel.Of(inputs);
        Assert.True(quiet.HeadroomWithEqualiser!.AmplifierDb >= quiet.Headroom!.AmplifierDb);
        Assert.True(quiet.HeadroomWithEqualiser.ExcursionDb >= quiet.Headroom.ExcursionDb);
    }

    [Fact]
    public void Headroom_is_what_hand_work_gives()
    {
        // No room, pink, crossover far above, a source that is flat in the half space at 2 m: |p| = ρ·0.01/2 per volt, so 20 log10(6.02055e-3/20e-6)
        // = 49.57 dB for one volt of programme. 79.57 dB take 31.6 V rms; with 12 dB of crest 125.9 V peak; an amplifier of 100 W into 4 ohm gives
        // 28.28 V peak: −12.97 dB. A cone that moves 1 mm peak a volt moves 0.707 × 125.9 = 89 mm: 10 mm are −18.99 dB.
        var quiet = QuietModel.Of(
            QuietData.Inputs() with
            {
                Everyday = new Everyday { LevelDb = 79.57, Programme = "pink" },
                CrossoverHz = 2000,
                VolumeVelocityM3S = f => new Complex(0, -0.01 / f),
                Amplifier = new Amplifier { PowerW = 100, RatedLoadOhm = 4 },
                ExcursionPeakM = _ => 0.001,
                XmaxM = 0.01,
            }
        );
        Assert.Equal(-12.97, quiet.Headroom!.AmplifierDb!.Value, 0.02);
        Assert.Equal(-18.99, quiet.Headroom.ExcursionDb!.Value, 0.02);
    }

    private static QuietInputs At(double level, string programme = "music") =>
        QuietData.Inputs(RoomModel.Of(QuietData.ReadingRoom, QuietData.Air)) with
        {
            Everyday = new Everyday { LevelDb = level, Programme = programme },
            SystemResonanceHz = 40,
            SystemQ = 0.7,
        };

    private static Measured PlainHighPass(QuietInputs inputs, Quiet quiet)
    {
        var (low, high) = (5.0, 500.0);
        for (var i = 0; i < 40; i++)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Measure(inputs, quiet, [Biquad.HighPass(middle, Math.Sqrt(0.5), 48000)]).OverDb > 0 ? (middle, high) : (low, middle);
        }

        return Measure(inputs, quiet, [Biquad.HighPass(high, Math.Sqrt(0.5), 48000)]);
    }

    // The chain from programme to neighbour once more, written out plainly, with the sections in it.
    private static Measured Measure(QuietInputs inputs, Quiet quiet, Biquad[] sections)
    {
        var (overs, weights, lost, before, after, weighted) = (new List<double>(), 0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var (band, told, threshold) in ThirdOctaves.Bands.Zip(quiet.Bands, QuietData.Numbers("hearing", "threshold.csv").Select(row => row[1])))
        {
            var points = Enumerable.Range(0, 15).Select(i => band.LowerHz * Math.Pow(10, (i + 0.5) / 150)).ToArray();
            double Kept(Func<double, double> pressure)
            {
                double Power(double f) =>
                    Math.Pow(pressure(f) * (inputs.VolumeVelocityM3S!(f) * Analogue.FourthOrderLowPass(f, inputs.CrossoverHz!.Value)).Magnitude, 2);
                return points.Sum(f => Power(f) * sections.Aggregate(1.0, (power, s) => power * Math.Pow(s.Response(f).Magnitude, 2))) / points.Sum(Power);
            }

            double Half(double f) => f;
            var seat = 10 * Math.Log10(Kept(inputs.Room is { } room ? f => room.SeatPressurePa(f, 1).Magnitude : Half));
            var mean = 10 * Math.Log10(Kept(inputs.Room is { } whole ? f => whole.MeanPressurePa(f, 1) : Half));
            overs.Add((told.OverDb ?? double.NegativeInfinity) + mean);
            weighted += Math.Pow(10, (told.NeighbourDb!.Value + mean + Weightings.ADb(band.CentreHz)) / 10);
            var audible = Math.Max(0, told.SeatDb!.Value - threshold);
            (weights, lost) = (weights + audible, lost + (audible * Math.Clamp(-seat, 0, audible)));
            (before, after) = (before + Math.Pow(10, told.SeatDb.Value / 10), after + Math.Pow(10, (told.SeatDb.Value + seat) / 10));
        }

        overs.Add(inputs.Neighbour!.AWeightedLimitDb is { } limit ? (10 * Math.Log10(weighted)) - limit : double.NegativeInfinity);
        return new(overs.Max(), lost / weights, 10 * Math.Log10(before / after));
    }
}
