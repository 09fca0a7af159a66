namespace PatternGen;

/// <summary>What all repeats of a chip have in common, in the motif's own frame.</summary>
internal sealed class ShapeFacts
{
    internal ShapeFacts(ChipShape shape)
    {
        Shape = shape;
        Sides = ShapeSides.Of(shape);
        Corners = new ShapeCorner[Sides.Count];
        for (var i = 0; i < Corners.Length; i++)
            Corners[i] = Sides.Corner(i);
        SharpestTip = Enumerable.Range(0, Corners.Length).MinBy(i => Corners[i].Inside);
        Area = shape.Outline.Area - shape.Holes.Sum(hole => hole.Area);
        Length = shape.Outline.Length + shape.Holes.Sum(hole => hole.Length);
    }

    internal ChipShape Shape { get; }

    internal ShapeSides Sides { get; }

    /// <summary>For each side the corner at which it starts.</summary>
    internal ShapeCorner[] Corners { get; }

    /// <summary>The corner where the chip's angle is least.</summary>
    internal int SharpestTip { get; }

    /// <summary>Area in mm², without the holes.</summary>
    internal double Area { get; }

    /// <summary>Length of all sides in mm.</summary>
    internal double Length { get; }

    internal Roof Roof => Shape.Roof;

    /// <summary>The side that curves most into the chip, of those that rise by more than this over their chords; or -1.</summary>
    internal int TightestHollow(double leastRise)
    {
        var (tightest, most) = (-1, 0.0);
        for (var i = 0; i < Sides.Count; i++)
            // The chip is on the left, so a side that turns right curves into it.
            if (
                -Sides.Side(i).Frame.Curvature is var curvature
                && curvature > most
                && -Sides.Side(i).Segment.Sagitta > leastRise
            )
                (tightest, most) = (i, curvature);
        return tightest;
    }
}
