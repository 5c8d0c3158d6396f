using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Stillwall.Tests.Rules;

/// <summary>Where many values are handed over, each says what it is: two numbers that change places would pass the compiler and every reader.</summary>
public sealed class ArgumentTests
{
    private const int Most = 6;

    [Fact]
    public void More_than_six_arguments_are_given_by_name()
    {
        var wrong = Repository.Sources("src").SelectMany(file => Nameless(File.ReadAllText(file)).Select(w => $"{Repository.Relative(file)}:{w}")).ToList();
        Assert.True(wrong.Count == 0, $"name each argument, or give the record properties with init and a default:\n{string.Join("\n", wrong)}");
    }

    [Theory]
    [InlineData("var x = new Figures(1, 2, 3, 4, 5, 6, 7);")]
    [InlineData("Figures x = new(1, 2, 3, 4, 5, 6, 7);")]
    [InlineData("var x = new Figures(1, 2, 3, d: 4, e: 5, f: 6, g: 7);")]
    [InlineData("var x = new Figures(null, null, null, null, null, null, null, null) { Last = 9 };")]
    [InlineData("Work(1, 2, 3, 4, 5, 6, 7);")]
    [InlineData("x.Work(x => x, 2, 3, 4, 5, 6, 7);")]
    [InlineData("var x = y is Figures(1, 2, 3, 4, 5, 6, 7);")]
    [InlineData("class A : B { A() : base(1, 2, 3, 4, 5, 6, 7) { } }")]
    [InlineData("class A { A() : this(1, 2, 3, 4, 5, 6, 7) { } }")]
    [InlineData("record A(int X) : B(1, 2, 3, 4, 5, 6, X);")]
    public void Seven_without_names_are_found(string source) => Assert.Single(Nameless(source));

    [Theory]
    [InlineData("var x = new Figures(1, 2, 3, 4, 5, 6);")]
    [InlineData("var x = new Figures(a: 1, b: 2, c: 3, d: 4, e: 5, f: 6, g: 7);")]
    [InlineData("var x = new Figures { A = 1, B = 2, C = 3, D = 4, E = 5, F = 6, G = 7 };")]
    [InlineData("Work(1, 2, 3, d: 4, e: 5, f: 6, g: 7);")]
    [InlineData("int[] x = [1, 2, 3, 4, 5, 6, 7];")]
    [InlineData("var x = (1, 2, 3, 4, 5, 6, 7);")]
    [InlineData("record A(int B, int C, int D, int E, int F, int G, int H);")]
    [InlineData("[OneOf(\"a\", \"b\", \"c\", \"d\", \"e\", \"f\", \"g\")] class A;")]
    public void Fewer_and_named_ones_are_left_alone(string source) => Assert.Empty(Nameless(source));

    // Line and text of each list that is too long; of what makes an object every name is asked for as soon as there are seven. An attribute's many
    // values are the words of one list; elsewhere such a list stands in brackets.
    private static IEnumerable<string> Nameless(string source)
    {
        var tree = CSharpSyntaxTree.ParseText(source, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest));
        return from node in tree.GetRoot().DescendantNodes()
               let isTooLong = node switch
               {
                   PositionalPatternClauseSyntax list => list.Subpatterns.Count(p => p.NameColon is null && p.ExpressionColon is null) > Most,
                   BaseArgumentListSyntax { Parent: InvocationExpressionSyntax or ElementAccessExpressionSyntax } list => Unnamed(list) > Most,
                   BaseArgumentListSyntax list => list.Arguments.Count > Most && Unnamed(list) > 0,
                   _ => false,
               }
               where isTooLong
               select $"{tree.GetLineSpan(node.Span).StartLinePosition.Line + 1}: {node.Parent!.ToString().Split('\n')[0].Trim()}";
    }

    private static int Unnamed(BaseArgumentListSyntax list) => list.Arguments.Count(a => a.NameColon is null);
}
