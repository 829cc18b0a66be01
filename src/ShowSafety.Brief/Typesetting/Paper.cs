namespace ShowSafety.Brief.Typesetting;

/// <summary>Points and millimetres, and the A4 page with its margins (ISO 216:2007: 210 mm by 297 mm).</summary>
internal static class Paper
{
    public const double PointsPerMillimetre = 72 / 25.4;
    public const double WidthMillimetres = 210;
    public const double HeightMillimetres = 297;
    public const double SideMillimetres = 20;
    public const double BodyTopMillimetres = 28;
    public const double BodyBottomMillimetres = 277;

    public static double BodyWidthMillimetres => WidthMillimetres - (2 * SideMillimetres);

    public static double BodyHeightMillimetres => BodyBottomMillimetres - BodyTopMillimetres;

    public static double ToMillimetres(double points) => points / PointsPerMillimetre;

    public static double ToPoints(double millimetres) => millimetres * PointsPerMillimetre;
}
