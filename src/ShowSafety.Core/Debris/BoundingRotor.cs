using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>
/// A rotor nobody has measured, bounded from outside: as large as the casing, 440 m/s at the tip, the density of its
/// material or of the heaviest one. This project's choice; small wheels of the trade run to about 430 m/s.
/// </summary>
internal static class BoundingRotor
{
    public const double TipSpeedMetresPerSecond = 440;

    public static RotorCase? Read(EngineSheet sheet, Rotor rotor, RotorFindings say)
    {
        double? radius = Radius(sheet, rotor);
        double density = RotorMaterials.DensityOrDensest(rotor.Material);
        (double Near, double Far)? planes = Planes(sheet, rotor);
        double? mass = Mass(rotor, radius, density);
        say.MissingUnless(radius, "debris.bounding-casing-missing", nameof(EngineSheet.CasingDiameterMetres), sheet);
        say.MissingUnless(mass, "debris.bounding-thickness-missing", nameof(Rotor.DiscThicknessMetres));
        say.MissingUnless(planes, "debris.rotor-position-missing", nameof(Rotor.AxialPositionMetres));
        if (radius is not { } r || mass is not { } m || planes is not { } between)
        {
            return null;
        }

        double thickness = RotorMaterials.Thickness(m, r, 0, density);
        RotorCase bounding = Build(rotor, r, m, density, Math.Min(thickness, Stated(rotor) ?? thickness), between);
        say.Bounding(bounding);
        if (bounding.BladeKilograms is null)
        {
            say.BladesUnknown();
        }

        return bounding;
    }

    private static RotorCase Build(
        Rotor rotor,
        double radius,
        double mass,
        double density,
        double thickness,
        (double Near, double Far) planes
    ) =>
        new()
        {
            Id = rotor.Id,
            SpeedRevolutionsPerMinute = Speed(rotor, radius),
            TipRadiusMetres = radius,
            RimRadiusMetres = radius,
            RimKnown = false,
            BoreRadiusMetres = 0,
            MassKilograms = mass,
            DensityKilogramsPerCubicMetre = density,
            BestThicknessMetres = thickness,
            PlanningThicknessMetres = thickness,
            BladeCount = rotor.BladeCount is >= 1 and <= 1000 ? rotor.BladeCount : null,
            Bounding = true,
            NearestPlaneMetres = planes.Near,
            FarthestPlaneMetres = planes.Far,
            Pedigree = Pedigree.Assumed,
        };

    private static double? Radius(EngineSheet sheet, Rotor rotor)
    {
        double? casing = RotorReader.Metres(sheet.CasingDiameterMetres)?.Value / 2;
        double? stated = RotorReader.Metres(rotor.TipRadiusMetres)?.Value;
        return casing is null || stated > casing ? stated : casing;
    }

    private static double? Mass(Rotor rotor, double? radius, double density)
    {
        double? stated = RotorReader.Kilograms(rotor.BladedMassKilograms)?.Value;
        double? solid =
            radius is { } r && Stated(rotor) is { } thickness
                ? RotorMaterials.DiscMass(r, 0, thickness, density)
                : null;
        return solid is null || stated > solid ? stated : solid;
    }

    private static double? Stated(Rotor rotor) => RotorReader.Metres(rotor.DiscThicknessMetres)?.Value;

    // A plane nobody knows lies anywhere in the engine.
    private static (double Near, double Far)? Planes(EngineSheet sheet, Rotor rotor) =>
        RotorReader.Plane(rotor.AxialPositionMetres)?.Value is { } plane ? (plane, plane)
        : RotorReader.Plane(sheet.LengthMetres)?.Value is { } length ? (0, length)
        : null;

    private static double Speed(Rotor rotor, double radius)
    {
        double bounding = TipSpeedMetresPerSecond / radius * 30 / Math.PI;
        double trip = RotorReader.Revolutions(rotor.TripSpeedRevolutionsPerMinute)?.Value ?? 0;
        double maximum = RotorReader.Revolutions(rotor.MaximumSpeedRevolutionsPerMinute)?.Value ?? 0;
        return Math.Max(bounding, Math.Max(trip, maximum));
    }
}
