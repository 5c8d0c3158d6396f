using System.Reflection;
using System.Text.RegularExpressions;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Formulas;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Tests.Rules;

/// <summary>Sources are told once, in docs/sources.md; whatever names one names it as that table does.</summary>
public sealed partial class SourceTests
{
    private const string Add =
        "begin with the label of a row of docs/sources.md, or say \"our choice\", \"common practice, no source\", \"from memory\" or \"estimate\"; "
        + "a new source gets a row there:\n";

    private static readonly string[] HowKnown = ["seen", "from memory", "own choice", "common practice, no source", "estimate", "derived"];

    // Defaults that are no figure: nothing is assumed, or another figure stands in.
    private static readonly string[] NoFigure =
    [
        "none",
        "one",
        "one piece",
        "SI",
        "square edges",
        "even spacing",
        "the room’s decay time",
        "the room’s temperature",
        "the mix’s usual ratio",
        "the mix’s usual pot life",
        "the mix’s own grain",
    ];

    [Fact]
    public void Every_source_that_a_user_reads_is_in_the_table()
    {
        var lost = Read().Where(s => !Resolves(s.Text)).Select(s => $"{s.Place}: {s.Text}").ToList();
        Assert.True(lost.Count == 0, Add + string.Join("\n", lost));
    }

    [Fact]
    public void Every_source_of_a_documentation_card_is_in_the_table()
    {
        var cards = Repository.Sources("src").SelectMany(Cards).ToList();
        Assert.True(cards.Count > 300);
        var lost = cards.Where(s => !Resolves(s.Text)).Select(s => $"{s.Place}: {s.Text}").ToList();
        Assert.True(lost.Count == 0, Add + string.Join("\n", lost));
    }

    [Fact]
    public void Whatever_a_user_reads_of_a_publication_known_from_memory_says_so()
    {
        var silent = Read()
            .SelectMany(s => SourceTable.Named(s.Text).Where(r => r.Cells.Count > 3).Select(r => (s.Place, s.Text, r.Label, r.HowKnown)))
            .Where(s => s.HowKnown.StartsWith("from memory", StringComparison.Ordinal) && !s.Text.Contains("from memory", StringComparison.Ordinal))
            .Select(s => $"{s.Place}: {s.Label}")
            .ToList();
        Assert.True(silent.Count == 0, "write \"(from memory)\" behind the label:\n" + string.Join("\n", silent));
    }

    [Fact]
    public void Every_publication_that_any_text_cites_is_in_the_table()
    {
        var lost = Texts()
            .SelectMany(file => SourceTable.Citations(SourceTable.Read(file)).Select(c => (File: Repository.Relative(file), Cited: c)))
            .Where(c => SourceTable.Cited(c.Cited).Count == 0)
            .Select(c => $"{c.File}: {c.Cited}")
            .Distinct()
            .ToList();
        Assert.True(lost.Count == 0, "cite it as its label in docs/sources.md reads (\"Hopkins 2007\"), or add a row there:\n" + string.Join("\n", lost));
    }

    [Fact]
    public void No_text_leans_on_a_book_without_a_name()
    {
        // Written in pieces, so that this file does not hold them.
        string[] nameless = ["text" + "book", "mechanics " + "text", "not " + "noted"];
        var lost = Texts()
            .Select(file => (Place: Repository.Relative(file), Text: SourceTable.Read(file)))
            .SelectMany(t => nameless.Where(w => t.Text.Contains(w, StringComparison.Ordinal)).Select(w => $"{t.Place}: {w}"))
            .ToList();
        Assert.True(lost.Count == 0, "name the book by a label of docs/sources.md, or say \"elementary\" or \"from memory\":\n" + string.Join("\n", lost));
    }

    [Fact]
    public void Every_row_of_the_table_is_used()
    {
        var used = Texts().Select(SourceTable.Read).SelectMany(SourceTable.Named).ToHashSet();
        var idle = SourceTable.Rows.Except(used).Select(r => r.Label).ToList();
        Assert.True(idle.Count == 0, "name the source where its figures are, or take its row out of docs/sources.md:\n" + string.Join("\n", idle));
    }

    [Fact]
    public void Every_row_of_the_table_says_how_it_is_known()
    {
        var wrong = SourceTable
            .Rows.Where(r => r.Cells.Any(string.IsNullOrEmpty) || !HowKnown.Any(word => Regex.IsMatch(r.HowKnown, $"^{word}($|[,:;] | )")))
            .Select(r => $"{r.Label}: {r.HowKnown}")
            .Concat(SourceTable.Rows.GroupBy(r => r.Label).Where(g => g.Count() > 1).Select(g => $"{g.Key}: told twice"))
            .ToList();
        Assert.True(
            wrong.Count == 0,
            $"fill every cell of the row in docs/sources.md, once, the last beginning with one of: {string.Join(" | ", HowKnown)}:\n" + string.Join("\n", wrong)
        );
    }

    private sealed record Told(string Place, string Text);

    // Resolved: the table names it, or it points to another card ("as that", "see BuildUp").
    private static bool Resolves(string text) => SourceTable.Named(text).Count > 0 || Elsewhere().IsMatch(text);

    private static IEnumerable<Told> Read() =>
        [
            .. FormulaCatalogue.All.Select(f => new Told($"formula {f.Id}", f.Source)),
            .. Appraisal.WithoutRemedies(new Project { FormatVersion = 1 }, []).Findings.Select(f => new Told($"finding {f.Id}", f.Basis)),
            .. CastMixes.All.Select(m => new Told($"mix {m.Name}", m.Basis)),
            .. SkinMaterials.All.Select(m => new Told($"plastic {m.Name}", m.Basis)),
            .. LimitCurves.All.Select(c => new Told($"curve {c.Name}", c.Source + (c.IsFromMemory ? ", from memory" : ""))),
            .. CautionTable.All.Select(c => new Told($"caution {c.Hazard}", c.Source)),
            new Told("panel", Stillwall.Walls.PanelModel.Basis),
            .. Defaults().Where(d => !NoFigure.Contains(d.Text)),
        ];

    private static IEnumerable<Told> Defaults() =>
        Repository
            .Library.GetTypes()
            .SelectMany(t => t.GetProperties())
            .Select(p => (Property: p, p.GetCustomAttribute<DefaultFromAttribute>()?.Text))
            .Where(p => p.Text is not null)
            .Select(p => new Told($"default of {p.Property.DeclaringType!.Name}.{p.Property.Name}", p.Text!));

    private static IEnumerable<Told> Cards(string file) =>
        Card().Matches(SourceTable.Read(file)).Select(m => new Told(Repository.Relative(file), m.Groups[1].Value.Trim()));

    private static IEnumerable<string> Texts() =>
        new[] { "src", "tests", "bench", "docs", "samples" }
            .SelectMany(folder => new[] { "*.cs", "*.md" }.SelectMany(pattern => Repository.Files(folder, pattern)))
            .Where(file => Path.GetFileName(file) is not ("sources.md" or "SourceTable.cs" or "SourceTests.cs"));

    [GeneratedRegex("^(as|see|those|the same|<see)\\b|^<see")]
    private static partial Regex Elsewhere();

    [GeneratedRegex("Source: (.*?)(?= Accuracy:| Validity:|</remarks>)")]
    private static partial Regex Card();
}
