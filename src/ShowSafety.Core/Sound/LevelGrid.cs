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

    /// <summary>Best estimate in dB(A) of a column and row.</summary>
    public double BestDbAAt(int column, int row) => BestDbA[(row * Columns) + column];

    /// <summary>Level to plan with in dB(A) of a column and row.</summary>
    public double PlanningDbAAt(int column, int row) => BestDbAAt(column, row) + ExpandedUncertaintyDb;
}
