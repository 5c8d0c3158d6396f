using Stillwall.Files.Charts;

namespace Stillwall.Files.Tests.Charts;

public sealed class LazyPictureTests
{
    [Fact]
    public void Only_the_png_painter_touches_the_painting_library()
    {
        // A type whose fields, properties or method signatures name a foreign type loads it; so none but one may.
        var naming = typeof(ChartPicture)
            .Assembly.GetTypes()
            .Where(t =>
                t.GetMethods(All)
                    .SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType))
                    .Concat(t.GetFields(All).Select(f => f.FieldType))
                    .Concat(t.GetMethods(All).SelectMany(m => m.GetMethodBody()?.LocalVariables.Select(v => v.LocalType) ?? []))
                    .Any(x => x.Assembly.GetName().Name == "SkiaSharp")
            )
            .Select(t => t.DeclaringType ?? t)
            .Distinct();
        Assert.Equal(["PngPainter"], naming.Select(t => t.Name));
    }

    private const System.Reflection.BindingFlags All =
        System.Reflection.BindingFlags.Public
        | System.Reflection.BindingFlags.NonPublic
        | System.Reflection.BindingFlags.Static
        | System.Reflection.BindingFlags.Instance
        | System.Reflection.BindingFlags.DeclaredOnly;
}
