using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Turns motifs along a path the way that a heading says.</summary>
internal sealed class PathFacing
{
    private readonly Heading _heading;
    private readonly Vector _turn;
    private readonly Vector _fixed;
    private readonly bool _insideOnLeft;
    private readonly double _merge;

    internal PathFacing(Heading heading, SegmentRun path)
    {
        _heading = heading;
        _turn = Vector.Towards(heading.Turn);
        _fixed = Vector.Towards(heading.Direction);
        _insideOnLeft = path is Contour { SignedArea: >= 0 };
        _merge = path.Tolerance.Merge;
    }

    /// <summary>Returns the placing of a motif.</summary>
    /// <param name="at">Where its origin lies.</param>
    /// <param name="along">The direction of travel there.</param>
    /// <param name="scale">Its scale.</param>
    /// <param name="mirrored">
    /// Whether it is turned over: in the line along the path if the heading turns with the path, else in its own x axis.
    /// </param>
    internal Transform Place(Point at, Vector along, double scale, bool mirrored)
    {
        var direction = _heading.Kind switch
        {
            HeadingKind.Along => along,
            HeadingKind.Across => along.Left,
            HeadingKind.Inwards => _insideOnLeft ? along.Left : -along.Left,
            HeadingKind.Outwards => _insideOnLeft ? -along.Left : along.Left,
            HeadingKind.Fixed => _fixed,
            HeadingKind.Towards => To(_heading.Target, at),
            _ => -To(_heading.Target, at),
        };
        if (!_heading.FollowsPath && mirrored)
            direction = Turned(direction, new(_turn.X, -_turn.Y));
        else
            direction = Turned(direction, _turn);
        if (_heading.FollowsPath && mirrored)
            direction = along * (2 * direction.Dot(along)) - direction;
        return Transform.Placing(at, direction * scale, mirrored);
    }

    private Vector To(Point target, Point at) =>
        at.DistanceTo(target) > _merge
            ? (target - at).Unit()
            : throw new PatternException(
                "A motif stands on the very point that it is to face, so no direction is right.",
                at,
                ["another point to face", "an offset from the path", "another place to start at"]
            );

    private static Vector Turned(Vector direction, Vector turn) =>
        direction * turn.X + direction.Left * turn.Y;
}
