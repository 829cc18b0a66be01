using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The codes of <see cref="PlanProblem"/>; part of the file format's contract.</summary>
public static class PlanProblemCodes
{
    /// <summary>The file is larger than accepted.</summary>
    public const string TooLarge = "too-large";

    /// <summary>The file is not UTF-8 text.</summary>
    public const string NotUtf8 = "not-utf8";

    /// <summary>The file is not JSON, or ends too early.</summary>
    public const string NotJson = "not-json";

    /// <summary>The file is nested deeper than any plan is.</summary>
    public const string TooDeep = "too-deep";

    /// <summary>More problems than are listed.</summary>
    public const string MoreProblems = "more-problems";

    /// <summary>A required member is missing.</summary>
    public const string Missing = "missing";

    /// <summary>A member the format does not know.</summary>
    public const string UnknownMember = "unknown-member";

    /// <summary>A member given twice in one object.</summary>
    public const string DuplicateMember = "duplicate-member";

    /// <summary>An id given to two elements of one list.</summary>
    public const string DuplicateId = "duplicate-id";

    /// <summary>Null where a value is expected.</summary>
    public const string Null = "null";

    /// <summary>A value of the wrong kind.</summary>
    public const string WrongType = "wrong-type";

    /// <summary>A number too large to be one.</summary>
    public const string NotFinite = "not-finite";

    /// <summary>A number outside its range.</summary>
    public const string OutOfRange = "out-of-range";

    /// <summary>A number with a fraction where a whole one is expected.</summary>
    public const string NotWhole = "not-whole";

    /// <summary>A required text without a letter or digit to read.</summary>
    public const string Blank = "blank";

    /// <summary>A text longer than accepted.</summary>
    public const string TooLong = "too-long";

    /// <summary>A text with characters that are not for reading.</summary>
    public const string ControlCharacter = "control-character";

    /// <summary>A text other than the only one accepted.</summary>
    public const string WrongText = "wrong-text";

    /// <summary>A word other than those a choice knows.</summary>
    public const string UnknownWord = "unknown-word";

    /// <summary>Not a date of the calendar.</summary>
    public const string NotADate = "not-a-date";

    /// <summary>Not a time of day.</summary>
    public const string NotATime = "not-a-time";

    /// <summary>Too few elements.</summary>
    public const string TooFew = "too-few";

    /// <summary>Too many elements.</summary>
    public const string TooMany = "too-many";

    /// <summary>A point of a line or ring that repeats the one before it.</summary>
    public const string RepeatedPoint = "repeated-point";

    /// <summary>A ring that crosses or touches itself.</summary>
    public const string RingCrosses = "ring-crosses";

    /// <summary>A ring without an area.</summary>
    public const string RingWithoutArea = "ring-without-area";

    /// <summary>Every code.</summary>
    public static ValueList<string> All { get; } =
    [
        TooLarge,
        NotUtf8,
        NotJson,
        TooDeep,
        MoreProblems,
        Missing,
        UnknownMember,
        DuplicateMember,
        DuplicateId,
        Null,
        WrongType,
        NotFinite,
        OutOfRange,
        NotWhole,
        Blank,
        TooLong,
        ControlCharacter,
        WrongText,
        UnknownWord,
        NotADate,
        NotATime,
        TooFew,
        TooMany,
        RepeatedPoint,
        RingCrosses,
        RingWithoutArea,
    ];
}
