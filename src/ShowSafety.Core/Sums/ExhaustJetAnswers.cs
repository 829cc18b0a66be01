using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>The calculations behind <see cref="ExhaustJetSums"/>, step by step.</summary>
internal static class ExhaustJetAnswers
{
    /// <summary>Solves the sum about speed reach.</summary>
    public static SumAnswer SpeedReach(SumInput i)
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

    /// <summary>Solves the sum about heat reach.</summary>
    public static SumAnswer HeatReach(SumInput i)
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

    /// <summary>Solves the sum about centre.</summary>
    public static SumAnswer Centre(SumInput i)
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

    /// <summary>Solves the sum about momentum share.</summary>
    public static SumAnswer MomentumShare(SumInput i)
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

    /// <summary>Solves the sum about entrainment.</summary>
    public static SumAnswer Entrainment(SumInput i)
    {
        double a = i.Number("entrainment");
        return Answer(
            (new("decayConstant", RoundJet.DecayOfEntrainment(a), Unit.One, "decay constant B"), $"1 / (2 · {a})"),
            (new("spreadSlope", RoundJet.SpreadOfEntrainment(a), Unit.One, "half-speed slope S"), $"√(2 ln 2) · {a}"),
            (new("massSlope", RoundJet.MassSlopeOfEntrainment(a), Unit.One, "mass flow ratio per diameter"), $"4 · {a}")
        );
    }

    /// <summary>Solves the sum about volume flow.</summary>
    public static SumAnswer VolumeFlow(SumInput i)
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

    /// <summary>Solves the sum about integrals.</summary>
    public static SumAnswer Integrals(SumInput i)
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

    /// <summary>Solves the sum about core.</summary>
    public static SumAnswer Core(SumInput i)
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
