using Stillwall.Appraisals;
using Stillwall.Appraisals.Proving;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Tests.Proofs;

namespace Stillwall.Tests.Appraisals.Proving;

/// <summary>What each proof asks for, shows, refuses and would keep; the figures themselves are the business of the stage's own tests.</summary>
public sealed class ProofTests
{
    private const double Rate = 12000;

    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All),
        Bare = new(new Project { FormatVersion = 1 }, []);

    public static TheoryData<string> Kinds => [.. Proof.All.Select(p => p.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_input_has_a_name_of_its_own_and_is_one_kind_of_thing(string kind)
    {
        var inputs = Proof.Of(kind).Inputs;
        Assert.Equal(inputs.Count, inputs.Select(i => i.Name).Distinct().Count());
        Assert.All(inputs, i => Assert.InRange((i.IsRecording ? 1 : 0) + (i.Range is null ? 0 : 1) + (i.Words is null ? 0 : 1), 0, 1));
        Assert.Single(Proof.All, p => p.Kind == kind);
    }

    [Theory]
    [InlineData("impedance", "reference")]
    [InlineData("driver", "sd")]
    [InlineData("sweep", "played")]
    [InlineData("tap", "length")]
    [InlineData("wall", "recording")]
    [InlineData("polarity", "recording")]
    [InlineData("hold", "seconds")]
    [InlineData("weight", "mass")]
    public void What_is_not_brought_is_named_with_what_is_accepted(string kind, string input)
    {
        var (outcome, fault) = Ask(kind, Demo, []);
        Assert.Null(outcome);
        Assert.Equal(input, fault!.Input);
        Assert.Matches("^is missing; a (number|bare number|recording)", fault.Sentence);
    }

    [Theory]
    [InlineData("hold", "seconds", "2 Hz", "has the wrong unit; a number with s, ms, min, h, d")]
    [InlineData("hold", "seconds", "4000", "is out of range; a bare number in s, or a number with s, ms, min, h, d, 0.01 s to 60 min")]
    [InlineData("weight", "mass", "9", "has no unit; a number with kg, g, mg, t, lb, oz")]
    [InlineData("sweep", "at", "sea", "is not known (did you mean \"seat\"?); one of near, seat")]
    public void What_cannot_be_used_is_named_with_what_is_accepted(string kind, string input, string stated, string said)
    {
        var fault = Ask(kind, Demo, [(input, stated)]).Fault!;
        Assert.Equal((input, $"\"{stated}\" {said}"), (fault.Input, fault.Sentence));
    }

    [Fact]
    public void A_time_without_a_unit_is_in_seconds()
    {
        var (bare, stated) = (Ask("hold", Demo, [("seconds", "2.1")]).Outcome!, Ask("hold", Demo, [("seconds", "2100 ms")]).Outcome!);
        Assert.Equal(bare.Kept, stated.Kept);
        Assert.Equal(["measured.leak_resistance"], bare.Kept.Select(k => k.Key));
        Assert.Equal(("hold", "2.1 s, leak Q 228"), (bare.Entry[0].Stated, bare.Entry[1].Stated));
    }

    [Fact]
    public void What_is_too_fast_for_a_stopwatch_is_logged_and_not_kept()
    {
        var outcome = Ask("hold", Demo, [("seconds", "0.3")]).Outcome!;
        Assert.Empty(outcome.Kept);
        Assert.Contains("find the hole", outcome.NothingKept, StringComparison.Ordinal);
        Assert.Equal(outcome.NothingKept, outcome.Remarks[^1]);
        Assert.NotEmpty(outcome.Entry);
        Assert.StartsWith("not possible yet; not stated yet: ", Ask("hold", Bare, [("seconds", "2")]).Fault!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recording_is_compared_with_a_project_that_can_be_and_one_that_cannot_is_told_what_is_missing()
    {
        var z = Impedance(49);
        ProofOutcome With(Facts? facts) => Ask("impedance", facts, [("reference", "10 ohm")], ("recording", z)).Outcome!;
        var (compared, alone, missing) = (With(Demo), With(null), With(Bare));
        Assert.Contains(compared.Figures, f => f.Name == "f3 (−3 dB)");
        Assert.Equal(["computed", "measured"], compared.Chart!.Series.Select(s => s.Name));
        Assert.StartsWith("first record both inputs on one point", Assert.Single(alone.Notes), StringComparison.Ordinal);
        Assert.StartsWith("not compared with the project; not stated yet: ", missing.Notes[1], StringComparison.Ordinal);
        Assert.Equal(alone.Figures.Select(f => (f.Name, f.Text)), compared.Figures.Take(alone.Figures.Count).Select(f => (f.Name, f.Text)));
        Assert.All([compared, alone, missing], o => Assert.Equal(["measured.system_resonance", "measured.system_q"], o.Kept.Select(k => k.Key)));
    }

    // The free driver is no cabinet: what two recordings tell goes into the driver's sheet.
    [Fact]
    public void Two_recordings_state_the_driver_and_not_the_cabinet()
    {
        (string, string)[] stated = [("reference", "10 ohm"), ("added", "40 g"), ("sd", "214 cm2")];
        var outcome = Ask("driver", Demo, stated, ("recording", Impedance(30)), ("mass", Impedance(30 / Math.Sqrt(2)))).Outcome!;
        Assert.Equal("driver", Assert.Single(outcome.Keys));
        Assert.All(outcome.Kept, k => Assert.NotNull(ProjectKeys.Find(k.Key)));
        Assert.Contains(("driver.name", "Dunlin 8, measured"), outcome.Kept);
        Assert.Null(((ImpedanceResult)outcome.Result!).Cabinet);
        Assert.Equal("", Ask("driver", Demo, stated, ("recording", Impedance(30))).Fault!.Input);
        Assert.Equal("mass", Ask("driver", Demo, stated, ("recording", Impedance(30)), ("mass", Impedance(30))).Fault!.Input);
    }

    [Fact]
    public void Of_several_recordings_the_one_that_says_nothing_is_named()
    {
        var played = new Recording(Rate, [new ExponentialSweep(10, 1000, 6).Samples(Rate, -6)], 0);
        var heard = new Recording(Rate, [TestSignals.WithSilence(played.Channels[0], Rate, 0.8, 2)], 0);
        var silent = new Recording(Rate, [new double[(int)(10 * Rate)]], 0);
        var fault = Ask("sweep", null, [], ("played", played), ("recording", heard), ("recording", silent)).Fault!;
        Assert.Equal(("recording", 1), (fault.Input, fault.Index));
        var twice = Ask("sweep", Demo, [("at", "seat")], ("played", played), ("recording", heard), ("recording", heard)).Outcome!;
        Assert.Equal(("seat", 2), (twice.Sweeps!.Place, twice.Sweeps.Singles.Count));
        Assert.NotNull(twice.Sweeps.Computed);
        var request = new ProofRequest(n => n == "average" ? "1" : n == "at" ? "near" : null, n => n == "played" ? [played] : [heard], Demo) { Before = twice };
        Assert.Single(Proof.Of("sweep").Read(request).Outcome!.Sweeps!.Singles);
        Assert.Equal(3, Proof.Of("sweep").Read(request with { Stated = n => n == "average" ? "1" : n == "at" ? "seat" : null }).Outcome!.Sweeps!.Singles.Count);
    }

    [Fact]
    public void The_scales_take_the_days_that_are_brought_or_those_of_the_logbook()
    {
        // 7.6 kg + 2.4 kg·e^(−t/12 d).
        var days = Enumerable.Range(0, 8).Select(i => (new DateOnly(2026, 11, 16).AddDays(4 * i), 7.6 + (2.4 * Math.Exp(-i / 3.0)))).ToList();
        var logged = DemoProject.Project with
        {
            Logbook = [.. days.Select(d => new LogEntry { Date = d.Item1, Kind = "weigh-in", MassKg = d.Item2 })],
        };
        var brought = Proof.Of("weight").Read(new ProofRequest(_ => null, _ => [], Demo) { Weighings = days }).Outcome!;
        var typed = Ask("weight", new Facts(logged, DemoDrivers.All), [("mass", "7.8 kg")]).Outcome!;
        Assert.Equal(brought.Result, typed.Result);
        Assert.Equal(brought.Figures.Select(f => (f.Name, f.Text)), typed.Figures.Skip(1).Select(f => (f.Name, f.Text)));
        Assert.Empty(brought.Entry);
        Assert.Equal([("kind", "weigh-in"), ("part", "cabinet"), ("mass", "7.8 kg")], typed.Entry);
    }

    [Fact]
    public void The_ear_s_answer_is_about_a_part_or_the_whole_cabinet()
    {
        Assert.Equal(("no rattle", "cabinet"), (Ask("rattle", null, []).Outcome!.Entry[0].Stated, Ask("rattle", null, []).Outcome!.Entry[1].Stated));
        Assert.Equal([("kind", "rattle"), ("part", "terminal"), ("note", "slow sweep by ear")], Ask("rattle", null, [("part", " terminal ")]).Outcome!.Entry);
    }

    private static ProofReading Ask(string kind, Facts? facts, (string Name, string Text)[] stated, params (string Name, Recording Sound)[] sounds) =>
        Proof
            .Of(kind)
            .Read(
                new ProofRequest(
                    name => stated.FirstOrDefault(s => s.Name == name).Text,
                    name => [.. sounds.Where(s => s.Name == name).Select(s => s.Sound)],
                    facts
                )
            );

    private static Recording Impedance(double resonanceHz)
    {
        var ratio = resonanceHz / 30;
        var model = new ImpedanceModel(3.55, resonanceHz, 5.5 * ratio, 3.55 * 5.5 / 0.475, 1.2e-3);
        return Synthetic.Impedance(new ExponentialSweep(5, 1000, 6).Samples(Rate, -6), Rate, 10, model.AtOhm);
    }
}
