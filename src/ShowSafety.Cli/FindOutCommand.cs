using System.CommandLine;
using ShowSafety.Core;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Cli;

/// <summary>find-out PLAN: what is missing or unsure, what it costs, how to get it.</summary>
internal static class FindOutCommand
{
    public static Command Create()
    {
        Argument<FileInfo> planFile = Arguments.Plan();
        var command = new Command(
            "find-out",
            "List what is missing or unsure in a plan, what not knowing it costs, and how to get it."
        )
        {
            planFile,
        };
        command.SetAction(parsed => PlanFile.With(parsed.GetRequiredValue(planFile), Run));
        return command;
    }

    private static int Run(Plan plan)
    {
        Assessment assessment = Assessor.Assess(plan);
        Console.WriteLine(assessment.HeadlineSentence);
        foreach (FindOutItem item in assessment.FindOut)
        {
            Console.WriteLine(FindOutSentences.Line(item, new Phrasebook(assessment.Names)));
        }

        return Refusal.Done;
    }
}
