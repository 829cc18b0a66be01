using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core;

/// <summary>
/// The loudest level of the programme on a grid of places, for a picture: at each place that of the combination of
/// running engines with the highest planning level there.
/// </summary>
/// <param name="BestDbA">Best estimates in dB(A), row by row from the lowest y.</param>
/// <param name="PlanningDbA">Levels to plan with in dB(A), in the same order.</param>
public sealed record AssessedGrid(ValueList<double> BestDbA, ValueList<double> PlanningDbA)
{
    /// <summary>The levels of a plan, or null when nothing runs or any of them can't be told.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="lowerLeft">Place of the first value.</param>
    /// <param name="stepMetres">Distance between neighbours, above 0.</param>
    /// <param name="columns">Values in a row, 1 or more.</param>
    /// <param name="rows">Number of rows, 1 or more.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 to 10 m.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="ArgumentOutOfRangeException">No grid, or one over <see cref="LevelGrid.LargestCount"/>.</exception>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static AssessedGrid? Of(
        Plan plan,
        PlanPoint lowerLeft,
        double stepMetres,
        int columns,
        int rows,
        double earHeightMetres,
        CancellationToken cancel = default
    )
    {
        SoundField field = SoundField.Build(plan);
        LevelGrid?[] grids =
        [
            .. LoudestStates
                .Of(plan, TimelineBuilder.Build(plan), field)
                .Select(c =>
                    c.IsContradictory
                        ? null
                        : field.Grid(lowerLeft, stepMetres, columns, rows, earHeightMetres, c.StateByEngine, cancel)
                ),
        ];
        return grids.Length == 0 || grids.Any(g => g is null) ? null : Loudest([.. grids.OfType<LevelGrid>()]);
    }

    private static AssessedGrid Loudest(LevelGrid[] grids)
    {
        double[] best = [.. grids[0].BestDbA];
        double[] planning = Array.ConvertAll(best, level => level + grids[0].ExpandedUncertaintyDb);
        foreach (LevelGrid grid in grids.Skip(1))
        {
            for (int i = 0; i < best.Length; i++)
            {
                double candidate = grid.BestDbA[i] + grid.ExpandedUncertaintyDb;
                if (candidate > planning[i])
                {
                    (best[i], planning[i]) = (grid.BestDbA[i], candidate);
                }
            }
        }

        return new([.. best], [.. planning]);
    }
}
