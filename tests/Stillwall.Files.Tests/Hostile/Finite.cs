using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Looks through a result for numbers that are none.</summary>
internal static class Finite
{
    private static readonly ConditionalWeakTable<Type, PropertyInfo[]> Known = [];

    /// <summary>Where the first number stands that is not finite; null when all are.</summary>
    internal static string? FirstFault(object? value, string path) =>
        value switch
        {
            null or string or int or bool or Enum or DateOnly => null,
            double number => double.IsFinite(number) ? null : $"{path} is {number.ToString(CultureInfo.InvariantCulture)}",
            IEnumerable entries => entries.Cast<object?>().Select((entry, i) => FirstFault(entry, $"{path}[{i}]")).FirstOrDefault(f => f is not null),
            _ => Properties(value.GetType()).Select(p => FirstFault(p.GetValue(value), $"{path}.{p.Name}")).FirstOrDefault(f => f is not null),
        };

    private static PropertyInfo[] Properties(Type type) =>
        Known.GetValue(type, t => [.. t.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0)]);
}
