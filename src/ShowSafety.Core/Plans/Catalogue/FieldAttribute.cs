using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// One entry of the field catalogue, on the member it describes: each fact about a member of a plan file stands here
/// once and feeds the reader, the JSON Schema, the forms, docs/plan-file.md and the tests that break plans.
/// </summary>
/// <param name="meaning">What the member means, as a phrase without a full stop.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FieldAttribute(string meaning) : Attribute
{
    /// <summary>What the member means.</summary>
    public string Meaning { get; } = meaning;

    /// <summary>Unit of a number; <see cref="Measures.Unit.One"/> for pure numbers and everything else.</summary>
    public Unit Unit { get; init; } = Unit.One;

    /// <summary>Smallest number accepted, inclusive.</summary>
    public double Min { get; init; } = -1e9;

    /// <summary>Largest number accepted, inclusive.</summary>
    public double Max { get; init; } = 1e9;

    /// <summary>Fewest elements of a list.</summary>
    public int MinCount { get; init; }

    /// <summary>Most elements of a list.</summary>
    public int MaxCount { get; init; } = 200;

    /// <summary>Most characters of a text.</summary>
    public int MaxLength { get; init; } = 400;

    /// <summary>The only text accepted, or null for any.</summary>
    public string? Exactly { get; init; }

    /// <summary>Whether the member must be there when its parent is.</summary>
    public bool Required { get; init; }

    /// <summary>How a list of points is read.</summary>
    public PointsShape Points { get; init; }

    /// <summary>
    /// The value assumed when nobody states one, on the cautious side; not a number where none exists and whatever
    /// depends on the member is "cannot tell".
    /// </summary>
    public double Cautious { get; init; } = double.NaN;

    /// <summary>
    /// A value that finding out may well give; used only to say what not knowing costs, never to plan with.
    /// </summary>
    public double Hopeful { get; init; } = double.NaN;

    /// <summary>How a volunteer finds the value out.</summary>
    public FindOut FindOut { get; init; }
}

/// <summary>How a list of points is read.</summary>
public enum PointsShape
{
    /// <summary>Not a list of points.</summary>
    None,

    /// <summary>An open line of at least two different points.</summary>
    Line,

    /// <summary>A ring of at least three points that does not cross itself and encloses an area; not closed by hand.</summary>
    Ring,
}

/// <summary>How a volunteer finds a value out.</summary>
public enum FindOut
{
    /// <summary>Not a thing to find out.</summary>
    None,

    /// <summary>With a tape measure.</summary>
    Tape,

    /// <summary>With a scale or a spring balance.</summary>
    Scale,

    /// <summary>From the maker's sheet or drawing.</summary>
    Maker,

    /// <summary>With a sound level meter.</summary>
    SoundMeter,

    /// <summary>With another instrument: thermometer, tachometer, anemometer, gas meter.</summary>
    Meter,

    /// <summary>From the venue or the organiser.</summary>
    Venue,

    /// <summary>By deciding it.</summary>
    Decide,

    /// <summary>By having a check done and keeping the record.</summary>
    Check,
}
