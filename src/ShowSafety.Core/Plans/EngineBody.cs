using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// Where the body of an engine lies on the plan: from the middle of the nozzle's exit against the exhaust heading to
/// the intake face.
/// </summary>
internal static class EngineBody
{
    /// <summary>Length taken where nobody states one: this project's choice for engines that stand on a bench.</summary>
    public const double AssumedLengthMetres = 1;

    /// <summary>Half the width taken where nobody states a casing diameter: this project's choice.</summary>
    public const double AssumedRadiusMetres = 0.25;

    /// <summary>The stated length, not under the farthest rotor, or null where neither is stated.</summary>
    public static double? LengthMetres(Engine engine)
    {
        double? length = engine.Sheet?.LengthMetres.Positive();
        double? rotor = engine.Sheet?.Rotors.Max(r => r.AxialPositionMetres.Positive());
        return length is null ? null : Math.Max(length.Value, rotor ?? 0);
    }

    /// <summary>The line of the shaft from nozzle to intake, over the assumed length where none is stated.</summary>
    public static LineString Axis(Engine engine) =>
        SiteGeometry.Line([
            engine.Place,
            engine.Place.Along(engine.ExhaustHeadingDegrees + 180, LengthMetres(engine) ?? AssumedLengthMetres),
        ]);

    /// <summary>Half the casing's diameter, or the assumed half width where none is stated.</summary>
    public static double RadiusMetres(Engine engine) =>
        engine.Sheet?.CasingDiameterMetres.Positive() / 2 ?? AssumedRadiusMetres;
}
