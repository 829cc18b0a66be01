using ShowSafety.Core.Exhaust;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class HeatOnPeopleTests
{
    // NCHRP Synthesis 415, p. 18: nothing counts up to 2.5 kW/m².
    [Fact]
    public void BurnMinutes_AtTheFloor_AddsNoDose()
    {
        Assert.Equal(double.PositiveInfinity, HeatOnPeople.BurnMinutes(2.5));
        Assert.Equal(1 / HeatOnPeople.CautiousMinutes(60), HeatOnPeople.DoseShare(1, 2.5, 60), 1e-12);
        Assert.True(HeatOnPeople.DoseShare(1, 2.51, 60) > HeatOnPeople.DoseShare(1, 2.5, 60));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(120)]
    public void CautiousMinutes_AnyHeat_IsTheShortestOfTheThreeLaws(double celsius) =>
        Assert.True(
            HeatOnPeople.CautiousMinutes(celsius)
                < Math.Min(HeatOnPeople.LightlyClothedMinutes(celsius), HeatOnPeople.FullyClothedMinutes(celsius))
        );

    // Stoll and Chianta as printed in ASTM test methods; between rows the shorter time.
    [Theory]
    [InlineData(50.0, 1.0)]
    [InlineData(31.0, 2.0)]
    [InlineData(30.0, 2.0)]
    [InlineData(9.8, 10.0)]
    [InlineData(4.5, 30.0)]
    [InlineData(51.0, 0.0)]
    public void BareSkinSeconds_TableAndBetween_GivesTheShorterTime(double flux, double seconds) =>
        Assert.Equal(seconds, BurnTimes.BareSkinSeconds(flux));

    [Fact]
    public void BareSkinSeconds_UnderTheTable_CannotTell() => Assert.Null(BurnTimes.BareSkinSeconds(4.4));

    [Theory]
    [InlineData(0.4)]
    [InlineData(28801)]
    [InlineData(double.NaN)]
    public void BareMetalCelsius_OutsideTheTable_IsRefused(double seconds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BurnTimes.BareMetalCelsius(seconds));

    // ISO 13732-1 (memory): 4 s from 58 °C, 8 h from 43 °C.
    [Theory]
    [InlineData(2, 58)]
    [InlineData(4, 58)]
    [InlineData(28800, 43)]
    public void BareMetalCelsius_BetweenRows_TakesTheLongerTouch(double seconds, double celsius) =>
        Assert.Equal(celsius, BurnTimes.BareMetalCelsius(seconds));
}
