using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>The figures of one engine's burst, in the order they are printed.</summary>
internal static class DebrisFigures
{
    private const double WorkedDistanceMetres = 10;
    private const double PersonHeightMetres = 1.8;

    public static IEnumerable<Figure> Of(EngineBurst burst)
    {
        foreach (RotorCase rotor in burst.Rotors)
        {
            foreach (Figure figure in OfRotor(burst, rotor))
            {
                yield return figure with
                {
                    PartId = rotor.Id,
                };
            }
        }

        foreach (Figure figure in OfEngine(burst).Concat(Screens(burst)))
        {
            yield return figure;
        }
    }

    private static IEnumerable<Figure> OfRotor(EngineBurst burst, RotorCase rotor)
    {
        string id = burst.Engine.Id;
        yield return new(
            "debris.burst-speed",
            id,
            Wheel(rotor, rotor.SpeedRevolutionsPerMinute, Unit.RevolutionPerMinute)
        );
        yield return new("debris.tip-speed", id, Wheel(rotor, TipSpeed(rotor), Unit.MetrePerSecond));
        yield return new("debris.wheel-energy", id, WheelEnergy(rotor));
        DebrisPiece[] pieces = [.. burst.Pieces.Where(p => p.RotorId == rotor.Id)];
        foreach (PieceKind kind in pieces.Select(p => p.Kind).Distinct())
        {
            DebrisPiece piece = pieces.First(p => p.Kind == kind);
            string name = NameOf(kind);
            yield return new($"debris.{name}-mass", id, piece.Mass);
            yield return new($"debris.{name}-speed", id, piece.Speed);
            yield return new($"debris.{name}-energy", id, piece.Translation);
            yield return new($"debris.{name}-direct-reach", id, piece.FlatFireDistance);
            yield return new($"debris.{name}-landing-reach", id, piece.LandingDistance);
        }
    }

    private static IEnumerable<Figure> OfEngine(EngineBurst burst)
    {
        string id = burst.Engine.Id;
        yield return new("debris.direct-reach", id, DirectFlightZones.ReachOf(burst.Pieces));
        yield return new("debris.landing-reach", id, LandingArea.ReachOf(burst));
        yield return new("debris.landing-apex", id, burst.FarthestLanded.LandingApex);
        yield return new("debris.landing-energy", id, burst.FarthestLanded.LandingEnergy);
        yield return new(
            "debris.small-piece-energy-per-area",
            id,
            burst.Pieces.MaxBy(p => p.EnergyPerArea.Planning)!.EnergyPerArea
        );
        if (Readable.Within(burst.Engine.ShaftHeightMetres, 0, 20) is { } height)
        {
            double angle = Spread.PersonAngle(height.Value, PersonHeightMetres, WorkedDistanceMetres);
            yield return new(
                "debris.path-share-at-10-metres",
                id,
                Quantity.Plain(100 * angle / 360, Unit.Percent) with
                {
                    Pedigree = height.Pedigree,
                    Citations = [DebrisSources.AirworthinessModel],
                    Sum = "person-in-path",
                }
            );
        }
    }

    // The piece that asks most of a sheet decides; a thickness to start a test with, not an acceptance.
    private static IEnumerable<Figure> Screens(EngineBurst burst)
    {
        ScreenMaterial[] materials = [ScreenMaterial.Steel, ScreenMaterial.Aluminium, ScreenMaterial.Polycarbonate];
        foreach (ScreenMaterial material in materials)
        {
            double best = Thickest(p => GuardTests.StartingThickness(material, p.Translation.Best, Edge(p)) ?? 0);
            double planning = Thickest(p =>
                GuardTests.StartingThickness(material, p.Translation.Planning, Edge(p)) ?? 0
            );
            yield return new(
                $"debris.starting-thickness-{NameOf(material)}",
                burst.Engine.Id,
                Thickness(
                    best,
                    planning,
                    [DebrisSources.GuardTest, DebrisSources.GuardMaterials],
                    "screen-starting-thickness"
                )
            );
        }

        yield return new(
            "debris.steel-plate-thickness",
            burst.Engine.Id,
            Thickness(
                Thickest(p => SteelPlate.PerforationThickness(p.Translation.Planning, Edge(p))),
                Thickest(p =>
                    SteelPlate.DesignFactor * SteelPlate.PerforationThickness(p.Translation.Planning, Edge(p))
                ),
                [DebrisSources.SteelPlate],
                "steel-plate"
            )
        );

        double Thickest(Func<DebrisPiece, double> thickness) => burst.Pieces.Max(thickness);
        static double Edge(DebrisPiece piece) => piece.EdgeDiameter.Planning / 1000;
    }

    private static string NameOf(PieceKind kind) =>
        kind switch
        {
            PieceKind.HalfDisc => "half-disc",
            PieceKind.OneThirdDisc => "one-third-disc",
            PieceKind.QuarterDisc => "quarter-disc",
            PieceKind.Intermediate => "intermediate",
            _ => "blade",
        };

    private static string NameOf(ScreenMaterial material) =>
        material switch
        {
            ScreenMaterial.Steel => "steel",
            ScreenMaterial.Aluminium => "aluminium",
            _ => "polycarbonate",
        };

    private static double TipSpeed(RotorCase rotor) =>
        Burst.SpeedAtRadius(rotor.SpeedRevolutionsPerMinute, rotor.TipRadiusMetres);

    private static Quantity Wheel(RotorCase rotor, double value, Unit unit) =>
        Quantity.CautiousHigh(value, value, unit) with
        {
            Pedigree = rotor.Pedigree,
            Citations = [DebrisSources.BurstMechanics],
            Sum = "speed-at-radius",
        };

    private static Quantity WheelEnergy(RotorCase rotor)
    {
        double best = Whole(rotor.BestWheel);
        return Quantity.CautiousHigh(best, Math.Max(best, Whole(rotor.PlainWheel)), Unit.Joule) with
        {
            Pedigree = rotor.Pedigree,
            Citations = [DebrisSources.BurstMechanics],
            Sum = "disc-burst",
        };

        double Whole(Wheel wheel) => Burst.IntoEqualSectors(wheel, rotor.SpeedRevolutionsPerMinute, 3).WheelJoules;
    }

    private static Quantity Thickness(double best, double planning, ValueList<string> citations, string sum) =>
        Quantity.CautiousHigh(best * 1000, planning * 1000, Unit.Millimetre) with
        {
            Citations = citations,
            Sum = sum,
        };
}
