namespace ShowSafety.Core.Debris;

/// <summary>The launch angle that carries a piece farthest, by search.</summary>
public static class FarthestLanding
{
    private const int CoarseAngles = 9;
    private const int Refinements = 12;
    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The farthest landing over all launch angles from level to straight up.</summary>
    /// <param name="flight">The flight.</param>
    /// <returns>The launch angle in degrees and the landing.</returns>
    public static (double ElevationDegrees, Landing Landing) Of(Trajectory flight) => Of(flight, Refinements);

    /// <summary>The same, with the number of golden-section steps as a parameter.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="refinements">Golden-section steps after the coarse search, 0 or more.</param>
    public static (double ElevationDegrees, Landing Landing) Of(Trajectory flight, int refinements)
    {
        double step = 90.0 / CoarseAngles;
        double coarse = Enumerable.Range(0, CoarseAngles + 1).Select(i => i * step).MaxBy(Range);
        double low = Math.Max(0, coarse - step);
        double high = Math.Min(90, coarse + step);
        (double left, double right) = (high - (Golden * (high - low)), low + (Golden * (high - low)));
        (double leftRange, double rightRange) = (Range(left), Range(right));
        for (int i = 0; i < refinements; i++)
        {
            // One of the two inner points stays an inner point of the narrower bracket: one flight a step.
            if (leftRange > rightRange)
            {
                (high, right, rightRange) = (right, left, leftRange);
                left = high - (Golden * (high - low));
                leftRange = Range(left);
            }
            else
            {
                (low, left, leftRange) = (left, right, rightRange);
                right = low + (Golden * (high - low));
                rightRange = Range(right);
            }
        }

        double best = leftRange > rightRange ? left : right;
        return (best, flight.Land(best));

        double Range(double elevation) => flight.Land(elevation).DistanceMetres;
    }
}
