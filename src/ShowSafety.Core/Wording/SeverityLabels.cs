namespace ShowSafety.Core.Wording;

/// <summary>What people read for how much a finding weighs.</summary>
public static class SeverityLabels
{
    /// <summary>The label, as a phrase.</summary>
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Stop => "Stop",
            Severity.Act => "To be closed by name before the run",
            Severity.Note => "For information",
            _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Not a severity."),
        };
}
