using System.Runtime.CompilerServices;

namespace Stillwall.Projects;

/// <summary>A block of the stated model: what is read of it while something is computed is noted, so that every result knows what it was computed from.</summary>
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
