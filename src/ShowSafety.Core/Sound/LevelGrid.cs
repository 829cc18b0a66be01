using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>Levels on a grid of places, row by row from the lowest y.</summary>
/// <param name="LowerLeft">Place of the first value.</param>
/// <param name="StepMetres">Distance between neighbours, above 0.</param>
/// <param name="Columns">Values in a row.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="BestDbA">Best estimates in dB(A).</param>
/// <param name="ExpandedUncertaintyDb">U, common to all places, in dB.</param>
public sealed record LevelGrid(
    PlanPoint LowerLeft,
    double StepMetres,
    int Columns,
    int Rows,
    ValueList<double> BestDbA,
    double ExpandedUncertaintyDb
)
{
    /// <summary>Most values a grid may have.</summary>
    public const int LargestCount = 4_000_000;

    /// <summary>Refuses a grid that is none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No grid, or one over <see cref="LargestCount"/>.</exception>
    internal static void Refuse(double stepMetres, int columns, int rows)
    {
        if (!(stepMetres > 0) || columns < 1 || rows < 1 || (long)columns * rows > LargestCount)
        {
            throw new ArgumentOutOfRangeException(
                nameof(columns),
                $"A grid needs a step above 0 and 1 to {LargestCount} values."
            );
        }
    }

    /// <summary>Asks for the level of every place, rows side by side.</summary>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    internal static LevelGrid Of(
        PlanPoint lowerLeft,
        (double StepMetres, int Columns, int Rows) size,
        Func<PlanPoint, double> bestDbA,
        double expandedUncertaintyDb,
        CancellationToken cancel
    )
    {
        (double step, int columns, int rows) = size;
        var values = new double[columns * rows];
        Parallel.For(
            0,
            rows,
            new ParallelOptions { CancellationToken = cancel },
            row =>
            {
                for (int column = 0; column < columns; column++)
                {
                    var place = new PlanPoint(lowerLeft.XMetres + (column * step), lowerLeft.YMetres + (row * step));
                    values[(row * columns) + column] = bestDbA(place);
                }
            }
        );
        return new(lowerLeft, step, columns, rows, [.. values], expandedUncertaintyDb);
    }

    /// <summary>Best estimate in dB(A) of a column and row.</summary>
    public double BestDbAAt(int column, int row) => BestDbA[(row * Columns) + column];

    /// <summary>Level to plan with in dB(A) of a column and row.</summary>
    public double PlanningDbAAt(int column, int row) => BestDbAAt(column, row) + ExpandedUncertaintyDb;
}
