namespace PatternGen;

/// <summary>The curve that a valley follows, as seen from above.</summary>
public enum ValleyKind
{
    /// <summary>A straight line: between straight sides, or between equal arcs that bend against each other.</summary>
    Line,

    /// <summary>An arc, between two arcs about the same centre.</summary>
    Arc,

    /// <summary>Part of a parabola: between a straight side and an arc or a corner that points in.</summary>
    Parabola,

    /// <summary>Part of an ellipse: between two arcs, one bulging and one hollow, or a bulging one and a corner that points in.</summary>
    Ellipse,

    /// <summary>Part of a hyperbola: between two bulging or two hollow arcs, or a hollow one and a corner that points in.</summary>
    Hyperbola,
}
