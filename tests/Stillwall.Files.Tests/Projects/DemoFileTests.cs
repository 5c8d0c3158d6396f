using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Projects;

/// <summary>The tests of the library hold the demo as code, since the library reads no files; here it is held to the files.</summary>
public sealed class DemoFileTests
{
    [Fact]
    public void The_demo_file_reads_to_the_project_that_the_library_is_tested_with()
    {
        var reading = ProjectReader.Read(File.ReadAllText(TestData.Demo("stillwall.json")));
        Assert.Empty(reading.Faults);
        Models.AssertSame(DemoProject.Project, reading.Project);
    }

    [Fact]
    public void The_demo_table_reads_to_the_drivers_that_the_library_is_tested_with()
    {
        var table = DriverTable.Read(File.ReadAllText(TestData.Demo("drivers.csv")));
        Assert.Equal(DemoDrivers.All, table.Rows.Select(r => r.Sheet));
    }
}
