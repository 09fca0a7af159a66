using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An arc of an ellipse, centre + cos(a) u + sin(a) v, of any two vectors: stretched, it stays one.</summary>
/// <param name="Centre">The middle.</param>
/// <param name="U">Where a = 0 is.</param>
/// <param name="V">Where a quarter turn is.</param>
/// <param name="From">The angle where it starts, in radians.</param>
/// <param name="Sweep">The angle that it goes on by, at most a whole turn.</param>
internal readonly record struct EllipseArc(
    Point Centre,
    Vector U,
    Vector V,
    double From,
    double Sweep
)
{
    /// <summary>The arc of a circle that a bulge draws.</summary>
    internal static EllipseArc Of(Point start, Point end, double bulge)
    {
        var chord = end - start;
        var centre = start.Towards(end, 0.5) + chord.Left * ((1 - bulge * bulge) / (4 * bulge));
        var u = start - centre;
        return new(centre, u, u.Left, 0, 4 * Math.Atan(bulge));
    }

    internal EllipseArc Mapped(DxfMap map) =>
        new(map.Apply(Centre), map.Apply(U), map.Apply(V), From, Sweep);

    /// <summary>The same arc with vectors that are half axes, square to each other, the second to the left of the first.</summary>
    /// <remarks>
    /// The distance from the centre is greatest or least where its derivative vanishes: tan(2a) = 2 U·V / (U² - V²).
    /// </remarks>
    internal EllipseArc OnAxes()
    {
        var turn = Math.Atan2(2 * U.Dot(V), U.LengthSquared - V.LengthSquared) / 2;
        var (sin, cos) = Math.SinCos(turn);
        var (first, second) = (U * cos + V * sin, V * cos - U * sin);
        return first.Cross(second) >= 0
            ? new(Centre, first, second, From - turn, Sweep)
            : new(Centre, first, -second, turn - From, -Sweep);
    }
}
