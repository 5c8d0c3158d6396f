using System.Runtime.CompilerServices;

namespace Stillwall.Tests.Numerics;

/// <summary>Tests run side by side; a transform that shares itself out over the same cores only waits for them.</summary>
internal static class OneThread
{
    [ModuleInitializer]
    internal static void ForEachTransform() => MathNet.Numerics.Control.UseSingleThread();
}
