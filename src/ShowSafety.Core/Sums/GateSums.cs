using ShowSafety.Core.Citations;
using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.SumLines;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the gate: restraint of the bench, risk matrix.</summary>
internal static class GateSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "bench-tipping",
            "Does the thrust tip the bench",
            [
                Zero("thrustNewtons", "thrust", Unit.Newton),
                Zero("heightMetres", "height of the shaft", Unit.Metre),
                Zero("massKilograms", "mass of bench and engine", Unit.Kilogram),
                Zero("armMetres", "centre of mass to tipping edge", Unit.Metre),
                Zero("anchoringNewtonMetres", "rated moment of the anchoring", Unit.NewtonMetre) with
                {
                    Default = 0,
                },
            ],
            [SiteSources.GateRestraint],
            Tipping
        ),
        new(
            "bench-sliding",
            "Does the thrust push the bench away",
            [
                Zero("thrustNewtons", "thrust", Unit.Newton),
                Zero("friction", "friction coefficient", Unit.One),
                Zero("massKilograms", "mass of bench and engine", Unit.Kilogram),
                Zero("anchoringNewtons", "rated force of the anchoring", Unit.Newton) with
                {
                    Default = 0,
                },
            ],
            [SiteSources.GateRestraint],
            Sliding
        ),
        new(
            "momentum-thrust",
            "Thrust from mass flow and exhaust speed",
            [
                Zero("massFlowKilogramsPerSecond", "mass flow of air and fuel", Unit.KilogramPerSecond),
                Zero("exhaustSpeedMetresPerSecond", "exhaust speed", Unit.MetrePerSecond),
            ],
            [SiteSources.GateMomentum],
            Momentum
        ),
        new(
            "risk-matrix",
            "Products and bands of a five by five risk matrix",
            [
                new("upperLimits", "upper ends of all bands but the last", Unit.One)
                {
                    Min = 1,
                    Max = 24,
                    ListLength = 0,
                },
            ],
            [SiteSources.GateRiskBands],
            Matrix
        ),
    ];

    private static SumParameter Zero(string key, string meaning, Unit unit) => new(key, meaning, unit) { Min = 0 };

    private static SumAnswer Tipping(SumInput input)
    {
        double thrust = input.Number("thrustNewtons");
        double height = input.Number("heightMetres");
        double mass = input.Number("massKilograms");
        double arm = input.Number("armMetres");
        double anchoring = input.Number("anchoringNewtonMetres");
        double load = Restraint.TippingMomentNewtonMetres(thrust, height);
        double hold = Restraint.HoldingMomentNewtonMetres(mass, arm, anchoring);
        return new(
            [
                new("tippingMomentNewtonMetres", load, Unit.NewtonMetre, "moment of the thrust, counted once"),
                new("holdingMomentNewtonMetres", hold, Unit.NewtonMetre, "moment that holds"),
                Holds(load, hold),
            ],
            [
                Line(
                    $"T h = {thrust} · {height} = {load:G6} N·m, counted twice {Restraint.ThrustFactor * load:G6} N·m"
                ),
                Line($"m g b = {mass} · {Gravity} · {arm}, and anchoring {anchoring}: {hold:G6} N·m"),
            ]
        );
    }

    private static SumAnswer Sliding(SumInput input)
    {
        double thrust = input.Number("thrustNewtons");
        double friction = input.Number("friction");
        double mass = input.Number("massKilograms");
        double anchoring = input.Number("anchoringNewtons");
        double hold = Restraint.HoldingForceNewtons(friction, mass, anchoring);
        return new(
            [
                new("holdingForceNewtons", hold, Unit.Newton, "force that holds"),
                new("pushingForceNewtons", Restraint.ThrustFactor * thrust, Unit.Newton, "thrust, counted twice"),
                Holds(thrust, hold),
            ],
            [
                Line($"μ m g = {friction} · {mass} · {Gravity}, and anchoring {anchoring}: {hold:G6} N"),
                Line($"2 T = {Restraint.ThrustFactor * thrust:G6} N"),
            ]
        );
    }

    private static double Gravity => Restraint.StandardGravityMetresPerSecondSquared;

    private static SumResult Holds(double load, double hold) =>
        new("holds", Restraint.Holds(load, hold) ? 1 : 0, Unit.One, "1 when it holds twice the thrust, 0 when not");

    private static SumAnswer Momentum(SumInput input)
    {
        double flow = input.Number("massFlowKilogramsPerSecond");
        double speed = input.Number("exhaustSpeedMetresPerSecond");
        double thrust = Restraint.MomentumThrustNewtons(flow, speed);
        return new(
            [new("thrustNewtons", thrust, Unit.Newton, "thrust")],
            [Line($"T = ṁ V = {flow} · {speed} = {thrust:G6} N")]
        );
    }

    private static SumAnswer Matrix(SumInput input)
    {
        ValueList<int> limits = [.. input.Numbers("upperLimits").Select(n => (int)n)];
        ValueList<int> cells = RiskMatrix.CellsPerBand(limits);
        ValueList<int> products = RiskMatrix.Products;
        return new(
            [
                new("products", products.Count, Unit.One, "products that can occur"),
                .. cells.Select((n, i) => new SumResult(Line($"band{i + 1}Cells"), n, Unit.One, "cells of a band")),
            ],
            [Line($"likelihood times severity: {string.Join(", ", products)}")]
        );
    }
}
