using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Level, distance and sound power of a point source, and the corrections of a measurement. Reference values 20 µPa
/// and 1 pW; the characteristic impedance is taken as 400 N·s/m³, as the standards do.
/// </summary>
public static class SoundPower
{
    private const double ReferenceWatts = 1e-12;
    private const double ReferencePascals = 20e-6;

    /// <summary>Sound power level 10 lg(W/1 pW) in dB of a power above 0 in watts.</summary>
    public static double PowerLevelDb(double watts) => 10 * Math.Log10(watts / ReferenceWatts);

    /// <summary>Sound pressure level 20 lg(p/20 µPa) in dB of an r.m.s. pressure above 0 in pascals.</summary>
    public static double PressureLevelDb(double pascals) => 20 * Math.Log10(pascals / ReferencePascals);

    /// <summary>Change of level 20 lg(r1/r2) in dB from one distance to another, both above 0.</summary>
    public static double DistanceChangeDb(double fromMetres, double toMetres) => 20 * Math.Log10(fromMetres / toMetres);

    /// <summary>Spherical spreading 10 lg(4π r²) in dB, r above 0 in metres (11 dB at 1 m).</summary>
    public static double SphereDb(double radiusMetres) => 10 * Math.Log10(4 * Math.PI * radiusMetres * radiusMetres);

    /// <summary>Hemispherical spreading 10 lg(2π r²) in dB, r above 0 in metres (8 dB at 1 m).</summary>
    public static double HemisphereDb(double radiusMetres) =>
        10 * Math.Log10(2 * Math.PI * radiusMetres * radiusMetres);

    /// <summary>
    /// D_Ω = 10 lg(1 + r_direct²/r_image²) in dB, ISO 9613-2:1996 equation (11): what a hard floor adds to the direct
    /// sound, 3 dB far away and less near the source.
    /// </summary>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    public static double FloorImageDb(double horizontalMetres, double sourceHeightMetres, double receiverHeightMetres)
    {
        double flat = horizontalMetres * horizontalMetres;
        double down = sourceHeightMetres - receiverHeightMetres;
        double up = sourceHeightMetres + receiverHeightMetres;
        double image = flat + (up * up);
        return image > 0 ? 10 * Math.Log10(1 + ((flat + (down * down)) / image)) : 10 * Math.Log10(2);
    }

    /// <summary>
    /// Background correction K1 = -10 lg(1 - 10^(-0.1 ΔL)) in dB, ISO 3744:2010, for an excess ΔL above 0 dB. How it is
    /// used here: <see cref="Sources.BackgroundCheck"/>.
    /// </summary>
    public static double BackgroundCorrectionDb(double excessDb) => -10 * Math.Log10(1 - Math.Pow(10, -0.1 * excessDb));

    /// <summary>
    /// Environmental correction K2 = 10 lg(1 + 4 S/A) in dB, ISO 3744:2010 and ISO 3746:2010.
    /// </summary>
    /// <param name="surfaceSquareMetres">Measurement surface, above 0.</param>
    /// <param name="absorptionSquareMetres">Equivalent absorption area of the room, above 0.</param>
    public static double EnvironmentCorrectionDb(double surfaceSquareMetres, double absorptionSquareMetres) =>
        10 * Math.Log10(1 + (4 * surfaceSquareMetres / absorptionSquareMetres));
}
