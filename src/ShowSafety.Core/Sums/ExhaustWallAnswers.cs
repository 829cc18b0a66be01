using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>The calculations behind <see cref="ExhaustWallSums"/>, step by step.</summary>
internal static class ExhaustWallAnswers
{
    /// <summary>Solves the sum about wall pressure.</summary>
    public static SumAnswer WallPressure(SumInput i)
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

    /// <summary>Solves the sum about pressure share.</summary>
    public static SumAnswer PressureShare(SumInput i)
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

    /// <summary>Solves the sum about wall temperature.</summary>
    public static SumAnswer WallTemperature(SumInput i)
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

    /// <summary>Solves the sum about blast pressure.</summary>
    public static SumAnswer BlastPressure(SumInput i)
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

    /// <summary>Solves the sum about intake reach.</summary>
    public static SumAnswer IntakeReach(SumInput i)
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

    /// <summary>Solves the sum about opening flow.</summary>
    public static SumAnswer OpeningFlow(SumInput i)
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

    /// <summary>Solves the sum about opening speed.</summary>
    public static SumAnswer OpeningSpeed(SumInput i)
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
