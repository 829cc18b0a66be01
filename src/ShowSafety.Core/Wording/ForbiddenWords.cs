using System.Text.RegularExpressions;

namespace ShowSafety.Core.Wording;

/// <summary>
/// Words this project never prints as whole words, because a plan can't promise what they promise. The product's name,
/// citations and standard terms are exempt.
/// </summary>
public static partial class ForbiddenWords
{
    /// <summary>The forbidden words found in a text, in the order met.</summary>
    public static IReadOnlyList<string> In(string text) => [.. Pattern().Matches(text).Select(m => m.Value)];

    [GeneratedRegex(
        @"\b(safe|safe distance|protected|compliant|approved|certified|low risk|negligible)\b",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Pattern();
}
