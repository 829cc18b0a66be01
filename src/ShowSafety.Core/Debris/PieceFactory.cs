using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Makes the pieces of a rotor and flies them.</summary>
internal static class PieceFactory
{
    public static IEnumerable<DebrisPiece> Of(string engineId, RotorCase rotor, FlightAir air)
    {
        yield return Sector(engineId, rotor, air, PieceKind.HalfDisc, 2);
        yield return Sector(engineId, rotor, air, PieceKind.OneThirdDisc, 3);
        yield return Sector(engineId, rotor, air, PieceKind.QuarterDisc, 4);
        yield return Intermediate(engineId, rotor, air);
        if (rotor.BladeKilograms is { } blade)
        {
            yield return Blade(engineId, rotor, air, blade);
        }
    }

    private static DebrisPiece Sector(string engineId, RotorCase rotor, FlightAir air, PieceKind kind, int pieces)
    {
        SectorPiece best = Burst.IntoEqualSectors(rotor.BestWheel, rotor.SpeedRevolutionsPerMinute, pieces);
        SectorPiece planning = Burst.IntoEqualSectors(rotor.PlanningWheel, rotor.SpeedRevolutionsPerMinute, pieces);
        PieceShape Shape(double thickness) =>
            PieceShape.Sector(rotor.TipRadiusMetres, rotor.BoreRadiusMetres, thickness, pieces);
        var release = new Release(
            planning.MassKilograms,
            best.SpeedMetresPerSecond,
            planning.SpeedMetresPerSecond,
            best.SpinJoules,
            Math.Max(best.SpinJoules, planning.SpinJoules)
        );
        return Fly(
            new(engineId, rotor.Id, kind),
            rotor,
            air,
            release,
            Shape(rotor.BestThicknessMetres),
            Shape(rotor.PlanningThicknessMetres)
        );
    }

    private static DebrisPiece Intermediate(string engineId, RotorCase rotor, FlightAir air)
    {
        double mass = AirworthinessModel.IntermediateMass(rotor.MassKilograms);
        double speed = Burst.SpeedAtRadius(rotor.SpeedRevolutionsPerMinute, rotor.RimRadiusMetres);
        PieceShape shape = PieceShape.Cube(mass, rotor.DensityKilogramsPerCubicMetre);
        var release = new Release(mass, speed, speed, 0, 0);
        return Fly(new(engineId, rotor.Id, PieceKind.Intermediate), rotor, air, release, shape, shape);
    }

    // The centre of a blade is the best estimate of its speed; no part of it is faster than the tip.
    private static DebrisPiece Blade(string engineId, RotorCase rotor, FlightAir air, double mass)
    {
        double middle = (rotor.RimRadiusMetres + rotor.TipRadiusMetres) / 2;
        PieceShape shape = PieceShape.Cube(mass, rotor.DensityKilogramsPerCubicMetre);
        var release = new Release(
            mass,
            Burst.SpeedAtRadius(rotor.SpeedRevolutionsPerMinute, middle),
            Burst.SpeedAtRadius(rotor.SpeedRevolutionsPerMinute, rotor.TipRadiusMetres),
            0,
            0
        );
        return Fly(new(engineId, rotor.Id, PieceKind.Blade), rotor, air, release, shape, shape);
    }

    private static DebrisPiece Fly(
        PieceName name,
        RotorCase rotor,
        FlightAir air,
        Release release,
        PieceShape bestShape,
        PieceShape planningShape
    )
    {
        var best = Flight.Of(
            release.MassKilograms,
            release.BestSpeed,
            Drag.PerMetre(air.BestDensity, Drag.Tumbling * bestShape.TumblingAreaSquareMetres, release.MassKilograms),
            air.HeightMetres,
            0
        );
        double planningArea = Math.Min(planningShape.TumblingAreaSquareMetres, bestShape.TumblingAreaSquareMetres);
        Flight planning = PlanningFlight(release, planningArea, air);
        // A spinning sector may keep its plane and fly edge on. That decides how far the landing area is looked for;
        // the direct-flight sector takes the tumbling piece with drag at the low end of the published range.
        Flight edgeOn = PlanningFlight(release, Math.Min(planningShape.LeastAreaSquareMetres, planningArea), air);
        var quantities = new PieceQuantities(
            name.Kind,
            (Pedigree)Math.Max((int)rotor.Pedigree, (int)air.Pedigree),
            rotor.Pedigree
        );
        double edge = Math.Min(planningShape.EdgeDiameterMetres, bestShape.EdgeDiameterMetres);
        return new(name.EngineId, name.RotorId, name.Kind)
        {
            Mass = quantities.Rotor(release.MassKilograms * 1000, release.MassKilograms * 1000, Unit.Gram),
            Speed = quantities.Rotor(release.BestSpeed, release.PlanningSpeed, Unit.MetrePerSecond),
            Translation = quantities.Rotor(best.StartJoules, planning.StartJoules, Unit.Joule),
            Spin = quantities.Rotor(release.BestSpin, release.PlanningSpin, Unit.Joule),
            Area = quantities.Low(bestShape.TumblingAreaSquareMetres * 1e4, planningArea * 1e4, Unit.SquareCentimetre),
            EdgeDiameter = quantities.Low(bestShape.EdgeDiameterMetres * 1000, edge * 1000, Unit.Millimetre),
            EnergyPerArea = quantities.PerArea(best.StartJoules, planning.StartJoules, edge),
            FlatFireDistance = quantities.Reach(best.FlatFireMetres, planning.FlatFireMetres),
            LandingDistance = quantities.Landing(
                best.Landing.DistanceMetres,
                edgeOn.Landing.DistanceMetres,
                Unit.Metre
            ),
            LandingApex = quantities.Landing(best.Landing.ApexMetres, edgeOn.Landing.ApexMetres, Unit.Metre),
            LandingEnergy = quantities.Landing(best.LandingJoules, edgeOn.LandingJoules, Unit.Joule),
        };
    }

    private static Flight PlanningFlight(Release release, double areaSquareMetres, FlightAir air) =>
        Flight.Of(
            release.MassKilograms,
            release.PlanningSpeed,
            Drag.PerMetre(air.PlanningDensity, Drag.PlanningLow * areaSquareMetres, release.MassKilograms),
            air.HeightMetres,
            air.WindMetresPerSecond
        );

    private readonly record struct PieceName(string EngineId, string RotorId, PieceKind Kind);

    private readonly record struct Release(
        double MassKilograms,
        double BestSpeed,
        double PlanningSpeed,
        double BestSpin,
        double PlanningSpin
    );
}
