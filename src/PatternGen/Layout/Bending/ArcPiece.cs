using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stretch along an arc, where rules are arcs round its centre and uprights are radii.</summary>
/// <param name="Start">x where it begins.</param>
/// <param name="Length">Its length on the circle where lengths are measured.</param>
/// <param name="Centre">The centre.</param>
/// <param name="Radius">Radius of the lowest rule.</param>
/// <param name="From">Direction from the centre to where it begins.</param>
/// <param name="Sweep">The angle that it turns through, positive to the left.</param>
internal sealed record ArcPiece(
    double Start,
    double Length,
    Point Centre,
    double Radius,
    Angle From,
    Angle Sweep
) : BendPiece(Start, Length)
{
    internal override double Turn => Sweep.Radians / Length;

    internal override (double Turn, double Radius) Likeness => (Turn, Radius);

    /// <summary>1 where the path turns left, so that the centre is up from the lowest rule; -1 where it turns right.</summary>
    internal int Side => Math.Sign(Sweep.Radians);

    internal double RadiusAt(double y) => Radius - Side * y;

    internal override Point Map(double x, double y) => Centre.Polar(RadiusAt(y), Towards(x));

    internal override Transform Frame(double x) =>
        Transform
            .Rotate(Towards(x) + Angle.FromRadians(Side * Math.PI / 2))
            .Then(Transform.Move(Map(x, 0) - Point.Origin));

    internal override Point Local(double x, double y)
    {
        var (sin, cos) = Math.SinCos(x * Turn);
        return new(Side * RadiusAt(y) * sin, Side * (Radius - RadiusAt(y) * cos));
    }

    internal override Vector LocalAlong(double x, double y)
    {
        var (sin, cos) = Math.SinCos(x * Turn);
        return new Vector(cos, sin) * (RadiusAt(y) * Math.Abs(Turn));
    }

    internal override Vector LocalAcross(double x)
    {
        var (sin, cos) = Math.SinCos(x * Turn);
        return new(-sin, cos);
    }

    internal override BendPlace Place(Point local)
    {
        var outward = new Vector(Side * local.X, Radius - Side * local.Y);
        return new(Math.Atan2(outward.X, outward.Y) / Turn, Side * (Radius - outward.Length));
    }

    private Angle Towards(double x) => From + Sweep * ((x - Start) / Length);
}
