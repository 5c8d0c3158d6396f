using System.Text.RegularExpressions;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;

namespace Stillwall.Cli.Tests;

/// <summary>Every caution of the table is said by the verb that is called for its step; a new hazard is looked for by itself.</summary>
public sealed partial class CautionTests : IDisposable
{
    // What is read at a step beside the appraisal, and whether a project is known there.
    private static readonly Dictionary<WorkStep, (string Words, bool KnowsProject)> Faces = new()
    {
        [WorkStep.Supplies] = ("supplies reading-room", true),
        [WorkStep.Pour] = ("pour reading-room", true),
        [WorkStep.Soak] = ("pour reading-room", true),
        [WorkStep.Stir] = ("pour reading-room", true),
        [WorkStep.Fill] = ("pour reading-room", true),
        [WorkStep.TapWalls] = ("pour reading-room", true),
        [WorkStep.Set] = ("pour reading-room", true),
        [WorkStep.CleanUp] = ("pour reading-room", true),
        [WorkStep.WeighIn] = ("prove weight --help", false),
        [WorkStep.Signal] = ("signal tone --out tone.wav --project reading-room", true),
        [WorkStep.Impedance] = ("prove impedance --help", false),
        [WorkStep.Sweep] = ("prove sweep --help", false),
        [WorkStep.TapTest] = ("prove tap --help", false),
        [WorkStep.HoldTest] = ("prove hold --seconds 2 --project reading-room", true),
        [WorkStep.Rattle] = ("prove rattle", false),
        [WorkStep.Polarity] = ("prove polarity --help", false),
        [WorkStep.PartyWall] = ("prove wall --help", false),
        [WorkStep.Quiet] = ("quiet reading-room", true),
        [WorkStep.Equaliser] = ("filter transform --f0 49Hz --q 0.7 --fp 28Hz", false),
    };

