namespace ShowSafety.Core.Tests.House.Samples.Exhaust;

public class Jet
{
    public static double Speed() => 1;
}
