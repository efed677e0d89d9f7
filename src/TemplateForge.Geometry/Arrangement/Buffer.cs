namespace TemplateForge.Geometry;

/// <summary>A list whose room is kept when it is emptied, so that work done again and again allocates nothing.</summary>
internal sealed class Buffer<T>
    where T : struct
{
    private T[] _items = new T[32];

    public int Count { get; private set; }
    public ref T this[int index] => ref _items[index];
    public Span<T> Items => _items.AsSpan(0, Count);

    public void Clear() => Count = 0;

    public void Add(in T item)
    {
        if (Count == _items.Length) Grow(Count + 1);
        _items[Count++] = item;
    }

    public void RemoveLast(int count) => Count -= count;

    /// <summary>Exactly this many items; what they hold is left over from before.</summary>
    public Span<T> Sized(int count)
    {
        if (count > _items.Length)
        {
            Count = 0;
            Grow(count);
        }
        Count = count;
        return Items;
    }

    /// <summary>Exactly this many items, all alike.</summary>
    public Span<T> Filled(int count, T item)
    {
        var items = Sized(count);
        items.Fill(item);
        return items;
    }

    private void Grow(int least)
    {
        var grown = new T[Math.Max(least, 2 * _items.Length)];
        _items.AsSpan(0, Count).CopyTo(grown);
        _items = grown;
    }
}
