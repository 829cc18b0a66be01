using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class BackgroundCheckTests
{
    // ISO 3744:2010 and ISO 3746:2010 (memory): 3 dB is the least, 6 dB for a full correction, 15 dB for none.
    [Theory]
    [InlineData(2.99, BackgroundVerdict.TooHigh, 0)]
    [InlineData(3.0, BackgroundVerdict.Close, 1.2563)]
    [InlineData(5.99, BackgroundVerdict.Close, 1.2563)]
    [InlineData(6.0, BackgroundVerdict.Corrected, 1.2563)]
    [InlineData(14.99, BackgroundVerdict.Corrected, 0.1398)]
    [InlineData(15.0, BackgroundVerdict.Clear, 0)]
    [InlineData(-10.0, BackgroundVerdict.TooHigh, 0)]
    public void Of_Excess_GivesVerdictAndCorrection(double excess, BackgroundVerdict verdict, double correction)
    {
        var check = BackgroundCheck.Of(excess, 0);

        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(correction, check.CorrectionDb, 0.001);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(double.NaN)]
    public void Of_NoBackground_IsUnknownAndTakesNothingOff(double? background) =>
        Assert.Equal(new BackgroundCheck(BackgroundVerdict.Unknown, 0, 0), BackgroundCheck.Of(100, background));
}
