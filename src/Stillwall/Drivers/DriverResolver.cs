using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Drivers;

/// <summary>A stated parameter beside what the rest of the sheet implies for it.</summary>
/// <param name="Parameter">Key of the parameter, as in the project file.</param>
/// <param name="StatedValue">Value as stated, SI.</param>
/// <param name="DerivedValue">Value that follows from the set that was used, SI.</param>
public sealed record ParameterMismatch(string Parameter, double StatedValue, double DerivedValue)
{
    /// <summary>Stated over derived, less one: 0.1 is stated 10 % too high.</summary>
    public double DeviationRatio => (StatedValue / DerivedValue) - 1;
}

/// <summary>A data sheet turned into a driver, or why it could not be.</summary>
/// <param name="Driver">The driver; null where something is missing or impossible.</param>
/// <param name="Missing">Keys of the parameters that are neither stated nor implied.</param>
/// <param name="Mismatches">Every parameter that is stated besides the set that was used, beside what that set implies.</param>
/// <param name="Impossible">What on the sheet cannot be, one sentence each, beginning with the key.</param>
public sealed record DriverResolution(
    Driver? Driver,
    IReadOnlyList<string> Missing,
    IReadOnlyList<ParameterMismatch> Mismatches,
    IReadOnlyList<string> Impossible
)
{
    /// <summary>The greatest deviation of a stated parameter from the rest of the sheet, as a ratio; null where nothing is stated twice.</summary>
    [ComputedBy("driver-mismatch")]
    public double? WorstDeviationRatio => Mismatches.Count == 0 ? null : Mismatches.Max(m => Math.Abs(m.DeviationRatio));
}

/// <summary>Turns a data sheet into a driver whose parameters agree with one another.</summary>
public static class DriverResolver
{
    private static readonly string[] BaseSet = ["re", "sd", "fs", "qms", "qes", "vas"];
    private static readonly string[] MechanicalSet = ["re", "sd", "bl", "mms", "cms", "rms"];

    // Each target from others that are known; the first rule that can be applied is, until none can.
    private static readonly Rule[] Rules =
    [
        new("cms", ["vas", "sd"], v => DriverParameters.ComplianceMPerN(v[0], v[1])),
        new("vas", ["cms", "sd"], v => Air.Reference.BulkModulusPa * v[1] * v[1] * v[0]),
        new("sd", ["vas", "cms"], v => Math.Sqrt(v[0] / (Air.Reference.BulkModulusPa * v[1]))),
        new("mms", ["fs", "cms"], v => DriverParameters.MovingMassKg(v[0], v[1])),
        new("cms", ["fs", "mms"], v => 1 / (Omega(v[0]) * Omega(v[0]) * v[1])),
        new("fs", ["mms", "cms"], v => 1 / (2 * Math.PI * Math.Sqrt(v[0] * v[1]))),
        new("qms", ["qts", "qes"], v => 1 / ((1 / v[0]) - (1 / v[1]))),
        new("qes", ["qts", "qms"], v => 1 / ((1 / v[0]) - (1 / v[1]))),
        new("rms", ["fs", "mms", "qms"], v => DriverParameters.MechanicalResistanceKgS(v[0], v[1], v[2])),
        new("qms", ["fs", "mms", "rms"], v => Omega(v[0]) * v[1] / v[2]),
        new("mms", ["fs", "qms", "rms"], v => v[1] * v[2] / Omega(v[0])),
        new("fs", ["mms", "qms", "rms"], v => v[1] * v[2] / (v[0] * 2 * Math.PI)),
        new("bl", ["fs", "mms", "re", "qes"], v => DriverParameters.ForceFactorTM(v[0], v[1], v[2], v[3])),
        new("qes", ["fs", "mms", "re", "bl"], v => Omega(v[0]) * v[1] * v[2] / (v[3] * v[3])),
        new("mms", ["fs", "re", "qes", "bl"], v => v[3] * v[3] * v[2] / (Omega(v[0]) * v[1])),
        new("re", ["fs", "mms", "qes", "bl"], v => v[3] * v[3] * v[2] / (Omega(v[0]) * v[1])),
        new("fs", ["mms", "re", "qes", "bl"], v => v[3] * v[3] * v[2] / (v[0] * v[1] * 2 * Math.PI)),
        new("qts", ["qms", "qes"], v => DriverParameters.TotalQ(v[0], v[1])),
    ];

