using System.Collections;
using System.Runtime.CompilerServices;

namespace ShowSafety.Core.Measures;

/// <summary>
/// An immutable list equal by its elements in order, so that records that hold lists are equal after a round trip.
/// </summary>
/// <typeparam name="T">Element type, itself equal by value.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] _items;

    internal ValueList(T[] items) => _items = items;

    /// <summary>Number of elements.</summary>
    public int Count => _items.Length;

    /// <summary>The element at <paramref name="index"/>, counted from 0.</summary>
    public T this[int index] => _items[index];

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && _items.AsSpan().SequenceEqual(other._items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (T item in _items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes <see cref="ValueList{T}"/> from spans and sequences.</summary>
public static class ValueList
{
    /// <summary>Copies the elements; also what a collection expression calls.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>Copies the elements of a sequence.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new([.. items]);
}
