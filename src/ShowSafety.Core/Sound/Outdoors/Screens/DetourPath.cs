namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>
/// The way sound takes over or round what stands between source and receiver, ISO 9613-2:1996 clause 7.4, figures 5
/// to 7. With one edge <see cref="BetweenMetres"/> is 0.
/// </summary>
/// <param name="FirstLegMetres">d_ss, from the source to the first edge, across the edge.</param>
/// <param name="BetweenMetres">e, from the first edge to the last one, 0 for a single edge.</param>
/// <param name="LastLegMetres">d_sr, from the last edge to the receiver, across the edge.</param>
/// <param name="AlongEdgeMetres">a, the part of the distance from source to receiver that runs along the edge.</param>
/// <param name="DirectMetres">d, the straight distance from source to receiver.</param>
/// <param name="SeesOver">Whether the straight line passes clear of the edge: z counts as negative.</param>
public readonly record struct DetourPath(
    double FirstLegMetres,
    double BetweenMetres,
    double LastLegMetres,
    double AlongEdgeMetres,
    double DirectMetres,
    bool SeesOver
)
{
    /// <summary>z in metres: how much longer the way is than the straight line, equations (16) and (17).</summary>
    public double ExtraMetres
    {
        get
        {
            double across = FirstLegMetres + BetweenMetres + LastLegMetres;
            double way = Math.Sqrt((across * across) + (AlongEdgeMetres * AlongEdgeMetres));
            // Rounding must not turn a grazing ray into one that sees over.
            double extra = Math.Max(0, way - DirectMetres);
            return SeesOver ? -extra : extra;
        }
    }
}
