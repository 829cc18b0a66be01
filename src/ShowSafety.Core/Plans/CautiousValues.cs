using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The values assumed when nobody states one, taken from the field catalogue so that each stands once.</summary>
public static class CautiousValues
{
    /// <summary>
    /// What the plan states, or the catalogue's cautious value with pedigree <see cref="Pedigree.Assumed"/>.
    /// </summary>
    /// <typeparam name="T">Record that has the member.</typeparam>
    /// <param name="stated">What the plan states, or null.</param>
    /// <param name="member">Name of the member, by nameof.</param>
    /// <exception cref="InvalidOperationException">The catalogue has no cautious value for the member.</exception>
    public static Stated Or<T>(this Stated? stated, string member) =>
        stated ?? new Stated { Value = Of<T>(member), Pedigree = Pedigree.Assumed };

    /// <summary>The cautious value of a member, in its unit.</summary>
    /// <exception cref="InvalidOperationException">The catalogue has no cautious value for the member.</exception>
    public static double Of<T>(string member) =>
        FieldCatalogue.For(typeof(T)).Find(FieldCatalogue.CamelCase(member))?.Cautious
        ?? throw new InvalidOperationException(
            $"{typeof(T).Name}.{member} has no cautious value: without it the answer is 'cannot tell'."
        );
}
