using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Neighbours.Equalisers;

namespace Stillwall.Neighbours;

/// <summary>The programme through low-pass, cabinet and room, for one volt of programme: powers at the frequencies of each band.</summary>
internal sealed class Drive
{
    // The contract asks for at least fifteen.
    private const int PointsPerBand = 15;

    private readonly double[][] _frequencies;
    private readonly double[][] _seat;
    private readonly double[][] _mean;

    private Drive(double[][] frequencies, double[][] seat, double[][] mean) => (_frequencies, _seat, _mean) = (frequencies, seat, mean);

    /// <summary>Number of bands.</summary>
    public int Count => _frequencies.Length;

    /// <summary>The drive, or null where an input is missing or nothing at all is radiated.</summary>
    public static Drive? Of(QuietInputs inputs)
    {
        if (inputs is not { CrossoverHz: { } crossover, VolumeVelocityM3S: { } velocity } || SpectrumDb(inputs) is not { } spectrum || (inputs.StatedRoom is not null && inputs.Room is null))
        {
            return null;
        }

        var count = ThirdOctaves.Bands.Count;
        var (frequencies, seat, mean) = (new double[count][], new double[count][], new double[count][]);
        for (var b = 0; b < count; b++)
        {
            // One band's share of the programme, spread evenly over its frequencies.
            var share = Math.Pow(10, spectrum[b] / 10) / PointsPerBand;
            frequencies[b] = [.. ThirdOctaves.FrequenciesHz(ThirdOctaves.Bands[b], PointsPerBand)];
            (seat[b], mean[b]) = (new double[PointsPerBand], new double[PointsPerBand]);
            for (var i = 0; i < PointsPerBand; i++)
            {
                var f = frequencies[b][i];
                var u = velocity(f) * Analogue.FourthOrderLowPass(f, crossover);
                var atSeat = inputs.Room is { } room ? room.SeatPressurePa(f, u).Magnitude : FarField.HalfSpacePressurePa(u, f, inputs.DistanceM, inputs.Air).Magnitude;
                var over = inputs.Room is { } whole ? whole.MeanPressurePa(f, u.Magnitude) : atSeat;
                (seat[b][i], mean[b][i]) = (share * atSeat * atSeat, share * over * over);
            }
        }

        var drive = new Drive(frequencies, seat, mean);
        var total = seat.Sum(points => points.Sum());
        return total > 0 && double.IsFinite(total) ? drive : null;
    }

    /// <summary>The programme's relative spectrum, or null where an own one is asked for and not stated.</summary>
    public static IReadOnlyList<double>? SpectrumDb(QuietInputs inputs) => inputs.Everyday switch
    {
        null => null,
        { Programme: "own", SpectrumDb: var own } => Partitions.CoversTheBands(own) ? Programmes.Normalised(own!) : null,
        { Programme: var name } => Programmes.SpectrumDb(name),
    };

    /// <summary>Power at the seat in one band, Pa² for one volt of programme, behind a high-pass or none.</summary>
    public double Seat(int band, double? highPassHz = null) => Sum(_seat[band], _frequencies[band], highPassHz);

    /// <summary>Mean power in the room in one band, Pa² for one volt of programme, behind a high-pass or none.</summary>
    public double Mean(int band, double? highPassHz = null) => Sum(_mean[band], _frequencies[band], highPassHz);

    private static double Sum(double[] powers, double[] frequencies, double? highPassHz)
    {
        if (highPassHz is not { } corner)
        {
            return powers.Sum();
        }

        var sum = 0.0;
        for (var i = 0; i < powers.Length; i++)
        {
            var magnitude = Analogue.HighPass(frequencies[i], corner, Analogue.ButterworthQ).Magnitude;
            sum += powers[i] * magnitude * magnitude;
        }

        return sum;
    }
}
