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
        TightestHollow = FindTightestHollow();
    }

    internal ChipShape Shape { get; }

    internal ShapeSides Sides { get; }

    /// <summary>For each side the corner at which it starts.</summary>
    internal ShapeCorner[] Corners { get; }

    /// <summary>The corner where the chip's angle is least.</summary>
    internal int SharpestTip { get; }

    /// <summary>The side that curves most into the chip, or -1.</summary>
    internal int TightestHollow { get; }

    internal Roof Roof => Shape.Roof;

    private int FindTightestHollow()
    {
        var (tightest, most) = (-1, 0.0);
        for (var i = 0; i < Sides.Count; i++)
            // The chip is on the left, so a side that turns right curves into it.
            if (-Sides.Side(i).Frame.Curvature is var curvature && curvature > most)
                (tightest, most) = (i, curvature);
        return tightest;
    }
}
