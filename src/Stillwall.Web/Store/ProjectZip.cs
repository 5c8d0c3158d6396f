using System.IO.Compression;
using Stillwall.Files.Projects;

namespace Stillwall.Web.Store;

/// <summary>A project folder as one archive.</summary>
internal static class ProjectZip
{
    private const int MostFiles = 2000;
    private const long MostBytes = 256L << 20;

    // The same instant in every archive: same project, same bytes.
    private static readonly DateTimeOffset Epoch = new(year: 2000, month: 1, day: 1, hour: 0, minute: 0, second: 0, offset: TimeSpan.Zero);

    /// <summary>What of a folder belongs to the project: no former versions, nothing that can be written anew, no links.</summary>
    internal static IEnumerable<(string Path, string File)> FilesOf(string folder) =>
        Directory
            .EnumerateFiles(
                folder,
                "*",
                new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden }
            )
            .Select(file => (Path: Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/'), File: file))
            .Where(f => !f.Path.StartsWith("out/", StringComparison.Ordinal) && !IsFormer(f.Path))
            .OrderBy(f => f.Path, StringComparer.Ordinal);

    /// <summary>Packs a project folder.</summary>
    internal static byte[] Pack(string folder) => Pack(FilesOf(folder).Select(f => (f.Path, File.ReadAllBytes(f.File))));

    /// <summary>Packs files that are given by their bytes.</summary>
    internal static byte[] Pack(IEnumerable<(string Path, byte[] Bytes)> files)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (path, bytes) in files)
            {
                var entry = zip.CreateEntry(path, CompressionLevel.Fastest);
                entry.LastWriteTime = Epoch;
                using var stream = entry.Open();
                stream.Write(bytes);
            }
        }

        return memory.ToArray();
    }

    /// <summary>Unpacks an archive into an empty folder.</summary>
    internal static void Unpack(Stream archive, string folder)
    {
        using var zip = new ZipArchive(archive, ZipArchiveMode.Read);
        var top = zip.Entries.Where(e => e.Name == ProjectStore.FileName).OrderBy(e => e.FullName.Length).FirstOrDefault()
            ?? throw new InvalidDataException($"the archive has no {ProjectStore.FileName} in it; a project that was exported");
        var before = top.FullName[..^ProjectStore.FileName.Length];
        var left = MostBytes;
        foreach (var entry in zip.Entries.Where(e => e.Name.Length > 0).Take(MostFiles))
        {
            if (!entry.FullName.StartsWith(before, StringComparison.Ordinal))
            {
                continue;
            }

            var file = FolderPath.Inside(folder, entry.FullName[before.Length..])
                ?? throw new InvalidDataException($"\"{entry.FullName}\" leads out of the folder; files within it");
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            using var from = entry.Open();
            using var to = new FileStream(file, FileMode.CreateNew);
            left = Copied(from, to, left);
        }
    }

    // The length that an archive states is not believed.
    private static long Copied(Stream from, Stream to, long left)
    {
        var buffer = new byte[81920];
        for (var read = from.Read(buffer); read > 0; read = from.Read(buffer))
        {
            left -= read;
            if (left < 0)
            {
                throw new InvalidDataException($"the archive unpacks to more than {MostBytes >> 20} MB; a smaller one");
            }

            to.Write(buffer, 0, read);
        }

        return left;
    }

    private static bool IsFormer(string path) =>
        path.StartsWith(ProjectStore.FileName + ".", StringComparison.Ordinal)
        || path.EndsWith(".tmp", StringComparison.Ordinal)
        || (path.Contains(".csv.", StringComparison.Ordinal) && char.IsDigit(path[^1]));
}
