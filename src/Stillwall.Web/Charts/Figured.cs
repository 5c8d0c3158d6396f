using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Stillwall.Web.Charts;

/// <summary>A sentence whose figures stand in the face for numbers, each with its unit on one line.</summary>
public sealed partial class Figured : ComponentBase
{
    /// <summary>A figure inside words, its unit with it; the number of a name ("Dunlin 8") stays with its name. The page's scripts use it too.</summary>
    internal const string Pattern =
        @"(?<![\p{L}\d])[\u2212+±]?\d+(?:[.,]\d+)*(?:[ \u00a0]"
        + @"(?:Hz|kHz|dB|mm|cm|m|in³|in|ft³|ft|ohm|Ω|V|W|kg|lb|g|L|gal|Pa|kPa|ms|s|h|min|%|K|°C|°F|[A-Z]{3})(?!\p{L})|(?<!\p{Lu}\p{L}* [\d.,]*))(?![.,]?\d)";

    /// <summary>The sentence.</summary>
    [Parameter]
    [EditorRequired]
    public string Text { get; set; } = "";

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        var from = 0;
        foreach (var found in Figure().Matches(Text).Cast<Match>())
        {
            builder.AddContent(0, Text[from..found.Index]);
            builder.OpenElement(1, "b");
            builder.AddContent(2, found.Value.Replace(' ', '\u00a0'));
            builder.CloseElement();
            from = found.Index + found.Length;
        }

        builder.AddContent(3, Text[from..]);
    }

    [GeneratedRegex(Pattern)]
    private static partial Regex Figure();
}
