namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// Ground factors G of the three regions of a path, ISO 9613-2:1996 clause 7.3.1: 0 hard, 1 porous.
/// </summary>
/// <param name="Source">Mean over the source region, 30 h_s long.</param>
/// <param name="Middle">Mean over what lies between the two regions; without meaning where they overlap.</param>
/// <param name="Receiver">Mean over the receiver region, 30 h_r long.</param>
public readonly record struct GroundFactors(double Source, double Middle, double Receiver)
{
    /// <summary>The same ground along the whole path.</summary>
    public static GroundFactors Even(double factor) => new(factor, factor, factor);
}
