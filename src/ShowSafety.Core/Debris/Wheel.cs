namespace ShowSafety.Core.Debris;

/// <summary>
/// A wheel as mechanics sees it when it bursts: mass, mean radius of its mass and moment of inertia about the shaft.
/// Wheels add up, so a bladed wheel is a disc plus a ring. For what the user knows about a wheel use
/// <see cref="Plans.Rotor"/>.
/// </summary>
/// <param name="MassKilograms">Mass in kg, above 0.</param>
/// <param name="MeanRadiusMetres">Mean of the radius over the mass, ∫r dm / M, in m.</param>
/// <param name="InertiaKilogramSquareMetres">Moment of inertia about the shaft in kg·m².</param>
public readonly record struct Wheel(double MassKilograms, double MeanRadiusMetres, double InertiaKilogramSquareMetres)
{
    /// <summary>
    /// A disc of even thickness: mean radius (2/3)(R³ − a³)/(R² − a²), inertia M(R² + a²)/2 (mechanics).
    /// </summary>
    /// <param name="massKilograms">M in kg, above 0.</param>
    /// <param name="radiusMetres">R in m, above 0.</param>
    /// <param name="boreRadiusMetres">a in m, 0 to below R.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bore is not smaller than the disc.</exception>
    public static Wheel Disc(double massKilograms, double radiusMetres, double boreRadiusMetres = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(massKilograms);
        ArgumentOutOfRangeException.ThrowIfNegative(boreRadiusMetres);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(boreRadiusMetres, radiusMetres);
        double outer = radiusMetres * radiusMetres;
        double inner = boreRadiusMetres * boreRadiusMetres;
        double mean = 2.0 / 3 * ((outer * radiusMetres) - (inner * boreRadiusMetres)) / (outer - inner);
        return new(massKilograms, mean, massKilograms * (outer + inner) / 2);
    }

    /// <summary>A thin ring, such as a row of blades taken at its own centre: mean radius R, inertia M R².</summary>
    /// <param name="massKilograms">Mass in kg, 0 or more.</param>
    /// <param name="radiusMetres">Radius in m, above 0.</param>
    public static Wheel Ring(double massKilograms, double radiusMetres) =>
        new(massKilograms, radiusMetres, massKilograms * radiusMetres * radiusMetres);

    /// <summary>Two bodies on the same shaft as one wheel.</summary>
    public static Wheel operator +(Wheel left, Wheel right)
    {
        double mass = left.MassKilograms + right.MassKilograms;
        double moment = (left.MassKilograms * left.MeanRadiusMetres) + (right.MassKilograms * right.MeanRadiusMetres);
        return new(mass, moment / mass, left.InertiaKilogramSquareMetres + right.InertiaKilogramSquareMetres);
    }
}
