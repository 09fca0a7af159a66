namespace PatternGen;

/// <summary>Counts what references would draw, before anything is drawn: a short file can ask for 10^9 elements.</summary>
internal sealed class SvgUseGraph(ImportLimits limits)
{
    private readonly Dictionary<string, Part> _named = [];
    private readonly Stack<(Part Part, int Level)> _open = new([(new Part(""), 0)]);

    /// <summary>A named element with all in it that is not in another named one.</summary>
    private sealed class Part(string name)
    {
        internal string Name => name;
        internal long Count;
        internal int Depth;
        internal readonly List<(Part? Part, string Reference, int Depth)> Others = [];
        internal bool IsBeingCounted;
        internal bool IsCounted;
    }

    /// <summary>Adds an element that starts.</summary>
    /// <param name="level">How deep it lies; the root at 1.</param>
    /// <param name="name">Its name, if it has one.</param>
    /// <param name="reference">What it refers to, if to something.</param>
    internal void Add(int level, string? name, string? reference)
    {
        while (_open.Count > 1 && _open.Peek().Level >= level)
            _open.Pop();
        var (part, start) = _open.Peek();
        if (name is not null)
        {
            var named = new Part(name);
            part.Others.Add((named, "", level - start));
            _named.TryAdd(name, named);
            _open.Push((named, level));
            (part, start) = (named, level);
        }
        part.Count++;
        part.Depth = Math.Max(part.Depth, level - start + 1);
        if (reference is not null)
            part.Others.Add((null, reference, level - start + 1));
    }

    /// <exception cref="ImportException">An element refers to itself, or references draw more, or deeper, than the limits allow.</exception>
    internal void Check()
    {
        var root = _open.ToArray()[^1].Part;
        Count(root, 0);
        if (root.Count > limits.Elements)
            throw new ImportException(
                $"With all that its references repeat, the file draws more than {limits.Elements} elements.",
                null,
                ["fewer references", "a higher limit (ImportLimits.WithElements)"]
            );
    }

    private void Count(Part part, int above)
    {
        if (part.IsCounted)
            return;
        if (part.IsBeingCounted)
            throw SvgRefusal.Circular(part.Name, null);
        // Also keeps this method from going deeper than that.
        if (above > limits.Depth)
            throw SvgRefusal.TooDeep(limits.Depth, null);
        part.IsBeingCounted = true;
        foreach (var (inner, reference, depth) in part.Others)
        {
            if ((inner ?? _named.GetValueOrDefault(reference)) is not { } other)
                continue;
            Count(other, above + depth);
            // Stops far below where a sum of such sums would overflow.
            part.Count = Math.Min(part.Count + other.Count, 1L << 40);
            part.Depth = Math.Max(part.Depth, depth + other.Depth);
        }
        part.IsBeingCounted = false;
        part.IsCounted = true;
        if (above + part.Depth > limits.Depth + 1)
            throw SvgRefusal.TooDeep(limits.Depth, null);
    }
}
