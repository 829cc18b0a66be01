using System.CommandLine;
using ShowSafety.Core;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Cli;

/// <summary>check-plan PLAN: does the file read, and does it make sense.</summary>
internal static class CheckPlanCommand
{
    public static Command Create()
    {
        Argument<FileInfo> planFile = Arguments.Plan();
        var command = new Command("check-plan", "Say whether a plan file can be read and whether it makes sense.")
        {
            planFile,
        };
        command.SetAction(parsed => PlanFile.With(parsed.GetRequiredValue(planFile), Run));
        return command;
    }

    private static int Run(Plan plan)
    {
        var phrases = new Phrasebook(ElementNames.Of(plan));
        Console.WriteLine($"{plan.Title}: the file reads. Plan {PlanHash.Of(plan)[..12]}.");
        foreach (Finding finding in PlanCheck.Check(plan).OrderByDescending(f => f.Severity))
        {
            Console.WriteLine(
                $"{finding.Severity.ToString().ToLowerInvariant()}: {phrases.Sentence(finding)} {phrases.Remedy(finding)}"
            );
        }

        return Refusal.Done;
    }
}
