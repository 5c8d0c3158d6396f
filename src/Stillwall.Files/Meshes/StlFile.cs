using System.Buffers.Binary;
using System.Text;
using Stillwall.Shapes;

namespace Stillwall.Files.Meshes;

/// <summary>Writes a mesh as a binary STL file.</summary>
/// <remarks>
/// Common practice: binary STL as commonly described; a header of 80 bytes, the number of triangles, 50 bytes a triangle, little-endian. No unit in
/// the file; millimetres by common practice.
/// </remarks>
internal static class StlFile
{
    private const int HeaderBytes = 80,
        TriangleBytes = 50;

    // A reader takes a file that begins with the word "solid" for the other, written-out kind.
    private const string Begin = "binary STL, mm: ";

    /// <summary>Writes a mesh. The same mesh and name give the same bytes.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="name">The part's name, for the header; letters beyond ASCII become question marks, what is too long is cut off.</param>
    /// <returns>
    /// The file. Corners are in millimetres as 32-bit numbers, which keep every corner of the 1 µm grid apart within 8 m; normals are those of these
    /// corners.
    /// </returns>
    public static byte[] Write(IndexedMesh mesh, string name)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(name);
        var file = new byte[HeaderBytes + 4 + TriangleBytes * mesh.Triangles.Length];
        file.AsSpan(0, HeaderBytes).Fill((byte)' ');
        var header = Encoding.ASCII.GetBytes(Begin + name);
        header.AsSpan(0, Math.Min(HeaderBytes, header.Length)).CopyTo(file);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(HeaderBytes), mesh.Triangles.Length);
        var at = HeaderBytes + 4;
        foreach (var t in mesh.Triangles)
        {
            Write(file.AsSpan(at, TriangleBytes), Corner(mesh.Points[t.A]), Corner(mesh.Points[t.B]), Corner(mesh.Points[t.C]));
            at += TriangleBytes;
        }

        return file;
    }

    private static void Write(Span<byte> to, Corner32 a, Corner32 b, Corner32 c)
    {
        Write(to, Normal(a, b, c));
        Write(to[12..], a);
        Write(to[24..], b);
        Write(to[36..], c);
    }

    private static void Write(Span<byte> to, Corner32 p)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, p.X);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], p.Y);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], p.Z);
    }

    private static Corner32 Corner(MeshPoint p) => new((float)(p.X.OffGrid()), (float)(p.Y.OffGrid()), (float)(p.Z.OffGrid()));

    // Of the corners as they are written; nothing where the triangle has no area.
    private static Corner32 Normal(Corner32 a, Corner32 b, Corner32 c)
    {
        var (ux, uy, uz) = ((double)b.X - a.X, (double)b.Y - a.Y, (double)b.Z - a.Z);
        var (vx, vy, vz) = ((double)c.X - a.X, (double)c.Y - a.Y, (double)c.Z - a.Z);
        var (x, y, z) = (uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
        var length = Math.Sqrt(x * x + y * y + z * z);
        return length > 0 ? new((float)(x / length), (float)(y / length), (float)(z / length)) : new(0, 0, 0);
    }

    private readonly record struct Corner32(float X, float Y, float Z);
}
