using Stillwall.Appraisals;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Parts;

/// <summary>Cabinets drawn once for all tests: the demo, one wider than the printer, one with a thin core, one with a single printed wall.</summary>
internal static class DrawnCabinets
{
    internal sealed record Drawn(string Name, Project Project, Facts Facts, PartJob Job, IReadOnlyList<DrawnPart> Parts)
    {
        private readonly Lazy<IReadOnlyList<SolidMesh>> meshes = new(() => [.. Parts.AsParallel().AsOrdered().Select(p => SolidMesh.Of(p.Solid))]);

        internal IReadOnlyList<SolidMesh> Meshes => meshes.Value;

        public override string ToString() => Name;
    }

    private static readonly Lazy<IReadOnlyList<Drawn>> Cabinets = new(() =>
        [
            Draw("demo", DemoProject.Project),
            Draw("wide", Wide),
            Draw("thin core", VariedProjects.With(DemoProject.Project, c => c with { CoreM = 0.006, StrutPitchM = 0.03, Braces = 2 })),
            Draw("single wall", VariedProjects.With(DemoProject.Project, c => c with { OuterSkinM = 0.004, CoreM = 0, InnerSkinM = 0.002 })),
        ]
    );

    internal static Drawn Demo => Cabinets.Value[0];

    internal static IReadOnlyList<Drawn> All => Cabinets.Value;

    internal static Project Wide =>
        VariedProjects.With(DemoProject.Project, c => c with { Outside = c.Outside! with { WidthM = 0.3, HeightM = 0.28 }, StrutPitchM = 0.05, Braces = 0 });

    internal static Drawn Draw(string name, Project project)
    {
        var facts = new Facts(project, DemoDrivers.All);
        var job = facts.PartJob!;
        return new Drawn(name, project, facts, job, PartDrawings.Of(job));
    }

    /// <summary>Name of a part without the number of a piece or of one of several.</summary>
    internal static string WholeName(string name) => name.Split(' ') is [.., _, "of", _] words ? string.Join(' ', words[..^3]) : name;
}
