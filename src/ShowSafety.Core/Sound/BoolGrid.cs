namespace ShowSafety.Core.Sound;

/// <summary>A square grid of yes or no.</summary>
/// <param name="side">Number of columns and of rows.</param>
internal sealed class BoolGrid(int side)
{
    private readonly bool[] _values = new bool[side * side];

    /// <summary>The value of a column and row.</summary>
    public bool this[int column, int row]
    {
        get => _values[(row * side) + column];
        set => _values[(row * side) + column] = value;
    }

    /// <summary>The grid with every neighbour of a yes, diagonals included, made a yes as well.</summary>
    public BoolGrid Dilated()
    {
        var wider = new BoolGrid(side);
        for (int i = 0; i < _values.Length; i++)
        {
            if (_values[i])
            {
                wider.Mark(i % side, i / side);
            }
        }

        return wider;
    }

    /// <summary>Yes where either grid of the same side says yes.</summary>
    public BoolGrid Or(BoolGrid other)
    {
        var either = new BoolGrid(side);
        for (int i = 0; i < _values.Length; i++)
        {
            either._values[i] = _values[i] || other._values[i];
        }

        return either;
    }

    private void Mark(int column, int row)
    {
        for (int i = Math.Max(0, column - 1); i <= Math.Min(side - 1, column + 1); i++)
        {
            for (int j = Math.Max(0, row - 1); j <= Math.Min(side - 1, row + 1); j++)
            {
                this[i, j] = true;
            }
        }
    }
}
