using Stillwall.Files.Projects;

namespace Stillwall.Files.Tests.Projects;

public class BrokenProjectTests
{
    private const string Topic = "projects/broken";

    public static TheoryData<string> Files => TestData.Files(Topic, ".json");

    [Theory]
    [MemberData(nameof(Files))]
    public void A_broken_project_is_told_fault_by_fault(string file)
    {
        var reading = ProjectReader.Read(File.ReadAllBytes(Path.Combine(TestData.Folder(Topic), file)));

        Assert.Null(reading.Project);
        Assert.Equal(TestData.ExpectedLines(Topic, file), reading.Faults.Select(f => f.ToString()));
    }
}
