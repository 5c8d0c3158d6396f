using Stillwall.Appraisals;
using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>The sheets of a project.</summary>
internal static class SheetSet
{
    /// <summary>Draws every sheet: the assembly, what it comes apart into, each kind of part, templates for the openings.</summary>
    /// <returns>The sheets in the order in which they are numbered; empty where the cabinet is not drawn.</returns>
    /// <remarks>
    /// Model: views by parallel projection at a scale of ISO 5455 on paper of ISO 216, lines after ISO 128-2, dimensions after ISO 129-1, title block
    /// after ISO 7200. Validity: any drawn cabinet.
    /// Source: those standards, from memory; what is measured is our choice. Accuracy: figures are those the parts are drawn from; lines to 0.02 mm,
    /// hidden ones end within 0.2 mm on the paper.
    /// </remarks>
    public static IReadOnlyList<Sheet> Of(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Geometry is not { } geometry)
        {
            return [];
        }

        var job = new SheetJob(facts, geometry);
        IReadOnlyList<(SheetPart Equal, IndexedMesh Mesh)> meshes = [.. job.Placed.Select(p => (p.Equal, SheetJob.MeshOf(p.Equal, p.Part)))];
        var drafts =
            (List<SheetDraft>)
                [
                    .. new AssemblySheets(job, [.. meshes.Select(m => m.Mesh)]).All(),
                    ExplodedSheet.Draw(job, meshes),
                    .. PartSheets.Of(job),
                    .. TemplateSheets.Of(job),
                ];
        return [.. drafts.Select((d, i) => Finished(d, facts, i + 1, drafts.Count))];
    }

    private static Sheet Finished(SheetDraft d, Facts facts, int number, int of)
    {
        var frame = SheetDraft.FrameOf((d.WidthMm, d.HeightMm));
        return new Sheet(
            Name: FormattableString.Invariant($"sheet-{number:00}-{d.Name}"),
            Title: d.Title,
            Description: d.Description,
            WidthMm: d.WidthMm,
            HeightMm: d.HeightMm,
            ScaleRatio: d.ScaleRatio,
            Parts: d.Parts,
            Marks: [.. d.Marks, .. CareNote.Draw(d, facts), .. TitleBlock.Draw(frame, d.Block, number, of)]
        );
    }
}
