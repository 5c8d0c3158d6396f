using Stillwall.Cli.Running;
using Stillwall.Files.Audio;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Cli.Commands.Proving;

/// <summary>Recordings as a person names them.</summary>
internal static class Sounds
{
    /// <summary>Loads a recording; warns of what is odd about it.</summary>
    /// <exception cref="Refusal">It is not there, or no sound that is read.</exception>
    internal static Recording Load(Session session, string file)
    {
        var read = WavReader.Read(session.Read(file, WavReader.GreatestLength));
        Warn(session, file, read.Warnings);
        return read.Recording ?? throw Refusal.Input($"{file}: {read.Fault}");
    }

    /// <summary>Says what is to be kept in mind about a file.</summary>
    internal static void Warn(Session session, string file, IEnumerable<string> warnings)
    {
        foreach (var warning in warnings)
        {
            session.Tell($"warning: {file}: {warning}");
        }
    }
}
