using System.Globalization;
using System.IO.Compression;
using System.Text;
using Stillwall.Shapes;

namespace Stillwall.Files.Meshes;

/// <summary>A named part of a 3MF file, and where it goes.</summary>
/// <param name="Name">The part's name.</param>
/// <param name="Mesh">Its mesh in its own frame.</param>
/// <param name="Placement">Where it goes in the assembly, or as printed.</param>
internal sealed record ThreeMfPart(string Name, IndexedMesh Mesh, Placement Placement);

/// <summary>Writes parts as a 3MF file: one part as printed, or an assembly of all, each an object with a name.</summary>
/// <remarks>
/// Source: 3D Manufacturing Format, Core Specification 1.2 and later (3MF Consortium), in an Open Packaging container (ECMA-376 Part 2), from memory:
/// unit millimeter, one object a part, one build item an object; a transform multiplies a row vector.
/// </remarks>
internal static class ThreeMfFile
{
    private const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private const string ContentTypes =
        Declaration
        + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
        + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/></Types>";

    private const string Relations =
        Declaration
        + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + "<Relationship Target=\"/3D/3dmodel.model\" Id=\"model\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>";

    private static readonly DateTimeOffset Fixed = new(year: 1980, month: 1, day: 1, hour: 0, minute: 0, second: 0, offset: TimeSpan.Zero);

    /// <summary>Writes parts. The same parts give the same bytes: the entries carry a fixed date.</summary>
    /// <param name="parts">The parts, one at least.</param>
    /// <param name="title">Title of the whole.</param>
    /// <returns>The file.</returns>
    /// <exception cref="ArgumentException">No part, or one without triangles, which the format does not allow.</exception>
    public static byte[] Write(IReadOnlyList<ThreeMfPart> parts, string title)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(title);
        if (parts.Count == 0 || parts.Any(p => p.Mesh.Triangles.IsEmpty))
        {
            throw new ArgumentException("accepted: one part or more, each with triangles", nameof(parts));
        }

        using var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(archive, "[Content_Types].xml", Encoding.UTF8.GetBytes(ContentTypes.ReplaceLineEndings("\n")));
            Add(archive, "_rels/.rels", Encoding.UTF8.GetBytes(Relations.ReplaceLineEndings("\n")));
            Add(archive, "3D/3dmodel.model", Model(parts, title));
        }

        return file.ToArray();
    }

    private static void Add(ZipArchive archive, string name, ReadOnlyMemory<byte> content)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Fixed;
        entry.ExternalAttributes = 0;
        using var stream = entry.Open();
        stream.Write(content.Span);
    }

    private static ReadOnlyMemory<byte> Model(IReadOnlyList<ThreeMfPart> parts, string title)
    {
        var text = new ModelText();
        text.Add("""<?xml version="1.0" encoding="UTF-8"?>""").Add("\n");
        text.Add("""<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">""");
        text.Add("<metadata name=\"Title\">").Add(Markup.Escaped(title)).Add("</metadata><metadata name=\"Application\">Stillwall</metadata>\n<resources>\n");
        for (var i = 0; i < parts.Count; i++)
        {
            AddObject(text, i + 1, parts[i]);
        }

        text.Add("</resources>\n<build>\n");
        for (var i = 0; i < parts.Count; i++)
        {
            text.Add("<item objectid=\"").Add(i + 1).Add("\"");
            if (!parts[i].Placement.Equals(Placement.AsPrinted))
            {
                text.Add(" transform=\"").Add(string.Join(' ', parts[i].Placement.RowsMm.Select(v => v.ToString(CultureInfo.InvariantCulture)))).Add("\"");
            }

            text.Add("/>\n");
        }

        return text.Add("</build>\n</model>\n").Bytes;
    }

    private static void AddObject(ModelText text, int id, ThreeMfPart part)
    {
        text.Add("<object id=\"").Add(id).Add("\" type=\"model\" name=\"").Add(Markup.Escaped(part.Name)).Add("\"><mesh><vertices>\n");
        foreach (var p in part.Mesh.Points)
        {
            text.Add("<vertex x=\"").AddMillimetres(p.X).Add("\" y=\"").AddMillimetres(p.Y).Add("\" z=\"").AddMillimetres(p.Z).Add("\"/>\n");
        }

        text.Add("</vertices><triangles>\n");
        foreach (var t in part.Mesh.Triangles)
        {
            text.Add("<triangle v1=\"").Add(t.A).Add("\" v2=\"").Add(t.B).Add("\" v3=\"").Add(t.C).Add("\"/>\n");
        }

        text.Add("</triangles></mesh></object>\n");
    }
}
