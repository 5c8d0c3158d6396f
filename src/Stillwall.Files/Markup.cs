using System.Globalization;
using System.Security;
using System.Xml;
using Stillwall.Files.Outputs;

namespace Stillwall.Files;

/// <summary>What drawings and models are written of: no identities, no dates, two decimals of a unit, so that the same is the same bytes everywhere.</summary>
internal static class Markup
{
    /// <summary>What stands at a place of a text that does not begin there.</summary>
    internal const string AtMiddle = " text-anchor=\"middle\"",
        AtEnd = " text-anchor=\"end\"";

    /// <summary>A number of two decimals at most.</summary>
    internal static string N(double value) =>
        Math.Round(value, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;

    /// <summary>Words as they stand in a text or an attribute, without the characters that XML does not have.</summary>
    internal static string Escaped(string words) => SecurityElement.Escape(string.Concat(words.Where((c, i) => XmlConvert.IsXmlChar(c) || IsPair(words, i))));

    /// <summary>The first element of an SVG with its mark, title and description.</summary>
    /// <param name="width">Width, units of the drawing.</param>
    /// <param name="height">Height, units of the drawing.</param>
    /// <param name="unit">Unit of the drawing; empty for px.</param>
    /// <param name="look">Attributes that hold for all of it.</param>
    /// <param name="title">Title.</param>
    /// <param name="description">The same in a sentence.</param>
    internal static string Head(double width, double height, string unit, string look, string title, string description) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" {OwnMark.InMarkup} width=\"{N(width)}{unit}\" height=\"{N(height)}{unit}\" "
        + $"viewBox=\"0 0 {N(width)} {N(height)}\" role=\"img\" {look}>\n<title>{Escaped(title)}</title>\n<desc>{Escaped(description)}</desc>\n";

    private static bool IsPair(string text, int i) =>
        (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) || (i > 0 && char.IsSurrogatePair(text[i - 1], text[i]));
}
