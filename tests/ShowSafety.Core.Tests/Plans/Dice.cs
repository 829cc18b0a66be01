namespace ShowSafety.Core.Tests.Plans;

/// <summary>A small seeded generator (SplitMix64), so that a failing seed gives the same plan again.</summary>
internal sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number from 0 inclusive to <paramref name="count"/> exclusive.</summary>
    public int Below(int count) => (int)(Next() % (ulong)count);

    /// <summary>A number from 0 inclusive to 1 exclusive.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>True in so many of a hundred throws.</summary>
    public bool Percent(int chance) => Below(100) < chance;

    private ulong Next()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
