using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace Stillwall.Files.Tests.Meshes;

/// <summary>Triangles as a program would read them: corners that are the same 32-bit numbers are one.</summary>
internal sealed record ReadMesh(string Name, IReadOnlyList<(float X, float Y, float Z)[]> Triangles)
{
    /// <summary>Directed edges that are not met exactly once by their reverse.</summary>
    internal int UnmatchedEdges()
    {
        var edges = Triangles.SelectMany(t => new[] { (t[0], t[1]), (t[1], t[2]), (t[2], t[0]) }).GroupBy(e => e).ToDictionary(e => e.Key, e => e.Count());
        return edges.Count(e => e.Value != 1 || edges.GetValueOrDefault((e.Key.Item2, e.Key.Item1)) != 1);
    }

    /// <summary>Volume by the divergence theorem, mm³.</summary>
    internal double VolumeMm3() =>
        Triangles.Sum(t =>
            (double)t[0].X * ((double)t[1].Y * t[2].Z - (double)t[1].Z * t[2].Y)
            - (double)t[0].Y * ((double)t[1].X * t[2].Z - (double)t[1].Z * t[2].X)
            + (double)t[0].Z * ((double)t[1].X * t[2].Y - (double)t[1].Y * t[2].X)
        ) / 6;

    internal (float Low, float High) Span(Func<(float X, float Y, float Z), float> along) =>
        (Triangles.SelectMany(t => t).Min(along), Triangles.SelectMany(t => t).Max(along));
}

/// <summary>Readers of the written files that know nothing of the writers.</summary>
internal static class MeshReaders
{
    internal static (ReadMesh Mesh, IReadOnlyList<(float X, float Y, float Z)> Normals) Stl(byte[] file)
    {
        using var reader = new BinaryReader(new MemoryStream(file));
        var name = System.Text.Encoding.ASCII.GetString(reader.ReadBytes(80)).TrimEnd();
        var count = reader.ReadUInt32();
        Assert.Equal(84 + 50L * count, file.LongLength);
        (float, float, float) Triple() => (reader.ReadSingle(), reader.ReadSingle(), reader.ReadSingle());
        var (normals, triangles) = (new List<(float, float, float)>(), new List<(float, float, float)[]>());
        for (var i = 0; i < count; i++)
        {
            normals.Add(Triple());
            triangles.Add([Triple(), Triple(), Triple()]);
            Assert.Equal(0, reader.ReadUInt16());
        }

        return (new ReadMesh(name, triangles), normals);
    }

    /// <summary>
    /// The build items of a 3MF file, placed, and found the way a reader has to: from the relation to the model, from the items to the objects.
    /// </summary>
    internal static IReadOnlyList<ReadMesh> ThreeMf(byte[] file)
    {
        using var archive = new ZipArchive(new MemoryStream(file));
        XDocument Open(string entry)
        {
            using var stream = archive.GetEntry(entry)!.Open();
            return XDocument.Load(stream);
        }

        XNamespace relations = "http://schemas.openxmlformats.org/package/2006/relationships",
            core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
        var target = Open("_rels/.rels")
            .Root!.Elements(relations + "Relationship")
            .Single(r => r.Attribute("Type")!.Value == "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel")
            .Attribute("Target")!
            .Value;
        Assert.Contains(
            Open("[Content_Types].xml").Root!.Elements(),
            e => e.Attribute("Extension")!.Value == "model" && e.Attribute("ContentType")!.Value == "application/vnd.ms-package.3dmanufacturing-3dmodel+xml"
        );
        var model = Open(target.TrimStart('/')).Root!;
        Assert.Equal(core + "model", model.Name);
        Assert.Equal("millimeter", model.Attribute("unit")!.Value);
        var objects = model.Element(core + "resources")!.Elements(core + "object").ToDictionary(o => o.Attribute("id")!.Value);
        return
        [
            .. model
                .Element(core + "build")!
                .Elements(core + "item")
                .Select(item =>
                {
                    var part = objects[item.Attribute("objectid")!.Value];
                    var m = item.Attribute("transform")?.Value.Split(' ').Select(Number).ToArray() ?? [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];
                    var vertices = part.Descendants(core + "vertex").Select(v => Placed(m, Number(v, "x"), Number(v, "y"), Number(v, "z"))).ToArray();
                    return new ReadMesh(
                        part.Attribute("name")!.Value,
                        [
                            .. part.Descendants(core + "triangle")
                                .Select(t => new[] { vertices[(int)Number(t, "v1")], vertices[(int)Number(t, "v2")], vertices[(int)Number(t, "v3")] }),
                        ]
                    );
                }),
        ];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static double Number(XElement element, string name) => Number(element.Attribute(name)!.Value);

    private static (float X, float Y, float Z) Placed(double[] m, double x, double y, double z) =>
        ((float)(x * m[0] + y * m[3] + z * m[6] + m[9]), (float)(x * m[1] + y * m[4] + z * m[7] + m[10]), (float)(x * m[2] + y * m[5] + z * m[8] + m[11]));
}
