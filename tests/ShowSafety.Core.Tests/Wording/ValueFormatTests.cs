using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

public sealed class ValueFormatTests
{
    [Theory]
    [InlineData(84.91, Unit.DecibelA, "85.0\u00A0dB(A)")]
    [InlineData(85.0000000001, Unit.DecibelA, "85.0\u00A0dB(A)")]
    [InlineData(4689873, Unit.JoulePerSquareMetre, "4\u00A0690\u00A0000\u00A0J/m²")]
    [InlineData(1234, Unit.Joule, "1240\u00A0J")]
    [InlineData(102347, Unit.RevolutionPerMinute, "102\u00A0347\u00A0rpm")]
    [InlineData(210.7, Unit.Metre, "211\u00A0m")]
    [InlineData(8.831, Unit.Metre, "8.84\u00A0m")]
    [InlineData(0.0501, Unit.Metre, "0.0501\u00A0m")]
    [InlineData(0.05011, Unit.Metre, "0.0502\u00A0m")]
    public void Planning_CautiousHigh_RoundsUp(double value, Unit unit, string text) =>
        Assert.Equal(text, ValueFormat.Planning(Quantity.CautiousHigh(value, value, unit)));

    [Theory]
    [InlineData(9.999, Unit.Minute, "9.99\u00A0min")]
    [InlineData(12.34, Unit.Minute, "12.3\u00A0min")]
    public void Planning_CautiousLow_RoundsDown(double value, Unit unit, string text) =>
        Assert.Equal(text, ValueFormat.Planning(Quantity.CautiousLow(value, value, unit)));

    [Fact]
    public void Best_AngleAndPureNumber_CarryTheirSigns()
    {
        Assert.Equal("15.0°", ValueFormat.Best(Quantity.Plain(15, Unit.Degree)));
        Assert.Equal("0", ValueFormat.Best(Quantity.Plain(0, Unit.One)));
    }
}