    /// <summary>Resolves a data sheet.</summary>
    /// <param name="sheet">The sheet; every stated value above 0.</param>
    /// <returns>The driver, or what is missing or impossible; and how far the sheet disagrees with itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stated value is not positive.</exception>
    /// <remarks>
    /// Model: fs, Qms, Qes, Vas with Re and Sd win where all are stated; else Bl, Mms, Cms, Rms with Re and Sd; else whatever determines them.
    /// Validity: small signals. Source: relations of Small 1972, JAES 20(5) (from memory), parameters of IEC 60268-5:2003; the order of precedence is our
    /// choice.
    /// Accuracy: exact relations; data sheets often disagree with themselves by 10 % and more.
    /// </remarks>
    public static DriverResolution Resolve(DriverSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var stated = Stated(sheet);
        var used = Array.Find([BaseSet, MechanicalSet], set => set.All(stated.ContainsKey));
        var known = stated.Where(s => used is null || used.Contains(s.Key)).ToDictionary(s => s.Key, s => s.Value);
        var impossible = Faults(sheet, stated);
        Complete(known, impossible);
        var missing = BaseSet.Where(key => !known.ContainsKey(key)).ToList();
        if (missing.Count > 0 || impossible.Count > 0)
        {
            return new DriverResolution(null, missing, [], impossible);
        }

        var driver = FromBaseSet(known, sheet);
        return new DriverResolution(driver, [], Compare(driver, stated, used), []);
    }

    private static double Omega(double hertz) => 2 * Math.PI * hertz;

    private static Dictionary<string, double> Stated(DriverSheet sheet)
    {
        (string Key, double? Value)[] all =
        [
            ("re", sheet.ReOhm),
            ("sd", sheet.SdM2),
            ("fs", sheet.FsHz),
            ("qms", sheet.Qms),
            ("qes", sheet.Qes),
            ("vas", sheet.VasM3),
            ("qts", sheet.Qts),
            ("bl", sheet.BlTM),
            ("mms", sheet.MmsKg),
            ("cms", sheet.CmsMPerN),
            ("rms", sheet.RmsKgS),
        ];
        var stated = new Dictionary<string, double>();
        foreach (var (key, value) in all)
        {
            if (value is { } number)
            {
                Require.Positive(number, key);
                stated.Add(key, number);
            }
        }

        return stated;
    }

    private static List<string> Faults(DriverSheet sheet, Dictionary<string, double> stated)
    {
        var faults = new List<string>();
        if (sheet.FlangeM is { } flange && sheet.SdM2 > Math.PI / 4 * flange * flange)
        {
            faults.Add("sd: the cone is larger than the flange");
        }

        // A whole base set wins over a misprinted Qts, which is then only reported; without one nothing can be made of it.
        var needsQts = !stated.ContainsKey("qms") || !stated.ContainsKey("qes");
        if (needsQts && stated.TryGetValue("qts", out var total) && (total >= Stands(stated, "qms") || total >= Stands(stated, "qes")))
        {
            faults.Add("qts: the total Q is not below the mechanical and the electrical Q");
        }

        return faults;
    }

    private static double Stands(Dictionary<string, double> stated, string key) => stated.GetValueOrDefault(key, double.PositiveInfinity);

    private static void Complete(Dictionary<string, double> known, List<string> impossible)
    {
        while (impossible.Count == 0 && Array.Find(Rules, r => !known.ContainsKey(r.Target) && r.Needs.All(known.ContainsKey)) is { } rule)
        {
            var value = rule.Value([.. rule.Needs.Select(n => known[n])]);
            if (value > 0 && double.IsFinite(value))
            {
                known.Add(rule.Target, value);
            }
            else
            {
                impossible.Add($"{rule.Target}: {string.Join(", ", rule.Needs)} as stated leave no positive value for it");
            }
        }
    }

    private static Driver FromBaseSet(Dictionary<string, double> known, DriverSheet sheet)
    {
        var cms = DriverParameters.ComplianceMPerN(known["vas"], known["sd"]);
        var mms = DriverParameters.MovingMassKg(known["fs"], cms);
        var rms = DriverParameters.MechanicalResistanceKgS(known["fs"], mms, known["qms"]);
        var bl = DriverParameters.ForceFactorTM(known["fs"], mms, known["re"], known["qes"]);
        return new Driver(
            Name: sheet.Name,
            ReOhm: known["re"],
            LeH: sheet.LeH ?? 0,
            BlTM: bl,
            MmsKg: mms,
            CmsMPerN: cms,
            RmsKgS: rms,
            SdM2: known["sd"],
            XmaxM: sheet.XmaxM,
            PowerW: sheet.PowerW,
            Sheet: sheet
        );
    }

    private static List<ParameterMismatch> Compare(Driver driver, Dictionary<string, double> stated, string[]? used)
    {
        (string Key, double Value)[] derived =
        [
            ("bl", driver.BlTM),
            ("mms", driver.MmsKg),
            ("qts", driver.Qts),
            ("cms", driver.CmsMPerN),
            ("rms", driver.RmsKgS),
            ("fs", driver.FsHz),
            ("qms", driver.Qms),
            ("qes", driver.Qes),
            ("vas", driver.VasM3),
            ("re", driver.ReOhm),
            ("sd", driver.SdM2),
        ];
        var compared = derived
            .Where(d => stated.ContainsKey(d.Key) && used?.Contains(d.Key) != true)
            .Select(d => new ParameterMismatch(d.Key, stated[d.Key], d.Value));

        // In a mixture every stated value may have been needed; only what came out otherwise was stated twice.
        return [.. compared.Where(m => used is not null || Math.Abs(m.DeviationRatio) > 1e-9)];
    }

    private sealed record Rule(string Target, string[] Needs, Func<double[], double> Value);
}
