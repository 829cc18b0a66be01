namespace ShowSafety.Core.Measures;

/// <summary>
/// A calculated value as it leaves a room: best estimate, planning value on the cautious side, unit, pedigree, the
/// citations it rests on and the worked sum that shows how it is made. Zones and verdicts use
/// <see cref="Planning"/>; outputs show both. For an input as the user stated it use
/// <see cref="ShowSafety.Core.Plans.Stated"/>.
/// </summary>
public sealed record Quantity
{
    private Quantity(double best, double planning, Unit unit, CautiousDirection direction)
    {
        Best = best;
        Planning = planning;
        Unit = unit;
        Direction = direction;
    }

    /// <summary>Best estimate, in <see cref="Unit"/>; finite.</summary>
    public double Best { get; }

    /// <summary>Value to plan with, in <see cref="Unit"/>; finite, never on the careless side of <see cref="Best"/>.</summary>
    public double Planning { get; }

    /// <summary>Unit of both values.</summary>
    public Unit Unit { get; }

    /// <summary>Which way is cautious.</summary>
    public CautiousDirection Direction { get; }

    /// <summary>Weakest pedigree among the inputs the value rests on, or <see cref="Pedigree.Calculated"/>.</summary>
    public Pedigree Pedigree { get; init; } = Pedigree.Calculated;

    /// <summary>Ids of the citations behind the value, in <see cref="Citations.CitationRegistry"/>.</summary>
    public ValueList<string> Citations { get; init; } = [];

    /// <summary>Name of the worked sum that shows the calculation, or null where there is none.</summary>
    public string? Sum { get; init; }

    /// <summary>A value whose larger side is dangerous.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or planning is under best.</exception>
    public static Quantity CautiousHigh(double best, double planning, Unit unit) =>
        Checked(best, planning, unit, CautiousDirection.High);

    /// <summary>A value whose smaller side is dangerous.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or planning is over best.</exception>
    public static Quantity CautiousLow(double best, double planning, Unit unit) =>
        Checked(best, planning, unit, CautiousDirection.Low);

    /// <summary>A value for information, the same for planning.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Quantity Plain(double value, Unit unit) => Checked(value, value, unit, CautiousDirection.None);

    private static Quantity Checked(double best, double planning, Unit unit, CautiousDirection direction)
    {
        bool careless = direction switch
        {
            CautiousDirection.High => planning < best,
            CautiousDirection.Low => planning > best,
            _ => false,
        };
        return double.IsFinite(best) && double.IsFinite(planning) && !careless
            ? new(best, planning, unit, direction)
            : throw new ArgumentOutOfRangeException(
                nameof(planning),
                planning,
                $"Best {best} {unit.Symbol()} and planning value must be finite, planning on the cautious side ({direction})."
            );
    }
}
