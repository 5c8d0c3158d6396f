using Stillwall.Shapes;
using Stillwall.Web.Viewer;

namespace Stillwall.Web.Tests.Viewer;

/// <summary>Edges of solids whose number is known by counting (Euler: a prism over n corners has 3n edges).</summary>
public sealed class FeatureEdgesTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(12)]
    public void A_prism_of_few_sides_has_three_edges_for_each_corner_all_sharp(int corners)
    {
        var edges = FeatureEdges.Of(Prism(corners));
        Assert.Equal((3 * corners, 0), (edges.Sharp.Count, edges.Round.Count));
    }

    [Theory]
    [InlineData(18)]
    [InlineData(40)]
    [InlineData(90)]
    public void A_prism_of_many_sides_is_round_its_upright_edges_are_outlines_only(int corners)
    {
        // The bend from side to side is 360°/n: 20°, 9° and 4°.
        var mesh = Prism(corners);
        var edges = FeatureEdges.Of(mesh);
        Assert.Equal((2 * corners, corners), (edges.Sharp.Count, edges.Round.Count));
        Assert.All(edges.Round, e => Assert.NotEqual(mesh.Points[e.A].Z, mesh.Points[e.B].Z));
    }

    [Fact]
    public void The_triangles_beside_a_round_edge_both_have_its_corners()
    {
        var mesh = Prism(40);
        Assert.All(
            FeatureEdges.Of(mesh).Round,
            e =>
                Assert.All(
                    new[] { e.First, e.Second },
                    t =>
                    {
                        var corners = new[] { mesh.Triangles[t].A, mesh.Triangles[t].B, mesh.Triangles[t].C };
                        Assert.Contains(e.A, corners);
                        Assert.Contains(e.B, corners);
                    }
                )
        );
    }

    [Fact]
    public void The_border_of_an_open_surface_is_drawn()
    {
        var mesh = Prism(4);
        var open = mesh with { Triangles = mesh.Triangles.RemoveAt(0) };
        var closed = FeatureEdges.Of(mesh);
        // The removed triangle leaves its diagonal as a new border.
        Assert.Equal(closed.Sharp.Count + 1, FeatureEdges.Of(open).Sharp.Count);
    }

    [Fact]
    public void An_edge_of_a_few_micrometres_is_left_out()
    {
        var mesh = SolidMesh.Of(Solid.Empty.Add(Region.Polygon([(0, 0), (10, 0), (10, 9.98), (9.98, 10), (0, 10)]), 0, 5)).Mesh;
        // Five upright edges, and twice the five round a face, less the two of 20 µm.
        Assert.Equal(5 + 10 - 2, FeatureEdges.Of(mesh).Sharp.Count);
    }

    private static IndexedMesh Prism(int corners) =>
        SolidMesh
            .Of(
                Solid.Empty.Add(
                    Region.Polygon(
                        Enumerable.Range(0, corners).Select(k => (50 * Math.Cos(2 * Math.PI * k / corners), 50 * Math.Sin(2 * Math.PI * k / corners)))
                    ),
                    0,
                    20
                )
            )
            .Mesh;
}
