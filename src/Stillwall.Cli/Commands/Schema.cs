using Stillwall.Cli.Running;
using Stillwall.Files.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>schema</c>: what editors need to complete and check a project file.</summary>
internal static class Schema
{
    internal static Verb Verb() =>
        new("schema", "writes the JSON Schema of the project file, for editors that complete and check", "stillwall schema > stillwall.schema.json")
        {
            Do = call =>
            {
                call.Session.Print(ProjectSchema.Write());
                return ExitCodes.Done;
            },
        };
}