    // The demo, and one that gives cause for what the demo does not.
    private static readonly (string Key, string Json)[] Grave =
    [
        (
            "materials.cast",
            "{ \"mix\": \"own\", \"own\": { \"powder_density\": \"2600 kg/m3\", \"bound_water\": 0.2, \"modulus\": \"5 GPa\" }, \"bucket\": \"2 L\" }"
        ),
        ("limits.lift_mass", "\"5 kg\""),
        ("cabinet.openings.drying_hole", "\"5 mm\""),
    ];

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Every_step_is_one_of_the_job_or_has_a_verb_of_its_own() =>
        Assert.All(
            WorkSteps.All,
            s => Assert.True(s.Say is not null || Faces.ContainsKey(s.Step) || s.Step == WorkStep.Template, $"{s.Word}: name the verb that is called for it")
        );

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_verb_says_every_caution_of_its_step(bool isGrave)
    {
        var facts = Prepared(isGrave);
        var said = Faces.Values.Select(f => f.Words).Distinct().ToDictionary(w => w, w => Flat(desk.Run(w.Split(' '))));
        foreach (var (step, face) in Faces)
        {
            Assert.All(Cautions.At(step, face.KnowsProject ? facts : null), c => Assert.Contains(c.Sentence, said[face.Words], StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_whole_list_of_an_appraisal_names_every_hazard_with_its_steps(bool isGrave)
    {
        var facts = Prepared(isGrave);
        var all = Flat(desk.Run("appraise", "reading-room", "--all"));
        Assert.All(
            Cautions.Of(facts).GroupBy(c => c.Hazard),
            g => Assert.Contains($"! {g.First().Sentence} ({string.Join(", ", g.Select(c => WorkSteps.Word(c.Step)))})", all, StringComparison.Ordinal)
        );
        var json = desk.Run("appraise", "reading-room", "--json").Json.GetProperty("cautions").EnumerateArray().ToList();
        Assert.Equal(
            Cautions.Of(facts).Select(c => (Key(c.Step), Key(c.Hazard), c.Sentence)),
            json.Select(c => (c.GetProperty("step").GetString()!, c.GetProperty("hazard").GetString()!, c.GetProperty("sentence").GetString()!))
        );
    }

    [Fact]
    public void The_next_thing_to_do_comes_with_its_cautions()
    {
        var facts = Prepared(false);
        foreach (var step in WorkSteps.All.Where(s => s.Say is not null).SkipLast(1))
        {
            desk.State("logbook", $"[ {{ \"date\": \"2026-11-07\", \"kind\": \"{step.Word}\" }} ]");
            var (say, after) = (Flat(desk.Run("appraise", "reading-room")).Split("next: ")[1], WorkSteps.All.Single(s => s.Step == NextAfter(step.Step)));
            Assert.StartsWith(after.Say!, say, StringComparison.Ordinal);
            Assert.NotEmpty(Cautions.At(after.Step, facts));
            Assert.All(Cautions.At(after.Step, facts), c => Assert.Contains($"! {c.Sentence}", say, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Of_all_the_others_an_appraisal_tells_the_worst_and_where_the_rest_stands()
    {
        var lines = desk.Run("appraise", "reading-room").Output.Split("\nnext: ")[0];
        Assert.Equal(5, Regex.Count(lines, "^! ", RegexOptions.Multiline));
        Assert.Contains(Cautions.Of(Hazard.PlasterHeat), lines, StringComparison.Ordinal);
        Assert.Matches("[0-9]+ more, each said at its step; --all lists them", lines);
    }

    [Fact]
    public void What_most_plans_have_not_an_appraisal_always_tells()
    {
        var facts = Prepared(true);
        var said = Flat(desk.Run("appraise", "reading-room"));
        var unusual = CautionTable.All.Where(c => c.IsUnusual).Select(c => c.Hazard).ToList();
        Assert.NotEmpty(unusual);
        Assert.All(unusual, h => Assert.Contains(Cautions.Of(facts).First(c => c.Hazard == h).Sentence, said, StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_script_reads_has_no_caution_in_it()
    {
        Assert.DoesNotContain("!", desk.Run("prove", "hold", "--seconds", "2", "--project", "reading-room", "--json").Output, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "!",
            desk.Run("filter", "transform", "--f0", "49Hz", "--q", "0.7", "--fp", "28Hz", "--csv", "-").Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("!", desk.Run("filter", "peaking", "--f0", "49Hz", "--gain", "-6 dB").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void That_weighting_hides_bass_is_said_once_even_where_the_dose_is_past_its_limit()
    {
        desk.State("brief.everyday.level", "\"120 dB\"");
        desk.State("brief.everyday.hours", "24");
        var quiet = Flat(desk.Run("quiet", "reading-room"));
        Assert.Contains("Quiet: hearing:", quiet, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(quiet, "A-weighting hides bass"));
    }

    private Facts Prepared(bool isGrave)
    {
        foreach (var (key, json) in isGrave ? Grave : [])
        {
            desk.State(key, json);
        }

        var read = ProjectReader.Read(File.ReadAllText(desk.Project));
        Assert.True(read.Project is not null, string.Join("; ", read.Faults));
        return new Facts(
            read.Project,
            [.. DriverTable.Read(File.ReadAllText(desk.PathTo("reading-room/drivers.csv")), "drivers.csv").Rows.Select(r => r.Sheet)]
        );
    }

    // Until it is dry the weigh-in comes before the seal.
    private static WorkStep NextAfter(WorkStep step)
    {
        var job = WorkSteps.All.Where(s => s.Say is not null).Select(s => s.Step).ToList();
        var next = job[job.IndexOf(step) + 1];
        return next == WorkStep.Seal ? WorkStep.WeighIn : next;
    }

    private static string Key<T>(T name)
        where T : struct, Enum => Capital().Replace(name.ToString(), "_$0").TrimStart('_').ToLowerInvariant();

    private static string Flat(Ran ran)
    {
        Assert.True(ran.ExitCode == 0, ran.Error);
        return Spaces().Replace(ran.Output + " " + ran.Error, " ");
    }

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capital();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
