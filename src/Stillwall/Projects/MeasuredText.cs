using System.Globalization;

namespace Stillwall.Projects;

/// <summary>Measured values as a project file states them.</summary>
internal static class MeasuredText
{
    /// <summary>Writes the values of one key.</summary>
    /// <param name="key">Dotted key, such as <c>measured.system_resonance</c>.</param>
    /// <returns>Four digits and the unit, for no measurement here is better; a list with commas.</returns>
    public static string Of(string key, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var field = ProjectKeys.Find(key) ?? throw new ArgumentException($"\"{key}\" is no key of a project", nameof(key));
        return string.Join(
            ", ",
            values.Select(v =>
                field.Dimension == Dimension.None ? Rounded(v).ToString("R", CultureInfo.InvariantCulture) : Units.Write(Rounded(v), field.Dimension)
            )
        );
    }

    private static double Rounded(double value) => double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
