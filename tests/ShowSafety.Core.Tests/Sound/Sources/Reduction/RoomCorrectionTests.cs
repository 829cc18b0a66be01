using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class RoomCorrectionTests
{
    private static readonly BandValues Level = BandValues.Uniform(100);
    private static readonly BandValues Surface = BandValues.Uniform(25);

    // Limits 4 dB (ISO 3744:2010) and 7 dB (ISO 3746:2010), read; K2 = 10 lg(1 + 4 S/A), memory. 4 S/A = 10^0.4 - 1 and
    // 10^0.7 - 1 are the areas at the limits.
    [Theory]
    [InlineData(66.18, RoomVerdict.Engineering, 4)]
    [InlineData(66.0, RoomVerdict.Survey, 4.01)]
    [InlineData(24.93, RoomVerdict.Survey, 7)]
    [InlineData(24.8, RoomVerdict.TooLive, 7.02)]
    [InlineData(1, RoomVerdict.TooLive, 20.04)]
    public void Of_Absorption_GivesVerdictAndFormula(double area, RoomVerdict verdict, double k2)
    {
        var room = RoomCorrection.Of(Level, Surface, BandValues.Uniform(area));

        Assert.Equal(verdict, room.Verdict);
        Assert.Equal(k2, room.FormulaDbA, 0.01);
    }

    [Fact]
    public void Of_VeryLiveRoom_TakesNoMoreThanSevenDecibelsOff() =>
        Assert.All(RoomCorrection.Of(Level, Surface, BandValues.Uniform(1)).CorrectionDb, k2 => Assert.Equal(7, k2));

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    public void Of_NoArea_IsRefusedByName(double area)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            RoomCorrection.Of(Level, Surface, BandValues.Build(_ => area))
        );

        Assert.Equal("absorptionSquareMetres", refused.ParamName);
    }
}
