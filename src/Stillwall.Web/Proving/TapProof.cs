using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Files.Json;
using Stillwall.Projects;
using Stillwall.Proofs.Taps;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proof by taps on a bar.</summary>
internal static class TapProof
{
    internal static ProofOutcome Of(ProofRequest request)
    {
        var (bar, facts, show, recording) = (Bar(request), request.Facts, request.Facts.Show, request.Sound());
        var reading = TapTest.Of(recording, bar);
        var r = ProofReader.Said(reading.Result, reading.Trouble);
        var u = r.Uncertainty;
        var recorded = ProofRequest.Recorded(recording);
        List<ExplainedInput> Beside(string property)
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
                recorded,
                ProofRequest.Moved("frequency_hz", r.FrequencyHz, "Hz", f => Of(bar, f)),
                ProofRequest.Moved("length_m", bar.LengthM, "m", l => Of(bar with { LengthM = l }, r.FrequencyHz)),
                ProofRequest.Moved("width_m", bar.WidthM, "m", b => Of(bar with { WidthM = b }, r.FrequencyHz)),
                ProofRequest.Moved("thickness_m", bar.ThicknessM, "m", t => Of(bar with { ThicknessM = t }, r.FrequencyHz)),
                ProofRequest.Moved("mass_kg", bar.MassKg, "kg", m => Of(bar with { MassKg = m }, r.FrequencyHz)),
            ];
        }

        ProofFigure Figure(string name, string text, string property) => new(name, text, () => Why.Of(facts, r, property, null, Beside(property)));
        return new ProofOutcome(
            ProofReader.Tap,
            ResultJson.Write(r),
            [
                new(ProofTexts.TapsThatCount, ProofTexts.CountOf(r.Taps.Count(t => !t.IsOutlier), r.Taps.Count), null),
                Figure(ProofTexts.Bending, Bands.Of(r.FrequencyHz, u.FrequencyHz, "Hz"), nameof(r.FrequencyHz)),
                Figure(
                    ProofTexts.Modulus,
                    show.Inch ? show.Pressure(r.YoungsModulusPa) : Bands.Of(r.YoungsModulusPa / 1e9, u.YoungsModulusPa / 1e9, "GPa"),
                    nameof(r.YoungsModulusPa)
                ),
                Figure(ProofTexts.LossFactor, Bands.Of(r.LossFactor, u.LossFactor), nameof(r.LossFactor)),
                Figure(ProofTexts.Density, show.Inch ? show.Density(r.DensityKgM3) : Bands.Of(r.DensityKgM3, u.DensityKgM3, "kg/m³"), nameof(r.DensityKgM3)),
            ],
            [.. request.Odd, .. reading.Warnings],
            [
                ProofRequest.Kept("measured.core_modulus", r.YoungsModulusPa),
                ProofRequest.Kept("measured.core_loss_factor", r.LossFactor),
                ProofRequest.Kept("measured.core_density", r.DensityKgM3),
            ],
            ProofReader.Entry("tap", $"{show.Pressure(r.YoungsModulusPa)}, loss factor {Show.Number(r.LossFactor, 2)}", "test bar")
        );
    }

    private static TestBar Bar(ProofRequest request)
    {
        var bar = new TestBar(
            request.Quantity("length", Dimension.Length, 1e-3, 10),
            request.Quantity("width", Dimension.Length, 1e-3, 10),
            request.Quantity("thickness", Dimension.Length, 1e-4, 1),
            request.Quantity("mass", Dimension.Mass, 1e-4, 1000)
        );
        return bar.ThicknessM <= 0.35 * bar.LengthM ? bar : throw new ProofRefusal(ProofTexts.TooThick(bar.ThicknessM, bar.LengthM));
    }
}
