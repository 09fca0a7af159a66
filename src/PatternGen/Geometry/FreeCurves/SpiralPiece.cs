namespace PatternGen.Geometry;

/// <summary>A part of a spiral: at the angle from + sweep t, the radius is r + g t, or r exp(g t).</summary>
internal sealed class SpiralPiece(
    Point centre,
    double radius,
    double growth,
    bool isLogarithmic,
    double from,
    double sweep
) : CurvePiece
{
    internal override CurvePlace At(double t)
    {
        var away = Vector.Towards(Angle.FromRadians(from + sweep * t));
        var (reached, gain) = isLogarithmic
            ? (radius * Math.Exp(growth * t), growth * radius * Math.Exp(growth * t))
            : (radius + growth * t, growth);
        return new(centre + away * reached, away * gain + away.Left * (reached * sweep));
    }
}
