using CsCheck;
using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.IndoorAir;

public sealed class FuelProductsTests
{
    [Fact]
    public void Of_AnyFuel_ConservesMass() =>
        Gen.Select(Gen.Double[1, 30], Gen.Double[0, 60])
            .Sample(
                (carbon, hydrogen) =>
                {
                    CombustionProducts products = FuelProducts.Of(carbon, hydrogen);
                    return Math.Abs(1 + products.Oxygen - products.CarbonDioxide - products.Water) < 1e-9;
                }
            );

    [Fact]
    public void Of_UnknownFuel_MakesTheMostCarbonDioxide() =>
        Assert.All(
            Enum.GetValues<FuelKind>(),
            fuel => Assert.True(FuelProducts.Of(null).CarbonDioxide >= FuelProducts.Of(fuel).CarbonDioxide)
        );

    [Fact]
    public void MilligramsPerCubicMetre_ThereAndBack_IsTheSame() =>
        Gen.Double[0, 1e5]
            .Sample(ppm => Math.Abs(Gases.Ppm(Gases.MilligramsPerCubicMetre(ppm, 46.01), 46.01) - ppm) < 1e-6);

    [Fact]
    public void EightHourAverage_ListsOfDifferentLength_IsRefused() =>
        Assert.Throws<ArgumentException>(() => AirExposure.EightHourAverage([1, 2], [1]));
}
