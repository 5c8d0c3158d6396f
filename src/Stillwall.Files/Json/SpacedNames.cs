using System.Text.Json;

namespace Stillwall.Files.Json;

/// <summary>Words of a closed set as results have them: in small letters, with blanks between.</summary>
internal sealed class SpacedNames : JsonNamingPolicy
{
    /// <summary>The policy.</summary>
    internal static SpacedNames Policy { get; } = new();

    /// <inheritdoc/>
    public override string ConvertName(string name) => KebabCaseLower.ConvertName(name).Replace('-', ' ');
}
