using Stillwall.Materials;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>What an equaliser comes to: excess next door and losses at the seat.</summary>
/// <param name="OverDb">Greatest excess over curve or limit, dB.</param>
/// <param name="AudibleLossDb">Loss of what is audible at the seat, dB.</param>
/// <param name="SeatLossDb">Loss of the everyday level, dB.</param>
internal readonly record struct EqualiserEffect(double OverDb, double AudibleLossDb, double SeatLossDb);

/// <summary>One everyday level at which equalisers are tried: the drive, the limits, and how audible each band is at the seat.</summary>
internal sealed class EqualiserCase
{
    private readonly Drive drive;
    private readonly Politeness limits;
    private readonly double[] audible;
    private readonly double[] bandSeat;
    private readonly double[] bandMean;
    private readonly double[] kept;
    private readonly double[] keptSeat;
    private readonly double[] power;
    private readonly double[] squares;

    private readonly DriveHeadroom headroom;

    public EqualiserCase(Drive drive, Politeness limits, DriveHeadroom headroom, IReadOnlyList<double?> seatDb)
    {
        (this.drive, this.limits, this.headroom) = (drive, limits, headroom);
        var threshold = LimitCurves.LevelDb("hearing-threshold")!;
        audible = [.. seatDb.Select((level, i) => Math.Max(0, (level ?? double.NegativeInfinity) - threshold[i]!.Value))];

        // Where nothing is audible at the seat every band counts alike.
        IsAudible = audible.Any(a => a > 0);
        bandSeat = [.. Enumerable.Range(0, drive.Count).Select(i => drive.Seat(i))];
        bandMean = [.. Enumerable.Range(0, drive.Count).Select(i => drive.Mean(i))];
        (kept, keptSeat) = (new double[drive.Count], new double[drive.Count]);
        squares = [.. drive.Frequencies.SelectMany(band => band).Select(f => f * f)];
        power = new double[squares.Length];
    }

    /// <summary>Whether anything of the everyday level can be heard at the seat at all.</summary>
    public bool IsAudible { get; }

    /// <summary>Greatest excess without an equaliser, dB.</summary>
    public double OverDb => limits.OverDb();

    /// <summary>Headroom behind the sections that were tried last; null where nothing limits.</summary>
    public Headroom? HeadroomOfLast() => headroom.Left(power);

    /// <summary>The bands behind the sections that were tried last.</summary>
    public IReadOnlyList<QuietBand> BandsOfLast(IReadOnlyList<QuietBand> bands) =>
        [
            .. bands.Select(
                (band, i) =>
                {
                    var (seat, mean) = (10 * Math.Log10(Math.Max(keptSeat[i], 1e-30)), 10 * Math.Log10(Math.Max(kept[i], 1e-30)));
                    return band with
                    {
                        SeatDb = band.SeatDb + seat,
                        SourceRoomDb = band.SourceRoomDb + mean,
                        NeighbourDb = band.NeighbourDb + mean,
                        OverDb = band.OverDb + mean,
                    };
                }
            ),
        ];

    /// <summary>Effect of sections as they are told.</summary>
    public EqualiserEffect Of(IReadOnlyList<EqualiserSection> sections) =>
        Of((ReadOnlySpan<EqualiserStage>)[.. sections.Select(s => EqualiserStage.Of(s.Kind, s.F0Hz, s.Q, s.GainDb, s.FpHz ?? 0, s.PoleQ ?? 1))]);

    /// <summary>Effect of some sections one after the other.</summary>
    public EqualiserEffect Of(ReadOnlySpan<EqualiserStage> stages)
    {
        Array.Fill(power, 1);
        foreach (var stage in stages)
        {
            stage.Multiply(power, squares);
        }

        var (at, seatAll, keptAll, weights, lost) = (0, 0.0, 0.0, 0.0, 0.0);
        for (var b = 0; b < kept.Length; b++)
        {
            var (seat, mean, points) = (0.0, 0.0, drive.SeatPowers[b].Length);
            for (var i = 0; i < points; i++, at++)
            {
                seat += drive.SeatPowers[b][i] * power[at];
                mean += drive.MeanPowers[b][i] * power[at];
            }

            kept[b] = bandMean[b] > 0 ? mean / bandMean[b] : 1;
            (seatAll, keptAll) = (seatAll + bandSeat[b], keptAll + seat);
            keptSeat[b] = bandSeat[b] > 0 ? seat / bandSeat[b] : 1;
            if (bandSeat[b] > 0)
            {
                var weight = IsAudible ? audible[b] : 1;
                var loss = -10 * Math.Log10(Math.Max(keptSeat[b], 1e-30));
                (weights, lost) = (weights + weight, lost + (weight * Math.Clamp(loss, 0, IsAudible ? audible[b] : 300)));
            }
        }

        return new(limits.OverDb(kept), weights > 0 ? lost / weights : 0, -10 * Math.Log10(Math.Max(keptAll / seatAll, 1e-30)));
    }
}

/// <summary>Power response of one section as a quotient of two quadratics in s: fast, for the search.</summary>
internal readonly record struct EqualiserStage(double Zero0, double Zero1, double Zero2, double Pole0, double Pole1, double Pole2, double CornerSquared)
{
    /// <summary>The stage of a section; the same response as <see cref="EqualiserSection.Response"/>.</summary>
    public static EqualiserStage Of(SectionKind kind, double f0, double q, double gainDb = 0, double fp = 0, double poleQ = 0)
    {
        var a = Math.Pow(10, gainDb / 40);
        var (square, slope, ratio) = (f0 * f0, Math.Sqrt(a) / q, fp / f0);
        return kind switch
        {
            SectionKind.Highpass => new(Zero0: 0, Zero1: 0, Zero2: 1, Pole0: 1, Pole1: 1 / q, Pole2: 1, CornerSquared: square),
            SectionKind.Peaking => new(Zero0: 1, Zero1: a / q, Zero2: 1, Pole0: 1, Pole1: 1 / (a * q), Pole2: 1, CornerSquared: square),
            SectionKind.Lowshelf => new(Zero0: a * a, Zero1: a * slope, Zero2: a, Pole0: 1, Pole1: slope, Pole2: a, CornerSquared: square),
            _ => new(Zero0: 1, Zero1: 1 / q, Zero2: 1, Pole0: ratio * ratio, Pole1: ratio / poleQ, Pole2: 1, CornerSquared: square),
        };
    }

    /// <summary>Multiplies powers by this stage's at frequencies given by their squares.</summary>
    public void Multiply(double[] power, double[] frequencySquares)
    {
        for (var i = 0; i < power.Length; i++)
        {
            var w = frequencySquares[i] / CornerSquared;
            var (zero, pole) = (Zero0 - (Zero2 * w), Pole0 - (Pole2 * w));
            power[i] *= ((zero * zero) + (Zero1 * Zero1 * w)) / ((pole * pole) + (Pole1 * Pole1 * w));
        }
    }
}
