namespace PatternGen.Geometry;

/// <summary>Part of a strand between two points where it meets others.</summary>
internal readonly struct EdgePiece
{
    /// <summary>A list of one: only arcs of more than a half circle have any, and there are many pieces.</summary>
    private readonly Segment[]? _rest;

    internal EdgePiece(int from, int to, Segment curve, int[] sources)
    {
        From = from;
        To = to;
        Curve = curve;
        Sources = sources;
    }

    internal EdgePiece(int from, int to, Segment curve, Segment rest, int[] sources)
        : this(from, to, curve, sources) => _rest = [rest];

    private EdgePiece(int from, int to, EdgePiece piece, int[] sources)
        : this(from, to, piece.Curve, sources) => _rest = piece._rest;

    /// <summary>Number of the point where it starts.</summary>
    internal int From { get; }

    /// <summary>Number of the point where it ends.</summary>
    internal int To { get; }

    /// <summary>The curve; of an arc of more than a half circle, its first part.</summary>
    internal Segment Curve { get; }

    /// <summary>The second part of an arc of more than a half circle.</summary>
    internal Segment Rest => _rest![0];

    internal bool HasRest => _rest is not null;

    /// <summary>The curves, by their place in the drawing, that run along it, in ascending order.</summary>
    internal int[] Sources { get; }

    /// <summary>The point half-way along.</summary>
    internal Point Middle => HasRest ? Curve.End : Curve.Middle;

    internal EdgePiece Between(int from, int to) => new(from, to, this, Sources);

    internal EdgePiece With(int[] sources) => new(From, To, this, sources);

    /// <summary>The curve as it leaves its start, or, walked backwards, its end.</summary>
    internal Segment Leaving(bool forward) =>
        forward ? Curve
        : HasRest ? Rest.Reversed()
        : Curve.Reversed();

    /// <summary>The piece as a curve to be cut up further.</summary>
    internal Strand ToStrand()
    {
        var strand =
            !HasRest ? new Strand(Curve)
            : From == To ? new Strand(Circle.Under(Curve))
            : new Strand(Circle.Under(Curve), Curve.Start, Rest.End);
        return strand with { Sources = Sources };
    }

    /// <summary>What the edge adds to the area of a ring that it is part of: the area swept from an origin along it.</summary>
    internal double SweptFrom(Point origin)
    {
        var area = Swept(Curve, origin);
        return HasRest ? area + Swept(Rest, origin) : area;
    }

    private static double Swept(Segment segment, Point origin) =>
        (segment.Start - origin).Cross(segment.End - origin) / 2 + segment.SegmentArea;
}
