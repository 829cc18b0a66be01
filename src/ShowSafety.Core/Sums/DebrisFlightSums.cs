using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.DebrisSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of flights.</summary>
internal static class DebrisFlightSums
{
    private static readonly SumParameter[] Body =
    [
        Mass,
        Positive("areaSquareMetres", "area shown to the air", Unit.SquareMetre, 1e-9, 100),
        Standard("dragCoefficient", "drag coefficient", Unit.One, 0.01, 10, Drag.Tumbling),
        Standard("airDensityKilogramsPerCubicMetre", "density of the air", Unit.KilogramPerCubicMetre, 0.1, 3, 1.225),
        Speed,
    ];

    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "flat-fire",
            "speed, energy and time of a piece in level flight, gravity left out",
            [.. Body, Positive("distanceMetres", "distance", Unit.Metre, 0, 1e5)],
            [DebrisSources.QuadraticDrag],
            Flat
        ),
        new(
            "flat-fire-distance",
            "distance of level flight in which the energy falls to a value, gravity left out",
            [
                .. Body,
                Standard("endJoules", "energy to fall to", Unit.Joule, 1e-6, 1e9, InjuryEnergy.AbleToInjureJoules),
            ],
            [DebrisSources.QuadraticDrag, DebrisSources.AbleToInjure],
            FlatDistance
        ),
        new(
            "vertical-shot",
            "height, times and return speed of a piece fired straight up",
            [.. Body, Gravity],
            [DebrisSources.QuadraticDrag],
            Vertical
        ),
        new(
            "landing",
            "where a piece comes down that leaves at a given angle",
            [.. Body, Height, Wind, Positive("elevationDegrees", "launch angle above level", Unit.Degree, -90, 90)],
            [DebrisSources.QuadraticDrag, DebrisSources.WindProfile],
            i => Land(i, Trajectory(i).Land(i.Number("elevationDegrees")), i.Number("elevationDegrees"))
        ),
        new(
            "farthest-landing",
            "where a piece comes down at the launch angle that carries it farthest",
            [.. Body, Height, Wind],
            [DebrisSources.QuadraticDrag, DebrisSources.BestRange, DebrisSources.WindProfile],
            i =>
            {
                (double elevation, Landing landing) = FarthestLanding.Of(Trajectory(i), 30);
                return Land(i, landing, elevation);
            }
        ),
        new(
            "best-range",
            "farthest range from the ground in dimensionless form, no lift and no wind",
            [Positive("speedNumber", "ρ C_d A v²/(m g)", Unit.One, 1e-6, 1e6)],
            [DebrisSources.BestRange],
            BestRange
        ),
        new(
            "fragment-length",
            "fragments by mass alone: length, falling mass, energy after a flight",
            [
                Standard(
                    "shapeKilogramsPerCubicMetre",
                    "shape factor k, mass over area^(3/2)",
                    Unit.KilogramPerCubicMetre,
                    1,
                    1e5,
                    2610
                ),
                Standard("dragCoefficient", "drag coefficient", Unit.One, 0.01, 10, 1.28),
                Standard(
                    "airDensityKilogramsPerCubicMetre",
                    "density of the air",
                    Unit.KilogramPerCubicMetre,
                    0.1,
                    3,
                    1.2
                ),
                Energy with
                {
                    Default = InjuryEnergy.HazardousFragmentJoules,
                },
                Mass with
                {
                    Default = 0.1,
                },
                Speed with
                {
                    Default = 100,
                },
                Standard("distanceMetres", "distance", Unit.Metre, 0, 1e5, 0),
            ],
            [DebrisSources.FragmentLength],
            Fragment
        ),
    ];

    private static SumParameter Gravity =>
        Standard("gravity", "acceleration of free fall in m/s²", Unit.One, 1, 30, VerticalShot.StandardGravity);

    private static SumParameter Height => Standard("heightMetres", "height of the start", Unit.Metre, 0, 100, 0);

    private static SumParameter Wind =>
        Standard("windMetresPerSecond", "wind along the flight at head height", Unit.MetrePerSecond, -60, 60, 0);

    private static double PerMetre(SumInput i) =>
        Drag.PerMetre(
            i.Number("airDensityKilogramsPerCubicMetre"),
            i.Number("dragCoefficient") * i.Number("areaSquareMetres"),
            i.Number("massKilograms")
        );

    private static Trajectory Trajectory(SumInput i) =>
        new()
        {
            StartMetresPerSecond = i.Number("speedMetresPerSecond"),
            DragPerMetre = PerMetre(i),
            HeightMetres = i.Number("heightMetres"),
            WindMetresPerSecond = i.Number("windMetresPerSecond"),
        };

    private static SumAnswer Flat(SumInput i)
    {
        double k = PerMetre(i);
        double start = i.Number("speedMetresPerSecond");
        double distance = i.Number("distanceMetres");
        double speed = FlatFire.SpeedAt(start, k, distance);
        double energy = FlatFire.Energy(i.Number("massKilograms"), speed);
        double time = FlatFire.TimeTo(start, k, distance);
        Require(double.IsFinite(time), "The piece has stopped long before this distance.");
        return new(
            [
                new("speedMetresPerSecond", speed, Unit.MetrePerSecond, "speed at the distance"),
                new("energyJoules", energy, Unit.Joule, "energy at the distance"),
                new("timeSeconds", time, Unit.Second, "time to the distance"),
            ],
            [
                Line($"k = ρ C_d A/(2 m) = {k:0.#######} 1/m"),
                Line($"v = {start} m/s × e^(−k × {distance} m) = {speed:0.###} m/s"),
                Line($"E = ½ m v² = {energy:0.##} J after {time:0.######} s"),
            ]
        );
    }

    private static SumAnswer FlatDistance(SumInput i)
    {
        double k = PerMetre(i);
        double start = FlatFire.Energy(i.Number("massKilograms"), i.Number("speedMetresPerSecond"));
        double distance = FlatFire.DistanceTo(start, k, i.Number("endJoules"));
        return new(
            [
                new("distanceMetres", distance, Unit.Metre, "distance"),
                new("startJoules", start, Unit.Joule, "energy at the start"),
                new("dragPerMetre", k, Unit.PerMetre, "k"),
            ],
            [
                Line($"k = ρ C_d A/(2 m) = {k:0.#######} 1/m; E₀ = {start:0.##} J"),
                Line($"x = ln({start:0.##}/{i.Number("endJoules"):0.###})/(2 k) = {distance:0.##} m"),
            ]
        );
    }

    private static SumAnswer Vertical(SumInput i)
    {
        double start = i.Number("speedMetresPerSecond");
        VerticalShot shot = VerticalShot.Of(start, PerMetre(i), i.Number("gravity"));
        double total = shot.UpSeconds + shot.DownSeconds;
        Require(double.IsFinite(total), "The piece is too fast for its weight.");
        return new(
            [
                new("apexMetres", shot.ApexMetres, Unit.Metre, "height reached"),
                new("totalSeconds", total, Unit.Second, "time of flight"),
                new("upSeconds", shot.UpSeconds, Unit.Second, "time up"),
                new("downSeconds", shot.DownSeconds, Unit.Second, "time down"),
                new("impactMetresPerSecond", shot.ImpactMetresPerSecond, Unit.MetrePerSecond, "speed on return"),
                new("terminalMetresPerSecond", shot.TerminalMetresPerSecond, Unit.MetrePerSecond, "terminal speed"),
                new(
                    "terminalJoules",
                    FlatFire.Energy(i.Number("massKilograms"), shot.TerminalMetresPerSecond),
                    Unit.Joule,
                    "energy at terminal speed"
                ),
            ],
            [
                Line($"v_t = √(g/k) = {shot.TerminalMetresPerSecond:0.###} m/s"),
                Line($"H = v_t²/(2g) ln(1 + v₀²/v_t²) = {shot.ApexMetres:0.##} m"),
                Line($"t = {shot.UpSeconds:0.####} s up + {shot.DownSeconds:0.####} s down"),
                Line($"v = v₀/√(1 + v₀²/v_t²) = {shot.ImpactMetresPerSecond:0.###} m/s"),
            ]
        );
    }

    private static SumAnswer Land(SumInput i, Landing landing, double elevation)
    {
        double energy = FlatFire.Energy(i.Number("massKilograms"), landing.ImpactMetresPerSecond);
        return new(
            [
                new("distanceMetres", landing.DistanceMetres, Unit.Metre, "distance to the landing"),
                new("elevationDegrees", elevation, Unit.Degree, "launch angle"),
                new("apexMetres", landing.ApexMetres, Unit.Metre, "greatest height"),
                new("timeSeconds", landing.Seconds, Unit.Second, "time of flight"),
                new("impactMetresPerSecond", landing.ImpactMetresPerSecond, Unit.MetrePerSecond, "speed at landing"),
                new("impactJoules", energy, Unit.Joule, "energy at landing"),
            ],
            [
                Line($"k = {PerMetre(i):0.#######} 1/m; dv/dt = −g − k|v − w|(v − w), fourth-order Runge-Kutta"),
                Line(
                    $"at {elevation:0.##}°: {landing.DistanceMetres:0.##} m, {landing.ApexMetres:0.##} m high, {landing.Seconds:0.##} s"
                ),
                Line($"lands at {landing.ImpactMetresPerSecond:0.##} m/s with {energy:0.##} J"),
            ]
        );
    }

    private static SumAnswer BestRange(SumInput i)
    {
        double number = i.Number("speedNumber");
        // k = 1/2 makes the distance in metres equal to 2 k R, and the speed follows from 2 k v²/g.
        var flight = new Trajectory
        {
            StartMetresPerSecond = Math.Sqrt(number * VerticalShot.StandardGravity),
            DragPerMetre = 0.5,
            StepShare = 0.02,
        };
        (double elevation, Landing landing) = FarthestLanding.Of(flight, 30);
        return new(
            [
                new("rangeNumber", landing.DistanceMetres, Unit.One, "ρ C_d A R/m"),
                new("elevationDegrees", elevation, Unit.Degree, "best launch angle"),
                new("shareOfVacuum", landing.DistanceMetres / number, Unit.One, "share of the range without air"),
            ],
            [
                Line($"v̄ = ρ C_d A v²/(m g) = {number}"),
                Line($"R̄ = ρ C_d A R/m = {landing.DistanceMetres:0.#####} at {elevation:0.##}°"),
            ]
        );
    }

    private static SumAnswer Fragment(SumInput i)
    {
        double length = FragmentLength.PerCubeRootKilogram(
            i.Number("shapeKilogramsPerCubicMetre"),
            i.Number("dragCoefficient"),
            i.Number("airDensityKilogramsPerCubicMetre")
        );
        double mass = FragmentLength.FallingMass(i.Number("energyJoules"), length);
        double energy = FragmentLength.EnergyAt(
            i.Number("massKilograms"),
            i.Number("speedMetresPerSecond"),
            i.Number("distanceMetres"),
            length
        );
        return new(
            [
                new("lengthPerCubeRootKilogram", length, Unit.One, "L₁ in m/kg^(1/3)"),
                new("fallingKilograms", mass, Unit.Kilogram, "smallest mass that falls with the energy"),
                new("energyJoules", energy, Unit.Joule, "energy after the distance"),
            ],
            [
                Line($"L₁ = 2 k^(2/3)/(C_d ρ) = {length:0.##} m/kg^(1/3)"),
                Line($"m = (2 E/(g L₁))^(3/4) = {mass:0.####} kg"),
                Line($"E = ½ m V² e^(−2R/(L₁ m^(1/3))) = {energy:0.##} J"),
            ]
        );
    }

    private static void Require(bool holds, string why)
    {
        if (!holds)
        {
            throw new ArgumentException(why);
        }
    }
}
