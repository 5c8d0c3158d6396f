using Stillwall.Projects;

namespace Stillwall.Tests.Projects;

public class ModelTests
{
    [Theory]
    [InlineData("BuildWidthM", "BuildWidth", Dimension.Length)]
    [InlineData("NetVolumeM3", "NetVolume", Dimension.Volume)]
    [InlineData("PourRateM3S", "PourRate", Dimension.VolumeFlow)]
    [InlineData("ResistancePaSM3", "Resistance", Dimension.AcousticResistance)]
    [InlineData("CmsMPerN", "Cms", Dimension.Compliance)]
    [InlineData("StiffnessNPerM", "Stiffness", Dimension.Stiffness)]
    [InlineData("LeafKgM2", "Leaf", Dimension.SurfaceDensity)]
    [InlineData("DensityKgM3", "Density", Dimension.Density)]
    [InlineData("RmsKgS", "Rms", Dimension.MechanicalResistance)]
    [InlineData("BlTM", "Bl", Dimension.ForceFactor)]
    [InlineData("LeH", "Le", Dimension.Inductance)]
    [InlineData("F3Hz", "F3", Dimension.Frequency)]
    [InlineData("HeatMarginK", "HeatMargin", Dimension.TemperatureDifference)]
    [InlineData("SystemQ", "SystemQ", Dimension.None)]
    [InlineData("Qms", "Qms", Dimension.None)]
    [InlineData("Rings", "Rings", Dimension.None)]
    [InlineData("M", "M", Dimension.None)]
    public void A_name_says_its_unit(string name, string stem, Dimension dimension) => Assert.Equal((stem, dimension), UnitSuffix.Split(name));

    [Fact]
    public void No_block_has_a_key_twice() =>
        Assert.All(Blocks(), block => Assert.Equal(block.Fields.Select(f => f.Key).Distinct(StringComparer.Ordinal), block.Fields.Select(f => f.Key)));

    [Fact]
    public void Every_block_takes_a_note() => Assert.All(Blocks(), block => Assert.NotNull(block.Find("note")));

    [Fact]
    public void Every_number_of_the_file_has_a_span_and_its_default_lies_in_it() =>
        Assert.All(
            Blocks()
                .SelectMany(block => block.Fields.Select(field => (block, field)))
                .Where(f => f.field.Kind is FieldKind.Quantity or FieldKind.Number or FieldKind.Whole or FieldKind.Quantities),
            entry =>
            {
                var (block, field) = entry;
                Assert.True(field.Span is not null, $"{block.Type.Name}.{field.Property.Name} has no [Within]");
                if (!field.Required && field.Kind != FieldKind.Quantities && field.Property.GetValue(block.Defaults) is { } initial)
                {
                    Assert.InRange(Convert.ToDouble(initial, System.Globalization.CultureInfo.InvariantCulture), field.Span.Least, field.Span.Greatest);
                }
            }
        );

    [Fact]
    public void Every_word_that_is_a_default_is_one_of_the_words() =>
        Assert.All(
            Blocks().SelectMany(b => b.Fields.Select(f => (b, f))).Where(e => e.f.Words.Count > 0),
            entry =>
            {
                if (entry.f.Property.GetValue(entry.b.Defaults) is string word)
                {
                    Assert.Contains(word, entry.f.Words);
                }
            }
        );

