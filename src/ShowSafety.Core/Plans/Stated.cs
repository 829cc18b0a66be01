using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// A number somebody stated, with where it comes from. The unit and the range are those of the member that holds it
/// (its name carries the unit). A member that is absent is "I don't know". For calculated values use
/// <see cref="Quantity"/>.
/// </summary>
public sealed record Stated
{
    /// <summary>The number, in the unit of the member that holds it.</summary>
    [Field("the number, in the unit of the member that holds it", Required = true)]
    public double Value { get; init; }

    /// <summary>Where the number comes from.</summary>
    [Field("where the number comes from", Required = true)]
    public Pedigree Pedigree { get; init; } = Pedigree.Estimated;

    /// <summary>Instrument and date, drawing number, who said so.</summary>
    [Field("instrument and date, drawing number, or who said so")]
    public string? Note { get; init; }
}
