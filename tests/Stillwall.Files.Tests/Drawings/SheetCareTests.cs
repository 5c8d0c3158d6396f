using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Figures.Sheets;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Drawings;

/// <summary>A sheet says what to take care of at the step it is for, where nothing is drawn.</summary>
public sealed class SheetCareTests
{
    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All);

    // Heavier than its maker lifts, of a grout, split for the printer.
    private static readonly Facts Heavy = new(
        DemoProject.Project with
        {
            Limits = DemoProject.Project.Limits with { LiftMassKg = 5 },
            Materials = DemoProject.Project.Materials! with { Cast = DemoProject.Project.Materials.Cast! with { Mix = "cement-grout", PowderPerWater = null } },
            Cabinet = DemoProject.Project.Cabinet! with
            {
                Outside = new Outside
                {
                    WidthM = 0.300,
                    DepthM = 0.420,
                    HeightM = 0.560,
                    CornerRadiusM = 0.020,
                },
                Braces = 3,
                DriverCount = 2,
            },
        },
        DemoDrivers.All
    );

    private static readonly Lazy<IReadOnlyList<Sheet>> OfDemo = new(() => SheetSet.Of(Demo)),
        OfHeavy = new(() => SheetSet.Of(Heavy));

    public static TheoryData<bool, string> Sheets => [.. OfDemo.Value.Select(s => (false, s.Name)), .. OfHeavy.Value.Select(s => (true, s.Name))];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_caution_of_its_steps_stands_on_a_sheet(bool isHeavy, string name)
    {
        var words = string.Join(' ', Care(isHeavy, name).Marks.OfType<SheetText>().Select(t => t.Text));
        Assert.StartsWith("Take care ", words, StringComparison.Ordinal);
        var cautions = StepsOf(name).SelectMany(s => Cautions.At(s, isHeavy ? Heavy : Demo)).ToList();
        Assert.NotEmpty(cautions);
        Assert.All(cautions, c => Assert.Contains(c.Sentence, words, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void It_lies_where_nothing_is_drawn(bool isHeavy, string name)
    {
        var sheet = Of(isHeavy, name);
        var care = Care(isHeavy, name);
        var box = Extent(care.Marks.OfType<SheetPath>().Single().Lines[0]);
        Assert.True(sheet.Frame.Contains(box));
        Assert.All(care.Marks.OfType<SheetText>(), t => Assert.True(box.Contains(t.Box), t.Text));
        var others = sheet.Marks.Where(m => m != care).SelectMany(m => m is SheetGroup g ? g.Marks : [m]).ToList();
        Assert.DoesNotContain(others.OfType<SheetText>(), t => t.Box.Overlaps(box));
        Assert.DoesNotContain(
            others.OfType<SheetCircle>(),
            c => new SheetBox(c.Centre.XMm - c.RadiusMm, c.Centre.YMm - c.RadiusMm, c.Centre.XMm + c.RadiusMm, c.Centre.YMm + c.RadiusMm).Overlaps(box)
        );
        Assert.DoesNotContain(
            others.OfType<SheetPath>().Where(p => p.Line != SheetLine.Frame).SelectMany(p => p.Lines).Where(l => l.Count > 0),
            l => Extent(l).Overlaps(box)
        );
    }

    [Fact]
    public void Lifting_stands_on_the_assembly_and_the_heat_of_plaster_on_the_coupon()
    {
        Assert.Contains(Cautions.At(WorkStep.SetUp, Heavy), c => c.Hazard == Hazard.Heavy);
        Assert.Contains(Cautions.At(WorkStep.WallCoupon, Demo), c => c.Hazard == Hazard.PlasterHeat);
        Assert.All(new[] { "assembly", "exploded" }, kind => Assert.Contains(WorkStep.SetUp, StepsOf($"sheet-01-{kind}")));
    }

    private static WorkStep[] StepsOf(string name) =>
        name[9..] switch
        {
            "assembly" or "assembly-plan" or "exploded" => [WorkStep.DryFit, WorkStep.SetUp],
            "wall-coupon" => [WorkStep.WallCoupon],
            "calibration-strip" or "calibration-peg" => [WorkStep.CalibrationStrip],
            var other => other.StartsWith("template", StringComparison.Ordinal) ? [WorkStep.Template] : [WorkStep.Print],
        };

    private static Sheet Of(bool isHeavy, string name) => (isHeavy ? OfHeavy : OfDemo).Value.Single(s => s.Name == name);

    private static SheetGroup Care(bool isHeavy, string name) => Assert.Single(Of(isHeavy, name).Marks.OfType<SheetGroup>(), g => g.Kind == "care");

    private static SheetBox Extent(IReadOnlyList<SheetPoint> line) =>
        new(line.Min(p => p.XMm), line.Min(p => p.YMm), line.Max(p => p.XMm), line.Max(p => p.YMm));
}
