using System.Text.Json;

namespace Stillwall.Numerics;

/// <summary>The words of a closed set: what people and files read for the name of an enum.</summary>
internal static class EnumWords
{
    /// <summary>The word of a value, such as <c>past date</c> for <c>PastDate</c>.</summary>
    /// <remarks>Source: our choice.</remarks>
    public static string Word(this Enum value, char gap = ' ')
    {
        ArgumentNullException.ThrowIfNull(value);
        return JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()).Replace('-', gap);
    }

    /// <summary>The words of a whole set, in their order.</summary>
    /// <param name="gap">What stands between two words.</param>
    internal static IReadOnlyList<string> All(Type type, char gap) => [.. Enum.GetValues(type).Cast<Enum>().Select(value => value.Word(gap))];

    /// <summary>The value of a word of its set; null for another word.</summary>
    internal static T? Find<T>(string word)
        where T : struct, Enum => Enum.GetValues<T>().Where(value => value.Word() == word).Select(value => (T?)value).FirstOrDefault();
}
