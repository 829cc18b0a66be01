namespace ShowSafety.Core.Sound;

/// <summary>Heights of ears above ground that a level is bounded for, all heights between included.</summary>
/// <param name="LowestMetres">The lowest ear in metres, 0 to 10.</param>
/// <param name="HighestMetres">The highest ear in metres, not under the lowest.</param>
public readonly record struct EarRange(double LowestMetres, double HighestMetres)
{
    /// <summary>One height.</summary>
    public static EarRange At(double earHeightMetres) => new(earHeightMetres, earHeightMetres);

    /// <summary>How far ears are above or below a height, in metres: the least and the most.</summary>
    public (double Least, double Most) OffMetres(double heightMetres)
    {
        double under = heightMetres - HighestMetres;
        double over = heightMetres - LowestMetres;
        return (Math.Max(0, Math.Max(under, -over)), Math.Max(Math.Abs(under), Math.Abs(over)));
    }
}
