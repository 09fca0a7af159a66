namespace PatternGen.Geometry;

/// <summary>Winding numbers of the same closed curves at many points: each asks only the segments at its own height.</summary>
/// <remarks>Upright strips would be few in a wide drawing, so the curves are turned so that their longer side is upright.</remarks>
internal sealed class WindingIndex
{
    private readonly bool _isTurned;
    private readonly double _low;
    private readonly double _height;
    private readonly List<Segment>[] _strips;

    internal WindingIndex(ReadOnlySpan<Segment> curves)
    {
        var all = curves.Length > 0 ? curves[0].Extents : default;
        foreach (var segment in curves)
            all = all.Including(segment.Extents);
        _isTurned = all.Width > all.Height;
        _low = _isTurned ? all.Min.X : all.Min.Y;
        _strips = new List<Segment>[Math.Max(1, curves.Length)];
        for (var i = 0; i < _strips.Length; i++)
            _strips[i] = [];
        _height = Math.Max(all.Width, all.Height) / _strips.Length;
        foreach (var segment in curves)
            Add(segment);
    }

    internal int At(Point point)
    {
        var turned = Turned(point);
        var turns = 0;
        foreach (var segment in _strips[Strip(turned.Y)])
            turns += Winding.Share(segment, turned);
        return turns;
    }

    private void Add(Segment segment)
    {
        var turned = new Segment(Turned(segment.Start), Turned(segment.End), segment.Bulge);
        var extents = turned.Extents;
        for (var strip = Strip(extents.Min.Y); strip <= Strip(extents.Max.Y); strip++)
            _strips[strip].Add(turned);
    }

    /// <summary>A quarter turn, which keeps winding numbers and every digit.</summary>
    private Point Turned(Point point) => _isTurned ? new(-point.Y, point.X) : point;

    private int Strip(double y) =>
        _height > 0 ? Math.Clamp((int)((y - _low) / _height), 0, _strips.Length - 1) : 0;
}
