using Svg;

namespace PatternGen;

/// <summary>The layers of an SVG: groups by their name, label or title. Any other element can be asked for like one.</summary>
internal sealed class SvgLayerChoice(IReadOnlyList<string>? names)
{
    private readonly LayersAsked _asked = new(names);

    /// <summary>Whether an element is one of the layers asked for.</summary>
    internal bool Holds(SvgElement element)
    {
        if (_asked.IsEverything)
            return true;
        var holds = false;
        foreach (var name in NamesOf(element))
            holds |= _asked.Meet(name, element is SvgGroup);
        return holds;
    }

    /// <summary>Takes in the names of what is hidden, so that it is not called missing.</summary>
    internal void MeetHidden(SvgElement element)
    {
        if (_asked.IsEverything)
            return;
        Holds(element);
        foreach (var child in element.Children)
            MeetHidden(child);
    }

    /// <exception cref="ImportException">A layer that was asked for was not met.</exception>
    internal void ThrowIfMissed() => _asked.ThrowIfMissed();

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