    // Keys that scripts rely on, as the file format fixes them.
    [Theory]
    [InlineData("brief.printer.flow_mm3_s", nameof(FieldKind.Number))]
    [InlineData("brief.spot.plug_space", nameof(FieldKind.Quantity))]
    [InlineData("brief.room.pressure_decay_time", nameof(FieldKind.Quantity))]
    [InlineData("brief.room.seat_at", nameof(FieldKind.Quantities))]
    [InlineData("brief.main_speakers.left_at", nameof(FieldKind.Quantities))]
    [InlineData("brief.neighbour.curve", nameof(FieldKind.Text))]
    [InlineData("brief.neighbour.curve_levels", nameof(FieldKind.Quantities))]
    [InlineData("brief.neighbour.second_leaf", nameof(FieldKind.Quantity))]
    [InlineData("brief.neighbour.flanking", nameof(FieldKind.Quantity))]
    [InlineData("brief.neighbour.a_weighted_limit", nameof(FieldKind.Quantity))]
    [InlineData("brief.everyday.quiet_hours.level", nameof(FieldKind.Quantity))]
    [InlineData("brief.everyday.quiet_hours.from", nameof(FieldKind.Number))]
    [InlineData("cabinet.feet.vertical_stiffness", nameof(FieldKind.Quantity))]
    [InlineData("cabinet.leak.resistance", nameof(FieldKind.Quantity))]
    [InlineData("cabinet.passive_radiator.cms", nameof(FieldKind.Quantity))]
    [InlineData("driver.flange_thickness", nameof(FieldKind.Quantity))]
    [InlineData("materials.cast.powder_per_water", nameof(FieldKind.Number))]
    [InlineData("limits.wall_to_cone", nameof(FieldKind.Quantity))]
    [InlineData("measured.party_wall", nameof(FieldKind.Quantities))]
    [InlineData("measured.polarity", nameof(FieldKind.Text))]
    [InlineData("pour_date", nameof(FieldKind.Date))]
    [InlineData("prices", nameof(FieldKind.Blocks))]
    public void A_key_leads_to_its_field(string key, string kind) => Assert.Equal(kind, ProjectKeys.Find(key)?.Kind.ToString());

    [Theory]
    [InlineData("cabinet.nothing")]
    [InlineData("cabinet.core.more")]
    [InlineData("prices.item")]
    [InlineData("")]
    public void A_key_that_leads_nowhere_is_not_found(string key) => Assert.Null(ProjectKeys.Find(key));

    // The keys of the limits, word for word as the file format lists them.
    [Fact]
    public void The_limits_are_the_ones_of_the_file_format() =>
        Assert.Equal(
            (
                "note lift_mass parameter_mismatch magnet_clearance leak_q fill_density_low fill_density_high air_mode_ratio panel_mode_ratio "
                + "wall_to_cone keyed_fraction joint_safety keyed_strength sealant_strength insert_safety insert_pull_out screw_torque "
                + "gasket_pressure tilt "
                + "span_ratio wall_height_ratio bridge overhang filament_waste longest_print bulge skin_strength cast_reserve heat_margin passage dryness "
                + "neighbour_over main_speakers_ripple room_allowance "
                + "proof_resonance proof_q proof_modulus"
            ).Split(' '),
            ModelBlock.Of(typeof(Limits)).Fields.Select(f => f.Key)
        );

    [Theory]
    [InlineData("coer", "core")]
    [InlineData("strut_pich", "strut_pitch")]
    [InlineData("outer-skin", "outer_skin")]
    [InlineData("xyzzy", null)]
    [InlineData("x", null)]
    public void A_mistyped_word_finds_its_neighbour(string word, string? nearest) =>
        Assert.Equal(nearest, NearestWord.Of(word, ModelBlock.Of(typeof(Cabinet)).Fields.Select(f => f.Key)));

    private static List<ModelBlock> Blocks()
    {
        var found = new List<ModelBlock> { ModelBlock.Root };
        for (var i = 0; i < found.Count; i++)
        {
            found.AddRange(found[i].Fields.Select(f => f.Block).OfType<ModelBlock>().Where(b => !found.Contains(b)).Distinct());
        }

        return found;
    }

    // A number that nobody stated says where it is from: the attribute at the property, which the page shows.
    [Fact]
    public void Every_default_says_where_it_comes_from()
    {
        var silent = Blocks(ModelBlock.Root)
            .SelectMany(b =>
                b.Fields.Where(f => !f.Required && f.DefaultFrom is null && f.Property.GetValue(b.Defaults) is double or int or string or Amount)
                    .Select(f => $"{b.Type.Name}.{f.Property.Name}")
            );
        Assert.Equal("", string.Join(", ", silent.Distinct().Order(StringComparer.Ordinal)));
        Assert.Equal("the mix’s usual ratio", ProjectKeys.Find("materials.cast.powder_per_water")!.DefaultFrom);
    }

    private static IEnumerable<ModelBlock> Blocks(ModelBlock block) =>
        block.Fields.Where(f => f.Block is not null).SelectMany(f => Blocks(f.Block!)).Prepend(block);
}
