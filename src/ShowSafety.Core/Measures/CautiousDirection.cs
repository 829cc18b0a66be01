namespace ShowSafety.Core.Measures;

/// <summary>Which side of the best estimate is the cautious one.</summary>
public enum CautiousDirection
{
    /// <summary>Larger is more dangerous: the planning value is at or above the best estimate.</summary>
    High,

    /// <summary>Smaller is more dangerous: the planning value is at or below the best estimate.</summary>
    Low,

    /// <summary>The value is for information and has no dangerous side; both values are equal.</summary>
    None,
}
