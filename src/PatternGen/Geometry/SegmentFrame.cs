namespace PatternGen.Geometry;

/// <summary>A segment with what is asked of it again and again, worked out once.</summary>
internal readonly struct SegmentFrame
{
    // A field, so that it can be handed on without a copy.
    internal readonly ArcFrame Frame;

    internal SegmentFrame(Segment segment)
    {
        Frame = new(segment);
        Segment = segment;
    }

    internal Segment Segment { get; }

    internal Point Start => Segment.Start;

    internal Point End => Segment.End;

    /// <summary>The point of the segment nearest to a given one.</summary>
    internal Point Nearest(Point point)
    {
        var s = Frame.Foot(point);
        if (Math.Abs(s) < Frame.Half)
            return Frame.At(s);
        return (point - Start).LengthSquared <= (point - End).LengthSquared ? Start : End;
    }
}
