using Stillwall.Materials;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>Peaks of voltage and excursion at the everyday level, behind any equaliser.</summary>
internal sealed class DriveHeadroom
{
    private readonly double[] volts;
    private readonly double[]? excursion;
    private readonly double? amplifierV;
    private readonly double? xmaxM;

    private DriveHeadroom(double[] volts, double[]? excursion, double? amplifierV, double? xmaxM) =>
        (this.volts, this.excursion, this.amplifierV, this.xmaxM) = (volts, excursion, amplifierV, xmaxM);

    /// <summary>The peaks for a drive at a gain.</summary>
    public static DriveHeadroom Of(QuietInputs inputs, Drive drive, double gainDb)
    {
        // One volt of programme times the gain; peaks stand the crest above it, and a sine's peak √2 above its rms value.
        var peak = Math.Pow(10, (gainDb + (inputs.Everyday!.CrestDb ?? Programmes.CrestDb(inputs.Everyday.Programme))) / 10);
        double[] volts = [.. drive.VoltPowers.SelectMany(band => band).Select(power => power * peak)];
        var excursion = inputs is { ExcursionPeakM: { } way, XmaxM: not null }
            ? drive.Frequencies.SelectMany(band => band).Zip(volts, (f, power) => way(f) is var x ? power * x * x / 2 : 0).ToArray()
            : null;
        return new(volts, excursion, inputs.Amplifier is { PowerW: { } power, RatedLoadOhm: { } load } ? Math.Sqrt(2 * power * load) : null, inputs.XmaxM);
    }

    /// <summary>What is left; null where neither amplifier nor excursion is stated.</summary>
    /// <param name="kept">Power that an equaliser lets through at each frequency of the drive; null for none.</param>
    public Headroom? Left(double[]? kept)
    {
        var headroom = new Headroom(Db(amplifierV, volts, kept), excursion is null ? null : Db(xmaxM, excursion, kept));
        return headroom is { AmplifierDb: null, ExcursionDb: null } ? null : headroom;
    }

    private static double? Db(double? limit, double[] powers, double[]? kept)
    {
        var sum = 0.0;
        for (var i = 0; i < powers.Length; i++)
        {
            sum += kept is null ? powers[i] : powers[i] * kept[i];
        }

        return limit is { } most && sum > 0 ? (20 * Math.Log10(most)) - (10 * Math.Log10(sum)) : null;
    }
}
