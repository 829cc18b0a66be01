using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Densities of the materials rotors are made of, and the rotor sheet checked against them.</summary>
public static class RotorMaterials
{
    /// <summary>
    /// Departure of the density a sheet implies from the material's that calls for a second look: a quarter, this
    /// project's choice. Hubs, bosses and blades make wheels depart from flat discs.
    /// </summary>
    public const double SheetTolerance = 0.25;

    /// <summary>Density of the heaviest material listed, in kg/m³: taken where the material is not stated.</summary>
    public static double Densest => Density(RotorMaterial.NickelAlloy);

    /// <summary>Usual density in kg/m³ (common practice, no source).</summary>
    public static double Density(RotorMaterial material) =>
        material switch
        {
            RotorMaterial.NickelAlloy => 8190,
            RotorMaterial.Steel => 7850,
            RotorMaterial.Titanium => 4430,
            RotorMaterial.Aluminium => 2700,
            _ => throw new ArgumentOutOfRangeException(nameof(material), material, "There is no such material here."),
        };

    /// <summary>Density in kg/m³ of the material, of the heaviest one where none is stated: thinner, farther.</summary>
    public static double DensityOrDensest(RotorMaterial? material) =>
        material is { } known && Enum.IsDefined(known) ? Density(known) : Densest;

    /// <summary>Density in kg/m³ that mass and size imply for a flat disc: M/(π (R² − a²) t).</summary>
    /// <param name="massKilograms">M in kg, above 0.</param>
    /// <param name="radiusMetres">R in m, above 0.</param>
    /// <param name="boreRadiusMetres">a in m, 0 to below R.</param>
    /// <param name="thicknessMetres">t in m, above 0.</param>
    public static double ImpliedDensity(
        double massKilograms,
        double radiusMetres,
        double boreRadiusMetres,
        double thicknessMetres
    ) => massKilograms / (FaceArea(radiusMetres, boreRadiusMetres) * thicknessMetres);

    /// <summary>Thickness in m of a flat disc of a mass, a size and a density.</summary>
    /// <param name="massKilograms">M in kg, above 0.</param>
    /// <param name="radiusMetres">R in m, above 0.</param>
    /// <param name="boreRadiusMetres">a in m, 0 to below R.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density in kg/m³, above 0.</param>
    public static double Thickness(
        double massKilograms,
        double radiusMetres,
        double boreRadiusMetres,
        double densityKilogramsPerCubicMetre
    ) => massKilograms / (FaceArea(radiusMetres, boreRadiusMetres) * densityKilogramsPerCubicMetre);

    /// <summary>Mass in kg of a flat disc.</summary>
    /// <param name="radiusMetres">R in m, above 0.</param>
    /// <param name="boreRadiusMetres">a in m, 0 to below R.</param>
    /// <param name="thicknessMetres">t in m, above 0.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density in kg/m³, above 0.</param>
    public static double DiscMass(
        double radiusMetres,
        double boreRadiusMetres,
        double thicknessMetres,
        double densityKilogramsPerCubicMetre
    ) => FaceArea(radiusMetres, boreRadiusMetres) * thicknessMetres * densityKilogramsPerCubicMetre;

    private static double FaceArea(double radiusMetres, double boreRadiusMetres) =>
        Math.PI * ((radiusMetres * radiusMetres) - (boreRadiusMetres * boreRadiusMetres));
}
