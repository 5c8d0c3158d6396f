namespace Stillwall.Tests.Rules;

/// <summary>
/// Public is what another program needs: the stated model, what is computed from it, findings and explanations, materials, formulas of the stages,
/// readings of proofs, charts. The list of it is approved by hand.
/// </summary>
public sealed class SurfaceTests
{
    private static readonly string Approved = Path.Combine(Repository.Root, "tests", "data", "surface", "public-types.txt");

    [Fact]
    public void The_public_types_of_the_library_are_the_approved_ones()
    {
        var approved = File.ReadAllLines(Approved);
        var found = Repository.PublicTypes.Select(t => t.FullName!).ToList();
        var added = found.Except(approved).ToList();
        Assert.True(
            added.Count == 0,
            "make it internal: the other projects of the repository see it all the same; where another program needs it, add its name to "
                + $"{Repository.Relative(Approved)}:\n{string.Join("\n", added)}"
        );
        var gone = approved.Except(found).ToList();
        Assert.True(gone.Count == 0, $"take it out of {Repository.Relative(Approved)}, and say in CHANGELOG.md what replaces it:\n{string.Join("\n", gone)}");
        Assert.Equal(found, approved);
    }
}
