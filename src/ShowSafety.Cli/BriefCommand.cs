using System.CommandLine;
using ShowSafety.Brief;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Cli;

/// <summary>brief PLAN --out FILE.pdf.</summary>
internal static class BriefCommand
{
    public static Command Create()
    {
        Argument<FileInfo> planFile = Arguments.Plan();
        var pdf = new Option<FileInfo>("--out") { Description = "The PDF file.", Required = true };
        Option<bool> failOnStop = Arguments.FailOnStop();
        var command = new Command("brief", "Write the brief of a plan as PDF.") { planFile, pdf, failOnStop };
        command.SetAction(parsed =>
            PlanFile.With(
                parsed.GetRequiredValue(planFile),
                plan => Run(plan, parsed.GetRequiredValue(pdf), parsed.GetValue(failOnStop))
            )
        );
        return command;
    }

    private static int Run(Plan plan, FileInfo pdf, bool failOnStop)
    {
        Assessment assessment = Assessor.Assess(plan);
        using var stream = new MemoryStream();
        BriefWriter.Write(plan, assessment, stream, TimeProvider.System.GetLocalNow());
        int written = OutputFiles.Write(pdf.Directory!, (pdf.Name, stream.ToArray()));
        return written == Refusal.Done ? Arguments.Finished(assessment, failOnStop) : written;
    }
}
