using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What a wall goes down from: a side of the outline, or a corner that points into the chip, round which the wall goes as a
/// cone.
/// </summary>
/// <remarks>
/// A side has the parameter s of its <see cref="ArcFrame"/>. A corner's parameter is tan(ψ/2), where ψ is the angle turned
/// clockwise from the middle of its directions. Either runs from -Half to Half and forms directions and places as fractions
/// of second degree with the same denominator, <see cref="Weight"/>.
///
/// A disc that touches a side with curvature k at s from the inside has the radius r, and touches another side or corner if
/// 1/r = k + J w(s) / E(s). Here E is the other one's <see cref="ArcFrame.Side"/> (half the square of the distance for a
/// corner), and J, which is 1 for two sides at right angles, does not depend on s: it is the product of two oriented circles
/// in Lie's geometry of spheres. E w is of second degree in s, so that which of the others stops the disc first is a matter of
/// comparing polynomials. No centre of a circle is in it, and arcs as flat as lines keep their digits.
/// </remarks>
internal readonly struct RoofSite
{
    private readonly ArcFrame _frame;

    internal RoofSite(Segment side)
    {
        _frame = new(side);
        (Start, End) = (side.Start, side.End);
        StartNormal = _frame.TangentAt(-Half).Left;
        EndNormal = _frame.TangentAt(Half).Left;
    }

    /// <param name="corner">The corner.</param>
    /// <param name="arriving">The normal of the side before it, at its end.</param>
    /// <param name="leaving">The normal of the side after it, at its start: to the right of the other.</param>
    internal RoofSite(Point corner, Vector arriving, Vector leaving)
    {
        IsCorner = true;
        (Start, End) = (corner, corner);
        (StartNormal, EndNormal) = (arriving, leaving);
        // Of the two ways to the middle direction the one that doesn't cancel.
        var middle =
            arriving.Dot(leaving) >= 0
                ? (arriving + leaving).Unit()
                : (leaving - arriving).Unit().Left;
        // Half the turn, tan(ψ/2) = sin ψ / (1 + cos ψ).
        var half = Math.Abs(middle.Cross(leaving)) / (1 + middle.Dot(leaving));
        _frame = new(corner, -middle.Left, 0, half);
    }

    /// <summary>Whether this is a corner that points in.</summary>
    internal bool IsCorner { get; }

    internal Point Start { get; }

    internal Point End { get; }

    /// <summary>The direction into the chip at the start.</summary>
    internal Vector StartNormal { get; }

    internal Vector EndNormal { get; }

    /// <summary>The site runs from -Half to Half.</summary>
    internal double Half => _frame.Half;

    /// <summary>Positive for a side that bulges out of the chip.</summary>
    internal double Curvature => _frame.Curvature;

    /// <summary>Whether it is an arc that bulges out of the chip.</summary>
    internal bool IsBulging => Curvature > 0;

    /// <summary>Radius of an arc in mm; 0 for a corner.</summary>
    internal double Radius => IsCorner ? 0 : 1 / Math.Abs(Curvature);

    /// <summary>Centre of an arc; the corner itself.</summary>
    internal Point Centre => IsCorner ? Start : _frame.Middle + _frame.Normal / Curvature;

    /// <summary>Whether sums along it are those of polynomials.</summary>
    internal bool IsStraight => !IsCorner && Curvature == 0;

    private RoofCurve Weights => new(1, 0, IsCorner ? 1 : Curvature * Curvature / 4);

    internal double Weight(double s) => IsCorner ? 1 + s * s : _frame.Weight(s);

    /// <summary>Where the wall starts.</summary>
    internal Point FootAt(double s) => IsCorner ? Start : _frame.At(s);

    /// <summary>The direction from the foot into the chip, of length 1.</summary>
    internal Vector NormalAt(double s) =>
        IsCorner
            ? (_frame.Normal * (1 - s * s) + _frame.Tangent * (2 * s)) / (1 + s * s)
            : _frame.TangentAt(s).Left;

    /// <summary>Radius of the disc that touches here when the other site stops it; 0 if it never does.</summary>
    internal double RadiusAt(double s, RoofCurve curve)
    {
        var (value, weight) = (curve.At(s), Weight(s));
        return Math.Max(0, IsCorner ? -weight / value : value / (Curvature * value + weight));
    }

    /// <summary>0 where the radius is largest or smallest: what is over the fraction bar in the slope of curve / weight.</summary>
    internal RoofCurve Turning(RoofCurve curve)
    {
        var square = Weights.Q2;
        return new(curve.Q1, 2 * (curve.Q2 - square * curve.Q0), -square * curve.Q1);
    }

    /// <summary>The parameter of the foot of a point in the chip.</summary>
    internal double ParameterOf(Point point)
    {
        if (!IsCorner)
            return _frame.Foot(point);
        var direction = (point - Start).Unit();
        return direction.Dot(_frame.Tangent) / (1 + direction.Dot(_frame.Normal));
    }

    /// <summary>Distance in mm, or angle in radians, walked along the site between two parameters.</summary>
    internal double Walked(double from, double to) =>
        IsCorner ? 2 * (Math.Atan(to) - Math.Atan(from)) : _frame.Walked(to) - _frame.Walked(from);

    /// <summary>The parameter at a share of the way walked from start to end.</summary>
    internal double ParameterAt(double share)
    {
        var walked = 2 * share - 1;
        return IsCorner
            ? Math.Tan(walked * Math.Atan(Half))
            : _frame.Parameter(walked * _frame.Walked(Half));
    }

    /// <summary>The share of the way at a parameter.</summary>
    internal double ShareAt(double s) => Walked(-Half, s) / Walked(-Half, Half);

    /// <summary>How far another site lets discs grow that touch this one; null if it stops none.</summary>
    internal RoofCurve? CurveOf(in RoofSite other) =>
        IsJoinedTo(other)
            ? null
            : (IsCorner, other.IsCorner) switch
            {
                (false, false) => SideOfSide(other),
                (false, true) => CornerOfSide(other.Start),
                (true, false) => SideOfCorner(other),
                (true, true) => CornerOfCorner(other.Start),
            };

    /// <summary>Whether this is a corner that a side starts or ends at.</summary>
    internal bool IsEndOf(in RoofSite side) =>
        IsCorner && !side.IsCorner && (side.Start == Start || side.End == Start);

    /// <summary>Whether a disc touches both only where they meet: a side and a corner at its end.</summary>
    private bool IsJoinedTo(in RoofSite other) => IsEndOf(other) || other.IsEndOf(this);

    /// <summary>Whether the disc that touches here and is stopped by the other site as a whole touches it between its ends.</summary>
    /// <param name="other">The other site.</param>
    /// <param name="curve">How far it lets discs grow.</param>
    /// <param name="s">Where the disc touches this site.</param>
    /// <param name="slack">How far in mm a foot may lie beyond the other side, or the ends of it, and still count as on it; if negative, how far it must lie within.</param>
    internal bool Touches(in RoofSite other, RoofCurve curve, double s, double slack)
    {
        var value = curve.At(s);
        if (IsCorner ? value >= 0 : Curvature * value + Weight(s) <= 0)
            return false;
        if (!IsCorner)
        {
            // 0 within rounding is a touch in a cusp, where two sides close up faster than digits tell.
            var rounding = Math.Max(curve.RoundingAt(s), Math.Abs(slack) * curve.Gain * Weight(s));
            if (slack >= 0 ? value <= -rounding : value <= rounding)
                return false;
        }
        if (other.IsCorner)
            return true;
        var radius = RadiusAt(s, curve);
        if (1 - other.Curvature * radius <= 0)
            return false;
        return Math.Abs(other._frame.Foot(FootAt(s) + NormalAt(s) * radius))
            <= other.Half + Math.Max(0, slack);
    }

    /// <summary>
    /// The parameters where a disc that touches this site touches the other one at its ends: only between them does it touch
    /// the other side at all. NaN where there is none.
    /// </summary>
    internal (double AtStart, double AtEnd) Limits(in RoofSite other) =>
        other.IsCorner || other.CurveOf(this) is not { } back
            ? (double.NaN, double.NaN)
            : (Limit(other, back, -other.Half), Limit(other, back, other.Half));

    /// <summary>The parameters where the disc begins to touch the other site's line or circle, at the foot itself or from infinitely far.</summary>
    internal ((double, double) AtFoot, (double, double) AtInfinity) Bounds(RoofCurve curve) =>
        (
            curve.Roots(),
            Curvature < 0 ? (curve * Curvature + Weights).Roots() : (double.NaN, double.NaN)
        );

    /// <summary>The parameters where the disc is as large as the other arc's own circle: beyond them it would touch that from outside.</summary>
    internal (double First, double Second) WhereAsLargeAs(in RoofSite other, RoofCurve curve)
    {
        if (!other.IsBulging)
            return (double.NaN, double.NaN);
        // Q (1/ρ - k) = w for a side, Q = -w/ρ for a corner.
        return IsCorner
            ? (curve - Weights * -other.Curvature).Roots()
            : (curve * (other.Curvature - Curvature) - Weights).Roots();
    }

    private double Limit(in RoofSite other, RoofCurve back, double end)
    {
        var radius = other.RadiusAt(end, back);
        if (!(radius > 0) || 1 - Curvature * radius <= 0)
            return double.NaN;
        return ParameterOf(other.FootAt(end) + other.NormalAt(end) * radius);
    }

    private RoofCurve? SideOfSide(in RoofSite other)
    {
        var (mine, theirs) = (_frame, other._frame);
        var k = mine.Curvature;
        var away = mine.Middle - theirs.Middle;
        var gradient = theirs.Normal - away * theirs.Curvature;
        var level = theirs.Side(mine.Middle);
        // 1 - N·g - k e, written so that it does not cancel where the normals are nearly the same.
        var product = (mine.Normal - gradient).LengthSquared / 2 + (theirs.Curvature - k) * level;
        if (!(product > 0))
            return null;
        return new RoofCurve(
                level,
                mine.Tangent.Dot(gradient),
                level * k * k / 4 + k / 2 * mine.Normal.Dot(gradient) - theirs.Curvature / 2,
                1
            ) * (1 / product);
    }

    private RoofCurve? CornerOfSide(Point corner)
    {
        var k = Curvature;
        var away = _frame.Middle - corner;
        var product = _frame.Side(corner);
        if (!(product > 0))
            return null;
        var square = away.LengthSquared;
        return new RoofCurve(
                square / 2,
                _frame.Tangent.Dot(away),
                square * k * k / 8 + k / 2 * _frame.Normal.Dot(away) + 0.5
            ) * (1 / product);
    }

    private RoofCurve? SideOfCorner(in RoofSite side)
    {
        var level = side._frame.Side(Start);
        if (!(level > 0))
            return null;
        var gradient = side._frame.Normal - (Start - side._frame.Middle) * side.Curvature;
        var across = _frame.Normal.Dot(gradient);
        return new RoofCurve(across - 1, 2 * _frame.Tangent.Dot(gradient), -(1 + across))
            * (1 / level);
    }

    private RoofCurve? CornerOfCorner(Point corner)
    {
        var away = corner - Start;
        var square = away.LengthSquared;
        if (!(square > 0))
            return null;
        var across = 2 * _frame.Normal.Dot(away);
        return new RoofCurve(-across, -4 * _frame.Tangent.Dot(away), across) * (1 / square);
    }
}
