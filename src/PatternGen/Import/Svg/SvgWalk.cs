namespace PatternGen;

/// <summary>Where a walk through an SVG is: what holds for an element and all that is in it.</summary>
/// <param name="Frame">Where coordinates lie.</param>
/// <param name="Viewport">What percentages are of.</param>
/// <param name="IsHidden">Whether it is not to be seen; what is in it may say otherwise.</param>
/// <param name="IsChosen">Whether it is on a layer that is read.</param>
/// <param name="Depth">How deep it lies, references counted.</param>
internal readonly record struct SvgWalk(
    SvgFrame Frame,
    SvgViewport Viewport,
    bool IsHidden,
    bool IsChosen,
    int Depth
);
