using System.Text.RegularExpressions;

namespace Stillwall.Cli.Tests;

/// <summary>What people read: in their units, and no wider than what they read it on.</summary>
public sealed partial class PeopleTests : IDisposable
{
    private static readonly string[] OfAProject =
    [
        "appraise reading-room",
        "appraise reading-room --all",
        "rank reading-room",
        "pour reading-room",
        "supplies reading-room",
        "quiet reading-room",
        "room reading-room",
        "join reading-room",
        "curves reading-room",
        "filter peaking --f0 45Hz --q 2 --gain -8dB",
    ];

    // One result for each unit, and a few findings.
    private static readonly string[] Results =
    [
        "box.net_volume_m3",
        "box.system_resonance_hz",
        "box.system_q",
        "box.max_spl_at_lowest_db",
        "box.power_needed_w",
        "walls.left.width_m",
        "walls.front.bonded.wall_to_cone_db",
        "parts[0].volume_m3",
        "parts[0].mass_kg",
        "pour.form_pressure_pa",
        "pour.slurry_density_kg_m3",
        "pour.expected_peak_c",
        "pour.duration_s",
        "print.print_seconds",
        "pour.dry_out_least_days",
        "mass.finished_kg",
        "cost.total_price",
        "quiet.bands[63].neighbour_db",
        "supplies[\"cable\"].needed",
        "pour/skins-bulge",
        "cabinet/fill-sensible",
        "quiet/force-into-the-floor-does-it-walk",
        "walls/driver-screws-hold",
    ];

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    public static TheoryData<string, string?> Broken =>
        new()
        {
            { "brief.aim.level", "\"110 dB\"" },
            { "cabinet.strut_pitch", "\"110 mm\"" },
            { "cabinet.outside.depth", "\"500 mm\"" },
            { "materials.cast.powder_per_water", "3" },
            { "cabinet.outer_skin", "\"0.6 mm\"" },
            { "cabinet.core", "\"5 mm\"" },
            { "stock", "[]" },
            { "stock", null },
            { "prices", null },
            { "materials.cast.bucket", "\"1 L\"" },
            { "brief.room", null },
            { "brief.neighbour.partition", "\"plasterboard-75\"" },
            { "measured", "{ \"core_modulus\": \"1 GPa\" }" },
            { "materials.cast.hold_down", null },
            { "materials.cast.pot_life", "\"3.2 min\"" },
            {
                "stock",
                "[ { \"item\": \"cast powder\", \"amount\": \"1 kg\" }, { \"item\": \"sealant\", \"amount\": \"1 pc\", \"best_before\": \"2026-01-01\" } ]"
            },
        };

    [Theory]
    [InlineData("metric")]
    [InlineData("inch")]
    public void Every_verb_shows_the_units_that_the_project_asks_for(string units)
    {
        desk.State("display_units", $"\"{units}\"");
        Assert.All(OfAProject, words => OnlyIn(units, desk.Run(words.Split(' '))));
        Assert.All(
            new[] { "appraise", "pour", "supplies", "curves" },
            verb => Assert.Matches(units == "metric" ? Metres() : Inches(), desk.Run(verb, "reading-room").Output)
        );
        Assert.All(Results, result => OnlyIn(units, WithoutFormula(desk.Run("why", result, "--project", "reading-room"))));
        OnlyIn(units, desk.Run("set", "cabinet.core", "14.3 mm", "--project", "reading-room"));
        OnlyIn(units, desk.Run("set", "brief.room.seat_at", "2 m, 2.5 m, 1.1 m", "--project", "reading-room"));
        OnlyIn(units, desk.Run("set", "materials.cast.pour_rate", "1 L/min", "--project", "reading-room"));
        OnlyIn(units, desk.Run("set", "cabinet.strut_pitch", "110 mm", "--project", "reading-room"));
        OnlyIn(units, desk.Run("apply", "pour/skins-bulge", "--project", "reading-room"));
    }

