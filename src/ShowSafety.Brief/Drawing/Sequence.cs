using System.Collections;
using System.Runtime.CompilerServices;

namespace ShowSafety.Brief.Drawing;

/// <summary>
/// A fixed list that compares by its members, so that records holding lists are equal when they say the same.
/// </summary>
[CollectionBuilder(typeof(Sequence), nameof(Sequence.Create))]
internal sealed class Sequence<T> : IReadOnlyList<T>, IEquatable<Sequence<T>>
{
    public static readonly Sequence<T> Empty = new([]);

    private readonly T[] items;

    internal Sequence(T[] items) => this.items = items;

    public int Count => items.Length;

    public T this[int index] => items[index];

    public bool Equals(Sequence<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as Sequence<T>);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (T item in items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();
}

/// <summary>Makes a <see cref="Sequence{T}"/> from a collection expression or from anything that can be walked.</summary>
internal static class Sequence
{
    public static Sequence<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    public static Sequence<T> ToSequence<T>(this IEnumerable<T> items) => new([.. items]);
}
