namespace PatternGen.Geometry;

/// <summary>A part of an ellipse: centre + cos(a) u + sin(a) v.</summary>
internal sealed class EllipsePiece(Point centre, Vector u, Vector v, double from, double sweep)
    : CurvePiece
{
    internal override CurvePlace At(double t)
    {
        var angle = Angle.FromRadians(from + sweep * t);
        var (sin, cos) = (angle.Sin(), angle.Cos());
        return new(centre + u * cos + v * sin, (v * cos - u * sin) * sweep);
    }
}
