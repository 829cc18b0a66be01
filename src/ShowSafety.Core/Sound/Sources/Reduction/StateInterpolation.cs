namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>
/// Between two measured throttle states: levels go with the logarithm of the jet speed, since jet sound goes with its
/// eighth power. Of the shaft speed where that is all there is. Never beyond the two.
/// </summary>
public static class StateInterpolation
{
    /// <summary>
    /// How far a speed lies on the way from a lower to an upper one in its logarithm, 0 to 1; null outside, or where the
    /// speeds are no speeds.
    /// </summary>
    /// <param name="lower">The lower measured speed, above 0, in any unit.</param>
    /// <param name="upper">The upper measured speed, above the lower one, in the same unit.</param>
    /// <param name="wanted">The speed asked for.</param>
    public static double? Share(double lower, double upper, double wanted) =>
        lower > 0 && upper > lower && wanted >= lower && wanted <= upper && double.IsFinite(upper)
            ? Math.Log(wanted / lower) / Math.Log(upper / lower)
            : null;
}
