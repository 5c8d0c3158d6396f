using System.Text.RegularExpressions;

namespace Stillwall.Cli.Output;

/// <summary>Tells from what was typed in which units a person thinks.</summary>
internal static partial class TypedUnits
{
    /// <summary>Whether a text has a quantity in inches, feet, pounds, ounces, gallons or degrees Fahrenheit.</summary>
    internal static bool AreInch(params string?[] texts) => texts.Any(t => t is not null && Inch().IsMatch(t));

    [GeneratedRegex("""[0-9.]\s*(?:in[23]?|ft[23]?|"|″|lb|oz|gal|psi|degF|°F|lb/ft3)(?![A-Za-z])""", RegexOptions.CultureInvariant)]
    private static partial Regex Inch();
}
