using ShowSafety.Core.Citations;

namespace ShowSafety.Core.Wording;

/// <summary>What people read for the edition of a source.</summary>
public static class EditionLabels
{
    /// <summary>
    /// The edition; for a source of others whose edition nobody wrote down the words that say so; empty for what has
    /// no edition: derivations, choices of this project, common practice.
    /// </summary>
    public static string Of(Citation citation) =>
        citation switch
        {
            { Edition.Length: > 0 } => citation.Edition,
            { Basis: Basis.Read or Basis.Secondary or Basis.Memory } => "edition not recorded, confirm",
            _ => "",
        };
}
