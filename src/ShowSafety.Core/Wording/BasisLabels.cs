using ShowSafety.Core.Citations;

namespace ShowSafety.Core.Wording;

/// <summary>What people read for how well we know a source.</summary>
public static class BasisLabels
{
    /// <summary>The label, as a phrase.</summary>
    public static string Of(Basis basis) =>
        basis switch
        {
            Basis.Read => "read in the published text",
            Basis.Secondary => "as quoted by others",
            Basis.Memory => "from memory, confirm",
            Basis.Derived => "derived",
            Basis.Choice => "this project's choice",
            Basis.CommonPractice => "common practice, no source",
            _ => throw new ArgumentOutOfRangeException(nameof(basis), basis, "Not a basis."),
        };
}
