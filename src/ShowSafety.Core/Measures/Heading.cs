namespace ShowSafety.Core.Measures;

/// <summary>Headings in degrees clockwise from the plan's +y, and their arithmetic.</summary>
public static class Heading
{
    /// <summary>Degrees to radians.</summary>
    public static double ToRadians(double degrees) => degrees * Math.PI / 180;

    /// <summary>Radians to degrees.</summary>
    public static double ToDegrees(double radians) => radians * 180 / Math.PI;

    /// <summary>The same heading in 0 (inclusive) to 360 (exclusive).</summary>
    public static double Normalised(double degrees)
    {
        double turned = degrees % 360;
        turned = turned < 0 ? turned + 360 : turned;
        return turned >= 360 ? 0 : turned;
    }

    /// <summary>The smaller angle between two headings, 0 to 180 degrees.</summary>
    public static double Between(double firstDegrees, double secondDegrees)
    {
        double turn = Normalised(firstDegrees - secondDegrees);
        return turn > 180 ? 360 - turn : turn;
    }
}
