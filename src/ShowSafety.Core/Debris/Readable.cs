using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Stated values this room can calculate with; anything else counts as not stated.</summary>
internal static class Readable
{
    /// <summary>The value when it is finite and in a range, else null.</summary>
    public static Stated? Within(Stated? stated, double min, double max) =>
        stated is not null && stated.Value >= min && stated.Value <= max ? stated : null;

    /// <summary>The weakest pedigree of the values there are.</summary>
    public static Pedigree Weakest(params IReadOnlyList<Stated?> values) =>
        values.Where(v => v is not null).Select(v => v!.Pedigree).DefaultIfEmpty(Pedigree.Calculated).Max();
}
