using CsCheck;
using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class RestraintTests
{
    private static readonly Gen<double> Positive = Gen.Double[0.01, 1000];

    private static IReadOnlyList<string> Codes(Engine engine) =>
        [.. GateAssessor.Assess(Complete with { Engines = [engine] }).Findings.Select(f => f.Code)];

    private static Engine With(Func<Bench, Bench> change) => HeldEngine with { Bench = change(HeldEngine.Bench!) };

    private static Engine WithStates(params ThrottleState[] states) =>
        HeldEngine with
        {
            Sheet = HeldEngine.Sheet! with { States = [.. states] },
        };

    [Fact]
    public void Holds_TwiceTheLoadExactly_IsNotEnough()
    {
        Assert.False(Restraint.Holds(50, 100));
        Assert.True(Restraint.Holds(50, 100.001));
    }

    [Fact]
    public void Holds_HeavierBench_NeverTipsSooner() =>
        Gen.Select(Positive, Positive, Positive, Positive, Gen.Double[1, 10])
            .Sample(
                (thrust, height, mass, arm, heavier) =>
                {
                    double load = Restraint.TippingMomentNewtonMetres(thrust, height);
                    bool light = Restraint.Holds(load, Restraint.HoldingMomentNewtonMetres(mass, arm));
                    bool heavy = Restraint.Holds(load, Restraint.HoldingMomentNewtonMetres(mass * heavier, arm));
                    Assert.True(heavy || !light);
                }
            );

    [Fact]
    public void Assess_MoreThrust_NeverTakesAStopAway() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[1, 5])
            .Sample(
                (thrust, more) =>
                {
                    int Stops(double t) =>
                        Codes(WithStates(new ThrottleState { Id = "s", ThrustNewtons = Measured(t) })).Count;
                    Assert.True(Stops(thrust * more) >= Stops(thrust));
                }
            );

    [Fact]
    public void Assess_LightTable_TipsAndSlides()
    {
        Engine engine = With(b => b with { MassKilograms = Measured(25), TippingArmMetres = Measured(0.3) });

        Assert.Equal(["gate.bench-tips", "gate.bench-slides"], Codes(engine));
    }

    [Fact]
    public void Assess_Figures_ShowThrustOnceAndTwice()
    {
        Figure load = GateAssessor.Assess(Complete).Figures.Single(f => f.Key == "gate.bench-tips-load");

        Assert.Equal(90, load.Value.Best, 9);
        Assert.Equal(180, load.Value.Planning, 9);
        Assert.Equal(Unit.NewtonMetre, load.Value.Unit);
        Assert.Equal(Pedigree.Measured, load.Value.Pedigree);
    }

    [Fact]
    public void Assess_FrictionUnknown_TakesTheCautiousValue()
    {
        GateAssessment assessment = GateAssessor.Assess(
            Complete with
            {
                Engines =
                [
                    With(b => b with { Friction = null, MassKilograms = Measured(50), TippingArmMetres = Measured(2) }),
                ],
            }
        );

        Figure hold = assessment.Figures.Single(f => f.Key == "gate.bench-slides-hold");
        Assert.Equal(0.2 * 50 * 9.80665, hold.Value.Planning, 9);
        Assert.Equal(Pedigree.Assumed, hold.Value.Pedigree);
        Assert.Equal(["gate.bench-slides"], assessment.Findings.Select(f => f.Code));
    }

    [Fact]
    public void Assess_RatedAnchoring_Counts()
    {
        Engine light = With(b => b with { MassKilograms = Measured(10) });
        Engine bolted = With(b =>
            b with
            {
                MassKilograms = Measured(10),
                Anchoring = Anchoring.Bolted,
                AnchoringRatedNewtons = Measured(1000),
                AnchoringRatedNewtonMetres = Measured(500),
            }
        );

        Assert.Equal(["gate.bench-tips", "gate.bench-slides"], Codes(light));
        Assert.Empty(Codes(bolted));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(Anchoring.FreeStanding)]
    public void Assess_RatedForceOnAFreeStandingBench_IsNotCounted(Anchoring? anchoring) =>
        Assert.Contains(
            "gate.bench-slides",
            Codes(
                With(b =>
                    b with
                    {
                        MassKilograms = Measured(10),
                        Anchoring = anchoring,
                        AnchoringRatedNewtons = Measured(1000),
                    }
                )
            )
        );

    [Fact]
    public void Assess_AnchoringWithoutARating_IsNoted() =>
        Assert.Equal(["gate.anchoring-unrated"], Codes(With(b => b with { Anchoring = Anchoring.Staked })));

    [Fact]
    public void Assess_ThrustOnlyFromMassFlowAndSpeed_IsUsed()
    {
        ThrottleState state = new()
        {
            Id = "full",
            AirMassFlowKilogramsPerSecond = Measured(0.3),
            ExhaustSpeedMetresPerSecond = Measured(400),
        };

        Figure load = GateAssessor
            .Assess(Complete with { Engines = [WithStates(state)] })
            .Figures.Single(f => f.Key == "gate.bench-slides-load");

        Assert.Equal(120, load.Value.Best, 9);
    }

    [Fact]
    public void Assess_StateWithoutThrustThatMayBeTheStrongest_CannotTell()
    {
        ThrottleState idle = new() { Id = "idle", ThrustNewtons = Measured(10) };
        ThrottleState full = new() { Id = "full" };

        Assert.Equal(["gate.restraint-unknown-thrust"], Codes(WithStates(idle, full)));
    }

    [Fact]
    public void Assess_StateWithoutThrustButSlower_IsCoveredByTheFasterOne()
    {
        ThrottleState idle = new() { Id = "idle", ShaftSpeedRevolutionsPerMinute = Measured(40000) };
        ThrottleState full = new()
        {
            Id = "full",
            ShaftSpeedRevolutionsPerMinute = Measured(120000),
            ThrustNewtons = Measured(100),
        };

        Assert.Empty(Codes(WithStates(idle, full)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-5)]
    [InlineData(double.PositiveInfinity)]
    public void Assess_UnusableNumbers_CannotTell(double value) =>
        Assert.Equal(
            ["gate.restraint-unknown-mass", "gate.restraint-unknown-arm"],
            Codes(With(b => b with { MassKilograms = Measured(value), TippingArmMetres = Measured(value) }))
        );
}
