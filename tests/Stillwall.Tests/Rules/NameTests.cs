using System.Collections;
using System.Reflection;

namespace Stillwall.Tests.Rules;

/// <summary>A number of a record, public or not, says its unit at the end of its name, or is on the short list of numbers without one.</summary>
public sealed class NameTests
{
    private static readonly string[] Units =
    [
        "M",
        "M2",
        "M3",
        "Mm",
        "Kg",
        "KgM2",
        "KgM3",
        "Hz",
        "Pa",
        "S",
        "Seconds",
        "Days",
        "Hours",
        "Db",
        "W",
        "V",
        "Ohm",
        "H",
        "C",
        "K",
        "N",
        "NM",
        "Nm",
        "NPerM",
        "MPerN",
        "MPerPa",
        "M3PerPa",
        "PerK",
        "TM",
        "KgS",
        "KgM2S",
        "KgM",
        "Nm2",
        "PaS",
        "PaSM3",
        "M3S",
        "MS",
        "JK",
        "JKg",
        "JKgK",
        "WMK",
        "WM2K",
        "JM3K",
        "WM3",
        "JM2",
        "Deg",
        "Rad",
        "KgM4",
        "M5N",
        "Ms",
        "PaRms",
    ];

    // A ratio, a share, a count or a quality needs no unit; a price is in the project's currency; a limit's value carries the unit of its finding.
    private static readonly string[] Words =
    [
        "Q",
        "Qms",
        "Qes",
        "Qts",
        "Qtc",
        "Qmc",
        "Factor",
        "Ratio",
        "Ratios",
        "Fraction",
        "Fractions",
        "Count",
        "Efficiency",
        "Share",
        "Shares",
        "Porosity",
        "Poisson",
        "Tolerance",
        "Safety",
        "Factors",
        "PerWater",
        "Price",
        "Cost",
        "Budget",
        "Hours",
        "Value",
        "Limit",
        "Margin",
    ];

    // Names that neither end in a unit nor in such a word, each with its reason.
    private static readonly Dictionary<string, string> Exempt = new(StringComparer.Ordinal)
    {
        ["BoxFigures.SystemQFilled"] = "a Q; the word that tells it from the other comes last in its key",
        ["BoxFigures.SystemQBand"] = "two Qs",
        ["Quiet.SeatADb"] = "decibels, A-weighted",
        ["Quiet.SeatCDb"] = "decibels, C-weighted",
        ["ImpedanceFigures.QMechanical"] = "a Q; the word that tells it from the others comes last in its key",
        ["ImpedanceFigures.QElectrical"] = "a Q; the word that tells it from the others comes last in its key",
        ["ImpedanceFigures.QTotal"] = "a Q; the word that tells it from the others comes last in its key",
        ["SweepResult.HarmonicDistortion"] = "a ratio; the name is a key of the output",
        ["CrossSpectrum.FirstPower"] = "in the square of the unit of the signal that goes in",
        ["CrossSpectrum.SecondPower"] = "in the square of the unit of the signal that goes in",
        ["Biquad.A"] = "coefficients, a name of the key in the output",
        ["Biquad.B"] = "coefficients, a name of the key in the output",
        ["Aim.SystemQTolerance"] = "a span of Q; the name is a key of the file",
        ["Limits.ParameterMismatch"] = "a ratio; the name is a key of the file",
        ["Limits.FilamentWaste"] = "a ratio; the name is a key of the file",
        ["Limits.SkinStrength"] = "a safety factor; the name is a key of the file",
        ["Limits.CastReserve"] = "a ratio; the name is a key of the file",
        ["Limits.Dryness"] = "a ratio; the name is a key of the file",
        ["Limits.ProofResonance"] = "a ratio; the name is a key of the file",
        ["Limits.ProofModulus"] = "a ratio; the name is a key of the file",
        ["OwnMix.BoundWater"] = "a ratio; the name is a key of the file",
        ["Printer.Flow"] = "a bare number in mm³/s, as its key says",
        ["ExplainedInput.Sensitivity"] = "a share of the result for a share of the input; the name is a key of the output",
        ["Need.Amount"] = "in the unit that stands beside it",
        ["SupplyLine.Needed"] = "in the unit that stands beside it",
        ["SupplyLine.InStock"] = "in the unit that stands beside it",
        ["SupplyLine.ToBuy"] = "in the unit that stands beside it",
        ["SupplyLine.Pack"] = "in the unit that stands beside it",
        ["SupplyLine.PriceToBuy"] = "in the project's currency",
        ["ColumnAttribute.ToSi"] = "a factor between units",
        ["Unit.Offset"] = "in the SI unit of whatever is measured in it",
        ["WithinAttribute.Least"] = "in the SI unit of the property that carries it",
        ["WithinAttribute.Greatest"] = "in the SI unit of the property that carries it",
        ["Lever.Step"] = "in the SI unit of its key",
        ["MovedKey.Old"] = "in the SI unit of its key",
        ["MovedKey.New"] = "in the SI unit of its key",
        ["EqualiserStage.Zero0"] = "a coefficient",
        ["EqualiserStage.Zero1"] = "a coefficient",
        ["EqualiserStage.Zero2"] = "a coefficient",
        ["EqualiserStage.Pole0"] = "a coefficient",
        ["EqualiserStage.Pole1"] = "a coefficient",
        ["EqualiserStage.Pole2"] = "a coefficient",
        ["EqualiserStage.CornerSquared"] = "a coefficient",
        ["Direction.X"] = "a share of the unit vector",
        ["Direction.Y"] = "a share of the unit vector",
        ["Direction.Z"] = "a share of the unit vector",
        ["ImpedanceFitted.Variance"] = "of a fit of ratios",
        ["ImpedanceModel.SemiInductancePower"] = "a power of the frequency",
        ["ImpedanceFitted.At"] = "values of a fit, mostly logarithms",
        ["Response.Samples"] = "in the unit of the recording",
    };

