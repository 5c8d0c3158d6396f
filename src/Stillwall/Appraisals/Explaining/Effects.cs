using System.Collections.Concurrent;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Explaining;

/// <summary>Finds what moves a result: of the stated values that were read for it each is moved a little, everything else as stated.</summary>
/// <remarks>
/// Model: central differences. Source: Abramowitz and Stegun 1964, 25.3.21 (from memory). Accuracy: 0.1 % of smooth closed forms.
/// </remarks>
internal sealed class Effects(Facts facts)
{
    // Least change of a result, over the result, that counts as one.
    private const double LeastRatio = 1e-6;

    // A result that takes less than this share of its change at half the step, or more than the rest of it, goes in steps (our choice).
    private const double EvenShare = 0.25;

    private readonly Lazy<IReadOnlyList<Movable>> stated = new(() => Movable.Of(facts));
    private readonly ConcurrentDictionary<(string Key, object Value), Facts?> moved = new(new SameValue());

    /// <summary>The project as it is.</summary>
    internal Facts Facts => facts;

    // Everything stated, in the order of the file.
    private IReadOnlyList<Movable> Stated => stated.Value;

    /// <summary>What moves a result, the strongest first, then what acts in steps, then bounds that it does not reach.</summary>
    /// <param name="isLevel">Whether it is in dB, so that its change is told in dB too.</param>
    internal IReadOnlyList<ExplainedInput> On(Func<Facts, double?> result, bool isLevel)
    {
        var (middle, reads) = ReadLog.During(() => result(facts));
        if (middle is not { } value)
        {
            return [];
        }

        return
        [
            .. Stated
                .Where(m => reads.Has(m.Place))
                .AsParallel()
                .AsOrdered()
                .Select(m => Effect(m, result, value, isLevel))
                .OfType<ExplainedInput>()
                .AsSequential()
                .OrderBy(i => i.Acts)
                .ThenByDescending(i => Math.Abs(i.Sensitivity ?? 0)),
        ];
    }

    private ExplainedInput? Effect(Movable input, Func<Facts, double?> result, double middle, bool isLevel)
    {
        bool Differs(double? other) => other is not { } number || Math.Abs(number - middle) > LeastRatio * Math.Abs(middle) + 1e-12;
        double? At(object value) => Moved(input, value) is { } other ? result(other) : middle;
        var values = input.Moved();
        var around = values.Select(At).ToList();
        if (!around.Any(Differs))
        {
            // Out and back again, as a part that is cut in two.
            var isThereAndBack = input.IsProportional && values.Any(v => Differs(At(((double)v + (double)input.Value) / 2)));
            return isThereAndBack ? Told(input, null, Acting.Steps)
                : input.FarOff().Any(v => Moved(input, v) is { } far && Differs(result(far))) ? Told(input, null, Acting.Inactive) : null;
        }

        if (input.Value is not double)
        {
            return Told(input, null, input.Value is Amount or IReadOnlyList<double> ? Acting.Smooth : Acting.Steps);
        }

        var isSmooth = around.Zip(values).All(a => IsSmooth((double)input.Value, (double)a.Second, middle, a.First, At));
        return Told(input, isSmooth && input.IsProportional ? Sensitivity(around, middle, isLevel) : null, isSmooth ? Acting.Smooth : Acting.Steps);
    }

    // At half the step a smooth result has taken about half of its change.
    private static bool IsSmooth(double stated, double moved, double middle, double? there, Func<object, double?> at)
    {
        if (there is not { } end || at((stated + moved) / 2) is not { } half)
        {
            return false;
        }

        var share = (half - middle) / (end - middle);
        return end == middle || Math.Abs(end - middle) < LeastRatio * Math.Abs(middle) || (share > EvenShare && share < 1 - EvenShare);
    }

    private static double? Sensitivity(List<double?> around, double middle, bool isLevel) =>
        around is not [{ } low, { } high] ? null
        : isLevel ? (high - low) / 2
        : middle == 0 ? null
        : (high - low) / middle / (2 * Movable.StepRatio);

    private Facts? Moved(Movable input, object value) =>
        moved.GetOrAdd((input.Key, value), _ => facts.With(input.With(value)) is { IsSound: true } changed ? changed : null);

    private static ExplainedInput Told(Movable input, double? sensitivity, Acting acts) =>
        new(input.Key, input.Shown, Why.StatedUnit(input.Key), sensitivity, acts);

    // Lists are the same where they are the same object; they are made anew for each move.
    private sealed class SameValue : IEqualityComparer<(string Key, object Value)>
    {
        public bool Equals((string Key, object Value) one, (string Key, object Value) other) => one.Key == other.Key && one.Value.Equals(other.Value);

        public int GetHashCode((string Key, object Value) of) => HashCode.Combine(of.Key, of.Value);
    }
}
