using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class JetConsistencyTests
{
    // Spread of the textbook estimate for hot jets: 8 dB, memory.
    [Theory]
    [InlineData(116, true, JetVerdict.Consistent)]
    [InlineData(115.9, true, JetVerdict.TooQuiet)]
    [InlineData(115.9, false, JetVerdict.TooQuiet)]
    [InlineData(132, true, JetVerdict.Consistent)]
    [InlineData(132.1, true, JetVerdict.TooLoud)]
    [InlineData(132.1, false, JetVerdict.Consistent)]
    public void Of_Measured_IsJudgedByTheSpread(double measured, bool fastest, JetVerdict verdict)
    {
        var judged = JetConsistency.Of(measured, 124, fastest);

        Assert.Equal(verdict, judged.Verdict);
        Assert.Equal(measured - 124, judged.ExcessDb, 1e-12);
    }
}
