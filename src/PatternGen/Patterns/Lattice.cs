using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The points that whole numbers of two steps lead to, turned and moved: where the corners of a field's cells lie.</summary>
/// <remarks>
/// Each point comes from its two numbers by one expression, never by adding up, so that all cells that meet in a corner
/// agree on it to the last digit. The frame is the lattice before it is turned and moved, with the point (0, 0) at its
/// origin: there cells are drawn once, to be placed at any point.
/// </remarks>
internal sealed class Lattice
{
    /// <summary>
    /// A place this near to a point, as a share of the longer step, is that point. Larger values would pull in corners
    /// that are meant to lie beside it; smaller ones would miss corners that went through arithmetic.
    /// </summary>
    private const double AtPoint = 1e-9;

    /// <summary>
    /// Places between points are rounded to 2^-36 mm, 1.5e-11, so that two cells that reach the same place by different
    /// arithmetic still agree to the last digit, as at <see cref="Stations"/>.
    /// </summary>
    private const double Steps = 1L << 36;

    private readonly Vector _frameA;
    private readonly Vector _frameB;
    private readonly double _cross;
    private readonly double _same;
    private readonly Vector _a;
    private readonly Vector _b;

    /// <param name="a">The first step, in the frame.</param>
    /// <param name="b">The second step, in the frame, to the left of the first.</param>
    /// <param name="origin">Where the point (0, 0) lies on the wood.</param>
    /// <param name="turn">How the frame is turned on the wood.</param>
    internal Lattice(Vector a, Vector b, Point origin, Angle turn)
    {
        (_frameA, _frameB) = (a, b);
        _cross = a.Cross(b);
        _same = AtPoint * Math.Max(a.Length, b.Length);
        Origin = origin;
        Turn = turn;
        var turned = Transform.Rotate(turn);
        (_a, _b) = (turned.Apply(a), turned.Apply(b));
    }

    /// <summary>Where the point (0, 0) lies on the wood.</summary>
    internal Point Origin { get; }

    /// <summary>How the frame is turned on the wood.</summary>
    internal Angle Turn { get; }

    /// <summary>Where a point lies on the wood.</summary>
    internal Point At(int i, int j) =>
        new(Origin.X + (i * _a.X + j * _b.X), Origin.Y + (i * _a.Y + j * _b.Y));

    /// <summary>Where a point lies in the frame.</summary>
    internal Point InFrame(int i, int j) =>
        new(i * _frameA.X + j * _frameB.X, i * _frameA.Y + j * _frameB.Y);

    /// <summary>The whole numbers of steps, and the rest, that lead to a place on the wood.</summary>
    internal (double I, double J) NumbersOf(Point place)
    {
        var offset = place - Origin;
        return (offset.Cross(_b) / _cross, _a.Cross(offset) / _cross);
    }

    /// <summary>Returns how the frame is placed so that its origin, turned within the lattice, comes to a point.</summary>
    internal Transform Placement(LatticeTurn turn, int i, int j)
    {
        var at = At(i, j);
        return turn.InFrame(_frameA, _frameB)
            .Then(Transform.Rotate(Turn))
            .Then(Transform.Move(at.X, at.Y));
    }

    /// <summary>Returns where a place of the frame goes that is turned within the lattice and moved to a point.</summary>
    internal Point Map(Point place, LatticeTurn turn, Transform linear, int i, int j)
    {
        var p = place - Point.Origin;
        var (u, v) = (
            (int)Math.Round(p.Cross(_frameB) / _cross),
            (int)Math.Round(_frameA.Cross(p) / _cross)
        );
        var at = At(i + turn.I(u, v), j + turn.J(u, v));
        var rest = place - InFrame(u, v);
        if (Math.Abs(rest.X) <= _same && Math.Abs(rest.Y) <= _same)
            return at;
        var moved = linear.Apply(rest);
        return new(at.X + Rounded(moved.X), at.Y + Rounded(moved.Y));
    }

    /// <summary>Returns a ring of the frame, placed.</summary>
    internal Contour Placed(Contour ring, LatticeTurn turn, int i, int j)
    {
        var linear = Placement(turn, i, j);
        var placed = new Contour(
            ring.Vertices.Select(corner => new Vertex(
                Map(corner.Point, turn, linear, i, j),
                linear.ApplyBulge(corner.Bulge)
            ))
        );
        return linear.IsMirrored ? placed.Reversed() : placed;
    }

    private static double Rounded(double rest) => Math.Round(rest * Steps) / Steps;
}
