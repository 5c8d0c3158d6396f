using System.Runtime.CompilerServices;

namespace Stillwall.Projects;

/// <summary>
/// A block of the stated model: what is read of it while something is computed is noted, so that every result knows what it was computed from.
/// </summary>
public abstract record Stated
{
    /// <summary>Hands out a stated value, and notes that it was read.</summary>
    /// <typeparam name="T">Type of the value.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="property">Name of the property that holds it.</param>
    /// <returns>The value.</returns>
    protected T Told<T>(T value, [CallerMemberName] string property = "")
    {
        ReadLog.Note(GetType(), property);
        return value;
    }
}

/// <summary>Blocks that outlive what is computed from them at once.</summary>
internal static class StatedBlocks
{
    /// <summary>Hands out a block that is kept in a result and read later: all of its values count as read.</summary>
    internal static T Kept<T>(this T block)
        where T : Stated
    {
        foreach (var field in ModelBlock.Of(block.GetType()).Fields)
        {
            ReadLog.Note(block.GetType(), field.Property.Name);
        }

        return block;
    }
}
