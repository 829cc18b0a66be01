namespace ShowSafety.Core.Crowd;

/// <summary>
/// Reach over a barrier by people of 14 and over, high risk: ISO 13857:2008 and :2019, table 2 (from memory). Heights
/// and distances in mm. Between two listed heights the neighbour that asks for more counts; nothing is interpolated.
/// </summary>
public static class ReachTable
{
    /// <summary>Lowest barrier the table lists, in mm.</summary>
    public const double LowestBarrierMillimetres = 1000;

    /// <summary>Barrier height in mm under which the standard wants further measures.</summary>
    public const double BarrierAloneMillimetres = 1400;

    /// <summary>Longest reach in the table, in mm.</summary>
    public const double LongestReachMillimetres = 1500;

    private static readonly int[] Barrier = [1000, 1200, 1400, 1600, 1800, 2000, 2200, 2400, 2500, 2700];

    private static readonly int[] Hazard =
    [
        0,
        200,
        400,
        600,
        800,
        1000,
        1200,
        1400,
        1600,
        1800,
        2000,
        2200,
        2400,
        2600,
        2700,
    ];

    // A row for each hazard height, a column for each barrier height.
    private static readonly int[][] Reach =
    [
        [1100, 500, 0, 0, 0, 0, 0, 0, 0, 0],
        [1200, 900, 0, 0, 0, 0, 0, 0, 0, 0],
        [1400, 1200, 400, 0, 0, 0, 0, 0, 0, 0],
        [1400, 1300, 800, 0, 0, 0, 0, 0, 0, 0],
        [1500, 1300, 900, 600, 0, 0, 0, 0, 0, 0],
        [1500, 1400, 1000, 800, 0, 0, 0, 0, 0, 0],
        [1500, 1400, 1100, 900, 700, 0, 0, 0, 0, 0],
        [1500, 1400, 1100, 900, 800, 0, 0, 0, 0, 0],
        [1500, 1400, 1100, 900, 800, 500, 0, 0, 0, 0],
        [1500, 1400, 1100, 900, 800, 600, 0, 0, 0, 0],
        [1400, 1300, 1100, 900, 800, 600, 400, 0, 0, 0],
        [1300, 1200, 1000, 900, 800, 600, 400, 300, 0, 0],
        [1100, 1000, 900, 800, 700, 600, 400, 300, 100, 0],
        [900, 800, 700, 600, 600, 500, 400, 300, 100, 0],
        [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    ];

    /// <summary>
    /// Horizontal distance c a hazard keeps from a barrier, in mm, or null for a barrier under
    /// <see cref="LowestBarrierMillimetres"/>, which the table doesn't list.
    /// </summary>
    /// <param name="hazardMillimetres">Height a of the hazard in mm, zero or more.</param>
    /// <param name="barrierMillimetres">Height b of the barrier in mm.</param>
    public static double? DistanceMillimetres(double hazardMillimetres, double barrierMillimetres) =>
        OverHeights(hazardMillimetres, hazardMillimetres, barrierMillimetres);

    /// <summary>The longest distance over all hazard heights in a range, or null for a barrier under 1,000 mm.</summary>
    /// <param name="lowestMillimetres">Lowest height of the hazard in mm.</param>
    /// <param name="highestMillimetres">Highest height of the hazard in mm.</param>
    /// <param name="barrierMillimetres">Height b of the barrier in mm.</param>
    public static double? OverHeights(double lowestMillimetres, double highestMillimetres, double barrierMillimetres)
    {
        if (!(barrierMillimetres >= LowestBarrierMillimetres))
        {
            return null;
        }

        int column = LastAtOrUnder(Barrier, barrierMillimetres);
        int from = LastAtOrUnder(Hazard, lowestMillimetres);
        int to = FirstAtOrOver(Hazard, highestMillimetres);
        // Reach shrinks as the barrier grows, so the lower barrier of two neighbours asks for more.
        return Reach[from..(to + 1)].Max(row => row[column]);
    }

    private static int LastAtOrUnder(int[] heights, double value) =>
        Math.Max(0, Array.FindLastIndex(heights, h => h <= value));

    private static int FirstAtOrOver(int[] heights, double value)
    {
        int index = Array.FindIndex(heights, h => h >= value);
        return index < 0 ? heights.Length - 1 : index;
    }
}
