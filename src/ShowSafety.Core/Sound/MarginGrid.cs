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
    public bool IsFarFromZero(int column, int row)
    {
        (double least, double most) = Range(column, row);
        return Math.Max(least, -most) > most - least;
    }

    private (double Least, double Most) Range(int column, int row)
    {
        double a = this[column, row];
        double b = this[column + 1, row];
        double c = this[column, row + 1];
        double d = this[column + 1, row + 1];
        return (Math.Min(Math.Min(a, b), Math.Min(c, d)), Math.Max(Math.Max(a, b), Math.Max(c, d)));
    }
}
