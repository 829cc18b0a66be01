using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Exhaust.ExhaustPlans;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class SheetCheckTests
{
    private static readonly AmbientAir Air = AmbientAir.Of(Field);

    [Fact]
    public void Findings_ConsistentSheet_AreNone() => Assert.Empty(Findings(Full));

    [Fact]
    public void Findings_ThrustTypedTenfold_NameTheThrust() =>
        Assert.Equal("thrust", Odd(Full with { ThrustNewtons = Value(1500) }, "exhaust.thrust-disagrees"));

    [Fact]
    public void Findings_AirFlowHalved_NameTheAirFlow() =>
        Assert.Equal(
            "air mass flow",
            Odd(Full with { AirMassFlowKilogramsPerSecond = Value(0.18) }, "exhaust.thrust-disagrees")
        );

    [Fact]
    public void Findings_ExhaustSpeedInKilometresPerHour_NameTheSpeed() =>
        Assert.Equal(
            "exhaust speed",
            Odd(Full with { ExhaustSpeedMetresPerSecond = Value(690) }, "exhaust.thrust-disagrees")
        );

    [Fact]
    public void Findings_FuelTypedFourfold_NameTheFuel()
    {
        ThrottleState state = Full with { FuelFlowKilogramsPerSecond = Value(0.0272) };

        Assert.Equal("fuel flow", Odd(state, "exhaust.energy-disagrees"));
        Assert.Equal("fuel flow", Odd(state, "exhaust.fuel-air-unusual"));
        Assert.Equal("fuel flow", Odd(state, "exhaust.consumption-unusual"));
    }

    [Fact]
    public void Findings_ExhaustTemperatureTooLow_NameTheTemperature() =>
        Assert.Equal(
            "exhaust temperature",
            Odd(Full with { ExhaustTotalTemperatureCelsius = Value(250) }, "exhaust.energy-disagrees")
        );

    [Fact]
    public void Findings_MoreFuelThanTheAirCanBurn_IsToBeClosed() =>
        Assert.Equal(
            Severity.Act,
            Findings(Full with { FuelFlowKilogramsPerSecond = Value(0.03) })
                .Single(f => f.Code == "exhaust.fuel-air-unusual")
                .Severity
        );

    [Fact]
    public void Findings_SupersonicExhaust_SayTheNozzleIsChoked() =>
        Assert.Contains(
            Findings(Full with { ExhaustSpeedMetresPerSecond = Value(650) }),
            f => f.Code == "exhaust.nozzle-choked"
        );

    [Fact]
    public void Findings_EmptyState_AreNone() => Assert.Empty(Findings(new ThrottleState { Id = "idle" }));

    private static ValueList<Finding> Findings(ThrottleState state) => SheetCheck.Findings(Turbine, Sheet, state, Air);

    private static string? Odd(ThrottleState state, string code) =>
        Findings(state).Single(f => f.Code == code).Arguments.Single(a => a.Name == "odd").Text;
}
