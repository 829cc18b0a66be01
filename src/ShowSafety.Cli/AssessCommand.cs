using System.CommandLine;
using System.Text;
using ShowSafety.Brief;
using ShowSafety.Core;
using ShowSafety.Core.Files;
using ShowSafety.Core.Plans;

namespace ShowSafety.Cli;

/// <summary>assess PLAN --out DIR: assessment.json, levels.csv, site-plan.svg.</summary>
internal static class AssessCommand
{
    public static Command Create()
    {
        Argument<FileInfo> planFile = Arguments.Plan();
        var folder = new Option<DirectoryInfo>("--out") { Description = "Folder for the files.", Required = true };
        Option<bool> failOnStop = Arguments.FailOnStop();
        var command = new Command("assess", "Assess a plan: assessment.json, levels.csv and site-plan.svg.")
        {
            planFile,
            folder,
            failOnStop,
        };
        command.SetAction(parsed =>
            PlanFile.With(
                parsed.GetRequiredValue(planFile),
                plan => Run(plan, parsed.GetRequiredValue(folder), parsed.GetValue(failOnStop))
            )
        );
        return command;
    }

    private static int Run(Plan plan, DirectoryInfo folder, bool failOnStop)
    {
        Assessment assessment = Assessor.Assess(plan);
        int written = OutputFiles.Write(
            folder,
            ("assessment.json", AssessmentJson.Write(plan, assessment)),
            ("levels.csv", Encoding.UTF8.GetBytes(LevelsCsv.Write(plan, assessment))),
            ("site-plan.svg", Encoding.UTF8.GetBytes(SitePlanWriter.Svg(plan, assessment)))
        );
        return written == Refusal.Done ? Arguments.Finished(assessment, failOnStop) : written;
    }
}
