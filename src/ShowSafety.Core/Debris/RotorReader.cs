using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Reads a rotor sheet: the numbers of its burst, or what is missing for them.</summary>
internal static class RotorReader
{
    /// <summary>Burst speed as a multiple of the maximum speed where no trip is stated.</summary>
    public const double AssumedTripFactor = 1.2;

    private const double Smallest = 1e-4;
    private const double LargestMetres = 5;
    private const double HeaviestKilograms = 1000;
    private const double FastestRevolutionsPerMinute = 1e6;

    public static RotorCase? Read(Engine engine, EngineSheet sheet, Rotor rotor, List<Finding> findings)
    {
        var say = new RotorFindings(engine, rotor, findings);
        if (rotor.Bounding == true)
        {
            return BoundingRotor.Read(sheet, rotor, say);
        }

        Stated? radius = Metres(rotor.TipRadiusMetres);
        Stated? mass = Kilograms(rotor.BladedMassKilograms);
        Stated? plane = Plane(rotor.AxialPositionMetres);
        Stated? speed = Speed(sheet, rotor, say);
        say.MissingUnless(radius, "debris.rotor-radius-missing", nameof(Rotor.TipRadiusMetres));
        say.MissingUnless(mass, "debris.rotor-mass-missing", nameof(Rotor.BladedMassKilograms));
        say.MissingUnless(plane, "debris.rotor-position-missing", nameof(Rotor.AxialPositionMetres));
        if (radius is null || mass is null || plane is null || speed is null)
        {
            return null;
        }

        RotorCase? read = Build(rotor, radius, mass, plane, speed, say);
        RotorSheetCheck.Check(sheet, rotor, read, say);
        return read;
    }

    public static Stated? Metres(Stated? stated) => Readable.Within(stated, Smallest, LargestMetres);

    public static Stated? Kilograms(Stated? stated) => Readable.Within(stated, Smallest, HeaviestKilograms);

    public static Stated? Plane(Stated? stated) => Readable.Within(stated, 0, LargestMetres);

    public static Stated? Revolutions(Stated? stated) => Readable.Within(stated, 1, FastestRevolutionsPerMinute);

    private static Stated? Speed(EngineSheet sheet, Rotor rotor, RotorFindings say)
    {
        Stated? maximum = Revolutions(rotor.MaximumSpeedRevolutionsPerMinute);
        Stated? trip = Revolutions(rotor.TripSpeedRevolutionsPerMinute);
        if (trip is null && maximum is null)
        {
            say.MissingUnless(null, "debris.rotor-speed-missing", nameof(Rotor.MaximumSpeedRevolutionsPerMinute));
            return null;
        }

        if (trip is null)
        {
            trip = new() { Value = maximum!.Value * AssumedTripFactor, Pedigree = Pedigree.Assumed };
            say.TripAssumed(trip);
        }

        Stated fastest = FastestStated(sheet, maximum, trip);
        if (fastest != trip)
        {
            say.TripBelowRunning(trip, fastest);
        }

        return fastest;
    }

    private static Stated FastestStated(EngineSheet sheet, Stated? maximum, Stated trip) =>
        sheet
            .States.Select(s => Revolutions(s.ShaftSpeedRevolutionsPerMinute))
            .Append(maximum)
            .Where(s => s is not null && s.Value > trip.Value)
            .MaxBy(s => s!.Value)
        ?? trip;

    private static RotorCase? Build(
        Rotor rotor,
        Stated radius,
        Stated mass,
        Stated plane,
        Stated speed,
        RotorFindings say
    )
    {
        Stated bore = Readable
            .Within(rotor.BoreRadiusMetres, 0, LargestMetres)
            .Or<Rotor>(nameof(Rotor.BoreRadiusMetres));
        if (bore.Value >= radius.Value)
        {
            say.Odd("debris.rotor-bore-odd", nameof(Rotor.BoreRadiusMetres), Severity.Stop);
            return null;
        }

        Stated? rim = Readable.Within(rotor.RimRadiusMetres, Math.Max(Smallest, bore.Value * 1.01), radius.Value);
        if (rim is null && rotor.RimRadiusMetres is not null)
        {
            say.Odd("debris.rotor-rim-odd", nameof(Rotor.RimRadiusMetres), Severity.Act);
        }

        double density = RotorMaterials.DensityOrDensest(rotor.Material);
        double implied = RotorMaterials.Thickness(mass.Value, radius.Value, bore.Value, density);
        Stated? thickness = Metres(rotor.DiscThicknessMetres);
        return new()
        {
            Id = rotor.Id,
            SpeedRevolutionsPerMinute = speed.Value,
            TipRadiusMetres = radius.Value,
            RimRadiusMetres = rim?.Value ?? radius.Value,
            RimKnown = rim is not null,
            BoreRadiusMetres = bore.Value,
            MassKilograms = mass.Value,
            DensityKilogramsPerCubicMetre = density,
            BestThicknessMetres = thickness?.Value ?? implied,
            PlanningThicknessMetres =
                thickness is not null && rotor.Material is null
                    ? thickness.Value
                    : Math.Min(thickness?.Value ?? implied, implied),
            DiscKilograms =
                rim is not null && thickness is not null && rotor.Material is not null
                    ? RotorMaterials.DiscMass(rim.Value, bore.Value, thickness.Value, density)
                    : null,
            BladeCount = rotor.BladeCount is >= 1 and <= 1000 ? rotor.BladeCount : null,
            NearestPlaneMetres = plane.Value,
            FarthestPlaneMetres = plane.Value,
            Pedigree = Readable.Weakest(
                radius,
                mass,
                plane,
                speed,
                bore,
                rim,
                thickness ?? new Stated { Pedigree = Pedigree.Assumed }
            ),
        };
    }
}
