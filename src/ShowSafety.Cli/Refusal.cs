namespace ShowSafety.Cli;

/// <summary>Exit codes, and the one way to refuse bad input.</summary>
internal static class Refusal
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and --fail-on-stop was given while a stop stands.</summary>
    public const int StopStands = 1;

    /// <summary>Bad input: one problem a line on the error stream, nothing written.</summary>
    public const int BadInput = 2;

    /// <summary>Prints the problems, one a line, and gives the exit code.</summary>
    public static int Of(params IEnumerable<string> problems)
    {
        foreach (string problem in problems)
        {
            Console.Error.WriteLine(problem);
        }

        return BadInput;
    }
}
