namespace PatternGen.Geometry;

/// <summary>Part of a segment between two numbered points, where it meets others.</summary>
/// <param name="From">Number of the point where it starts.</param>
/// <param name="To">Number of the point where it ends.</param>
/// <param name="Curve">The part itself, from point to point.</param>
internal readonly record struct Piece(int From, int To, Segment Curve)
{
    internal Piece Reversed() => new(To, From, Curve.Reversed());
}
