using Svg;

namespace PatternGen;

/// <summary>Knows which elements draw something, which need no word, and what people call the others.</summary>
internal static class SvgKinds
{
    /// <summary>Whether an element draws nothing where it stands, as it should: definitions, descriptions, what others refer to.</summary>
    internal static bool IsSilent(SvgElement element) =>
        element
            is SvgDefinitionList
                or SvgSymbol
                or SvgClipPath
                or SvgTitle
                or SvgDescription
                or SvgDocumentMetadata
                or Svg.SvgStyle
                or NonSvgElement;

    /// <summary>Whether an element is a shape, or holds some.</summary>
    internal static bool IsDrawn(SvgElement element) =>
        element
            is SvgPath
                or SvgRectangle
                or SvgCircle
                or Svg.SvgEllipse
                or SvgLine
                or SvgPolyline
                or SvgPolygon
                or SvgUse
                or SvgFragment
                or SvgGroup
                or SvgAnchor
                or SvgSwitch;

    /// <summary>What an element is, as its tag says.</summary>
    internal static string NameOf(SvgElement element) =>
        element switch
        {
            SvgPath => "path",
            SvgRectangle => "rect",
            SvgCircle => "circle",
            Svg.SvgEllipse => "ellipse",
            SvgLine => "line",
            SvgPolyline => "polyline",
            SvgPolygon => "polygon",
            SvgUse => "use",
            SvgFragment => "svg",
            SvgGroup => "g",
            SvgTextBase => "text",
            SvgImage => "image",
            SvgForeignObject => "foreignObject",
            SvgGradientServer => "gradient",
            SvgPatternServer => "pattern",
            SvgMarker => "marker",
            SvgMask => "mask",
            _ => "element that draws no line",
        };
}
