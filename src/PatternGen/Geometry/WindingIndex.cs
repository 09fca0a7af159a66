namespace PatternGen.Geometry;

/// <summary>Winding numbers of the same closed curves at many points: each asks only the segments at its own height.</summary>
/// <remarks>Level strips would be few in a wide drawing, so the curves are turned so that their longer side is upright.</remarks>
internal sealed class WindingIndex
{
    private readonly bool _isTurned;
    private readonly Segment[] _curves;
    private readonly Strips _strips;

    internal WindingIndex(ReadOnlySpan<Segment> curves)
    {
        var all = curves.Length > 0 ? curves[0].Extents : default;
        foreach (var segment in curves)
            all = all.Including(segment.Extents);
        _isTurned = all.Width > all.Height;
        _curves = new Segment[curves.Length];
        for (var i = 0; i < curves.Length; i++)
            _curves[i] = new(Turned(curves[i].Start), Turned(curves[i].End), curves[i].Bulge);
        _strips = new(Array.ConvertAll(_curves, curve => curve.Extents));
    }

    internal int At(Point point)
    {
        var turned = Turned(point);
        var turns = 0;
        foreach (var i in _strips.At(turned.Y))
            turns += Winding.Share(_curves[i], turned);
        return turns;
    }

    /// <summary>A quarter turn, which keeps winding numbers and every digit.</summary>
    private Point Turned(Point point) => _isTurned ? new(-point.Y, point.X) : point;
}
