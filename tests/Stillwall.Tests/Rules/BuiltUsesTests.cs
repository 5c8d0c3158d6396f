namespace Stillwall.Tests.Rules;

/// <summary>The reader of built assemblies finds what it is there to find: Fixture has a use of every kind, each in a class named after it.</summary>
public sealed class BuiltUsesTests
{
    private const string Fixture = "Stillwall.Tests.Rules.Fixture.";

    private static readonly IReadOnlyCollection<BuiltUse> Uses = BuiltUses.Of(typeof(BuiltUsesTests).Assembly);

    [Theory]
    [InlineData("Body")]
    [InlineData("Lambda")]
    [InlineData("MethodGroup")]
    [InlineData("LocalFunction")]
    [InlineData("Iterator")]
    [InlineData("Asynchronous")]
    [InlineData("GenericArgumentOfAMethod")]
    [InlineData("GenericArgumentOfAType")]
    [InlineData("TypeOf")]
    [InlineData("Test")]
    [InlineData("Local")]
    [InlineData("Catch")]
    [InlineData("Field")]
    [InlineData("Initializer")]
    [InlineData("Subscription")]
    [InlineData("Nested")]
    [InlineData("Tuple")]
    [InlineData("Constraint")]
    [InlineData("Attributed")]
    [InlineData("AttributedByArgument")]
    [InlineData("Inherited")]
    public void A_later_stage_under_a_relative_name_is_found(string kind) => Assert.NotEmpty(Later($"{Fixture}Briefs.{kind}", "Walls"));

    [Fact]
    public void Every_class_of_the_fixture_is_looked_for()
    {
        var asked = typeof(BuiltUsesTests)
            .GetMethod(nameof(A_later_stage_under_a_relative_name_is_found))!
            .GetCustomAttributesData()
            .Where(a => a.AttributeType == typeof(InlineDataAttribute))
            .Select(a => $"{Fixture}Briefs.{((IReadOnlyList<System.Reflection.CustomAttributeTypedArgument>)a.ConstructorArguments[0].Value!)[0].Value}");
        var found = Uses.Where(u => u.Of.StartsWith($"{Fixture}Walls.", StringComparison.Ordinal)).Select(u => u.By.Split('+')[0]);
        Assert.Equal(asked.Order(), found.Where(by => by.StartsWith($"{Fixture}Briefs.", StringComparison.Ordinal)).Distinct().Order());
    }

    [Fact]
    public void An_earlier_stage_is_found_as_such_and_what_uses_none_is_left_alone()
    {
        Assert.NotEmpty(Later($"{Fixture}Walls.Upright", "Briefs"));
        Assert.Empty(Later($"{Fixture}Walls.Tilt", "Briefs"));
        Assert.Empty(Later($"{Fixture}Briefs.Plain", "Walls"));
    }

    private static IEnumerable<BuiltUse> Later(string by, string folder) =>
        Uses.Where(u => u.By.Split('+')[0] == by && u.Of.StartsWith($"{Fixture}{folder}.", StringComparison.Ordinal));
}
