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
            SpeedReach
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
            HeatReach
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
            Centre
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
            MomentumShare
        ),
        new(
            "jet-entrainment",
            "constants of a jet from a top-hat entrainment coefficient",
            [Number("entrainment", "top-hat entrainment coefficient", Unit.One, 0.01, 0.3)],
            ["ricou-spalding-1961", "gaussian-jet"],
            Entrainment
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
            VolumeFlow
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
            Integrals
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
            Core
        ),
    ];

    private static SumAnswer SpeedReach(SumInput i)
    {
        double thrust = i.Number("thrustNewtons");
        double density = i.Number("airDensityKilogramsPerCubicMetre");
        double speed = i.Number("speedMetresPerSecond");
        double gust = i.Number("gustFactor");
        return Answer(
            Reach("reachMetres", JetConstants.SpeedCoefficient, "reach with the decided constant"),
            Reach(
                "reachLowMetres",
                JetConstants.ThrustCoefficient(JetConstants.SpeedDecayLow),
                "reach with the low end of the published band"
            ),
            Reach(
                "reachHighMetres",
                JetConstants.ThrustCoefficient(JetConstants.SpeedDecayHigh),
                "reach with the high end of the published band"
            )
        );

        (SumResult, FormattableString) Reach(string key, double coefficient, string meaning) =>
            (
                new(key, gust * ThrustLaw.SpeedConstant(coefficient, thrust, density) / speed, Unit.Metre, meaning),
                $"x = {gust} · {coefficient:0.###} · √({thrust}/{density}) / {speed}"
            );
    }

    private static SumAnswer HeatReach(SumInput i)
    {
        double heat = ThrustLaw.HeatWatts(i.Number("massFlowKilogramsPerSecond"), i.Number("nozzleRiseKelvin"));
        double thrust = i.Number("thrustNewtons");
        double density = i.Number("airDensityKilogramsPerCubicMetre");
        double rise = i.Number("riseKelvin");
        return Answer(
            (
                new("heatWatts", heat, Unit.Watt, "heat flow of the exhaust"),
                $"H = {i.Number("massFlowKilogramsPerSecond")} · {JetConstants.GasHeatJoulesPerKilogramKelvin} · {i.Number("nozzleRiseKelvin")}"
            ),
            Reach("reachMetres", JetConstants.RiseCoefficient, "reach with the decided constant"),
            Reach(
                "reachLowMetres",
                JetConstants.ThrustCoefficient(JetConstants.RiseDecayLow),
                "reach with the low end of the published band"
            ),
            Reach(
                "reachHighMetres",
                JetConstants.ThrustCoefficient(JetConstants.RiseDecayHigh),
                "reach with the high end of the published band"
            )
        );

        (SumResult, FormattableString) Reach(string key, double coefficient, string meaning) =>
            (
                new(key, ThrustLaw.RiseConstant(coefficient, heat, thrust, density) / rise, Unit.Metre, meaning),
                $"x = {coefficient:0.###} · {heat:0}/({density} · {JetConstants.AirHeatJoulesPerKilogramKelvin}) / √({thrust}/{density}) / {rise}"
            );
    }

    private static SumAnswer Centre(SumInput i)
    {
        double x = i.Number("distanceDiameters");
        double origin = i.Number("originDiameters");
        double decay = i.Number("decayConstant");
        double slope = i.Number("spreadSlope");
        return Answer(
            (
                new(
                    "centreRatio",
                    RoundJet.CentreRatio(decay, 1, x, origin),
                    Unit.One,
                    "centre value over nozzle value"
                ),
                $"{decay} / ({x} − {origin}), not over 1"
            ),
            (
                new(
                    "halfRadiusDiameters",
                    RoundJet.HalfRadius(slope, x, origin),
                    Unit.One,
                    "half-value radius in diameters"
                ),
                $"{slope} · ({x} − {origin})"
            )
        );
    }

    private static SumAnswer MomentumShare(SumInput i)
    {
        double decay = i.Number("decayConstant");
        double slope = i.Number("spreadSlope");
        return Answer(
            (
                new("momentumShare", RoundJet.MomentumShare(decay, slope), Unit.One, "momentum over nozzle momentum"),
                $"2 · {decay}² · {slope}² / ln 2"
            ),
            (
                new(
                    "conservingDecayConstant",
                    RoundJet.DecayConservingMomentum(slope),
                    Unit.One,
                    "decay constant that conserves momentum"
                ),
                $"√(ln 2) / (√2 · {slope})"
            )
        );
    }

    private static SumAnswer Entrainment(SumInput i)
    {
        double a = i.Number("entrainment");
        return Answer(
            (new("decayConstant", RoundJet.DecayOfEntrainment(a), Unit.One, "decay constant B"), $"1 / (2 · {a})"),
            (new("spreadSlope", RoundJet.SpreadOfEntrainment(a), Unit.One, "half-speed slope S"), $"√(2 ln 2) · {a}"),
            (new("massSlope", RoundJet.MassSlopeOfEntrainment(a), Unit.One, "mass flow ratio per diameter"), $"4 · {a}")
        );
    }

    private static SumAnswer VolumeFlow(SumInput i)
    {
        double width = i.Number("widthSlope");
        double speed = i.Number("speedCoefficient");
        double volume = i.Number("volumeCoefficient");
        return Answer(
            (
                new("volumeCoefficient", RoundJet.VolumeFlow(width, speed), Unit.One, "volume flow over √M x"),
                $"π · {width}² · {speed}"
            ),
            (
                new(
                    "entrainment",
                    RoundJet.Entrainment(volume, speed, width),
                    Unit.One,
                    "Gaussian entrainment coefficient"
                ),
                $"{volume} / (2π · {speed} · {width})"
            )
        );
    }

    private static SumAnswer Integrals(SumInput i)
    {
        double b = i.Number("widthMetres");
        double u = i.Number("centreSpeedMetresPerSecond");
        double c = i.Number("centreValue");
        double ratio = i.Number("widthRatio");
        return Answer(
            (
                new(
                    "volumeFlowCubicMetresPerSecond",
                    RoundJet.VolumeFlow(b, u),
                    Unit.CubicMetrePerSecond,
                    "volume flow"
                ),
                $"Q = π · {b}² · {u}"
            ),
            (
                new("momentum", RoundJet.Momentum(b, u), Unit.One, "kinematic momentum in m⁴/s²"),
                $"M = π/2 · {b}² · {u}²"
            ),
            (
                new("scalarFlow", RoundJet.ScalarFlow(b, u, c, ratio), Unit.One, "scalar times m³/s"),
                $"H = π · {u} · {c} · {b}² · {ratio}² / (1 + {ratio}²)"
            )
        );
    }

    private static SumAnswer Core(SumInput i)
    {
        double mach = i.Number("machNumber");
        double density = i.Number("ambientToJetDensity");
        double x = i.Number("distanceDiameters");
        return Answer(
            (
                new("mixingConstant", CompressibleJet.MixingConstant(mach, density), Unit.One, "mixing constant"),
                $"κ = 0.08 · (1 − 0.16 · {mach}) · {density}^−0.22"
            ),
            (
                new(
                    "coreDiameters",
                    CompressibleJet.CoreDiameters(mach, density),
                    Unit.One,
                    "length of the core in diameters"
                ),
                $"0.70 / (2 κ √{density})"
            ),
            (
                new(
                    "centreRatio",
                    CompressibleJet.CentreRatio(x, mach, density),
                    Unit.One,
                    "centre speed over nozzle speed"
                ),
                $"1 − exp(−1 / (κ · 2 · {x} · √{density} − 0.70)), 1 inside the core"
            )
        );
    }
}
