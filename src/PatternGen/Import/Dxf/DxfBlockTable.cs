using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The blocks of a file, by name; upper and lower case are alike.</summary>
internal sealed class DxfBlockTable
{
    private readonly Dictionary<string, DxfBlockItems> _blocks = new(
        StringComparer.OrdinalIgnoreCase
    );

    /// <summary>The block of that name, or null. Of two with one name the first counts.</summary>
    internal DxfBlockItems? Find(string name) => _blocks.GetValueOrDefault(name);

    internal void Add(string name, DxfBlockItems block) => _blocks.TryAdd(name, block);
}

/// <summary>What a block draws.</summary>
/// <param name="origin">The place in it that an INSERT puts where it says.</param>
/// <param name="isOutside">Whether its contents lie in another file, which is not opened.</param>
internal sealed class DxfBlockItems(Point origin, bool isOutside)
{
    internal Point Base => origin;

    internal bool IsOutside => isOutside;

    internal List<DxfItem> Items { get; } = [];

    /// <summary>Whether it is being drawn: then it can't be drawn again, in itself.</summary>
    internal bool IsOpen { get; set; }
}
