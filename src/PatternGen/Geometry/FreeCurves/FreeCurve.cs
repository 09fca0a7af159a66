namespace PatternGen.Geometry;

/// <summary>A smooth curve that is not made of lines and arcs: a Bézier, a spline, a spiral, an ellipse.</summary>
/// <remarks>
/// All that is carved consists of lines and arcs, which stay exact when moved, offset and cut; a free curve becomes a run of
/// them by <see cref="ToChain"/> or <see cref="ToContour"/>, to an accuracy of one's choice. The parameter runs from 0 to 1
/// over the whole curve, and over each of its pieces, such as those of a path of Béziers, in equal shares.
/// Immutable and safe to share between threads.
/// </remarks>
public sealed partial class FreeCurve
{
    private readonly CurvePiece[] _pieces;
    private readonly Transform _moved;

    private FreeCurve(CurvePiece[] pieces, Transform moved = default)
    {
        (_pieces, _moved) = (pieces, moved);
        (Start, End) = (Place(0, 0).Point, Place(pieces.Length - 1, 1).Point);
    }

    /// <summary>Where the curve starts.</summary>
    public Point Start { get; }

    /// <summary>Where the curve ends.</summary>
    public Point End { get; }

    /// <summary>Whether the curve ends where it starts, to 1e-9 of its size; it may have a corner there.</summary>
    public bool IsClosed
    {
        get
        {
            var extents = Extents.Of(Start);
            for (var i = 0; i < _pieces.Length; i++)
                extents = extents.Including(Place(i, 0).Point).Including(Place(i, 0.5).Point);
            return Tolerance.For(extents).Same(Start, End);
        }
    }

    /// <summary>Returns the point at a parameter.</summary>
    /// <param name="t">From 0, the start, to 1, the end. At 0.5 the Bézier (0, 0), (1, 2), (2, 0) is at (1, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">The parameter is not from 0 to 1.</exception>
    public Point PointAt(double t)
    {
        var at = Guard.Within(t, 0, 1) * _pieces.Length;
        return at >= _pieces.Length ? End : Place(at).Point;
    }

    /// <summary>Returns the curve moved, turned, mirrored or scaled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The transform takes an end beyond 2 km.</exception>
    public FreeCurve Transformed(Transform transform)
    {
        Guard.Moved(transform.Apply(Start), Start, nameof(transform));
        Guard.Moved(transform.Apply(End), End, nameof(transform));
        return new(_pieces, _moved.Then(transform));
    }

    /// <summary>Returns where the curve starts and ends, for messages.</summary>
    public override string ToString() => $"free curve from {Start} to {End}";

    /// <summary>The curve at a parameter that runs over each piece by 1.</summary>
    private CurvePlace Place(double at)
    {
        var piece = Math.Clamp((int)at, 0, _pieces.Length - 1);
        return Place(piece, at - piece);
    }

    private CurvePlace Place(int piece, double t)
    {
        var (point, along) = _pieces[piece].At(t);
        return new(_moved.Apply(point), _moved.Apply(along));
    }
}
