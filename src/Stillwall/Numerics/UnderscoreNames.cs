using System.Text;
using System.Text.Json;

namespace Stillwall.Numerics;

/// <summary>Keys of results: an underscore before every capital, all in lower case; digits stay attached.</summary>
/// <remarks>
/// <c>F3Hz</c> becomes <c>f3_hz</c>, <c>LeakResistancePaSM3</c> becomes <c>leak_resistance_pa_s_m3</c>, <c>CentreDeflectionMPerPa</c> becomes
/// <c>centre_deflection_m_per_pa</c>. The ready-made policies take runs of capitals for one word and part digits from letters.
/// </remarks>
internal sealed class UnderscoreNames : JsonNamingPolicy
{
    internal static UnderscoreNames Policy { get; } = new();

    /// <summary>The key of a property.</summary>
    internal static string Of(string name) => Policy.ConvertName(name);

    /// <inheritdoc/>
    public override string ConvertName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var key = new StringBuilder(name.Length + 8);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterUpper(c) && key.Length > 0)
            {
                key.Append('_');
            }

            key.Append(char.ToLowerInvariant(c));
        }

        return key.ToString();
    }
}
