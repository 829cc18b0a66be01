using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>Invented plans for the tests of this room.</summary>
internal static class DebrisPlans
{
    public static Stated Is(double value, Pedigree pedigree = Pedigree.Measured) =>
        new() { Value = value, Pedigree = pedigree };

    /// <summary>An invented nickel wheel: 76 mm across, 190 g, 102,000 rpm at the trip.</summary>
    public static Rotor Turbine { get; } =
        new()
        {
            Id = "turbine",
            Kind = RotorKind.Turbine,
            AxialPositionMetres = Is(0.08),
            TipRadiusMetres = Is(0.038),
            RimRadiusMetres = Is(0.029),
            BladedMassKilograms = Is(0.190),
            BladeCount = 27,
            DiscThicknessMetres = Is(0.0070),
            Material = RotorMaterial.NickelAlloy,
            MaximumSpeedRevolutionsPerMinute = Is(95_000),
            TripSpeedRevolutionsPerMinute = Is(102_000),
        };

    /// <summary>An invented aluminium wheel nearer to the intake.</summary>
    public static Rotor Compressor { get; } =
        new()
        {
            Id = "compressor",
            Kind = RotorKind.Compressor,
            AxialPositionMetres = Is(0.22),
            TipRadiusMetres = Is(0.036),
            RimRadiusMetres = Is(0.015),
            BladedMassKilograms = Is(0.070),
            BladeCount = 12,
            DiscThicknessMetres = Is(0.012),
            Material = RotorMaterial.Aluminium,
            MaximumSpeedRevolutionsPerMinute = Is(95_000),
            TripSpeedRevolutionsPerMinute = Is(102_000),
        };

    public static Plan With(params IReadOnlyList<Rotor> rotors) => With(0, rotors);

    public static Plan With(double headingDegrees, params IReadOnlyList<Rotor> rotors) =>
        new()
        {
            Title = "Invented",
            Site = new() { Outline = [new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)] },
            Engines =
            [
                new()
                {
                    Id = "engine",
                    Name = "Engine one",
                    Place = new(3, 4),
                    ExhaustHeadingDegrees = headingDegrees,
                    ShaftHeightMetres = Is(1),
                    Sheet = new()
                    {
                        Rotors = [.. rotors],
                        CasingDiameterMetres = Is(0.11),
                        LengthMetres = Is(0.3),
                    },
                },
            ],
        };

    /// <summary>A screen 6 m east of an engine that blows north, with a test.</summary>
    public static DebrisScreen Screen(double joules = 40_000, double kilograms = 1, double faceMetres = 0.010) =>
        new()
        {
            Id = "screen",
            Line = [new(9, -6), new(9, 14)],
            HeightMetres = Is(2.5),
            Material = ScreenMaterial.Steel,
            ThicknessMetres = Is(0.02),
            Evidence = new()
            {
                TestedEnergyJoules = Is(joules),
                ProjectileKilograms = Is(kilograms),
                ProjectileDiameterMetres = Is(faceMetres),
                Reference = "invented report 1",
            },
        };
}
