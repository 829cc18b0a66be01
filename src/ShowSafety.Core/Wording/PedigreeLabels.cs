using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>What people read for where a value comes from.</summary>
public static class PedigreeLabels
{
    /// <summary>The label, as a phrase.</summary>
    public static string Of(Pedigree pedigree) =>
        pedigree switch
        {
            Pedigree.Measured => "measured",
            Pedigree.Maker => "from the maker",
            Pedigree.Estimated => "estimated by the user",
            Pedigree.Assumed => "assumed on the cautious side",
            Pedigree.Example => "EXAMPLE, invented",
            Pedigree.Calculated => "calculated",
            _ => throw new ArgumentOutOfRangeException(nameof(pedigree), pedigree, "Not a pedigree."),
        };
}
