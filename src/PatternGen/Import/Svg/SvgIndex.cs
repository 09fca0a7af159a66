using Svg;

namespace PatternGen;

/// <summary>The elements of an SVG by their names. References lead to these and nowhere else: nothing is ever opened.</summary>
internal sealed class SvgIndex
{
    private readonly Dictionary<string, SvgElement> _named = [];
    private readonly int _depth;

    /// <exception cref="ImportException">Elements lie deeper than the limits allow.</exception>
    internal SvgIndex(SvgElement root, ImportLimits limits)
    {
        _depth = limits.Depth;
        Add(root, 1);
    }

    /// <summary>How many elements there are.</summary>
    internal int Count { get; private set; }

    /// <summary>Returns the element that a reference means; null if there is none in this file.</summary>
    internal SvgElement? Find(SvgUse use)
    {
        var reference = use.CustomAttributes.TryGetValue(SvgCopy.Reference, out var copied)
            ? "#" + copied
            : use.ReferencedElement?.ToString();
        return reference is ['#', .. var name] ? _named.GetValueOrDefault(name) : null;
    }

    /// <summary>The name of an element; null if it has none.</summary>
    internal static string? NameOf(SvgElement element) =>
        element.CustomAttributes.TryGetValue(SvgCopy.Name, out var name) ? name : element.ID;

    private void Add(SvgElement element, int depth)
    {
        if (depth > _depth)
            throw SvgRefusal.TooDeep(_depth, null);
        Count++;
        // Of elements with one name the first counts.
        if (NameOf(element) is { } name)
            _named.TryAdd(name, element);
        foreach (var child in element.Children)
            Add(child, depth + 1);
    }
}
