namespace Stillwall.Tests.Rules.Fixture.Briefs;

// Each class uses the later stage in one way, by a name that does not begin with "Stillwall".
internal sealed class Plain;

internal sealed class Body
{
    internal static double Run() => Walls.Tilt.Of(1);
}

internal sealed class Lambda
{
    internal static Func<double, double> Run() => x => x + Walls.Tilt.Of(x);
}

internal sealed class MethodGroup
{
    internal static IEnumerable<double> Run(double[] all) => all.Select(Walls.Tilt.Of);
}

internal sealed class LocalFunction
{
    internal static double Run(double x)
    {
        double Inner() => Walls.Tilt.Of(x);
        return Inner();
    }
}

internal sealed class Iterator
{
    internal static IEnumerable<double> Run()
    {
        yield return Walls.Tilt.Of(1);
    }
}

internal sealed class Asynchronous
{
    internal static async Task<double> Run()
    {
        await Task.Yield();
        return Walls.Tilt.Of(1);
    }
}

internal sealed class GenericArgumentOfAMethod
{
    internal static object Run() => Array.Empty<Walls.Tilt>();
}

internal sealed class GenericArgumentOfAType
{
    internal static object Run() => new List<Walls.Tilt[]>();
}

internal sealed class TypeOf
{
    internal static string Run() => typeof(Walls.Tilt).Name;
}

internal sealed class Test
{
    internal static bool Run(object x) => x is Walls.Tilt;
}

internal sealed class Local
{
    internal static string Run()
    {
        Walls.Lean lean = default;
        return lean.ToString()!;
    }
}

internal sealed class Catch
{
    internal static void Run(Action what)
    {
        try
        {
            what();
        }
        catch (Walls.FellException)
        {
            what();
        }
    }
}

internal sealed class Field
{
    internal static double Run() => new[] { Walls.Tilt.Least }.Length;
}

internal sealed class Initializer
{
    internal double First { get; } = Walls.Tilt.Of(1);
}

internal sealed class Subscription
{
    internal static void Run(Action what) => Walls.Tilt.Moved += what;
}

internal sealed class Nested
{
    internal sealed class Inner
    {
        internal static double Run() => Walls.Tilt.Of(1);
    }
}

internal sealed class Tuple
{
    internal static (int, List<Walls.Lean>?) Run() => default;
}

internal sealed class Constraint
{
    internal static void Run<T>()
        where T : Walls.Tilt
    { }
}

[AttributeUsage(AttributeTargets.All)]
internal sealed class ShownAttribute(Type type) : Attribute
{
    internal Type Type => type;
}

internal sealed class Attributed
{
    internal static object Run([Shown(typeof(List<Walls.Tilt>))] int x) => x;
}

[AttributeUsage(AttributeTargets.Class)]
internal sealed class GenericAttribute<T> : Attribute;

[Generic<Walls.Tilt>]
internal sealed class AttributedByArgument;

internal sealed class Inherited : Walls.Tilt;
