using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Gate;

/// <summary>
/// Arithmetic of the five by five matrix some organisers ask for. A way of writing a risk assessment down, never the
/// verdict: nobody knows how often a wheel of this class bursts, so a likelihood would be invented.
/// </summary>
public static class RiskMatrix
{
    /// <summary>Steps of likelihood and of severity.</summary>
    public const int Steps = 5;

    /// <summary>The products of likelihood and severity that can occur, ascending: 14 of them.</summary>
    public static ValueList<int> Products { get; } = [.. Cells().Distinct().Order()];

    /// <summary>
    /// The band of a product, from 1: the first band whose upper limit the product does not exceed. The limits are the
    /// upper ends of all bands but the last one.
    /// </summary>
    /// <param name="product">Likelihood times severity, 1 to 25.</param>
    /// <param name="upperLimits">Upper limits, ascending, each 1 to 24.</param>
    /// <exception cref="ArgumentException">The limits do not ascend.</exception>
    public static int Band(int product, ValueList<int> upperLimits)
    {
        if (upperLimits.Zip(upperLimits.Skip(1)).Any(pair => pair.First >= pair.Second))
        {
            throw new ArgumentException("Upper limits of bands must ascend.", nameof(upperLimits));
        }

        return 1 + upperLimits.Count(limit => product > limit);
    }

    /// <summary>How many of the 25 cells of the matrix fall into each band.</summary>
    /// <param name="upperLimits">Upper limits, ascending, each 1 to 24.</param>
    /// <exception cref="ArgumentException">The limits do not ascend.</exception>
    public static ValueList<int> CellsPerBand(ValueList<int> upperLimits) =>
        [
            .. Enumerable
                .Range(1, upperLimits.Count + 1)
                .Select(band => Cells().Count(product => Band(product, upperLimits) == band)),
        ];

    private static IEnumerable<int> Cells() =>
        from likelihood in Enumerable.Range(1, Steps)
        from severity in Enumerable.Range(1, Steps)
        select likelihood * severity;
}
