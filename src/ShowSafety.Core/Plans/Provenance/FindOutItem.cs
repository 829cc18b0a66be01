using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A missing or unsure fact, what not knowing it costs, and how to get it.</summary>
/// <param name="Field">Catalogue entry as "Type.Member".</param>
/// <param name="ElementId">Element it belongs to, or null.</param>
/// <param name="Meaning">What the fact is, as a phrase from the catalogue.</param>
/// <param name="How">How a volunteer finds it out.</param>
/// <param name="Cost">Gravest finding its absence causes, or null when it only moves the line.</param>
/// <param name="LineMetres">Metres the crowd line could come closer if it were known, 0 when it would not move; null when it was not worked out.</param>
public sealed record FindOutItem(
    string Field,
    string? ElementId,
    string Meaning,
    FindOut How,
    Severity? Cost,
    Quantity? LineMetres
);
