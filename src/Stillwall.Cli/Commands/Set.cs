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
        var block = new Flag("--block", "with --remove: takes a whole block of values out, or a whole list; in a terminal it is asked for where left out");
        var project = Common.ProjectOption;
        return new Verb(
            "set",
            "changes one stated value and says which verdicts changed; the former file is kept",
            "stillwall set cabinet.strut_pitch \"38 mm\" --project my-cabinet"
        )
        {
            Takes = [key, value, remove, block, project],
            Do = call =>
            {
                var (name, stated) = (call.Text(key)!, call.Text(value));
                if (call.Has(remove) == stated is not null)
                {
                    throw Refusal.Input($"{name}: {(stated is null ? "no value" : "a value and --remove")}; one of the two");
                }

                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                if (stated is null && StatedAt(loaded.Text, name) is { } whole && !call.Has(block))
                {
                    Confirm(call.Session, name, Changing.Words(whole));
                }

                return Changing.Save(call.Session, loaded, [(name, stated ?? "", Edited(loaded.Text, name, stated))]);
            },
        };
    }

    private static StatedBlock? StatedAt(string text, string key) => ProjectKeys.Find(key) is null ? null : StatedBlock.Of(text, key);

    private static void Confirm(Session session, string key, string what)
    {
        if (!session.Terminal.InputIsTerminal || !session.Terminal.OutputIsTerminal)
        {
            throw Refusal.Input($"{key}: is {what}; --block beside --remove takes it out, or a key within it");
        }

        session.Ask($"{key}: take out {what}? yes or [no]: ");
        if (session.Terminal.Input.ReadLine()?.Trim() is not ("yes" or "y"))
        {
            throw Refusal.Input($"{key}: left as it was; yes, or --block, takes it out");
        }
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
