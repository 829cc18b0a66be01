namespace ShowSafety.Core.Measures;

/// <summary>Where a value comes from. Everything that is not <see cref="Measured"/> is listed in the brief.</summary>
public enum Pedigree
{
    /// <summary>Measured for this engine or this site; the note names instrument and date.</summary>
    Measured,

    /// <summary>From the maker's sheet or drawing.</summary>
    Maker,

    /// <summary>Estimated by the user.</summary>
    Estimated,

    /// <summary>Assumed by this project on the cautious side because nobody stated it.</summary>
    Assumed,

    /// <summary>From a template: invented, and marked EXAMPLE on every output.</summary>
    Example,

    /// <summary>Calculated from other values; never an input.</summary>
    Calculated,
}
