using System.Collections;
using System.Collections.Immutable;

namespace Apprentice.Engine.Learning;

/// <summary>A list that never changes. A changed one shares all but a chunk with it, so that a long list costs hardly more than what is in it.</summary>
sealed class ChunkList<T> : IReadOnlyList<T>
{
    const int Size = 32;

    readonly ImmutableList<T[]> _full;
    readonly T[] _last;

    ChunkList(ImmutableList<T[]> full, T[] last) => (_full, _last) = (full, last);

    /// <summary>A list of nothing.</summary>
    public static ChunkList<T> Empty { get; } = new([], []);

    /// <inheritdoc/>
    public int Count => (_full.Count * Size) + _last.Length;

    /// <inheritdoc/>
    public T this[int index] => ChunkOf(index)[index % Size];

    /// <summary>A list of these.</summary>
    public static ChunkList<T> Of(IEnumerable<T> items) => items.Aggregate(Empty, (list, item) => list.Add(item));

    /// <summary>This list with one more at its end.</summary>
    public ChunkList<T> Add(T item) => _last.Length < Size ? new(_full, [.. _last, item]) : new(_full.Add(_last), [item]);

    /// <summary>This list with another item in one place.</summary>
    public ChunkList<T> SetItem(int index, T item)
    {
        T[] chunk = [.. ChunkOf(index)];
        chunk[index % Size] = item;
        return index / Size < _full.Count ? new(_full.SetItem(index / Size, chunk), _last) : new(_full, chunk);
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => _full.Append(_last).SelectMany(chunk => chunk).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    T[] ChunkOf(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Count);
        return index / Size < _full.Count ? _full[index / Size] : _last;
    }
}
