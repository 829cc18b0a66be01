using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about floors, walls and the intake.</summary>
internal static class ExhaustWallSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "floor-contact",
            "where the edge of a level jet meets the floor",
            [
                Number("shaftHeightMetres", "height of the shaft", Unit.Metre, 0.01, 10),
                Number("spreadSlope", "slope of the half-speed radius", Unit.One, 0.05, 0.2, Surfaces.ContactSlope),
            ],
            ["pope-2000", "attached-jet"],
            i =>
                Answer(
                    "contactMetres",
                    Surfaces.ContactMetres(i.Number("shaftHeightMetres"), i.Number("spreadSlope")),
                    Unit.Metre,
                    "distance behind the nozzle",
                    $"{i.Number("shaftHeightMetres")} / ({i.Number("spreadSlope")} · √(ln 20 / ln 2))"
                )
        ),
        new(
            "wall-pressure",
            "pressure where a jet strikes a wall square on",
            [
                Number("thrustNewtons", "thrust", Unit.Newton, 0.1, 3000),
                Number("distanceMetres", "distance of the wall", Unit.Metre, 0.1, 100),
            ],
            ["beltaos-rajaratnam-1974", "fischer-1979"],
            WallPressure
        ),
        new(
            "wall-pressure-share",
            "pressure on a wall over the dynamic pressure at the nozzle, and its profile",
            [
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 0.1, 1000),
                Number("radiusPerDistance", "radius on the wall over distance", Unit.One, 0, 1, 0),
            ],
            ["beltaos-rajaratnam-1974"],
            PressureShare
        ),
        new(
            "wall-temperature",
            "temperature rise of a wall in a jet over that of the nozzle, and speed along it",
            [
                Number("decayConstant", "decay constant K", Unit.One, 1, 10, 4.96),
                Number("distanceDiameters", "distance in momentum diameters", Unit.One, 1, 1000),
                Number("radiusDiameters", "radius on the wall in nozzle diameters", Unit.One, 1, 1000, 10),
            ],
            ["adiabatic-wall", "rajaratnam-1976"],
            WallTemperature
        ),
        new(
            "nozzle-nusselt",
            "mean heat transfer of a round nozzle on a plate",
            [
                Number("reynolds", "Reynolds number", Unit.One, 1, 1e7),
                Number("prandtl", "Prandtl number", Unit.One, 0.1, 100, 0.71),
                Number("areaRatio", "d² over 4 r²", Unit.One, 0, 1),
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 0, 100),
            ],
            ["martin-1977"],
            i =>
                Answer(
                    "nusselt",
                    Impingement.Nusselt(
                        i.Number("reynolds"),
                        i.Number("prandtl"),
                        i.Number("areaRatio"),
                        i.Number("distanceDiameters")
                    ),
                    Unit.One,
                    "mean Nusselt number",
                    $"Nu = Pr^0.42 G · 2 √Re √(1 + 0.005 Re^0.55) with Re = {i.Number("reynolds")}"
                )
        ),
        new(
            "blast-pressure",
            "pressure of a jet blast on a surface",
            [Number("speedKilometresPerHour", "speed in km/h", Unit.One, 0, 1000)],
            ["ac-150-5300-13"],
            BlastPressure
        ),
        new(
            "intake-reach",
            "how far in front of an intake the air is faster than a speed",
            [
                Number("flowCubicMetresPerSecond", "air drawn in", Unit.CubicMetrePerSecond, 0.0001, 20),
                Number("diameterMetres", "diameter of the opening", Unit.Metre, 0, 1),
                Number("speedMetresPerSecond", "speed at the boundary", Unit.MetrePerSecond, 0.1, 100, 3.4),
            ],
            ["dallavalle", "choice-cloth-speed", "iso-13857"],
            IntakeReach
        ),
        new(
            "opening-flow",
            "flow through an opening that gives a speed at a distance, in one consistent set of units",
            [
                Number("speed", "speed at the distance", Unit.One, 0, 1e6),
                Number("distance", "distance on the axis", Unit.One, 0, 1e6),
                Number("area", "area of the opening", Unit.One, 0, 1e6),
            ],
            ["dallavalle"],
            OpeningFlow
        ),
        new(
            "opening-speed",
            "speed in front of an opening",
            [
                Number("flowCubicMetresPerSecond", "air drawn in", Unit.CubicMetrePerSecond, 0.0001, 20),
                Number("diameterMetres", "diameter of the opening", Unit.Metre, 0, 1),
                Number("distanceMetres", "distance on the axis", Unit.Metre, 0.01, 10),
            ],
            ["dallavalle"],
            OpeningSpeed
        ),
    ];

    private static SumAnswer WallPressure(SumInput i)
    {
        double thrust = i.Number("thrustNewtons");
        double distance = i.Number("distanceMetres");
        return Answer(
            (
                new(
                    "stagnationPascals",
                    Impingement.PressurePascals(thrust, distance),
                    Unit.Pascal,
                    "pressure at the point of impact"
                ),
                $"(100/π) · {thrust} / {distance}²"
            ),
            (
                new(
                    "freeJetPascals",
                    Impingement.FreeJetPressurePascals(JetConstants.SpeedCoefficient, thrust, distance),
                    Unit.Pascal,
                    "dynamic pressure of the free jet there"
                ),
                $"½ · {JetConstants.SpeedCoefficient}² · {thrust} / {distance}²"
            )
        );
    }

    private static SumAnswer PressureShare(SumInput i)
    {
        double x = i.Number("distanceDiameters");
        double r = i.Number("radiusPerDistance");
        return Answer(
            (
                new("pressureShare", Impingement.PressureShare(x), Unit.One, "pressure over nozzle dynamic pressure"),
                $"50 / {x}², 1 up to {Impingement.PressureFromDiameters} diameters"
            ),
            (
                new("profile", Impingement.PressureProfile(r), Unit.One, "pressure over that at the point of impact"),
                $"exp(−114 · {r}²)"
            ),
            (new("forceShare", Impingement.ForceShare, Unit.One, "force of the fit over thrust"), $"50 · 4/114 / 2")
        );
    }

    private static SumAnswer WallTemperature(SumInput i)
    {
        double decay = i.Number("decayConstant");
        double x = i.Number("distanceDiameters");
        double r = i.Number("radiusDiameters");
        return Answer(
            (
                new("riseRatio", Impingement.WallRiseRatio(decay, 1, x, 0), Unit.One, "wall rise over nozzle rise"),
                $"{decay} / {x}, not over 1"
            ),
            (
                new(
                    "wallSpeedRatio",
                    Impingement.WallJetSpeedRatio(r),
                    Unit.One,
                    "speed along the wall over nozzle speed"
                ),
                $"1.03 / {r}, not over 1"
            )
        );
    }

    private static SumAnswer BlastPressure(SumInput i)
    {
        double speed = i.Number("speedKilometresPerHour");
        double miles = speed / 1.609344;
        return Answer(
            (
                new("pressurePascals", HeatOnPeople.BlastPressurePascals(speed), Unit.Pascal, "pressure"),
                $"0.04733 · {speed}²"
            ),
            (
                new(
                    "pressurePoundsPerSquareFoot",
                    HeatOnPeople.BlastPressurePoundsPerSquareFoot(miles),
                    Unit.One,
                    "pressure in lb/ft², as the source prints it"
                ),
                $"0.00256 · {miles:0.###}²"
            )
        );
    }

    private static SumAnswer IntakeReach(SumInput i)
    {
        double flow = i.Number("flowCubicMetresPerSecond");
        double speed = i.Number("speedMetresPerSecond");
        double area = Math.PI / 4 * i.Number("diameterMetres") * i.Number("diameterMetres");
        return Answer(
            (
                new("reachMetres", Suction.OpeningReach(flow, speed, area), Unit.Metre, "reach of a plain opening"),
                $"√(({flow}/{speed} − {area:0.#####})/10)"
            ),
            (
                new("wallReachMetres", Suction.WallSinkReach(flow, speed), Unit.Metre, "reach of a sink beside a wall"),
                $"√({flow}/(2π · {speed}))"
            )
        );
    }

    private static SumAnswer OpeningFlow(SumInput i)
    {
        double v = i.Number("speed");
        double x = i.Number("distance");
        double area = i.Number("area");
        return Answer(
            (
                new("plainFlow", Suction.OpeningFlow(v, x, area, false), Unit.One, "plain opening"),
                $"{v} · (10 · {x}² + {area})"
            ),
            (
                new("flangedFlow", Suction.OpeningFlow(v, x, area, true), Unit.One, "flanged opening"),
                $"0.75 · {v} · (10 · {x}² + {area})"
            )
        );
    }

    private static SumAnswer OpeningSpeed(SumInput i)
    {
        double flow = i.Number("flowCubicMetresPerSecond");
        double x = i.Number("distanceMetres");
        double area = Math.PI / 4 * i.Number("diameterMetres") * i.Number("diameterMetres");
        return Answer(
            (
                new(
                    "openingMetresPerSecond",
                    Suction.OpeningSpeed(flow, x, area),
                    Unit.MetrePerSecond,
                    "plain opening"
                ),
                $"{flow} / (10 · {x}² + {area:0.#####})"
            ),
            (
                new(
                    "pointSinkMetresPerSecond",
                    Suction.PointSinkSpeed(flow, x),
                    Unit.MetrePerSecond,
                    "point sink in the open"
                ),
                $"{flow} / (4π · {x}²)"
            ),
            (
                new(
                    "wallSinkMetresPerSecond",
                    Suction.WallSinkSpeed(flow, x),
                    Unit.MetrePerSecond,
                    "point sink in a wall"
                ),
                $"{flow} / (2π · {x}²)"
            )
        );
    }
}
