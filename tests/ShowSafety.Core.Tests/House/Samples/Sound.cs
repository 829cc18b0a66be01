using ShowSafety.Core.Tests.House.Samples.Exhaust;

namespace ShowSafety.Core.Tests.House.Samples.Sound;

public sealed class UsesInField
{
    private readonly Jet? jet;

    public override string ToString() => $"{jet}";
}

public static class UsesInSignature
{
    public static void Take(Jet jet) { }
}

public static class UsesInBody
{
    public static double Twice() => 2 * Jet.Speed();
}

public static class UsesInLambda
{
    public static Func<double> Later() => () => Jet.Speed();
}

public static class UsesInIterator
{
    public static IEnumerable<double> Many()
    {
        yield return Jet.Speed();
    }
}

public sealed class UsesAsBase : Jet;

public sealed class UsesAsTypeArgument
{
    public IReadOnlyList<Jet> Jets { get; } = [];
}

public static class ReadsAFile
{
    public static string Read(string path) => File.ReadAllText(path);
}

public static class Level
{
    public static double Decibels() => 3;
}
