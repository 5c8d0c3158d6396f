using System.Net;
using System.Runtime.InteropServices;
using System.Text.Json;
using Stillwall.Web.Viewer;

namespace Stillwall.Web.Tests.Viewer;

/// <summary>The bytes of the parts say what the figures say.</summary>
public sealed class AssemblyMeshesTests
{
    private sealed record Body(string Name, float[] Points, int[] Triangles, JsonElement Head)
    {
        internal double Span(int axis) => Along(axis).Max() - Along(axis).Min();

        internal IEnumerable<float> Along(int axis) => Points.Where((_, i) => i % 3 == axis);

        /// <summary>By the divergence theorem, mm³.</summary>
        internal double Volume =>
            Triangles
                .Chunk(3)
                .Sum(t =>
                {
                    var (a, b, c) = (At(t[0]), At(t[1]), At(t[2]));
                    return ((a.X * ((b.Y * c.Z) - (b.Z * c.Y))) + (a.Y * ((b.Z * c.X) - (b.X * c.Z))) + (a.Z * ((b.X * c.Y) - (b.Y * c.X)))) / 6;
                });

        private (double X, double Y, double Z) At(int i) => (Points[i * 3], Points[(i * 3) + 1], Points[(i * 3) + 2]);
    }

    private static readonly Lazy<List<Body>> Bodies = new(() => Read(AssemblyMeshes.Of(Demo.Facts)!.Bytes));

    [Fact]
    public void Every_part_with_a_place_comes_with_the_volume_that_its_figures_tell()
    {
        var figures = AssemblyMeshes.Of(Demo.Facts)!.Parts;
        var parts = Bodies.Value.Where(b => !b.Head.GetProperty("isCast").GetBoolean()).ToList();
        Assert.Equal(figures.Select(f => f.Name), parts.Select(p => p.Name));
        // Corners in 32-bit millimetres hold seven digits.
        Assert.All(parts.Zip(figures), p => Assert.Equal(p.Second.VolumeM3 * 1e9, p.First.Volume, p.Second.VolumeM3 * 1e9 * 1e-4));
    }

    [Fact]
    public void The_sleeve_stands_where_the_stated_sizes_put_it()
    {
        var outside = Demo.Facts.Project.Cabinet!.Outside!;
        var sleeves = Bodies.Value.Where(b => b.Name.StartsWith("outer sleeve", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, sleeves.Count);
        Assert.Equal(outside.WidthM * 1e3, sleeves.Max(s => s.Along(0).Max()) - sleeves.Min(s => s.Along(0).Min()), 1e-3);
        Assert.Equal(outside.HeightM * 1e3, sleeves.Max(s => s.Along(2).Max()) - sleeves.Min(s => s.Along(2).Min()), 1e-3);
        var front = Bodies.Value.Single(b => b.Name == "front outer plate");
        Assert.Equal(0, front.Along(1).Min(), 1e-3);
        Assert.Equal(outside.DepthM * 1e3, Bodies.Value.Single(b => b.Name == "rear outer plate").Along(1).Max(), 1e-3);
    }

    [Fact]
    public void The_room_of_the_cast_lies_between_the_skins_and_is_larger_than_what_the_cast_fills()
    {
        var (cast, sizes) = (Bodies.Value.Single(b => b.Head.GetProperty("isCast").GetBoolean()), Demo.Facts.Geometry!.Sizes);
        Assert.Equal(
            [sizes.Width - (2 * sizes.OuterSkin), sizes.Depth - (2 * sizes.OuterSkin), sizes.Height - (2 * sizes.OuterSkin)],
            new[] { 0, 1, 2 }.Select(cast.Span),
            (a, b) => Math.Abs(a - b) < 1e-3
        );
        // Struts, keys and tongues stand in it, about a tenth of it.
        Assert.InRange(cast.Volume, Demo.Facts.Geometry.CavityM3 * 1e9, Demo.Facts.Geometry.CavityM3 * 1e9 * 1.3);
    }

    [Fact]
    public void Exploded_what_follows_one_another_from_the_front_does_not_overlap()
    {
        double Moved(string name, bool rear)
        {
            var body = Bodies.Value.First(b => b.Name.StartsWith(name, StringComparison.Ordinal));
            return (rear ? body.Along(1).Max() : body.Along(1).Min()) + body.Head.GetProperty("apartY").GetDouble();
        }

        string[] order =
        [
            "trim ring",
            "front outer plate",
            "front inner plate",
            "outer sleeve 1",
            "inner sleeve 1",
            "brace",
            "rear inner plate",
            "rear outer plate",
            "lid 1",
        ];
        Assert.All(order.Zip(order.Skip(1)), pair => Assert.True(Moved(pair.First, true) < Moved(pair.Second, false), $"{pair.First} before {pair.Second}"));
    }

    [Fact]
    public void A_cabinet_that_is_only_a_volume_has_no_parts()
    {
        Assert.Null(AssemblyMeshes.Of(Demo.Of(p => p with { Cabinet = new Projects.Cabinet { NetVolumeM3 = 0.012 } })));
    }

    [Fact]
    public async Task The_page_serves_the_same_bytes()
    {
        using var page = new Page();
        Assert.NotNull(page.Workshop.Current().Project);
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri("/files/reading-room/assembly", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal((HttpStatusCode.OK, "no-store"), (answer.StatusCode, answer.Headers.CacheControl?.ToString()));
        Assert.Equal(AssemblyMeshes.Of(Demo.Facts)!.Bytes, await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    private static List<Body> Read(byte[] bytes)
    {
        var length = BitConverter.ToInt32(bytes);
        var heads = JsonDocument.Parse(bytes.AsMemory(4, length)).RootElement.GetProperty("bodies").EnumerateArray().ToList();
        var (at, bodies) = (4 + length, new List<Body>());
        T[] Take<T>(int count)
            where T : struct
        {
            var part = MemoryMarshal.Cast<byte, T>(bytes.AsSpan(at, count * 4)).ToArray();
            at += count * 4;
            return part;
        }

        foreach (var head in heads)
        {
            int Count(string name) => head.GetProperty(name).GetInt32();
            bodies.Add(new Body(head.GetProperty("name").GetString()!, Take<float>(3 * Count("points")), Take<int>(3 * Count("triangles")), head));
            Take<int>((2 * Count("sharp")) + (4 * Count("round")));
        }

        Assert.Equal(bytes.Length, at);
        return bodies;
    }
}
