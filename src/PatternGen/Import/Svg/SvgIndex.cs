using Svg;

namespace PatternGen;

/// <summary>The elements of an SVG by their names. References lead to these and nowhere else: nothing is ever opened.</summary>
internal sealed class SvgIndex
{
    private readonly Dictionary<string, SvgElement> _named = [];
    private readonly ImportLimits _limits;
    private readonly SvgUseGraph? _uses;

    /// <param name="root">What is indexed, with all that is in it.</param>
    /// <param name="limits">How much that may be.</param>
    /// <param name="isChecked">Whether what its references would draw was counted before.</param>
    /// <exception cref="ImportException">There are more elements, or they lie deeper, than the limits allow.</exception>
    internal SvgIndex(SvgElement root, ImportLimits limits, bool isChecked)
    {
        _limits = limits;
        _uses = isChecked ? null : new(limits);
        Add(root, 1);
        _uses?.Check();
    }

    /// <summary>How many elements there are.</summary>
    internal int Count { get; private set; }

    /// <summary>Returns the element that a reference means; null if there is none in this file.</summary>
    internal SvgElement? Find(SvgUse use) =>
        ReferenceOf(use) is { } name ? _named.GetValueOrDefault(name) : null;

    /// <summary>The name of an element; null if it has none.</summary>
    internal static string? NameOf(SvgElement element) =>
        element.CustomAttributes.TryGetValue(SvgCopy.Name, out var name) ? name : element.ID;

    /// <summary>The name that a reference within the file means; null if it leads elsewhere.</summary>
    private static string? ReferenceOf(SvgUse use) =>
        use.CustomAttributes.TryGetValue(SvgCopy.Reference, out var copied) ? copied
        : use.ReferencedElement?.ToString() is ['#', .. var name] ? name
        : null;

    private void Add(SvgElement element, int depth)
    {
        if (depth > _limits.Depth)
            throw SvgRefusal.TooDeep(_limits.Depth, null);
        if (++Count > _limits.Elements)
            throw SvgRefusal.TooManyElements(_limits.Elements, null);
        // Of elements with one name the first counts.
        var name = NameOf(element);
        if (name is not null)
            _named.TryAdd(name, element);
        _uses?.Add(depth, name, element is SvgUse use ? ReferenceOf(use) : null);
        foreach (var child in element.Children)
            Add(child, depth + 1);
    }
}
