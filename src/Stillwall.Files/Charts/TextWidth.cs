namespace Stillwall.Files.Charts;

/// <summary>How wide a text will be, near enough to keep labels apart whatever the font.</summary>
internal static class TextWidth
{
    // Advances of a wide humanist sans, in ems (our choice, on the wide side): a picture that is read elsewhere may meet another font.
    internal static double Of(string text, double size, bool bold = false) => size * (bold ? 1.06 : 1) * text.Sum(Advance);

    internal static Box BoxOf(TextMark mark)
    {
        var width = Of(mark.Text, mark.Size, mark.Bold);
        var left = mark.Anchor switch
        {
            Anchor.Start => mark.At.X,
            Anchor.Middle => mark.At.X - (width / 2),
            _ => mark.At.X - width,
        };
        return new Box(left, mark.At.Y - (0.8 * mark.Size), left + width, mark.At.Y + (0.25 * mark.Size));
    }

    private static double Advance(char c) =>
        c switch
        {
            'i' or 'j' or 'l' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' => 0.29,
            ' ' or 'f' or 't' or 'r' or 'I' or '-' or '(' or ')' => 0.36,
            'm' or 'w' or 'M' or 'W' => 0.88,
            >= 'A' and <= 'Z' => 0.68,
            _ => 0.57,
        };
}
