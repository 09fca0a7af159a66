using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Takes the pieces of a path, in its own coordinates: all of them absolute, none of them short for another.</summary>
internal interface ISvgPathSink
{
    void MoveTo(Point point);

    void LineTo(Point point);

    void CubicTo(Point control1, Point control2, Point point);

    void QuadraticTo(Point control, Point point);

    /// <summary>An arc of at most about a quarter turn, whose radii reach from end to end.</summary>
    void ArcTo(in SvgArc arc, Point point);

    void Close();
}
