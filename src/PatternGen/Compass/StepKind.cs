namespace PatternGen;

/// <summary>What a person does in one step of a compass drawing.</summary>
/// <remarks>Each value says which members of <see cref="CompassStep"/> hold its instruction.</remarks>
public enum StepKind
{
    /// <summary>
    /// Mark a point to begin from, <see cref="CompassStep.Marked"/>, where its coordinates say. All but the first are
    /// measured from the first, <see cref="CompassStep.From"/>.
    /// </summary>
    Mark,

    /// <summary>
    /// Mark a point to begin from on a circle: <see cref="CompassStep.Curves"/> holds the circle,
    /// <see cref="CompassStep.Direction"/> the direction from its centre.
    /// </summary>
    MarkOnCircle,

    /// <summary>
    /// Set the compass to <see cref="CompassStep.Setting"/>, or take the length between <see cref="CompassStep.From"/>
    /// and <see cref="CompassStep.To"/> off the drawing.
    /// </summary>
    SetRadius,

    /// <summary>With the setting as it is, draw a whole circle round each of <see cref="CompassStep.Needles"/>.</summary>
    Circle,

    /// <summary>
    /// With the setting as it is, draw an arc round each of <see cref="CompassStep.Needles"/>, counter-clockwise from
    /// <see cref="CompassStep.From"/> to <see cref="CompassStep.To"/>; on the way, all go through
    /// <see cref="CompassStep.Through"/>.
    /// </summary>
    Arc,

    /// <summary>
    /// With the setting as it is, step counter-clockwise round a circle (<see cref="CompassStep.Curves"/>) from
    /// <see cref="CompassStep.From"/>, <see cref="CompassStep.Count"/> times, and mark every
    /// <see cref="CompassStep.Every"/>th place, though not the start again.
    /// </summary>
    Walk,

    /// <summary>
    /// With the setting as it is, cut a curve (<see cref="CompassStep.Curves"/>) from the needle, at the place that
    /// <see cref="CompassStep.Choice"/> tells.
    /// </summary>
    Cut,

    /// <summary>
    /// With the setting as it is, draw an arc from each of <see cref="CompassStep.From"/> and one from
    /// <see cref="CompassStep.To"/>, and mark where they cross on the <see cref="CompassStep.Side"/> of the way from
    /// the one to the other.
    /// </summary>
    CrossArcs,

    /// <summary>Mark where two curves cross, those of <see cref="CompassStep.Curves"/> and <see cref="CompassStep.OtherCurves"/>, as <see cref="CompassStep.Choice"/> tells.</summary>
    Cross,

    /// <summary>
    /// With the setting as it is, draw arcs from <see cref="CompassStep.From"/> and <see cref="CompassStep.To"/> that
    /// cross on both sides; the line through both crossings halves the way between, at the point marked.
    /// </summary>
    Bisect,

    /// <summary>
    /// With the setting as it is, halve the arc of a circle (<see cref="CompassStep.Curves"/>) that runs
    /// counter-clockwise from <see cref="CompassStep.From"/> to <see cref="CompassStep.To"/>: arcs from both ends
    /// cross on both sides, and the straightedge on the crossings marks the middle of the arc.
    /// </summary>
    BisectArc,

    /// <summary>
    /// Draw a line square to another (<see cref="CompassStep.Curves"/>) through the needle: with the setting as it is, cut
    /// the line on both sides; open the compass to the distance of both cuts and draw arcs from them that cross on both
    /// sides. The new line runs from crossing to crossing if the needle stands on the line; else from the needle to the
    /// crossing beyond, and its foot is marked.
    /// </summary>
    Perpendicular,

    /// <summary>Draw straight lines from <see cref="CompassStep.From"/> to <see cref="CompassStep.To"/>.</summary>
    Join,

    /// <summary>
    /// Draw straight lines from <see cref="CompassStep.From"/> through (or towards) <see cref="CompassStep.To"/> to the
    /// last place where the straightedge crosses the curve (<see cref="CompassStep.Curves"/>), and mark it.
    /// </summary>
    Extend,

    /// <summary>
    /// Set the dividers to <see cref="CompassStep.Setting"/> and step from <see cref="CompassStep.From"/> to
    /// <see cref="CompassStep.To"/> in <see cref="CompassStep.Count"/> steps, marking each place between.
    /// </summary>
    DivideLine,

    /// <summary>
    /// Go over faint arcs and lines, those of <see cref="CompassStep.Curves"/>, each from its end at
    /// <see cref="CompassStep.From"/> to where it first meets any of <see cref="CompassStep.OtherCurves"/>; what it meets
    /// where it begins does not count. No point is marked.
    /// </summary>
    GoOver,
}
