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
        var (bar, show, recording) = (Bar(request), request.Facts.Show, request.Sound());
        var reading = TapTest.Of(recording, bar);
        var r = ProofReader.Said(reading.Result, reading.Trouble);
        var u = r.Uncertainty;
        List<ExplainedInput> beside =
        [
            ProofRequest.Recorded(recording), new("recording.frequency_hz", r.FrequencyHz, "Hz", null), new("recording.length_m", bar.LengthM, "m", null), new("recording.width_m", bar.WidthM, "m", null),
            new("recording.thickness_m", bar.ThicknessM, "m", null), new("recording.mass_kg", bar.MassKg, "kg", null),
        ];
        ProofFigure Figure(string name, string text, string property) => new(name, text, Why.Of(request.Facts, r, property, null, beside));
        return new ProofOutcome(
            ProofReader.Tap, ResultJson.Write(r),
            [
                new(ProofTexts.TapsThatCount, ProofTexts.CountOf(r.Taps.Count(t => !t.IsOutlier), r.Taps.Count), null), Figure(ProofTexts.Bending, Bands.Of(r.FrequencyHz, u.FrequencyHz, "Hz"), nameof(r.FrequencyHz)),
                Figure(ProofTexts.Modulus, show.Inch ? show.Pressure(r.YoungsModulusPa) : Bands.Of(r.YoungsModulusPa / 1e9, u.YoungsModulusPa / 1e9, "GPa"), nameof(r.YoungsModulusPa)),
                Figure(ProofTexts.LossFactor, Bands.Of(r.LossFactor, u.LossFactor), nameof(r.LossFactor)),
                Figure(ProofTexts.Density, show.Inch ? show.Density(r.DensityKgM3) : Bands.Of(r.DensityKgM3, u.DensityKgM3, "kg/m³"), nameof(r.DensityKgM3)),
            ],
            [.. request.Odd, .. reading.Warnings],
            [ProofRequest.Kept("measured.core_modulus", r.YoungsModulusPa), ProofRequest.Kept("measured.core_loss_factor", r.LossFactor), ProofRequest.Kept("measured.core_density", r.DensityKgM3)],
            ProofReader.Entry("tap", $"{show.Pressure(r.YoungsModulusPa)}, loss factor {Show.Number(r.LossFactor, 2)}", "test bar"));
    }

    private static TestBar Bar(ProofRequest request)
    {
        var bar = new TestBar(
            request.Quantity("length", Dimension.Length, 1e-3, 10), request.Quantity("width", Dimension.Length, 1e-3, 10), request.Quantity("thickness", Dimension.Length, 1e-4, 1),
            request.Quantity("mass", Dimension.Mass, 1e-4, 1000));
        return bar.ThicknessM <= 0.35 * bar.LengthM ? bar : throw new ProofRefusal(ProofTexts.TooThick(bar.ThicknessM, bar.LengthM));
    }
}
