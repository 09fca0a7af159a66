namespace PatternGen.Geometry;

/// <summary>Finds where two segments come nearest to each other.</summary>
/// <remarks>
/// They do so where they cross, at an end of one, or where one line is perpendicular to both. Along the first segment,
/// weight × side of the second is a polynomial a s² + b s + c (see <see cref="Segment.Intersect(Segment)"/>). Its zeros
/// are the crossings. Side grows with the distance from the second curve, so a common perpendicular stands where
/// (a s² + b s + c) / (1 + k² s²/4) is greatest or least: where b k²/4 s² - 2 (a - c k²/4) s - b = 0. No centre is
/// asked for, so that flat arcs keep their digits.
/// </remarks>
internal ref struct NearestFinder
{
    private readonly ref readonly SegmentFrame _one;
    private readonly ref readonly SegmentFrame _other;
    private Point _here;
    private Point _there;
    private double _square = double.PositiveInfinity;

    private NearestFinder(ref readonly SegmentFrame one, ref readonly SegmentFrame other)
    {
        _one = ref one;
        _other = ref other;
    }

    internal static NearestPlaces Between(in SegmentFrame one, in SegmentFrame other)
    {
        var finder = new NearestFinder(in one, in other);
        if (!finder.TryCross())
            finder.TryEnds();
        return new(finder._here, finder._there, Math.Sqrt(finder._square));
    }

    /// <summary>Tries the crossings and the common perpendiculars; true if the segments cross.</summary>
    private bool TryCross()
    {
        ref readonly var first = ref _one.Frame;
        ref readonly var second = ref _other.Frame;
        var offset = first.Middle - second.Middle;
        var gradient = second.Normal - second.Curvature * offset;
        var c = second.Side(first.Middle);
        var b = gradient.Dot(first.Tangent);
        // a - c k²/4, half of what stays of a when side is divided by weight.
        var bend = first.Curvature / 2 * gradient.Dot(first.Normal) - second.Curvature / 2;
        var square = first.Curvature * first.Curvature / 4;
        if (TryRoots(square * c + bend, b, c))
            return true;
        TryPerpendiculars(bend, b, square);
        return false;
    }

    private bool TryRoots(double a, double b, double c)
    {
        var discriminant = b * b - 4 * a * c;
        if (!(discriminant >= 0))
            return false;
        // The sum that does not cancel, then the other root from the product of both.
        var sum = -(b + Math.CopySign(Math.Sqrt(discriminant), b)) / 2;
        return TryRoot(sum / a) || TryRoot(c / sum);
    }

    private bool TryRoot(double s)
    {
        if (!(Math.Abs(s) <= _one.Frame.Half))
            return false;
        var here = _one.Frame.At(s);
        if (!(Math.Abs(_other.Frame.Foot(here)) <= _other.Frame.Half))
            return false;
        (_here, _there, _square) = (here, here, 0);
        return true;
    }

    private void TryPerpendiculars(double bend, double b, double square)
    {
        // A line has one such place at most.
        var sum = bend + Math.CopySign(Math.Sqrt(bend * bend + b * b * square), bend);
        TryPerpendicular(-b / sum);
        TryPerpendicular(sum / (b * square));
    }

    private void TryPerpendicular(double s)
    {
        if (!(Math.Abs(s) < _one.Frame.Half))
            return;
        var here = _one.Frame.At(s);
        var foot = _other.Frame.Foot(here);
        if (Math.Abs(foot) < _other.Frame.Half)
            Try(here, _other.Frame.At(foot));
    }

    private void TryEnds()
    {
        Try(_one.Start, _other.Nearest(_one.Start));
        Try(_one.End, _other.Nearest(_one.End));
        Try(_one.Nearest(_other.Start), _other.Start);
        Try(_one.Nearest(_other.End), _other.End);
    }

    private void Try(Point here, Point there)
    {
        var square = (there - here).LengthSquared;
        if (square < _square)
            (_here, _there, _square) = (here, there, square);
    }
}
