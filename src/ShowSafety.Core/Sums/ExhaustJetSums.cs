using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about the free jet.</summary>
internal static class ExhaustJetSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "jet-speed-reach",
            "how far behind the nozzle the jet is faster than a speed",
            [
                Number("thrustNewtons", "thrust", Unit.Newton, 0.1, 3000),
                Number(
                    "airDensityKilogramsPerCubicMetre",
                    "density of the air",
                    Unit.KilogramPerCubicMetre,
                    0.5,
                    1.7,
                    1.2
                ),
                Number("speedMetresPerSecond", "speed at the boundary", Unit.MetrePerSecond, 0.5, 100, 8.9),
                Number("gustFactor", "factor for gusts", Unit.One, 1, 3, 1),
            ],
            ["fischer-1979", "pope-2000", "choice-gust-factor"],
            ExhaustJetAnswers.SpeedReach
        ),
        new(
            "jet-heat-reach",
            "how far behind the nozzle the jet is warmer than the air by a rise",
            [
                Number("thrustNewtons", "thrust", Unit.Newton, 0.1, 3000),
                Number("massFlowKilogramsPerSecond", "mass flow of the exhaust", Unit.KilogramPerSecond, 0.001, 10),
                Number("nozzleRiseKelvin", "total temperature of the exhaust over the air", Unit.Kelvin, 1, 1300),
                Number(
                    "airDensityKilogramsPerCubicMetre",
                    "density of the air",
                    Unit.KilogramPerCubicMetre,
                    0.5,
                    1.7,
                    1.2
                ),
                Number("riseKelvin", "rise at the boundary", Unit.Kelvin, 0.5, 1000),
            ],
            ["fischer-1979", "jet-heat"],
            ExhaustJetAnswers.HeatReach
        ),
        new(
            "jet-centre",
            "centre value and half-value radius of a round jet, textbook constants",
            [
                Number("decayConstant", "decay constant B or K", Unit.One, 1, 10),
                Number("spreadSlope", "slope of the half-value radius", Unit.One, 0.01, 0.5),
                Number("originDiameters", "virtual origin in nozzle diameters", Unit.One, -10, 10, 0),
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 1, 1000),
            ],
            ["pope-2000", "becker-1967"],
            ExhaustJetAnswers.Centre
        ),
        new(
            "jet-profile",
            "value beside the axis over the axis value, by a Gaussian",
            [
                Number("spreadSlope", "slope of the half-value radius", Unit.One, 0.01, 0.5),
                Number("radiusPerDistance", "radius over distance", Unit.One, 0, 1),
            ],
            ["gaussian-jet"],
            i =>
                Answer(
                    "valueRatio",
                    RoundJet.ProfileRatio(i.Number("spreadSlope"), i.Number("radiusPerDistance")),
                    Unit.One,
                    "value over axis value",
                    $"exp(−ln 2 · ({i.Number("radiusPerDistance")}/{i.Number("spreadSlope")})²)"
                )
        ),
        new(
            "jet-momentum-share",
            "momentum a set of constants carries, and the decay constant that conserves it",
            [
                Number("decayConstant", "decay constant B", Unit.One, 1, 10, 6.2),
                Number("spreadSlope", "slope S of the half-speed radius", Unit.One, 0.01, 0.5),
            ],
            ["gaussian-jet", "pope-2000"],
            ExhaustJetAnswers.MomentumShare
        ),
        new(
            "jet-entrainment",
            "constants of a jet from a top-hat entrainment coefficient",
            [Number("entrainment", "top-hat entrainment coefficient", Unit.One, 0.01, 0.3)],
            ["ricou-spalding-1961", "gaussian-jet"],
            ExhaustJetAnswers.Entrainment
        ),
        new(
            "jet-mass-flow",
            "mass flow of the jet over that of the nozzle",
            [
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 0, 1000),
                Number("densityRatio", "density of the exhaust over that of the air", Unit.One, 0.1, 2),
            ],
            ["ricou-spalding-1961"],
            i =>
                Answer(
                    "massFlowRatio",
                    RoundJet.MassFlowRatio(i.Number("distanceDiameters"), i.Number("densityRatio")),
                    Unit.One,
                    "mass flow over nozzle mass flow",
                    $"max(1, 0.32 · {i.Number("distanceDiameters")} / √{i.Number("densityRatio")})"
                )
        ),
        new(
            "jet-decay-coefficients",
            "decay constant per diameter of a coefficient of the thrust law",
            [Number("thrustCoefficient", "coefficient C of C √(T/ρ)/x", Unit.One, 1, 20)],
            ["fischer-1979"],
            i =>
                Answer(
                    "decayConstant",
                    JetConstants.DecayConstant(i.Number("thrustCoefficient")),
                    Unit.One,
                    "decay constant per diameter",
                    $"{i.Number("thrustCoefficient")} · √π / 2"
                )
        ),
        new(
            "jet-volume-flow",
            "volume flow law of a Gaussian jet and its entrainment coefficient",
            [
                Number("widthSlope", "slope of the 1/e radius", Unit.One, 0.01, 0.5),
                Number("speedCoefficient", "coefficient of the centre speed", Unit.One, 1, 20),
                Number("volumeCoefficient", "coefficient of the volume flow", Unit.One, 0.01, 1, 0.25),
            ],
            ["fischer-1979", "gaussian-jet"],
            ExhaustJetAnswers.VolumeFlow
        ),
        new(
            "jet-integrals",
            "volume flow, momentum and scalar flow of a Gaussian jet",
            [
                Number("widthMetres", "1/e radius", Unit.Metre, 0.001, 100),
                Number("centreSpeedMetresPerSecond", "centre speed", Unit.MetrePerSecond, 0.001, 1000),
                Number("centreValue", "centre value of the scalar", Unit.One, 0, 1e6, 1),
                Number("widthRatio", "width of the scalar over that of the speed", Unit.One, 0.5, 2, 1.19),
            ],
            ["gaussian-jet"],
            ExhaustJetAnswers.Integrals
        ),
        new(
            "jet-edge-angle",
            "angle between the edges of a jet",
            [
                Number("spreadSlope", "slope of the half-value radius", Unit.One, 0.01, 0.5),
                Number("edgeShare", "share of the axis value at the edge", Unit.One, 0.001, 0.9, Surfaces.EdgeShare),
            ],
            ["jones-air-distribution", "gaussian-jet"],
            i =>
                Answer(
                    "includedAngleDegrees",
                    RoundJet.IncludedAngleDegrees(i.Number("spreadSlope"), i.Number("edgeShare")),
                    Unit.Degree,
                    "angle between the edges",
                    $"2 atan({i.Number("spreadSlope")} · √(ln(1/{i.Number("edgeShare")}) / ln 2))"
                )
        ),
        new(
            "jet-momentum-diameter",
            "diameter of the same momentum at the density of the air",
            [
                Number("diameterMetres", "nozzle diameter", Unit.Metre, 0.001, 10, 1),
                Number("densityRatio", "density of the exhaust over that of the air", Unit.One, 0.01, 2),
            ],
            ["gaussian-jet"],
            i =>
                Answer(
                    "momentumDiameterMetres",
                    RoundJet.MomentumDiameter(i.Number("diameterMetres"), i.Number("densityRatio")),
                    Unit.Metre,
                    "momentum diameter",
                    $"{i.Number("diameterMetres")} · √{i.Number("densityRatio")}"
                )
        ),
        new(
            "jet-core",
            "core and centre speed of a subsonic hot or cold jet",
            [
                Number("machNumber", "Mach number at the nozzle", Unit.One, 0, 0.99),
                Number("ambientToJetDensity", "density of the air over that of the exhaust", Unit.One, 0.5, 6),
                Number("distanceDiameters", "distance in nozzle diameters", Unit.One, 0.1, 200, 30),
            ],
            ["witze-1974"],
            ExhaustJetAnswers.Core
        ),
    ];
}
