using Stillwall.Numerics;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Choices drawn from a seed: the same case for the same seed, on every machine.</summary>
internal sealed class Dice(int seed)
{
    private readonly SeededGenerator generator = new((ulong)seed);

    internal double Share() => generator.Next();

    internal bool Falls(double share) => generator.Next() < share;

    internal int Below(int count) => (int)(generator.Next() * count);

    internal T Pick<T>(IReadOnlyList<T> from) => from[Below(from.Count)];
}
