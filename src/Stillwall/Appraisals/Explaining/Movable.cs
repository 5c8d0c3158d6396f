using System.Collections;
using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Explaining;

/// <summary>One stated value that can be moved to see what it does.</summary>
/// <param name="Key">Its dotted key, entries of lists by their index.</param>
internal sealed record Movable(string Key, int Place, object Value, ModelField Field, Func<object, Project> With)
{
    /// <summary>How far a number is moved either way.</summary>
    internal const double StepRatio = 0.01;

    /// <summary>Steps of numbers that are zero, in SI; a temperature moves by one kelvin whatever it is (our choice).</summary>
    private static readonly Dictionary<Dimension, double> Steps = new()
    {
        [Dimension.Length] = 0.001,
        [Dimension.Time] = 1,
        [Dimension.Level] = 0.1,
        [Dimension.Mass] = 0.01,
        [Dimension.Temperature] = 1,
        [Dimension.TemperatureDifference] = 1,
    };

    /// <summary>Whether it is a number that can be moved by one per cent.</summary>
    internal bool IsProportional => Value is double and not 0 && Field.Dimension != Dimension.Temperature;

    /// <summary>Whether it is a bound that something may or may not reach.</summary>
    internal bool IsBound =>
        Key.StartsWith("limits.", StringComparison.Ordinal)
        || Key.StartsWith("brief.amplifier.", StringComparison.Ordinal)
        || Key.EndsWith(".xmax", StringComparison.Ordinal)
        || Key == "driver.power";

    /// <summary>What a person is shown of it; null for a list.</summary>
    internal object? Shown =>
        Value switch
        {
            double or int or string => Value,
            Amount amount => amount.Value,
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            _ => null,
        };

    /// <summary>Everything stated in a project and on the data sheet of its driver.</summary>
    internal static IReadOnlyList<Movable> Of(Facts facts) =>
        ReadLog.Unnoted(() =>
        {
            var project = facts.Project;
            var stated = Under(project, "", changed => (Project)changed);
            return facts.Sheet is not { } sheet
                ? stated.ToList()
                : [.. stated, .. Under(sheet, "driver.", changed => project with { Driver = new DriverChoice(null, (DriverSheet)changed) })];
        });

    /// <summary>The values to which it is moved, the lower first.</summary>
    internal IReadOnlyList<object> Moved() =>
        Value switch
        {
            double number => Numbers(number),
            int count => [.. new[] { count - 1, count + 1 }.Where(c => IsAccepted(c)).Cast<object>()],
            DateOnly date => [date.AddDays(-1), date.AddDays(1)],
            Amount amount => [.. Numbers(amount.Value).Select(v => amount with { Value = (double)v })],
            string word => [.. Field.Words.Where(w => w != word)],
            IReadOnlyList<double> list =>
            [
                .. list.SelectMany((number, i) => Numbers(number).Select(moved => (object)(double[])[.. list.Take(i), (double)moved, .. list.Skip(i + 1)])),
            ],
            _ => [],
        };

    /// <summary>The values far off, between which a bound begins to matter.</summary>
    internal IReadOnlyList<object> FarOff() => Value is double number && IsBound ? [.. new[] { number / 2, number * 2 }.Where(IsAccepted).Cast<object>()] : [];

    private IReadOnlyList<object> Numbers(double number)
    {
        var step = number == 0 || Field.Dimension == Dimension.Temperature ? Steps.GetValueOrDefault(Field.Dimension, 0.01) : Math.Abs(number) * StepRatio;
        return [.. new[] { number - step, number + step }.Where(IsAccepted).Cast<object>()];
    }

    private bool IsAccepted(double value) => Field.Span is not { } span || (value >= span.Least && value <= span.Greatest);

    private static IEnumerable<Movable> Under(object record, string path, Func<object, Project> rebuild)
    {
        var block = ModelBlock.Of(record.GetType());
        foreach (var field in block.Fields.Where(f => f.Key is not ("note" or "$schema" or "stillwall")))
        {
            var (key, value) = (path + field.Key, field.Get(record));
            Project Rebuilt(object changed) => rebuild(block.With(record, field, changed));
            var inner = (field.Kind, value) switch
            {
                (_, null) or (FieldKind.Driver, _) => [],
                (FieldKind.Block, _) => Under(value, key + ".", Rebuilt),
                (FieldKind.Blocks, IList list) => Entries(list, field, key, Rebuilt),
                (FieldKind.Text, _) when field.Words.Count == 0 => [],
                _ => [new Movable(key, ReadSet.PlaceOf(block.Type, field.Property.Name)!.Value, value, field, Rebuilt)],
            };
            foreach (var movable in inner)
            {
                yield return movable;
            }
        }
    }

    private static IEnumerable<Movable> Entries(IList list, ModelField field, string key, Func<object, Project> rebuild) =>
        Enumerable
            .Range(0, list.Count)
            .SelectMany(i =>
                Under(
                    list[i]!,
                    string.Create(CultureInfo.InvariantCulture, $"{key}[{i}]."),
                    changed =>
                    {
                        var entries = Array.CreateInstance(field.Block!.Type, list.Count);
                        list.CopyTo(entries, 0);
                        entries.SetValue(changed, i);
                        return rebuild(entries);
                    }
                )
            );
}
