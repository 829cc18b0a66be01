namespace ShowSafety.Core.Citations;

/// <summary>A standard, law, handbook or paper this project uses, or a choice of its own that it prints as such.</summary>
/// <param name="Id">Stable id in lower case with hyphens, unique in <see cref="CitationRegistry"/>.</param>
/// <param name="Title">Number or authors and title.</param>
/// <param name="Edition">Edition or year as used; empty for choices of this project.</param>
/// <param name="Clause">Clause, table or equation used.</param>
/// <param name="Basis">How well we know it.</param>
/// <param name="Use">What it is used for here, in a few words.</param>
public sealed record Citation(string Id, string Title, string Edition, string Clause, Basis Basis, string Use);
