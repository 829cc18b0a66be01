using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.DebrisSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of bursts and spreads.</summary>
internal static class DebrisBurstSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "disc-burst",
            "speed and energy of the pieces of a flat disc that breaks into equal sectors",
            [
                Positive("wheelKilograms", "mass of the disc", Unit.Kilogram, 1e-6, 1e4),
                Positive("radiusMetres", "radius of the disc", Unit.Metre, 1e-5, 10),
                Standard("boreRadiusMetres", "radius of the bore", Unit.Metre, 0, 10, 0),
                Revolutions,
                Pieces,
            ],
            [DebrisSources.BurstMechanics, DebrisSources.ThreePieces],
            i =>
                Burst(Wheel.Disc(i.Number("wheelKilograms"), i.Number("radiusMetres"), i.Number("boreRadiusMetres")), i)
        ),
        new(
            "bladed-wheel-burst",
            "speed and energy of the pieces of a disc with a ring of blades",
            [
                Positive("discKilograms", "mass of the disc without blades", Unit.Kilogram, 1e-6, 1e4),
                Positive("discRadiusMetres", "radius of the disc", Unit.Metre, 1e-5, 10),
                Positive("bladesKilograms", "mass of all blades", Unit.Kilogram, 0, 1e4),
                Positive("bladeRadiusMetres", "radius of the blades' centres of mass", Unit.Metre, 1e-5, 10),
                Revolutions,
                Pieces,
            ],
            [DebrisSources.BurstMechanics],
            i =>
                Burst(
                    Wheel.Disc(i.Number("discKilograms"), i.Number("discRadiusMetres"))
                        + Wheel.Ring(i.Number("bladesKilograms"), i.Number("bladeRadiusMetres")),
                    i
                )
        ),
        new(
            "worst-sector",
            "the sector of a flat disc that carries the largest share of its energy as flight",
            [],
            [DebrisSources.BurstMechanics, DebrisSources.ThreePieces],
            _ => Worst()
        ),
        new(
            "speed-at-radius",
            "speed of a point of a wheel, such as a blade's tip",
            [Revolutions, Positive("radiusMetres", "radius of the point", Unit.Metre, 0, 10)],
            [DebrisSources.BurstMechanics],
            AtRadius
        ),
        new(
            "ac-20-128a-pieces",
            "one-third disc and intermediate fragment of AC 20-128A with their spread",
            [
                Positive("wheelKilograms", "mass of the wheel with blades", Unit.Kilogram, 1e-6, 1e4),
                Positive("rimRadiusMetres", "radius of the rim", Unit.Metre, 1e-5, 10),
                Positive("tipRadiusMetres", "radius at the blade tips", Unit.Metre, 1e-5, 10),
                Revolutions,
            ],
            [DebrisSources.AirworthinessModel, DebrisSources.AnglesTooNarrow],
            Model
        ),
        new(
            "sector-half-width",
            "half-width of a sector at a distance from the shaft line",
            [
                Positive("distanceMetres", "distance from the shaft line", Unit.Metre, 0, 1e5),
                Standard("spreadDegrees", "spread on each side of the rotor plane", Unit.Degree, 0, 89, 15),
            ],
            [DebrisSources.AirworthinessModel],
            HalfWidth
        ),
        new(
            "person-in-path",
            "angle a standing person takes up in the rotor plane; given a burst, its share of the circle is the chance per piece",
            [
                Positive("shaftHeightMetres", "height of the shaft", Unit.Metre, 0, 20),
                Standard("personHeightMetres", "height of the person", Unit.Metre, 0.1, 3, 1.8),
                Positive("distanceMetres", "distance from the shaft", Unit.Metre, 0.01, 1e5),
                Pieces,
            ],
            [DebrisSources.AirworthinessModel],
            Person
        ),
        new(
            "plan-angle",
            "angle on the plan of a piece that leaves the rotor plane at a slant and climbs",
            [
                Positive("spreadDegrees", "angle from the rotor plane", Unit.Degree, 0, 89),
                Positive("elevationDegrees", "angle above level", Unit.Degree, 0, 89.9),
            ],
            [DebrisSources.BurstMechanics],
            PlanAngle
        ),
        new(
            "sheet-density",
            "density a rotor sheet implies, and the thickness its mass and density imply",
            [
                Positive("wheelKilograms", "mass of the wheel", Unit.Kilogram, 1e-6, 1e4),
                Positive("radiusMetres", "radius of the wheel", Unit.Metre, 1e-5, 10),
                Standard("boreRadiusMetres", "radius of the bore", Unit.Metre, 0, 10, 0),
                Positive("thicknessMetres", "thickness along the shaft", Unit.Metre, 1e-6, 10),
                Standard(
                    "densityKilogramsPerCubicMetre",
                    "density of the material",
                    Unit.KilogramPerCubicMetre,
                    100,
                    30000,
                    8190
                ),
            ],
            [DebrisSources.Densities],
            Sheet
        ),
    ];

    private static SumAnswer Burst(Wheel wheel, SumInput input)
    {
        double rpm = input.Number("speedRevolutionsPerMinute");
        int n = (int)Math.Round(input.Number("pieces"));
        SectorPiece p = Debris.Burst.IntoEqualSectors(wheel, rpm, n);
        return new(
            [
                new("translationJoules", p.TranslationJoules, Unit.Joule, "energy of flight of one piece"),
                new("spinJoules", p.SpinJoules, Unit.Joule, "energy of spin of one piece"),
                new("wheelJoules", p.WheelJoules, Unit.Joule, "energy of the whole wheel"),
                new("speedMetresPerSecond", p.SpeedMetresPerSecond, Unit.MetrePerSecond, "speed of one piece"),
                new("centroidRadiusMetres", p.CentroidRadiusMetres, Unit.Metre, "radius of the piece's centre of mass"),
                new("pieceKilograms", p.MassKilograms, Unit.Kilogram, "mass of one piece"),
                new(
                    "translationShare",
                    p.TranslationShare,
                    Unit.One,
                    "share of the wheel's energy in one piece's flight"
                ),
                new("allTranslationShare", p.TranslationShare * n, Unit.One, "share in the flight of all pieces"),
                new("spinShare", p.SpinJoules / p.WheelJoules, Unit.One, "share in the spin of one piece"),
                new("centroidShare", p.CentroidRadiusMetres / wheel.MeanRadiusMetres, Unit.One, "sin α/α with α = π/n"),
            ],
            [
                Line($"ω = π {rpm}/30 = {Debris.Burst.AngularSpeed(rpm):0.###} rad/s"),
                Line(
                    $"r_c = {wheel.MeanRadiusMetres:0.######} m × sin(π/{n})/(π/{n}) = {p.CentroidRadiusMetres:0.######} m"
                ),
                Line($"v = ω r_c = {p.SpeedMetresPerSecond:0.###} m/s"),
                Line($"E_t = ½ × {p.MassKilograms:0.######} kg × v² = {p.TranslationJoules:0.##} J"),
                Line($"E = ½ × {wheel.InertiaKilogramSquareMetres:0.####e+0} kg·m² × ω² = {p.WheelJoules:0.##} J"),
                Line($"E_r = E/{n} − E_t = {p.SpinJoules:0.##} J"),
            ]
        );
    }

    private static SumAnswer Worst()
    {
        (double angle, double share) = Debris.Burst.WorstSector();
        return new(
            [
                new("includedAngleDegrees", angle, Unit.Degree, "included angle of the worst sector"),
                new("translationShare", share, Unit.One, "share of the disc's energy in its flight"),
            ],
            [
                "The share goes with sin²x/x, x half the included angle; it is largest where tan x = 2x.",
                Line($"2x = {angle:0.###}°, share {share:0.######}; three pieces are the worst whole number"),
            ]
        );
    }

    private static SumAnswer AtRadius(SumInput i)
    {
        double rpm = i.Number("speedRevolutionsPerMinute");
        double radius = i.Number("radiusMetres");
        double speed = Debris.Burst.SpeedAtRadius(rpm, radius);
        double omega = Debris.Burst.AngularSpeed(rpm);
        return new(
            [
                new("speedMetresPerSecond", speed, Unit.MetrePerSecond, "speed of the point"),
                new("angularSpeedPerSecond", omega, Unit.One, "turning speed in rad/s"),
            ],
            [Line($"v = ω r = {omega:0.###} rad/s × {radius} m = {speed:0.###} m/s")]
        );
    }

    private static SumAnswer Model(SumInput i)
    {
        double mass = i.Number("wheelKilograms");
        double third = AirworthinessModel.OneThirdMass(mass);
        double intermediate = AirworthinessModel.IntermediateMass(mass);
        double size = AirworthinessModel.IntermediateSize(i.Number("tipRadiusMetres"));
        double speed = Debris.Burst.SpeedAtRadius(i.Number("speedRevolutionsPerMinute"), i.Number("rimRadiusMetres"));
        double energy = FlatFire.Energy(intermediate, speed);
        return new(
            [
                new("intermediateJoules", energy, Unit.Joule, "energy of the intermediate fragment"),
                new("intermediateMetresPerSecond", speed, Unit.MetrePerSecond, "its speed, that of the rim"),
                new("intermediateKilograms", intermediate, Unit.Kilogram, "its mass"),
                new("intermediateMetres", size, Unit.Metre, "its largest dimension"),
                new("oneThirdKilograms", third, Unit.Kilogram, "mass of the one-third disc"),
                new("oneThirdSpreadDegrees", AirworthinessModel.OneThirdDiscSpreadDegrees, Unit.Degree, "its spread"),
                new(
                    "intermediateSpreadDegrees",
                    AirworthinessModel.IntermediateSpreadDegrees,
                    Unit.Degree,
                    "spread of the intermediate fragment"
                ),
                new(
                    "smallSpreadDegrees",
                    AirworthinessModel.SmallFragmentSpreadDegrees,
                    Unit.Degree,
                    "spread of small fragments"
                ),
            ],
            [
                Line($"one-third disc: {mass} kg/3 = {third:0.######} kg"),
                Line($"intermediate: {mass} kg/30 = {intermediate:0.######} kg at ω × rim radius = {speed:0.###} m/s"),
                Line($"E = ½ m v² = {energy:0.##} J"),
            ]
        );
    }

    private static SumAnswer HalfWidth(SumInput i)
    {
        double distance = i.Number("distanceMetres");
        double spread = i.Number("spreadDegrees");
        double half = Spread.HalfWidth(distance, spread);
        return new(
            [new("halfWidthMetres", half, Unit.Metre, "half-width of the sector")],
            [Line($"s = {distance} m × tan {spread}° = {half:0.#####} m")]
        );
    }

    private static SumAnswer Person(SumInput i)
    {
        double shaft = i.Number("shaftHeightMetres");
        double person = i.Number("personHeightMetres");
        double distance = i.Number("distanceMetres");
        double angle = Spread.PersonAngle(shaft, person, distance);
        return new(
            [
                new("angleDegrees", angle, Unit.Degree, "angle the person takes up"),
                new("shareOfCircle", angle / 360, Unit.One, "chance per piece, given a burst"),
                new(
                    "expectedPieces",
                    i.Number("pieces") * angle / 360,
                    Unit.One,
                    "expected number of pieces that way, given a burst"
                ),
            ],
            [
                Line($"φ = atan({shaft}/{distance}) + atan(({person} − {shaft})/{distance}) = {angle:0.####}°"),
                "The chance is that of a piece going this way once the rotor has burst. No rate of bursts is assumed.",
            ]
        );
    }

    private static SumAnswer PlanAngle(SumInput i)
    {
        double spread = i.Number("spreadDegrees");
        double elevation = i.Number("elevationDegrees");
        double angle = Spread.PlanAngle(spread, elevation);
        return new(
            [new("planAngleDegrees", angle, Unit.Degree, "angle from the rotor plane as seen from above")],
            [Line($"tan ψ = tan {spread}°/cos {elevation}°, ψ = {angle:0.##}°")]
        );
    }

    private static SumAnswer Sheet(SumInput i)
    {
        double mass = i.Number("wheelKilograms");
        double radius = i.Number("radiusMetres");
        double bore = i.Number("boreRadiusMetres");
        if (bore >= radius)
        {
            throw new ArgumentException("The bore must be smaller than the wheel.", nameof(i));
        }

        double density = RotorMaterials.ImpliedDensity(mass, radius, bore, i.Number("thicknessMetres"));
        double thickness = RotorMaterials.Thickness(mass, radius, bore, i.Number("densityKilogramsPerCubicMetre"));
        return new(
            [
                new("densityKilogramsPerCubicMetre", density, Unit.KilogramPerCubicMetre, "density the sheet implies"),
                new("thicknessMetres", thickness, Unit.Metre, "thickness that mass and density imply"),
            ],
            [
                Line($"ρ = {mass} kg/(π ({radius}² − {bore}²) m² × t) = {density:0} kg/m³"),
                Line($"t = {thickness * 1000:0.##} mm for the density given"),
            ]
        );
    }
}