    [Fact]
    public void Drying_holes_are_taped_before_the_pour_bared_and_sealed_after_it()
    {
        desk.Run("set", "cabinet.openings.drying_hole", "5 mm", "--project", "reading-room");
        desk.Run("set", "cabinet.openings.recess", "1 mm", "--project", "reading-room");
        Within(60, "pour reading-room");
        Within(80, "appraise reading-room");
        var pour = Spaces().Replace(desk.Run("pour", "reading-room").Output, " ");
        Assert.Contains("[ ] 136 drying holes of 5 mm taped from inside", pour, StringComparison.Ordinal);
        Assert.Contains("it leaks, a taped hole too, or a skin bulges", pour, StringComparison.Ordinal);
        Assert.Contains("Once it is dry each is sealed", pour, StringComparison.Ordinal);
        Assert.Contains(
            "! A drying hole left open lets the box leak",
            Spaces().Replace(desk.Run("appraise", "reading-room").Output, " "),
            StringComparison.Ordinal
        );
        Assert.Contains("masking tape (missing)", Spaces().Replace(desk.Run("appraise", "reading-room").Output, " "), StringComparison.Ordinal);
        Assert.Equal(
            (2, ""),
            desk.Run("set", "cabinet.openings.recess", "1.5 mm", "--project", "reading-room") is var refused ? (refused.ExitCode, refused.Output) : default
        );
    }

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();

    [Theory]
    [MemberData(nameof(Broken))]
    public void What_does_not_hold_is_told_in_the_units_of_the_project_and_keeps_to_its_width(string key, string? value)
    {
        desk.State("display_units", "\"inch\"");
        desk.State(key, value);
        foreach (
            var (words, width) in new[] { ("appraise reading-room", 80), ("pour reading-room", 60), ("supplies reading-room", 80), ("quiet reading-room", 80) }
        )
        {
            OnlyIn("inch", Within(width, words));
        }
    }

    [Theory]
    [InlineData("metric", "mix", "--powder", "4kg")]
    [InlineData("inch", "mix", "--powder", "8lb")]
    [InlineData("inch", "mix", "--volume", "1.5 gal")]
    [InlineData("metric", "panel", "--layers", "2mm:petg,12mm:plaster,2mm:petg", "--size", "330mmx210mm")]
    [InlineData("inch", "panel", "--layers", "0.08in:petg,0.5in:plaster,0.08in:petg", "--size", "13inx8in")]
    public void A_verb_without_a_project_answers_in_the_units_it_was_asked_in(string units, params string[] words) => OnlyIn(units, desk.Run(words));

    [Fact]
    public void The_pour_can_be_read_on_a_telephone_and_the_rest_in_eighty_columns()
    {
        Within(60, "pour reading-room");
        Assert.All(new[] { "appraise reading-room", "supplies reading-room", "quiet reading-room" }, words => Within(80, words));
    }

    [Fact]
    public void The_other_verbs_keep_to_eighty_columns_too() =>
        Assert.All(
            new[]
            {
                "rank reading-room",
                "room reading-room",
                "join reading-room",
                "curves reading-room",
                "why box.system_q --project reading-room",
                "why walls.left.bonded.wall_to_cone_db --project reading-room",
                "mix --powder 4kg",
            },
            words => Within(80, words)
        );

    [Theory]
    [InlineData("appraise reading-room --all")]
    [InlineData("rank reading-room")]
    [InlineData("supplies reading-room")]
    [InlineData("quiet reading-room")]
    [InlineData("curves reading-room")]
    public void A_table_that_is_too_wide_is_told_row_by_row_with_every_number_whole(string words)
    {
        var (wide, narrow) = (
            desk.Run(words.Split(' '), terminal => terminal with { Width = 160 }),
            desk.Run(words.Split(' '), terminal => terminal with { Width = 44 })
        );
        Assert.All(narrow.Lines.Where(l => !l.Contains("stillwall ", StringComparison.Ordinal)), l => Assert.True(l.Length <= 44, l));
        Assert.Equal(Figures(wide.Output), Figures(narrow.Output));
    }

    [Fact]
    public void Every_batch_has_its_moment_by_which_it_must_be_poured()
    {
        var pour = desk.Run("pour", "reading-room").Output;
        var batches = desk.Run("appraise", "reading-room", "--json").Json.GetProperty("pour").GetProperty("batches").EnumerateArray().ToList();
        Assert.Equal(batches.Count, Regex.Count(pour, "MUST BE POURED BY"));
        Assert.All(
            batches,
            b =>
                Assert.Contains(
                    string.Create(
                        System.Globalization.CultureInfo.InvariantCulture,
                        $"▶{(int)b.GetProperty("pour_by_s").GetDouble() / 60,5}:{(int)b.GetProperty("pour_by_s").GetDouble() % 60:00}  MUST BE POURED BY"
                    ),
                    pour,
                    StringComparison.Ordinal
                )
        );
    }

