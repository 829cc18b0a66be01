namespace ShowSafety.Core.Exposure.Protection;

/// <summary>How well a protector suits a noise, after the classes of EN 458 with an action level of 85 dB(A).</summary>
public enum ProtectionFit
{
    /// <summary>More than 85 dB(A) is left at the ear.</summary>
    NotEnough,

    /// <summary>80 to 85 dB(A): usable.</summary>
    Usable,

    /// <summary>70 to 80 dB(A): as wanted.</summary>
    AsWanted,

    /// <summary>Less than 70 dB(A): so quiet that calls and warnings may be missed.</summary>
    TooMuch,
}

/// <summary>Sorts the level at the ear into <see cref="ProtectionFit"/>.</summary>
public static class ProtectionFits
{
    /// <summary>Most wanted at the ear in dB(A).</summary>
    public const double ActionDbA = 85;

    /// <summary>Upper end of the target at the ear in dB(A).</summary>
    public const double TargetDbA = 80;

    /// <summary>Lower end of the target in dB(A).</summary>
    public const double IsolationDbA = 70;

    /// <summary>
    /// The class of a level at the ear: too little is judged by the upper bound, too much by the lower one, because
    /// each is cautious on its own side. Too little goes first.
    /// </summary>
    /// <param name="lowerDbA">Best estimate less U, in dB(A).</param>
    /// <param name="upperDbA">Best estimate plus U, in dB(A).</param>
    public static ProtectionFit Of(double lowerDbA, double upperDbA) =>
        (lowerDbA, upperDbA) switch
        {
            (_, > ActionDbA) => ProtectionFit.NotEnough,
            (< IsolationDbA, _) => ProtectionFit.TooMuch,
            (_, > TargetDbA) => ProtectionFit.Usable,
            _ => ProtectionFit.AsWanted,
        };
}
