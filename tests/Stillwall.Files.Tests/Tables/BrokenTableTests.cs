using Stillwall.Files.Tables;

namespace Stillwall.Files.Tests.Tables;

public class BrokenTableTests
{
    private const string Topic = "tables/broken";

    public static TheoryData<string> Files => TestData.Files(Topic, ".csv");

    [Theory]
    [MemberData(nameof(Files))]
    public void A_broken_table_is_told_fault_by_fault(string file)
    {
        var table = DriverTable.Read(File.ReadAllBytes(Path.Combine(TestData.Folder(Topic), file)));

        Assert.Equal(TestData.ExpectedLines(Topic, file), table.AllFaults.Select(f => f.ToString()));
    }
}
