using Svg;

namespace PatternGen;

/// <summary>Goes through the object model of an SVG and draws what is to be seen.</summary>
internal sealed partial class SvgWalker
{
    private readonly ImportedCurves _curves;
    private readonly SvgIndex _index;
    private readonly SvgLayerChoice _layers;
    private readonly SvgCurveSink _sink;
    private readonly SvgPen _pen;
    private readonly HashSet<SvgElement> _within = [];
    private readonly Dictionary<string, int> _numbers = [];

    private SvgWalker(ImportedCurves curves, SvgIndex index)
    {
        (_curves, _index) = (curves, index);
        _layers = new(curves.Settings.Layers);
        _sink = new(curves);
        _pen = new(_sink);
    }

    /// <summary>Reads the curves of a document.</summary>
    /// <exception cref="ImportException">It is beyond the limits, or refers to itself.</exception>
    internal static ReadDrawing Read(SvgFragment root, ImportedCurves curves, SvgIndex index)
    {
        var walker = new SvgWalker(curves, index);
        var sheet = SvgSheetFrame.Of(root, curves);
        // The root can have a transform too, which is of its own sheet.
        var start = new SvgWalk(
            sheet.Frame.Within(root.Transforms),
            sheet.Viewport,
            IsHidden: false,
            IsChosen: walker._layers.Holds(root),
            Depth: 1
        );
        walker.Children(root, start);
        walker._layers.ThrowIfMissed();
        return new(curves, sheet.Unit, walker._sink.Accuracy);
    }

    private void Children(SvgElement parent, in SvgWalk walk)
    {
        foreach (var child in parent.Children)
            Element(child, walk);
    }

    private void Element(SvgElement element, in SvgWalk outer)
    {
        if (SvgKinds.IsSilent(element))
            return;
        var where = Where(element);
        _curves.CountElement(where);
        if (outer.Depth >= _curves.Settings.Limits.Depth)
            throw SvgRefusal.TooDeep(_curves.Settings.Limits.Depth, where);
        if (IsNotDisplayed(element))
        {
            _layers.MeetHidden(element);
            _curves.Note(ImportNoteKind.Skipped, "hidden element", where);
            return;
        }
        Visible(
            element,
            outer with
            {
                Frame = outer.Frame.Within(element.Transforms),
                IsHidden = IsHidden(element) ?? outer.IsHidden,
                IsChosen = outer.IsChosen || _layers.Holds(element),
                Depth = outer.Depth + 1,
            },
            where
        );
    }

    private void Visible(SvgElement element, in SvgWalk walk, string where)
    {
        switch (element)
        {
            case SvgUse use:
                Use(use, walk, where);
                break;
            case SvgFragment inner:
                Children(inner, Inside(inner, walk, null));
                break;
            case SvgSwitch choice:
                if (choice.Children.FirstOrDefault(SvgKinds.IsDrawn) is { } first)
                    Element(first, walk);
                break;
            case SvgGroup or SvgAnchor:
                Children(element, walk);
                break;
            default:
                Shape(element, walk, where);
                break;
        }
    }

    private void Shape(SvgElement element, in SvgWalk walk, string where)
    {
        if (!SvgKinds.IsDrawn(element))
        {
            _curves.Note(ImportNoteKind.Skipped, SvgKinds.NameOf(element), where);
        }
        else if (walk.IsHidden)
        {
            _curves.Note(ImportNoteKind.Skipped, "hidden element", where);
        }
        else if (walk.IsChosen)
        {
            if (element is SvgVisualElement { ClipPath: not null })
                _curves.Note(ImportNoteKind.Changed, "clipped element read whole", where);
            _sink.Begin(walk.Frame, where);
            SvgShapes.TryDraw(element, walk.Viewport, _pen);
            _sink.End();
        }
    }

    private static bool IsNotDisplayed(SvgElement element) =>
        element.TryGetAttribute("display", out var display)
        && display.AsSpan().Trim().Equals("none", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether an element says that it is hidden, or shown; null if it says nothing.</summary>
    private static bool? IsHidden(SvgElement element) =>
        element.TryGetAttribute("visibility", out var visibility)
            ? !visibility.AsSpan().Trim().Equals("visible", StringComparison.OrdinalIgnoreCase)
            : null;

    /// <summary>The line of the file where an element starts; of a document, the element's name or number.</summary>
    private string Where(SvgElement element)
    {
        if (element.CustomAttributes.TryGetValue(SvgCopy.Line, out var line))
            return "line " + line;
        var kind = SvgKinds.NameOf(element);
        if (element.ID is { Length: > 0 } id)
            return $"element {kind} #{id}";
        var number = _numbers.GetValueOrDefault(kind) + 1;
        _numbers[kind] = number;
        return $"element {kind} {number}";
    }
}
