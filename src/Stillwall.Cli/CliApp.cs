using System.CommandLine;
using System.CommandLine.Parsing;
using System.Reflection;
using Stillwall.Cli.Commands;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;

namespace Stillwall.Cli;

/// <summary>The command line, without a process round it.</summary>
public static class CliApp
{
    private static readonly Flag Help = new("--help", "this text", "-h", "-?") { Recursive = true };
    private static readonly Flag Version = new("--version", "the version") { Recursive = true };

    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <returns>
    /// 0 done; 1 some finding fails and that was asked; 2 bad input; 3 a path that is not there or cannot be used; 70 a defect of ours.
    /// Nothing reaches standard output at 2, 3 and 70.
    /// </returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(terminal);
        using var session = new Session(terminal);
        try
        {
            var exitCode = Dispatch(args, session);
            session.Release();
            return exitCode;
        }
        catch (Refusal refusal)
        {
            foreach (var line in refusal.Lines)
            {
                session.Tell(line);
            }

            return refusal.ExitCode;
        }
        catch (Exception defect) when (defect is not OperationCanceledException)
        {
            session.Tell($"a defect of ours: {defect.GetType().Name}: {defect.Message}");
            return ExitCodes.Defect;
        }
    }

    private static int Dispatch(IReadOnlyList<string> args, Session session)
    {
        var root = Root();
        var parsed = root.Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        var command = parsed.CommandResult.Command;
        var isUnknown = parsed.UnmatchedTokens.Count > 0 || parsed.Tokens.Any(t => t.Type == TokenType.Directive);
        if (!isUnknown && parsed.GetValue(Version))
        {
            session.PrintLine($"stillwall {VersionText()}");
            return ExitCodes.Done;
        }

        if (!isUnknown && (parsed.GetValue(Help) || (command is not Verb { Do: not null } && args.Count == 0)))
        {
            session.Print(HelpText.Of(command, [Help, Version], session.Terminal.Width));
            return ExitCodes.Done;
        }

        if (ParseFaults.Of(parsed) is { } fault)
        {
            throw Refusal.Input(fault);
        }

        var call = new Invocation(session, parsed);
        call.CheckOutputs();
        return command is Verb { Do: { } body }
            ? body(call)
            : throw Refusal.Input($"{ParseFaults.Path(command)}: which? see {ParseFaults.Path(command)} --help");
    }

    private static Command Root()
    {
        var root = new Command("stillwall", "designs a compact sealed bass cabinet whose printed double shell is filled with a mineral cast") { Help, Version };
        foreach (var verb in Verbs.All())
        {
            root.Add(verb);
        }

        return root;
    }

    private static string VersionText() => typeof(CliApp).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";
}
