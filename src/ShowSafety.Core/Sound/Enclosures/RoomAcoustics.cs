using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>
/// The classical theory of rooms: direct sound and a diffuse field. It wants comparable dimensions and even
/// absorption; in long or flat halls and in tents with open ends it is outside its range.
/// </summary>
public static class RoomAcoustics
{
    /// <summary>
    /// Room constant R = A/(1 - ᾱ) in m², for an absorption area above 0 in m² and a mean absorption coefficient from 0
    /// to under 1.
    /// </summary>
    public static double RoomConstantSquareMetres(double absorptionSquareMetres, double meanAbsorption) =>
        absorptionSquareMetres / (1 - meanAbsorption);

    /// <summary>
    /// L_p = L_W + 10 lg(Q/(4π r²) + 4/R) in dB (textbook; Q = 1 free, 2 over a floor, 4 at an edge, 8 in a corner).
    /// </summary>
    public static double LevelDb(double powerDb, double directivityFactor, double metres, double roomConstant) =>
        powerDb + (10 * Math.Log10((directivityFactor / (4 * Math.PI * metres * metres)) + (4 / roomConstant)));

    /// <summary>Distance √(Q R/(16π)) in metres at which direct and diffuse sound are equally strong.</summary>
    public static double CriticalDistanceMetres(double directivityFactor, double roomConstantSquareMetres) =>
        Math.Sqrt(directivityFactor * roomConstantSquareMetres / (16 * Math.PI));

    /// <summary>Reverberation time 0.161 V/A in seconds, after Sabine.</summary>
    public static double SabineSeconds(double cubicMetres, double absorptionSquareMetres) =>
        0.161 * cubicMetres / absorptionSquareMetres;

    /// <summary>Absorption area 0.161 V/T in m² from a reverberation time in seconds, after Sabine.</summary>
    public static double AbsorptionFromTimeSquareMetres(double cubicMetres, double seconds) =>
        0.161 * cubicMetres / seconds;

    /// <summary>
    /// Reverberation time 55.3/c0 · V(1 - ψ)/A in seconds with c0 = 345.6 m/s, EN 12354-6:2003 clause 4.4.
    /// </summary>
    /// <param name="cubicMetres">Volume of the empty room, above 0.</param>
    /// <param name="objectShare">ψ, share of the volume taken by objects, 0 to under 1.</param>
    /// <param name="absorptionSquareMetres">Equivalent absorption area, above 0.</param>
    public static double StandardSeconds(double cubicMetres, double objectShare, double absorptionSquareMetres) =>
        55.3 / 345.6 * cubicMetres * (1 - objectShare) / absorptionSquareMetres;

    /// <summary>Absorption area Σ S_i α_i in m².</summary>
    public static double AbsorptionSquareMetres(IReadOnlyList<double> areas, IReadOnlyList<double> coefficients) =>
        areas.Zip(coefficients, (s, a) => s * a).Sum();
}

/// <summary>
/// Sound through a limp wall, such as tent fabric: mass law of a sheet without stiffness (textbook model; no published
/// octave table of single fabrics is used). What passes is absorption to the inside.
/// </summary>
public static class LimpWall
{
    // Characteristic impedance of air in N·s/m³ near 15 °C, as the textbooks take it for partitions.
    private const double AirImpedance = 415;

    /// <summary>a = π f m/(ρc), for a frequency in hertz and a mass per area in kg/m².</summary>
    public static double Parameter(double hertz, double kilogramsPerSquareMetre) =>
        Math.PI * hertz * kilogramsPerSquareMetre / AirImpedance;

    /// <summary>Share of the energy transmitted at normal incidence, 1/(1 + a²).</summary>
    public static double NormalTransmission(double hertz, double kilogramsPerSquareMetre)
    {
        double a = Parameter(hertz, kilogramsPerSquareMetre);
        return 1 / (1 + (a * a));
    }

    /// <summary>Share of the energy transmitted in a diffuse field, ln(1 + a²)/a².</summary>
    public static double DiffuseTransmission(double hertz, double kilogramsPerSquareMetre)
    {
        double a = Parameter(hertz, kilogramsPerSquareMetre);
        double square = a * a;
        return square < 1e-9 ? 1 : Math.Log(1 + square) / square;
    }

    /// <summary>Diffuse transmission of the octave bands.</summary>
    public static BandValues BandsTransmission(double kilogramsPerSquareMetre) =>
        BandValues.Build(b => DiffuseTransmission(OctaveBand.MidbandHertz(b), kilogramsPerSquareMetre));
}
