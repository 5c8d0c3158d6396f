using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>How far a drawn project leaves the demo.</summary>
/// <param name="Changed">Share of the values that are drawn anew.</param>
/// <param name="Dropped">Share of what need not be stated that is left out.</param>
/// <param name="Least">Share of the drawn values at the least accepted.</param>
/// <param name="Greatest">Share of the drawn values at the greatest accepted; the others lie between.</param>
internal readonly record struct Leaning(double Changed, double Dropped, double Least, double Greatest)
{
    internal static Leaning Draw(Dice dice) =>
        dice.Below(10) switch
        {
            0 => new(1, 0, 1, 0),
            1 => new(1, 0, 0, 1),
            2 => new(1, 0, 0.5, 0.5),
            3 => new(1, 0.3, 0.4, 0.4),
            4 => new(0.5, 0.1, 0.4, 0.4),
            5 => new(1, 0, 0, 0),
            6 => new(1, 0.02, 0.95, 0.03),
            7 => new(1, 0.02, 0.03, 0.95),
            8 => new(0.15, 0.03, 0.4, 0.4),
            _ => new(0.05, 0.01, 0.4, 0.4),
        };
}

/// <summary>Projects of which every value lies within its accepted range, mostly at an end of it.</summary>
internal static class Accepted
{
    private static readonly string[] Items =
    [
        "filament",
        "cast powder",
        "dust mask",
        "pair of gloves",
        "sealant",
        "threaded insert",
        "screw",
        "gasket tape",
        "terminal",
        "cable",
        "fill",
        "pad",
        "driver",
        "spike",
    ];

    private static readonly string[] Kinds = ["weigh-in", "attempt", "cost", "x"];
    private static readonly string[] Parts = ["cabinet", "wall coupon", "y"];
    private static readonly string[] Plain = ["a", "Dunlin 8", "Wren 5", "drivers.csv", "EUR", "…", "../../etc/passwd"];
    private static readonly DateOnly[] Dates = [DateOnly.MinValue, DateOnly.MaxValue, new(2026, 11, 14), new(2024, 2, 29)];
    private static readonly Dimension[] AmountDimensions = [Dimension.Count, Dimension.Mass, Dimension.Length, Dimension.Volume];

    internal static Project Draw(Dice dice, Project demo) => Draw(dice, demo, Leaning.Draw(dice));

    internal static Project Draw(Dice dice, Project demo, Leaning leaning) =>
        Mended.Of(Housed((Project)Block(ModelBlock.Root, demo, dice, leaning), dice.Falls(HallShare)), dice);

    // A hall has so many modes that it is drawn seldom.
    private const double HallShare = 0.01;

    private static Project Housed(Project project, bool inHall) =>
        inHall || project.Brief.Room is not { } room
            ? project
            : project with
            {
                Brief = project.Brief with
                {
                    Room = room with { WidthM = AtMost(room.WidthM, 9), LengthM = AtMost(room.LengthM, 9), HeightM = AtMost(room.HeightM, 5) },
                },
            };

    private static double? AtMost(double? sizeM, double greatestM) => sizeM > greatestM ? greatestM : sizeM;

    private static object Block(ModelBlock block, object? stated, Dice dice, Leaning leaning)
    {
        var values = new List<(ModelField, object?)>();
        foreach (var field in block.Fields)
        {
            var former = stated is null ? null : field.Property.GetValue(stated);
            if (!field.Required && dice.Falls(leaning.Dropped))
            {
                continue;
            }

            if (Value(field, former, dice, leaning) is { } value)
            {
                values.Add((field, value));
            }
        }

        return block.Build(values);
    }

    private static object? Value(ModelField field, object? former, Dice dice, Leaning leaning)
    {
        switch (field.Kind)
        {
            case FieldKind.Block:
                return Block(field.Block!, former, dice, leaning);
            case FieldKind.Driver:
                return dice.Falls(0.4)
                    ? new DriverChoice("Dunlin 8", null)
                    : new DriverChoice(null, (DriverSheet)Block(field.Block!, null, dice, leaning with { Changed = 1 }));
            case FieldKind.Blocks when former is null || dice.Falls(leaning.Changed):
                var list = Array.CreateInstance(field.Block!.Type, dice.Below(5));
                for (var i = 0; i < list.Length; i++)
                {
                    list.SetValue(Block(field.Block, null, dice, leaning with { Changed = 1 }), i);
                }

                return list;
            case FieldKind.Blocks:
                return former;
        }

        return former is not null && !dice.Falls(leaning.Changed) ? former : Plainly(field, dice, leaning);
    }

    private static object Plainly(ModelField field, Dice dice, Leaning leaning) =>
        field.Kind switch
        {
            FieldKind.Whole => (int)Number(field, dice, leaning),
            FieldKind.Quantities => Enumerable.Range(0, field.Count ?? 3).Select(_ => Number(field, dice, leaning)).ToArray(),
            FieldKind.Date => dice.Pick(Dates),
            FieldKind.Amount => new Amount(
                dice.Falls(leaning.Least) ? 0
                    : dice.Falls(leaning.Greatest) ? 1e6
                    : 10 * dice.Share(),
                dice.Pick(AmountDimensions)
            ),
            FieldKind.Text when field.Words.Count > 0 => dice.Pick(field.Words),
            FieldKind.Text => dice.Pick(
                field.Key switch
                {
                    "item" => Items,
                    "kind" => Kinds,
                    "part" => Parts,
                    _ => Plain,
                }
            ),
            _ => Number(field, dice, leaning),
        };

    private static double Number(ModelField field, Dice dice, Leaning leaning)
    {
        var (least, greatest) = field.Span is { } span ? (span.Least, span.Greatest) : (0, 1000);
        var draw = dice.Share();
        if (draw < leaning.Least)
        {
            return least;
        }

        if (draw < leaning.Least + leaning.Greatest)
        {
            return greatest;
        }

        var number = least > 0 && dice.Falls(0.5) ? least * Math.Pow(greatest / least, dice.Share()) : least + (greatest - least) * dice.Share();
        // As many figures as a person states.
        return Math.Clamp(double.Parse(number.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), least, greatest);
    }
}
