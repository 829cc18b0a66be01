using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Takes numbers out of what a plan states, so that an odd plan gives "cannot tell" and never a wrong number.</summary>
internal static class StatedNumbers
{
    /// <summary>The number when it is finite and more than zero, or null.</summary>
    public static double? Positive(this Stated? stated) =>
        stated is { Value: > 0 } && double.IsFinite(stated.Value) ? stated.Value : null;

    /// <summary>The number when it is finite and zero or more, or null.</summary>
    public static double? NotNegative(this Stated? stated) =>
        stated is { Value: >= 0 } && double.IsFinite(stated.Value) ? stated.Value : null;

    /// <summary>The weakest pedigree among what is stated; example before assumed before estimated.</summary>
    public static Pedigree Weakest(params IEnumerable<Stated?> stated) =>
        stated
            .OfType<Stated>()
            .Select(s => s.Pedigree)
            .Where(p => p != Pedigree.Calculated)
            .DefaultIfEmpty(Pedigree.Calculated)
            .Max();
}
