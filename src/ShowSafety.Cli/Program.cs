using System.CommandLine;
using ShowSafety.Cli;

var root = new RootCommand(
    "Plans the public demonstration of a small gas turbine: assesses a plan file and writes the brief. "
        + "A planning aid: it does not replace a competent person, the venue's rules, the fire authority, insurers or local law."
);
root.Subcommands.Add(AssessCommand.Create());
root.Subcommands.Add(BriefCommand.Create());
root.Subcommands.Add(CheckPlanCommand.Create());
root.Subcommands.Add(FindOutCommand.Create());
root.Subcommands.Add(SumCommand.Create());
ParseResult parsed = root.Parse(args);
return parsed.Errors.Count > 0 ? Refusal.Of(parsed.Errors.Select(e => e.Message)) : parsed.Invoke();
