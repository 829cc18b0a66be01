namespace ShowSafety.Core.Sound;

/// <summary>A square grid of margins, values less a threshold: zero or more is inside.</summary>
internal sealed class MarginGrid
{
    /// <summary>Margin of a node known to be inside that was not sampled.</summary>
    public const double InsideUnknown = double.PositiveInfinity;

    /// <summary>Margin of a node known to be outside that was not sampled.</summary>
    public const double OutsideUnknown = double.NegativeInfinity;

    private readonly double[] _values;

    /// <summary>Makes a grid filled with one margin.</summary>
    /// <param name="side">Number of columns and of rows.</param>
    /// <param name="margin">The margin.</param>
    public MarginGrid(int side, double margin)
    {
        Side = side;
        _values = new double[side * side];
        Array.Fill(_values, margin);
    }

    /// <summary>Number of columns and of rows.</summary>
    public int Side { get; }

    /// <summary>The margin of a column and row.</summary>
    public double this[int column, int row]
    {
        get => _values[(row * Side) + column];
        set => _values[(row * Side) + column] = value;
    }

    /// <summary>Whether a node is inside.</summary>
    public bool IsIn(int column, int row) => this[column, row] >= 0;

    /// <summary>Whether the corners of the cell up and right of a node are neither all inside nor all outside.</summary>
    public bool IsMixed(int column, int row)
    {
        (double least, double most) = Range(column, row);
        return least < 0 && most >= 0;
    }

    /// <summary>
    /// Whether all corners of a cell are farther from the threshold than they are from each other: a value that is
    /// smooth on the scale of the cell can't come back to the threshold between them.
    /// </summary>
    /// <param name="column">Column of the lower left corner.</param>
    /// <param name="row">Row of that corner.</param>
    /// <param name="step">Size of the cell in steps of the grid.</param>
    public bool IsFarFromZero(int column, int row, int step = 1)
    {
        (double least, double most) = Range(column, row, step);
        return double.IsInfinity(least) && least.Equals(most) || Math.Max(least, -most) > most - least;
    }

    /// <summary>
    /// Samples the nodes of odd column or row that lie in a cell of two steps that is not far from zero; the others are
    /// inside or outside like its lower left corner.
    /// </summary>
    /// <param name="sampled">Whether a node is to be looked at.</param>
    /// <param name="marginAt">The margin at a node.</param>
    public void FillOdd(Func<int, int, bool> sampled, Func<int, int, double> marginAt) =>
        Parallel.For(
            0,
            Side - 1,
            i =>
            {
                for (int j = i % 2 == 0 ? 1 : 0; j < Side - 1; j += i % 2 == 0 ? 2 : 1)
                {
                    if (sampled(i, j))
                    {
                        (int ci, int cj) = (i - (i % 2), j - (j % 2));
                        this[i, j] =
                            !IsFarFromZero(ci, cj, 2) ? marginAt(i, j)
                            : IsIn(ci, cj) ? InsideUnknown
                            : OutsideUnknown;
                    }
                }
            }
        );

    private (double Least, double Most) Range(int column, int row, int step = 1)
    {
        double a = this[column, row];
        double b = this[column + step, row];
        double c = this[column, row + step];
        double d = this[column + step, row + step];
        return (Math.Min(Math.Min(a, b), Math.Min(c, d)), Math.Max(Math.Max(a, b), Math.Max(c, d)));
    }
}
