using Stillwall.Cli;
using Stillwall.Cli.Running;

return CliApp.Run(args, Terminal.OfProcess());
