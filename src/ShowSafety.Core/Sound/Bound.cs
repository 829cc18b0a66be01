namespace ShowSafety.Core.Sound;

/// <summary>Which end of what a value may be over a patch of ground.</summary>
public enum Bound
{
    /// <summary>No place of the patch has less.</summary>
    Lowest,

    /// <summary>No place of the patch has more.</summary>
    Highest,
}
