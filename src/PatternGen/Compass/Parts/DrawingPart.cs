using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One of the areas that the lines of a compass drawing bound: what a carver may cut out or leave.</summary>
/// <remarks>
/// Parts are numbered ring by ring from the figure's centre, and in each ring counter-clockwise from the right. Numbers
/// depend on the figure alone, not on the order in which it was drawn. Immutable and safe to share between threads; equal
/// only to itself.
/// </remarks>
public sealed class DrawingPart
{
    private readonly Lazy<InsidePlace> _inside;

    internal DrawingPart(DrawingFigure figure, int number, int orbit, int ring, FaceShape shape)
    {
        Figure = figure;
        Number = number;
        Orbit = orbit;
        Ring = ring;
        FaceIndex = shape.FaceIndex;
        Shape = shape.Part;
        Area = shape.Area;
        Centroid = shape.Centroid;
        CentroidAngle = shape.Angle;
        (Sides, TipCount, SharpestTip) = shape.Corners();
        _inside = new(() => figure.InsideOf(this));
    }

    /// <summary>Its number in the drawing, from 1.</summary>
    public int Number { get; }

    /// <summary>Number from 1 of its orbit: the parts that the figure's turns and mirrors take to each other.</summary>
    public int Orbit { get; }

    /// <summary>
    /// Number from 1 of its ring: the parts whose centroids lie equally far from the figure's centre. Of a part that
    /// runs all round the centre, the middle between hole and outline counts.
    /// </summary>
    public int Ring { get; }

    /// <summary>
    /// Number of sides of the outline: lines and arcs that each lie on one line or circle. A petal has 2, a whole circle 1;
    /// holes are not counted.
    /// </summary>
    public int Sides { get; }

    /// <summary>Number of corners of the outline that point out, their inside angle under 180 degrees: 2 for a petal, 0 for a disc.</summary>
    public int TipCount { get; }

    /// <summary>Inside angle of the sharpest tip, 60 degrees for a petal of six; null without tips.</summary>
    public Angle? SharpestTip { get; }

    /// <summary>Area in mm² without the holes.</summary>
    public double Area { get; }

    /// <summary>Centre of gravity of the area, which may lie outside it.</summary>
    public Point Centroid { get; }

    /// <summary>
    /// Direction of the centroid from the figure's centre, from 0 (right) and under 360 degrees, counter-clockwise; 0 where
    /// they coincide.
    /// </summary>
    public Angle CentroidAngle { get; }

    /// <summary>
    /// A place well inside, for a number to stand: the middle of a circle of radius <see cref="Clearance"/> that fits in,
    /// and is within 2 % of the largest that does, unless the part is a band over 50 times as long as wide.
    /// </summary>
    public Point InsidePoint => _inside.Value.Point;

    /// <summary>Distance in mm from <see cref="InsidePoint"/> to the nearest side.</summary>
    public double Clearance => _inside.Value.Clearance;

    /// <summary>Whether the drawing calls it a petal.</summary>
    public bool IsPetal { get; internal init; }

    /// <summary>Whether it always stays ground, such as the disc that the inner tips of many petals leave.</summary>
    public bool IsPlain { get; internal init; }

    /// <summary>The outline, counter-clockwise. Corners are the same to the last digit as those of the neighbours.</summary>
    public Contour Outline => Shape.Outer;

    /// <summary>The holes, clockwise; most parts have none.</summary>
    public IReadOnlyList<Contour> Holes => Shape.Holes;

    /// <summary>The parts that it shares a side with, in the order of their numbers. To touch in a point is not enough.</summary>
    public IReadOnlyList<DrawingPart> Neighbours => Figure.NeighboursOf(this);

    internal DrawingFigure Figure { get; }

    internal int FaceIndex { get; }

    internal RegionPart Shape { get; }

    /// <summary>Returns number, orbit and place, for messages.</summary>
    public override string ToString() => $"part {Number} of orbit {Orbit} at {Centroid}";
}
