using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Hostile;

public class SpoiltFilesTests
{
    private const int Projects = Trials.Cases / 10 * 6, Tables = Trials.Cases / 10 * 3;

    // Of the spoilt files few are still accepted; of those every so manieth is appraised.
    private const int AppraisedOf = 100;

    private static readonly string Demo = File.ReadAllText(TestData.Demo("stillwall.json")), Drivers = File.ReadAllText(TestData.Demo("drivers.csv"));

    [Fact]
    public void A_spoilt_project_is_refused_in_short_lines_or_appraised_in_finite_numbers() => Trials.Run(0, Projects, seed =>
    {
        var bytes = Mutation.Spoil(Demo, new Dice(seed));
        var (reading, again) = (ProjectReader.Read(bytes), seed % 50 == 0 ? ProjectReader.Read(bytes) : null);
        if (again is not null && !reading.Faults.SequenceEqual(again.Faults))
        {
            return "is told differently the second time";
        }

        return (reading.Project is null) != (reading.Faults.Count > 0) ? "neither read nor refused"
            : Checked.Faults(reading.Faults)
            ?? (reading.Project is { } project && seed % AppraisedOf == 0 ? Checked.Appraisal(project, DemoDrivers.All, withRemedies: false) : null);
    });

    [Fact]
    public void A_spoilt_table_of_drivers_is_told_row_by_row_in_short_lines() => Trials.Run(0, Tables, seed =>
    {
        var table = DriverTable.Read(Mutation.SpoilTable(Drivers, new Dice(seed)));
        return Checked.Faults(table.AllFaults) ?? table.Rows.Select((row, i) => Finite.FirstFault(row.Sheet, $"rows[{i}]")).FirstOrDefault(f => f is not null);
    });

    [Fact]
    public void A_driver_that_was_read_from_a_spoilt_table_is_appraised_in_finite_numbers() => Trials.Run(0, Trials.Appraised, seed =>
    {
        var rows = DriverTable.Read(Mutation.SpoilTable(Drivers, new Dice(seed))).Rows.Where(row => row.Faults.Count == 0).Select(row => row.Sheet).ToList();
        return rows.Count == 0 ? null : Checked.Appraisal(DemoProject.Project with { Driver = new(rows[seed % rows.Count].Name, null) }, rows, withRemedies: false);
    });
}
