using Stillwall.Appraisals.Care;

namespace Stillwall.Appraisals.Proving;

/// <summary>One way to prove the built thing: what it takes and how it is read. Every face asks here and shows what it is told.</summary>
internal sealed record Proof
{
    private readonly Func<ProofRequest, ProofOutcome> read;

    private Proof(string kind, string title, WorkStep step, IReadOnlyList<ProofInput> inputs, Func<ProofRequest, ProofOutcome> read) =>
        (Kind, Title, Step, Inputs, this.read) = (kind, title, step, inputs, read);

    public static IReadOnlyList<Proof> All { get; } =
    [
        new("impedance", "Impedance", WorkStep.Impedance, ImpedanceProof.Inputs, ImpedanceProof.Of),
        new("driver", "The driver's own parameters", WorkStep.Driver, DriverProof.Inputs, DriverProof.Of),
        new("sweep", "Relative response", WorkStep.Sweep, SweepProof.Inputs, SweepProof.Of),
        new("tap", "Tap test", WorkStep.TapTest, TapProof.Inputs, TapProof.Of),
        new("wall", "Through the party wall", WorkStep.PartyWall, WallProof.Inputs, WallProof.Of),
        new("polarity", "Polarity", WorkStep.Polarity, PolarityProof.Inputs, PolarityProof.Of),
        new("hold", "Hold test", WorkStep.HoldTest, [HoldProof.Seconds], HoldProof.Of),
        new("weight", "Drying, by the scales", WorkStep.WeighIn, [WeightProof.Mass], WeightProof.Of),
        new("rattle", "Rattle, by ear", WorkStep.Rattle, [RattleProof.Part], RattleProof.Of) { How = RattleProof.How },
    ];

    /// <summary>Its name.</summary>
    public string Kind { get; }

    /// <summary>What stands above its figures.</summary>
    public string Title { get; }

    /// <summary>Step of the job, for what to take care of.</summary>
    public WorkStep Step { get; }

    /// <summary>What it takes.</summary>
    public IReadOnlyList<ProofInput> Inputs { get; }

    /// <summary>What to do, in order; empty where each face says it beside what it asks for.</summary>
    public IReadOnlyList<string> How { get; private init; } = [];

    /// <summary>The proof of that name.</summary>
    /// <remarks>Source: our choice of names.</remarks>
    public static Proof Of(string kind) => All.First(p => p.Kind == kind);

    /// <summary>Asks for what was brought.</summary>
    /// <returns>What it shows, or which input cannot be used.</returns>
    public ProofReading Read(ProofRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        try
        {
            return new ProofReading(read(request) with { Kind = Kind }, null);
        }
        catch (ProofRefusal refusal)
        {
            return new ProofReading(null, refusal.Fault);
        }
    }
}
