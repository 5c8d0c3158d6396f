using Stillwall.Files.Json;
using Stillwall.Proofs.Polarities;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proof of which way the cabinet pushes.</summary>
internal static class PolarityProof
{
    internal static ProofOutcome Of(ProofRequest request)
    {
        var isPositive = Read(request, ProofRequest.Main);
        bool? isSame = request.Has("main") ? Read(request, "main") == isPositive : null;
        List<ProofFigure> figures = [new(ProofTexts.FirstSwing, isPositive ? ProofTexts.Up : ProofTexts.Down, null)];
        if (isSame is { } same)
        {
            figures.Add(new(ProofTexts.AgainstMainSpeaker, same ? ProofTexts.SameWay : ProofTexts.OtherWay, null));
        }

        var note =
            $"first swing {(isPositive ? "up" : "down")}{isSame switch { true => ", as the main speaker", false => ", against the main speaker", _ => "" }}";
        return new ProofOutcome(
            ProofReader.Polarity,
            ResultJson.Write(new PolarityReport(isPositive, isSame)),
            figures,
            [.. request.Odd, isSame is null ? ProofTexts.OneMicrophone : ProofTexts.TwoCones],
            isSame is { } way ? [("measured.polarity", way ? "same" : "opposite")] : [],
            ProofReader.Entry("polarity", note)
        );
    }

    private static bool Read(ProofRequest request, string name)
    {
        var reading = Polarity.Of(request.Sound(name));
        return reading.IsPositive ?? throw new ProofRefusal(ProofTexts.Recording(name, reading.Trouble!));
    }
}
