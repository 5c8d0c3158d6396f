using System.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>
/// The sum over all modes but the uniform one of ε ψ(source)²/|k_n² − k²|²: the mean over the room of the squared sum, since the modes are orthogonal
/// and the mean of ε² ψ² is ε. Modes near the wave number are taken one by one, those above in powers of k²/k_n², and the rest by their mean density
/// V k²/(2π²) (Kuttruff 2000, chapter 3).
/// </summary>
internal sealed class MeanSum
{
    // Enough for any dwelling; a hall has so many modes that their mean density serves.
    private const int MostAlone = 20000;
    private const int MostTogether = 60000;

    private readonly double volume;
    private readonly double[] fromWalls;
    private readonly double alone;
    private readonly (double Squared, double Weight)[] terms;
    private readonly double[] moments = new double[4];

    public MeanSum(RoomGeometry room, double highest)
    {
        volume = room.VolumeM3;
        fromWalls = [.. room.SizesM.Zip(room.Cabinet.CoordinatesM).Select(p => Math.Min(p.Second, p.First - p.Second))];
        alone = Math.Min(2.5 * highest, Reach(MostAlone));
        var together = Math.Max(alone, Math.Min(40, Reach(MostTogether)));
        var (near, weights) = (
            new List<(double, double)>(),
            room.SizesM.Zip(room.Cabinet.CoordinatesM).Select(p => Weights(p.First, p.Second, together)).ToArray()
        );
        var limit = together * together;
        for (var x = 0; x < weights[0].Length; x++)
        {
            for (var y = 0; y < weights[1].Length && weights[0][x].Squared + weights[1][y].Squared <= limit; y++)
            {
                AddLine(near, weights[2], weights[0][x].Squared + weights[1][y].Squared, weights[0][x].Weight * weights[1][y].Weight, limit);
            }
        }

        terms = [.. near];
        for (var i = 0; i < moments.Length; i++)
        {
            // ∫ V K²/(2π²) K^-(4+2i) dK from the last mode counted to infinity.
            moments[i] += Images(together) * volume / (2 * Math.PI * Math.PI) * Math.Pow(together, -1 - (2 * i)) / (1 + (2 * i));
        }
    }

    /// <summary>The sum at a wave number, m⁴.</summary>
    public double At(Complex k)
    {
        // The modes taken one by one must reach an octave above the wave number; else the density alone: V ∫ K²/|K²−k²|² dK/(2π²) = V/(8π|Im k|).
        if (k.Real * 2 > alone)
        {
            return Images(k.Real) * volume / (8 * Math.PI * Math.Abs(k.Imaginary));
        }

        var square = k * k;
        var (real, imaginary) = (square.Real, square.Imaginary * square.Imaginary);
        var sum = 0.0;
        foreach (var (squared, weight) in terms)
        {
            var apart = squared - real;
            sum += weight / ((apart * apart) + imaginary);
        }

        // 1/(a − x)² = a⁻² + 2x a⁻³ + 3x² a⁻⁴ + 4x³ a⁻⁵ …; the damping is nothing so far from resonance.
        return sum + moments[0] + (real * ((2 * moments[1]) + (real * ((3 * moments[2]) + (real * 4 * moments[3])))));
    }

    // Mean of ε ψ(source)² over the modes near a wave number: 1 far from the walls, up to 8 in a corner, by the source's mirror images (Waterhouse
    // 1955, from memory).
    private double Images(double k)
    {
        var sum = 0.0;
        for (var subset = 0; subset < 8; subset++)
        {
            var squared = 0.0;
            for (var axis = 0; axis < 3; axis++)
            {
                squared += (subset & (1 << axis)) != 0 ? 4 * fromWalls[axis] * fromWalls[axis] : 0;
            }

            var phase = k * Math.Sqrt(squared);
            sum += phase > 1e-6 ? Math.Sin(phase) / phase : 1;
        }

        return sum;
    }

    // The wave number up to which the room has about so many modes: N = V k³/(6π²).
    private double Reach(int modes) => Math.Cbrt(modes * 6 * Math.PI * Math.PI / volume);

    private void AddLine(List<(double Squared, double Weight)> near, (double Squared, double Weight)[] line, double squared, double weight, double limit)
    {
        for (var z = 0; z < line.Length && squared + line[z].Squared <= limit; z++)
        {
            var (total, product) = (squared + line[z].Squared, weight * line[z].Weight);
            if (total <= alone * alone)
            {
                if (total > 0)
                {
                    near.Add((total, product));
                }

                continue;
            }

            var power = product / (total * total);
            for (var i = 0; i < moments.Length; i++)
            {
                moments[i] += power;
                power /= total;
            }
        }
    }

    private static (double Squared, double Weight)[] Weights(double size, double source, double reach)
    {
        var count = (int)(reach * size / Math.PI) + 1;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => (i * Math.PI / size * (i * Math.PI / size), (i == 0 ? 1 : 2) * Math.Pow(Math.Cos(i * Math.PI * source / size), 2))),
        ];
    }
}
