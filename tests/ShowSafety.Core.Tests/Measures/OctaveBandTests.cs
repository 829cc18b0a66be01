using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Measures;

public sealed class OctaveBandTests
{
    // Exact base-10 midbands, IEC 61260-1:2014 (from memory) as used by ISO 9613-1:1993 Table 1.
    [Theory]
    [InlineData(0, 63.096, "63")]
    [InlineData(1, 125.893, "125")]
    [InlineData(4, 1000, "1k")]
    [InlineData(7, 7943.282, "8k")]
    public void MidbandHertz_EachBand_IsTheExactBaseTenFrequency(int band, double hertz, string name)
    {
        Assert.Equal(hertz, OctaveBand.MidbandHertz(band), 0.001);
        Assert.Equal(name, OctaveBand.Name(band));
    }
}
