namespace PatternGen;

/// <summary>What the gate does with an element.</summary>
internal enum SvgElementKind
{
    /// <summary>Not of SVG's namespace: passed over.</summary>
    Foreign,

    /// <summary>Copied, and so is what is in it.</summary>
    Group,

    /// <summary>Copied if its measures can be read.</summary>
    Shape,

    /// <summary>Copied as definitions, since others may refer to what is in it.</summary>
    Definitions,

    /// <summary>Copied with its text.</summary>
    Title,

    /// <summary>Read for what it hides.</summary>
    Style,

    /// <summary>Copied as a mark, without what is in it.</summary>
    Picture,

    /// <summary>Passed over, and told.</summary>
    Noted,

    /// <summary>Passed over without a word: it never draws anything.</summary>
    Silent,

    /// <summary>Passed over, and told without its name.</summary>
    Unknown,
}

/// <summary>Knows the elements of SVG 1.1 and 2.</summary>
internal static class SvgElementKinds
{
    internal static SvgElementKind Of(string name) =>
        name switch
        {
            "svg" or "g" or "a" or "switch" or "defs" or "symbol" or "use" => SvgElementKind.Group,
            "path" or "rect" or "circle" or "ellipse" or "line" or "polyline" or "polygon" =>
                SvgElementKind.Shape,
            "clipPath" or "mask" or "marker" or "pattern" => SvgElementKind.Definitions,
            "title" => SvgElementKind.Title,
            "style" => SvgElementKind.Style,
            "text" or "image" or "foreignObject" => SvgElementKind.Picture,
            "linearGradient"
            or "radialGradient"
            or "filter"
            or "script"
            or "animate"
            or "animateMotion"
            or "animateTransform"
            or "set"
            or "video"
            or "audio"
            or "canvas"
            or "iframe"
            or "font" => SvgElementKind.Noted,
            "desc" or "metadata" or "view" or "cursor" or "solidcolor" => SvgElementKind.Silent,
            _ => SvgElementKind.Unknown,
        };
}
