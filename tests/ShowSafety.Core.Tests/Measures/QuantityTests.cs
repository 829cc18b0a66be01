using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Measures;

public sealed class QuantityTests
{
    [Fact]
    public void CautiousHigh_PlanningUnderBest_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantity.CautiousHigh(10, 9.999, Unit.Metre));

    [Fact]
    public void CautiousLow_PlanningOverBest_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantity.CautiousLow(10, 10.001, Unit.Metre));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Plain_NotFinite_IsRefused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantity.Plain(value, Unit.Metre));

    [Fact]
    public void Equality_SameValuesAndCitations_IsByValue() =>
        Assert.Equal(
            Quantity.CautiousHigh(1, 2, Unit.Joule) with
            {
                Citations = ["a", "b"],
            },
            Quantity.CautiousHigh(1, 2, Unit.Joule) with
            {
                Citations = ["a", "b"],
            }
        );
}