    // Geometry in millimetres, or on the grid of a drawing: the sections as they are drawn, which users do not see.
    private static readonly string[] InMillimetres =
    [
        "CabinetSizes",
        "DriverBody",
        "RoundedOutline",
        "SleeveSection",
        "StrutRhythm",
        "KeyGrid",
        "PartSize",
        "Length",
        "SeenLine",
        "PathPlace",
        "RoundedFrame",
        "WallPoint",
    ];

    // Charts are in the units that their axes say.
    private const string InUnitsOfTheirAxes = "Stillwall.Figures";

    [Fact]
    public void A_number_of_a_record_ends_in_its_unit_or_in_a_word_for_a_bare_number()
    {
        var wrong = Numbers()
            .Where(p =>
                p.DeclaringType!.Namespace != InUnitsOfTheirAxes
                && !Exempt.ContainsKey($"{p.DeclaringType!.Name}.{p.Name}")
                && !InMillimetres.Contains(p.DeclaringType.Name)
                && !IsNamed(p.Name)
            )
            .Select(p => $"{p.DeclaringType!.FullName}.{p.Name}")
            .ToList();
        Assert.True(
            wrong.Count == 0,
            $"end the name in a unit ({string.Join(", ", Units)}) or in a word for a bare number ({string.Join(", ", Words)}):\n{string.Join("\n", wrong)}"
        );
    }

    [Fact]
    public void Every_exemption_from_the_rule_of_names_is_still_needed()
    {
        var numbers = Numbers().ToList();
        Assert.All(Exempt, e => Assert.Contains(numbers, p => $"{p.DeclaringType!.Name}.{p.Name}" == e.Key && !IsNamed(p.Name)));
        Assert.All(InMillimetres, t => Assert.Contains(numbers, p => p.DeclaringType!.Name == t));
    }

    private static IEnumerable<PropertyInfo> Numbers() =>
        Repository
            .AllTypes.Where(t => t is { IsClass: true, IsAbstract: false } || (t is { IsValueType: true, IsEnum: false }))
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(p => IsNumber(p.PropertyType));

    private static bool IsNumber(Type type) =>
        (Nullable.GetUnderlyingType(type) ?? type) == typeof(double)
        || (typeof(IEnumerable).IsAssignableFrom(type) && type.IsGenericType && type.GetGenericArguments() is [var item] && item == typeof(double))
        || type == typeof(double[]);

    private static bool IsNamed(string name) => Units.Any(unit => EndsIn(name, unit)) || Words.Any(word => name == word || EndsIn(name, word));

    // The letter before the ending closes a word: WidthM and XM end in M, FORM does not.
    private static bool EndsIn(string name, string ending) =>
        name.Length > ending.Length
        && name.EndsWith(ending, StringComparison.Ordinal)
        && (name.Length == ending.Length + 1 || char.IsLower(name[^(ending.Length + 1)]) || char.IsDigit(name[^(ending.Length + 1)]));
}
