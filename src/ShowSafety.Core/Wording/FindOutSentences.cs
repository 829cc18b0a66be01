using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Wording;

/// <summary>Lines of the find-out list.</summary>
public static class FindOutSentences
{
    /// <summary>What the fact is and whose.</summary>
    public static string What(FindOutItem item, Phrasebook phrases)
    {
        string whose = phrases.Name(item.ElementId) is { } name ? $" ({name})" : "";
        return char.ToUpperInvariant(item.Meaning[0]) + item.Meaning[1..] + whose;
    }

    /// <summary>What not knowing it costs.</summary>
    public static string Cost(FindOutItem item) =>
        item switch
        {
            { Cost: Severity.Stop } => "without it: NOT TO RUN",
            { Cost: Severity.Act } => "without it: cannot tell, to be closed by name",
            { Cost: Severity.Note } => "without it: noted only",
            { LineMetres: { Best: 0 } } => "a cautious value is used; the line would not come closer",
            { LineMetres: { } metres } => $"costs about {ValueFormat.Best(metres)} of crowd line",
            _ => "a cautious value is used; what it costs in crowd line could not be told",
        };

    /// <summary>How a volunteer gets it.</summary>
    public static string How(FindOutItem item) =>
        item.How switch
        {
            FindOut.Tape => "measure it with a tape",
            FindOut.Scale => "weigh or pull it with a scale",
            FindOut.Maker => "take it from the maker's sheet or drawing",
            FindOut.SoundMeter => "measure it with a sound level meter",
            FindOut.Meter => "read it off an instrument",
            FindOut.Check => "have the check done and keep the record",
            FindOut.Venue => "ask the venue or the organiser",
            _ => "decide it and write it down",
        };

    /// <summary>The item as one line.</summary>
    public static string Line(FindOutItem item, Phrasebook phrases) =>
        $"{What(item, phrases)}: {Cost(item)}; {How(item)}.";
}
