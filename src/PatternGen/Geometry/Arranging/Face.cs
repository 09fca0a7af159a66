namespace PatternGen.Geometry;

/// <summary>One of the areas that a drawing divides the plane into, with its holes.</summary>
/// <remarks>Immutable and safe to share between threads. The default value belongs to no arrangement.</remarks>
public readonly record struct Face
{
    private readonly Arrangement _arrangement;

    internal Face(Arrangement arrangement, int index)
    {
        _arrangement = arrangement;
        Index = index;
    }

    /// <summary>Its place in <see cref="Arrangement.Faces"/>; 0 is the outer face.</summary>
    public int Index { get; }

    /// <summary>Whether this is the face outside of everything, which has no bounds.</summary>
    public bool IsOuter => Index == 0;

    /// <summary>Area in mm² without the holes; infinite for the outer face.</summary>
    public double Area => IsOuter ? double.PositiveInfinity : _arrangement.AreaOf(Index);

    /// <summary>
    /// The walks round it, each a ring of half-edges with the face on their left: first round its outside, unless it is the
    /// outer face, then round each part of the drawing that lies in it. Dangling ends are walked along and back.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<HalfEdge>> Walks
    {
        get
        {
            var arrangement = _arrangement;
            return
            [
                .. arrangement
                    .WalksRound(Index)
                    .Select(walk =>
                        arrangement
                            .WalkFrom(walk)
                            .Select(halfEdge => new HalfEdge(arrangement, halfEdge))
                            .ToArray()
                    ),
            ];
        }
    }

    /// <summary>Returns the outline and the holes as contours of lines and arcs; pieces of one line or circle are joined, dangling ends left out.</summary>
    /// <exception cref="InvalidOperationException">It is the outer face.</exception>
    public RegionPart ToPart() =>
        IsOuter
            ? throw new InvalidOperationException(
                "The outer face has no outline; ask IsOuter first, or take Arrangement.BoundedFaces."
            )
            : FaceOutline.Of(_arrangement, Index);

    /// <summary>Returns the face's number and area, for messages.</summary>
    public override string ToString() =>
        IsOuter ? "the outer face" : $"face {Index}, {Guard.Text(Area)} mm²";
}
