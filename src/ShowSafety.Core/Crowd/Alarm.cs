namespace ShowSafety.Core.Crowd;

/// <summary>Whether a spoken or sounded alarm can be heard (ISO 7731:2003; from memory).</summary>
public static class Alarm
{
    /// <summary>How far an alarm must rise above the ambient A-weighted level, in dB.</summary>
    public const double AboveAmbientDb = 15;

    /// <summary>Highest A-weighted level an alarm may have where people hear it, in dB(A).</summary>
    public const double HighestDbA = 118;

    /// <summary>Highest ambient level over which an alarm can be heard, in dB(A).</summary>
    public static double HighestAmbientDbA => HighestDbA - AboveAmbientDb;

    /// <summary>Level an alarm needs over an ambient level.</summary>
    /// <param name="ambientDbA">A-weighted ambient level in dB(A).</param>
    /// <returns>Level in dB(A).</returns>
    public static double NeededDbA(double ambientDbA) => ambientDbA + AboveAmbientDb;
}