    // 4 kg of filament are on the demo's shelf; without it four spools of 22 EUR are wanted.
    [Fact]
    public void The_shop_list_says_what_to_spend_now_in_whole_packs()
    {
        Assert.Contains("to spend now: nothing", desk.Run("supplies", "reading-room").Output, StringComparison.Ordinal);
        desk.State(
            "stock",
            "[ { \"item\": \"driver\", \"amount\": \"1 pc\" }, { \"item\": \"cast powder\", \"amount\": \"6 kg\" }, { \"item\": \"sealant\", \"amount\": "
                + "\"1 pc\", \"best_before\": \"2026-01-01\" }, "
                + "{ \"item\": \"terminal\", \"amount\": \"1 pc\" }, { \"item\": \"fill\", \"amount\": \"500 g\" }, { \"item\": \"screw\", \"amount\": "
                + "\"4 pc\" } ]"
        );
        var list = desk.Run("supplies", "reading-room").Output;
        Assert.Matches(@"filament +3\.24 kg +– +3\.24 kg +4 × 1 kg +88 EUR +missing", list);
        Assert.Matches(@"screw +8 pc +4 pc +4 pc +1 × 20 pc +4\.00 EUR +short", list);
        Assert.Matches("past its date, to be replaced: sealant", list);
    }

    [Fact]
    public void The_neighbour_question_is_answered_in_its_first_sentence()
    {
        Assert.StartsWith(
            "Your everyday 62.0 dB at the seat is polite, without any equaliser: up to ",
            desk.Run("quiet", "reading-room").Output,
            StringComparison.Ordinal
        );
        desk.State("brief.everyday.level", "\"75 dB\"");
        var louder = desk.Run("quiet", "reading-room").Output.ReplaceLineEndings(" ");
        Assert.StartsWith("Your everyday 75.0 dB at the seat is not polite as it is: only up to ", louder, StringComparison.Ordinal);
        Assert.Contains("turn it down by ", louder, StringComparison.Ordinal);
        desk.State("brief.neighbour", null);
        var unknown = desk.Run("quiet", "reading-room").Output.ReplaceLineEndings(" ");
        Assert.StartsWith("How loud is polite cannot be said yet; not stated yet: wall to the neighbour (brief.neighbour)", unknown, StringComparison.Ordinal);
    }

    // Every number with its decimals; a heading that stands beside each row in one layout and once in the other has none.
    private static IEnumerable<string> Figures(string text) =>
        Regex.Matches(text, @"(?<![\w.])−?\d+\.\d+(?![\w.])").Select(m => m.Value).Order(StringComparer.Ordinal);

    // The pour keeps to a telephone's width wherever it is read; a line to be typed is never broken.
    private Ran Within(int width, string words)
    {
        var ran = desk.Run(words.Split(' '), terminal => terminal with { Width = 80 });
        Assert.All(ran.Lines.Where(l => !l.Contains("stillwall ", StringComparison.Ordinal)), l => Assert.True(l.Length <= width, l));
        return ran;
    }

    // Formula and source are quoted with the units of their source.
    private static Ran WithoutFormula(Ran why)
    {
        var result = why.Output.Split('\n')[0];
        return why with { Output = result + why.Output[Math.Max(result.Length, why.Output.IndexOf("\n\n", StringComparison.Ordinal))..] };
    }

    private static void OnlyIn(string units, Ran ran)
    {
        Assert.True(ran.ExitCode == 0, ran.Error);
        var foreign = units == "metric" ? Inches() : Metres();
        Assert.DoesNotContain(ran.Output.Split('\n'), line => foreign.IsMatch(line));
    }

    // A number with a unit, or a unit that cannot be taken for a word.
    [GeneratedRegex(
        @"[\d.] ?(?:mm|cm|m|µm|nm|kg|g|L|mL|N|K|Pa)(?![\w³²/·])"
            + @"|(?<!\w)(?:mm|cm|kg|[kMG]Pa|nm/Pa|°C|degC|m³|m²|cm²|m³/s|kg/m³|kg/m²|N·m|N/mm?|L/min|kJ/kg)(?![\w])"
    )]
    private static partial Regex Metres();

    [GeneratedRegex(
        @"[\d.] ?(?:in|ft|lb|oz|gal)(?![\w³²/·])|(?<!\w)(?:lb|lbf|oz|gal|fl oz|psi|ksi|°F|degF|in[³²]|ft[³²]|ft³/s|lb/ft[³²]|in·lbf|lbf/in|gal/min)(?![\w])"
    )]
    private static partial Regex Inches();
}
