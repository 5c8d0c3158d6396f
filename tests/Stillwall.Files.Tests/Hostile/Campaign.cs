using System.Text;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Files.Json;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Hostile cases, each taken all the way: refused in short lines, or appraised and ranked in finite numbers.</summary>
internal sealed class Campaign
{
    private const int LongestBytes = 50_000_000;

    private static readonly string Demo = File.ReadAllText(TestData.Demo("stillwall.json")),
        Drivers = File.ReadAllText(TestData.Demo("drivers.csv"));

    private int appraised;

    /// <summary>How many cases were taken as far as findings.</summary>
    internal int AppraisedCount => appraised;

    /// <summary>
    /// One case: what is wrong with its outcome, or null. Of fifty cases 23 spoil the text, 15 the tree, 11 the drivers' table, and one lies at the
    /// ends of what is accepted.
    /// </summary>
    internal string? Case(int seed)
    {
        var dice = new Dice(seed);
        return (seed % 50) switch
        {
            < 23 => Project(seed % 10_000 == 4 ? OneLongLine(dice) : Mutation.Spoil(Demo, dice), seed),
            < 38 => Project(TreeMutation.Spoil(Demo, dice), seed),
            < 49 => Table(seed % 10_000 == 40 ? OneLongLine(dice) : Mutation.SpoilTable(Drivers, dice), dice),
            _ => Corner(dice),
        };
    }

    private string? Project(byte[] bytes, int seed)
    {
        var reading = ProjectReader.Read(bytes);
        if (seed % 50 == 7 && !reading.Faults.SequenceEqual(ProjectReader.Read(bytes).Faults))
        {
            return "is told differently the second time";
        }

        return (reading.Project is null) != (reading.Faults.Count > 0)
            ? "neither read nor refused"
            : Checked.Faults(reading.Faults) ?? (reading.Project is { } project ? Appraised(project, DemoDrivers.All, false, bytes) : null);
    }

    private string? Table(byte[] bytes, Dice dice)
    {
        var table = DriverTable.Read(bytes);
        var rows = table.Rows.Where(row => row.Faults.Count == 0).Select(row => row.Sheet).ToList();
        return Checked.Faults(table.AllFaults)
            ?? table.Rows.Select((row, i) => Finite.FirstFault(row.Sheet, $"rows[{i}]")).FirstOrDefault(f => f is not null)
            ?? (
                rows.Count == 0
                    ? null
                    : Ranked(DemoProject.Project, rows) ?? Appraised(DemoProject.Project with { Driver = new(dice.Pick(rows).Name, null) }, rows, false, bytes)
            );
    }

    private string? Corner(Dice dice)
    {
        var project = Accepted.Draw(dice, DemoProject.Project);
        return Appraised(project, DemoDrivers.All, true, []) ?? Ranked(project, DemoDrivers.All);
    }

    private string? Appraised(Project project, IReadOnlyList<DriverSheet> candidates, bool withRemedies, byte[] stated)
    {
        Interlocked.Increment(ref appraised);
        var appraisal = withRemedies ? Appraisal.Of(project, candidates) : Appraisal.WithoutRemedies(project, candidates);
        return Checked.Appraisal(appraisal, Encoding.UTF8.GetString(stated))
            ?? (ResultJson.Write(appraisal).Length < 1000 ? "is next to nothing as JSON" : null);
    }

    private static string? Ranked(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        var ranked = Ranking.Of(project, candidates);
        return ranked.Drivers.Count != candidates.Count
            ? "a candidate is lost in the ranking"
            : Finite.FirstFault(ranked, "ranking") ?? (ResultJson.Write(ranked).Length == 0 ? "is nothing as JSON" : null);
    }

    private static byte[] OneLongLine(Dice dice)
    {
        var bytes = new byte[LongestBytes];
        Array.Fill(bytes, dice.Pick([(byte)' ', (byte)'x', (byte)'[', (byte)',', (byte)'"']));
        return bytes;
    }
}
