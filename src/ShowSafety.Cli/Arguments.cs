using System.CommandLine;
using ShowSafety.Core;

namespace ShowSafety.Cli;

/// <summary>Arguments and options several commands share.</summary>
internal static class Arguments
{
    /// <summary>The plan file.</summary>
    public static Argument<FileInfo> Plan() => new("PLAN") { Description = "The plan file (JSON)." };

    /// <summary>Whether a stop makes the command fail.</summary>
    public static Option<bool> FailOnStop() =>
        new("--fail-on-stop") { Description = "Exit with 1 while a stop stands." };

    /// <summary>Prints the headline and gives the exit code of a finished assessment.</summary>
    public static int Finished(Assessment assessment, bool failOnStop)
    {
        Console.WriteLine(assessment.HeadlineSentence);
        return failOnStop && assessment.NotToRun ? Refusal.StopStands : Refusal.Done;
    }
}
