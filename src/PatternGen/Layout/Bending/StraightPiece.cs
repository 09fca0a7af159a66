using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A straight stretch.</summary>
/// <param name="Start">x where it begins.</param>
/// <param name="Length">Its length.</param>
/// <param name="Origin">Where the lowest rule begins.</param>
/// <param name="Direction">The direction of x, of length 1.</param>
internal sealed record StraightPiece(double Start, double Length, Point Origin, Vector Direction)
    : BendPiece(Start, Length)
{
    internal override double Turn => 0;

    internal override (double Turn, double Radius) Likeness => (0, 0);

    internal override Point Map(double x, double y) =>
        Origin + Direction * (x - Start) + Direction.Left * y;

    internal override Transform Frame(double x) =>
        Transform.Rotate(Direction.Direction).Then(Transform.Move(Map(x, 0) - Point.Origin));

    internal override Point Local(double x, double y) => new(x, y);

    internal override Vector LocalAlong(double x, double y) => new(1, 0);

    internal override Vector LocalAcross(double x) => new(0, 1);

    internal override BendPlace Place(Point local) => new(local.X, local.Y);
}
