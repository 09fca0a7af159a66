namespace PatternGen.Geometry;

/// <summary>Part of a strand between two points where it meets others.</summary>
internal readonly struct EdgePiece
{
    internal EdgePiece(int strand, int from, int to, Segment curve, Segment? rest = null)
    {
        Strand = strand;
        From = from;
        To = to;
        Curve = curve;
        Rest = rest ?? default;
        HasRest = rest is not null;
    }

    internal int Strand { get; }

    /// <summary>Number of the point where it starts.</summary>
    internal int From { get; }

    /// <summary>Number of the point where it ends.</summary>
    internal int To { get; }

    /// <summary>The curve; of an arc of more than a half circle, its first part.</summary>
    internal Segment Curve { get; }

    /// <summary>The second part of an arc of more than a half circle.</summary>
    internal Segment Rest { get; }

    internal bool HasRest { get; }

    internal EdgePiece Between(int from, int to) =>
        new(Strand, from, to, Curve, HasRest ? Rest : null);

    /// <summary>The curve as it leaves its start, or, walked backwards, its end.</summary>
    internal Segment Leaving(bool forward) =>
        forward ? Curve
        : HasRest ? Rest.Reversed()
        : Curve.Reversed();

    /// <summary>What the edge adds to the area of a ring that it is part of: the area swept from an origin along it.</summary>
    internal double SweptFrom(Point origin)
    {
        var area = Swept(Curve, origin);
        return HasRest ? area + Swept(Rest, origin) : area;
    }

    private static double Swept(Segment segment, Point origin) =>
        (segment.Start - origin).Cross(segment.End - origin) / 2 + segment.SegmentArea;
}
