using Stillwall.Appraisals.Explaining;
using Stillwall.Projects;
using Stillwall.Proofs.Taps;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof of the cast by taps on a bar of it.</summary>
internal static class TapProof
{
    private static readonly ProofInput Main = ProofInput.Sound("recording", isNeeded: true),
        Length = ProofInput.Quantity("length", Dimension.Length, 1e-3, 10),
        Width = ProofInput.Quantity("width", Dimension.Length, 1e-3, 10),
        Thickness = ProofInput.Quantity("thickness", Dimension.Length, 1e-4, 1),
        Mass = ProofInput.Quantity("mass", Dimension.Mass, 1e-4, 1000),
        Poisson = ProofInput.Quantity("poisson", Dimension.None, 0, 0.5),
        Caliper = ProofInput.Quantity("caliper", Dimension.Length, 0, 0.01),
        Scales = ProofInput.Quantity("scales", Dimension.Mass, 0, 1);

    internal static readonly ProofInput[] Inputs = [Main, Length, Width, Thickness, Mass, Poisson, Caliper, Scales];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (bar, facts, show) = (Bar(request), request.Facts, request.Facts.Show);
        var (caliper, scales, sound) = (request.Perhaps(Caliper) ?? 1e-4, request.Perhaps(Scales) ?? 1e-3, request.Sound(Main));
        var reading = TapTest.Of(sound, bar, caliper, scales);
        var r = ProofRefusal.Said(Main, reading.Result, reading.Trouble);
        r = request.OtherBar is { } other ? r with { Against = BarComparison.Of(other, new BarFigures(r.Figures, r.Uncertainty)) } : r;
        var (u, recorded) = (r.Uncertainty, ProofRequest.Recorded(sound));
        ProofFigure Figure(string name, string text, string property) =>
            new(name, text, () => Why.Of(facts, r, property, null, [recorded, .. Beside(bar, r, property)]));
        return new ProofOutcome(
            r,
            [
                new("taps that count", $"{Show.Number(r.Taps.Count(t => !t.IsOutlier))} of {Show.Number(r.Taps.Count)}"),
                Figure("first bending mode", Bands.Of(r.FrequencyHz, u.FrequencyHz, "Hz"), nameof(r.FrequencyHz)),
                Figure(
                    "Young's modulus",
                    show.Inch ? show.Pressure(r.YoungsModulusPa) : Bands.Of(r.YoungsModulusPa / 1e9, u.YoungsModulusPa / 1e9, "GPa"),
                    nameof(r.YoungsModulusPa)
                ),
                Figure("loss factor, its supports in it", Bands.Of(r.LossFactor, u.LossFactor), nameof(r.LossFactor)),
                Figure("density", show.Inch ? show.Density(r.DensityKgM3) : Bands.Of(r.DensityKgM3, u.DensityKgM3, "kg/m³"), nameof(r.DensityKgM3)),
            ]
        )
        {
            Caption = "± is half of the 95 % band, caliper and scales counted",
            Warnings = [.. ProofOutcome.About(Main, reading.Warnings)],
            Notes = [.. (r.Against ?? []).Select(Said)],
            Kept =
            [
                ProofOutcome.Measured("measured.core_modulus", r.YoungsModulusPa),
                ProofOutcome.Measured("measured.core_loss_factor", r.LossFactor),
                ProofOutcome.Measured("measured.core_density", r.DensityKgM3),
            ],
            Entry = ProofOutcome.Logged("tap", $"{show.Pressure(r.YoungsModulusPa)}, loss factor {Show.Number(r.LossFactor, 2)}", "test bar"),
        };
    }

    private static IEnumerable<ExplainedInput> Beside(TestBar bar, TapResult r, string property)
    {
        double? Of(TestBar other, double hertz) =>
            property switch
            {
                nameof(r.YoungsModulusPa) => other.ModulusPa(hertz),
                nameof(r.DensityKgM3) => other.DensityKgM3,
                _ => null,
            };
        return
        [
            ProofRequest.Moved("frequency_hz", r.FrequencyHz, "Hz", f => Of(bar, f)),
            ProofRequest.Moved("length_m", bar.LengthM, "m", l => Of(bar with { LengthM = l }, r.FrequencyHz)),
            ProofRequest.Moved("width_m", bar.WidthM, "m", b => Of(bar with { WidthM = b }, r.FrequencyHz)),
            ProofRequest.Moved("thickness_m", bar.ThicknessM, "m", t => Of(bar with { ThicknessM = t }, r.FrequencyHz)),
            ProofRequest.Moved("mass_kg", bar.MassKg, "kg", m => Of(bar with { MassKg = m }, r.FrequencyHz)),
        ];
    }

    private static TestBar Bar(ProofRequest request)
    {
        var bar = new TestBar(request.Value(Length), request.Value(Width), request.Value(Thickness), request.Value(Mass), request.Perhaps(Poisson) ?? 0.2);
        return bar.ThicknessM <= 0.35 * bar.LengthM
            ? bar
            : throw new ProofRefusal(
                Thickness.Name,
                $"{Show.Number(bar.ThicknessM.InMillimetres())} mm is too thick for a length of {Show.Number(bar.LengthM.InMillimetres())} mm; "
                    + "at most 0.35 of it, better a quarter"
            );
    }

    private static string Said(BarDifference d)
    {
        var (what, more) = d.Figure == "loss_factor" ? ("loss factor", "deader") : ("modulus", "stiffer");
        var amount = $"{Show.Percent(Math.Abs(d.DifferenceRatio))} ± {Show.Percent(d.BandRatio)}";
        return d.IsBeyondNoise
            ? $"{(d.DifferenceRatio > 0 ? "this bar" : "the other bar")} is {more}: this one's {what} is {amount} "
                + $"{(d.DifferenceRatio > 0 ? "above" : "below")} the other's, beyond the noise"
            : $"in {what} the bars do not differ beyond the noise: {amount}";
    }
}
