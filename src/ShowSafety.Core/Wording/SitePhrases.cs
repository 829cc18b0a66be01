using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of Site, in English.</summary>
internal static class SitePhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [.. PermissionPhrases.Findings, .. GatePhrases.Findings, .. SuppliesPhrases.Findings, .. CrowdPhrases.Findings];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [.. GatePhrases.Figures, .. SuppliesPhrases.Figures, .. CrowdPhrases.Figures];
}
