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
            ExhaustWallAnswers.WallPressure
        ),
        new(
            "wall-pressure-share",
            "pressure on a wall over the dynamic pressure at the nozzle, and its profile",
            [
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 0.1, 1000),
                Number("radiusPerDistance", "radius on the wall over distance", Unit.One, 0, 1, 0),
            ],
            ["beltaos-rajaratnam-1974"],
            ExhaustWallAnswers.PressureShare
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
            ExhaustWallAnswers.WallTemperature
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
            ExhaustWallAnswers.BlastPressure
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
            ExhaustWallAnswers.IntakeReach
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
            ExhaustWallAnswers.OpeningFlow
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
            ExhaustWallAnswers.OpeningSpeed
        ),
    ];
}
