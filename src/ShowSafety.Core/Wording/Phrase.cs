namespace ShowSafety.Core.Wording;

/// <summary>The sentence of a finding and what to do about it.</summary>
/// <param name="Code">Code of the finding.</param>
/// <param name="Sentence">
/// One or two sentences with {name} placeholders for the finding's arguments. A quantity prints its planning value with
/// its unit; "{name:best}" prints the best estimate. "{element}" prints the name of the finding's element.
/// </param>
/// <param name="Remedy">What to do, an imperative sentence, with the same placeholders.</param>
public sealed record FindingPhrase(string Code, string Sentence, string Remedy);

/// <summary>The label of a figure.</summary>
/// <param name="Key">Key of the figure.</param>
/// <param name="Label">A phrase without a full stop.</param>
public sealed record FigurePhrase(string Key, string Label);
