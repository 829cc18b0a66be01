using ShowSafety.Core.Tests.House.Samples.Sound;

namespace ShowSafety.Core.Tests.House.Samples.Exposure;

public static class Dose
{
    public static double Of() => Level.Decibels();
}
