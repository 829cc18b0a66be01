namespace ShowSafety.Core.Plans;

/// <summary>What a member of a plan file holds; a list holds several of the kind.</summary>
public enum FieldKind
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A finite number.</summary>
    Number,

    /// <summary>A number without a fraction.</summary>
    WholeNumber,

    /// <summary>True or false.</summary>
    Boolean,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>A date, yyyy-MM-dd.</summary>
    Date,

    /// <summary>A time on the event's wall clock, HH:mm.</summary>
    Time,

    /// <summary>A point [x, y] in plan metres.</summary>
    Point,

    /// <summary>Eight numbers, one per octave band, 63 Hz first.</summary>
    Bands,

    /// <summary>An object with members of its own.</summary>
    Record,
}
