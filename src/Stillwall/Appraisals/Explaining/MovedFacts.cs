using Stillwall.Projects;

namespace Stillwall.Appraisals.Explaining;

/// <summary>Facts of a project and of its neighbours, in which one stated quantity is 1 % greater or less.</summary>
internal sealed class MovedFacts(Facts facts)
{
    /// <summary>How far an input is moved either way.</summary>
    internal const double StepRatio = 0.01;

    private static readonly string[] BaseSet = ["fs", "qms", "qes", "vas"], MechanicalSet = ["bl", "mms", "cms", "rms"];

    private readonly Dictionary<string, (Facts Less, Facts More)?> moved = [];

    /// <summary>The project as it is.</summary>
    internal Facts Facts => facts;

    /// <summary>Value of a key of the project or of the driver; null where it is not stated.</summary>
    internal object? ValueOf(string key) => IsDriverKey(key, out var field) ? DriverValue(field) : ProjectKeys.Find(key) is null ? null : ProjectKeys.Get(facts.Project, key);

    /// <summary>Relative change of a result for a relative change of one stated number.</summary>
    internal double? Sensitivity(string key, Func<Facts, double?> result) =>
        result(facts) is { } middle && middle != 0 && Around(key) is var (less, more) ? Ratio(result(less), middle, result(more)) : null;

    /// <summary>Relative change of a result between the two sides, for a relative change of one; null where it does not exist on one of them.</summary>
    internal static double? Ratio(double? low, double? middle, double? high) => (high - low) / middle / (2 * StepRatio) is { } ratio && double.IsFinite(ratio) ? ratio : null;

    private (Facts Less, Facts More)? Around(string key)
    {
        if (!moved.TryGetValue(key, out var around))
        {
            around = ValueOf(key) is double value && value != 0 && At(key, value * (1 - StepRatio)) is { } less && At(key, value * (1 + StepRatio)) is { } more ? (less, more) : null;
            moved.Add(key, around);
        }

        return around;
    }

    private Facts? At(string key, double value)
    {
        var isDriver = IsDriverKey(key, out var field);
        if ((isDriver ? ModelBlock.Of(typeof(DriverSheet)).Find(field) : ProjectKeys.Find(key)) is not { } found || (found.Span is { } span && (value < span.Least || value > span.Greatest)))
        {
            return null;
        }

        var changed = isDriver ? facts.Project with { Driver = new DriverChoice(null, Sheet(found, value)) } : ProjectKeys.With(facts.Project, key, value);
        return ProjectChecks.Of(changed).Any() ? null : facts.With(changed);
    }

    private static bool IsDriverKey(string key, out string field)
    {
        field = key.StartsWith("driver.", StringComparison.Ordinal) ? key[7..] : "";
        return field.Length > 0;
    }

    private object? DriverValue(string field) => Resolved(field) is { } value ? value : facts.Sheet is { } sheet ? ModelBlock.Of(typeof(DriverSheet)).Find(field)?.Property.GetValue(sheet) : null;

    private double? Resolved(string field) => facts.Driver is not { } driver ? null : field switch
    {
        "re" => driver.ReOhm,
        "fs" => driver.FsHz,
        "qms" => driver.Qms,
        "qes" => driver.Qes,
        "vas" => driver.VasM3,
        "sd" => driver.SdM2,
        "bl" => driver.BlTM,
        "mms" => driver.MmsKg,
        "cms" => driver.CmsMPerN,
        "rms" => driver.RmsKgS,
        "qts" => driver.Qts,
        _ => null,
    };

    // A small-signal parameter is moved within its own set, the others of that set held; the other set then follows.
    private DriverSheet Sheet(ModelField field, double value)
    {
        var block = ModelBlock.Of(typeof(DriverSheet));
        object sheet = facts.Sheet!;
        if (Resolved(field.Key) is not null && field.Key != "qts")
        {
            var kept = MechanicalSet.Contains(field.Key) ? MechanicalSet : BaseSet;
            foreach (var key in (string[])[.. BaseSet, .. MechanicalSet, "qts", "re", "sd"])
            {
                sheet = block.With(sheet, block.Find(key)!, kept.Contains(key) || key is "re" or "sd" ? Resolved(key) : null);
            }
        }

        return (DriverSheet)block.With(sheet, field, value);
    }
}
