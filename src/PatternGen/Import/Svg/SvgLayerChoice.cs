using Svg;

namespace PatternGen;

/// <summary>The layers that are read: groups by their name, label or title.</summary>
internal sealed class SvgLayerChoice(IReadOnlyList<string>? asked)
{
    /// <summary>Most names that an error lists.</summary>
    private const int MostListed = 20;

    private readonly HashSet<string> _open = new(asked ?? [], StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _asked = new(asked ?? [], StringComparer.OrdinalIgnoreCase);
    private readonly List<string> _seen = [];

    internal bool IsEverything => asked is null;

    /// <summary>Whether an element is one of the layers asked for.</summary>
    internal bool Holds(SvgElement element)
    {
        if (IsEverything)
            return true;
        var holds = false;
        foreach (var name in NamesOf(element))
        {
            _open.Remove(name);
            holds |= _asked.Contains(name);
            if (element is SvgGroup && _seen.Count < MostListed && !_seen.Contains(name))
                _seen.Add(name);
        }
        return holds;
    }

    /// <exception cref="ImportException">A layer that was asked for was not met.</exception>
    internal void ThrowIfMissed()
    {
        if (_open.Count > 0)
            throw new ImportException(
                $"The file has no layer named {string.Join(" or ", _open.Order(StringComparer.Ordinal))}.",
                null,
                _seen.Count > 0
                    ? [$"one of its groups: {string.Join(", ", _seen)}"]
                    : ["all layers: none of its groups has a name"]
            );
    }

    private static IEnumerable<string> NamesOf(SvgElement element)
    {
        if (SvgIndex.NameOf(element) is { } name)
            yield return name;
        if (element.CustomAttributes.TryGetValue(SvgCopy.Label, out var label))
            yield return label;
        foreach (var title in element.Children.OfType<SvgTitle>())
            if (title.Content is { } text)
                yield return text.Trim();
    }
}
