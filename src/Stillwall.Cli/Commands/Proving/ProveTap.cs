using System.Text.Json;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;
using Stillwall.Proofs.Taps;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove tap</c>: modulus and loss factor of a cast bar.</summary>
internal static class ProveTap
{
    internal static Verb Verb()
    {
        static Brings Of(string input, string description) => ProofVerb.Quantity("tap", input, $"--{input}", description);
        var against = new TextOption("--against", "BAR.json", "what --json said of another bar: which mix is stiffer and which is deader");
        var proof = new ProofVerb([
            new Brings(
                "recording",
                new TextArgument("FILE.wav", "five single taps in the middle of the bar, hung or laid on foam at 0.22 of its length from each end")
            ),
            Of("length", "length by caliper"),
            Of("width", "width across the tap"),
            Of("thickness", "thickness in the direction of the tap"),
            Of("mass", "mass on the scales"),
            Of("poisson", "Poisson's ratio; 0.2 where left out"),
            Of("caliper", "how far a size may be off; 0.1 mm where left out"),
            Of("scales", "how far the mass may be off; 1 g where left out"),
            new Brings("against", against),
        ]);
        return new Verb(
            "tap",
            "Young's modulus and loss factor of a cast bar from the sound of taps (ASTM E1876-15)",
            "stillwall prove tap taps.wav --length 160mm --width 40mm --thickness 40mm --mass 268.8g"
        )
        {
            Step = WorkStep.TapTest,
            Takes = proof.All,
            Do = call =>
            {
                var other = call.Text(against) is { } file ? Other(call.Session, file) : null;
                return proof.Run(call, "tap", proof.Keeping.Load(call), request => request with { OtherBar = other });
            },
        };
    }

    private static BarFigures Other(Session session, string file)
    {
        try
        {
            using var document = JsonDocument.Parse(session.Read(file, 1 << 20));
            var (figures, band) = (document.RootElement, document.RootElement.GetProperty("uncertainty"));
            TapFigures Of(JsonElement e) =>
                new(
                    e.GetProperty("frequency_hz").GetDouble(),
                    e.GetProperty("youngs_modulus_pa").GetDouble(),
                    e.GetProperty("loss_factor").GetDouble(),
                    e.GetProperty("density_kg_m3").GetDouble()
                );
            return Of(figures) is { YoungsModulusPa: > 0, LossFactor: > 0 } sound ? new BarFigures(sound, Of(band)) : throw new KeyNotFoundException();
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw Refusal.Input($"{file}: is not what prove tap --json writes; the output of another bar");
        }
    }
}
