namespace ShowSafety.Core.Citations;

/// <summary>How well we know what a source says.</summary>
public enum Basis
{
    /// <summary>Seen in a published text of the source itself.</summary>
    Read,

    /// <summary>Quoted by somebody else, or through a public transcription.</summary>
    Secondary,

    /// <summary>From memory: printed as "from memory, confirm" until somebody has opened the source.</summary>
    Memory,

    /// <summary>A mathematical consequence of a cited formula.</summary>
    Derived,

    /// <summary>This project's own choice, printed as such.</summary>
    Choice,

    /// <summary>A fact of the trade without a source: common practice.</summary>
    CommonPractice,
}
