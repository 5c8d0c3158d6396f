using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>set</c>: changes one stated value.</summary>
internal static class Set
{
    internal static Verb Verb()
    {
        var key = new TextArgument("KEY", "key of the project file, such as cabinet.strut_pitch");
        var value = new TextArgument("VALUE", "its new value as it would stand in the file, such as \"38 mm\"", isOptional: true);
        var remove = new Flag("--remove", "takes the value out instead, so that its default holds again");
        var project = Common.ProjectOption;
        return new Verb("set", "changes one stated value and says which verdicts changed; the former file is kept", "stillwall set cabinet.strut_pitch \"38 mm\" --project my-cabinet")
        {
            Takes = [key, value, remove, project],
            Do = call =>
            {
                var (name, stated) = (call.Text(key)!, call.Text(value));
                if (call.Has(remove) == stated is not null)
                {
                    throw Refusal.Input($"{name}: {(stated is null ? "no value" : "a value and --remove")}; one of the two");
                }

                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                return Changing.Save(call.Session, loaded, [(name, stated ?? "", Edited(loaded.Text, name, stated))]);
            },
        };
    }

    private static string Edited(string text, string key, string? stated)
    {
        if (ProjectKeys.Find(key) is null)
        {
            throw Refusal.Input($"{key}: no such key{NearestWord.Suggest(key, ProjectKeys.AllKeys())}");
        }

        try
        {
            return stated is null ? ProjectTextEditor.Remove(text, key) : ProjectTextEditor.SetStated(text, key, stated);
        }
        catch (ArgumentException e)
        {
            // The framework puts the parameter's name behind the message.
            throw Refusal.Input(e.Message.Split(" (Parameter '")[0]);
        }
    }
}
