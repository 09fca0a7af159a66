using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Frame
{
    /// <summary>Outline of the wood and, where the members are pieces for themselves, the lines of their joints.</summary>
    internal PatternNode Draw(FrameCorner corner, FrameThrough through) =>
        new MotifNode
        {
            Stock = HasOpening ? [Outer, Inner.Reversed()] : [Outer],
            LayoutLines = IsOneBoard ? [] : [.. Joints(corner, through)],
        };

    private IEnumerable<Chain> Joints(FrameCorner corner, FrameThrough through)
    {
        for (var i = 0; i < SideCount; i++)
        {
            var side = Outline.Sides[i];
            var outer = OuterEndOfMitre(i);
            if (corner is FrameCorner.Mitre or FrameCorner.Wrapped)
                yield return Chain.Line(outer, FrameOutline.PointAt(side, MemberWidth));
            else if (
                corner == FrameCorner.Butt
                && Outline.IsUpright(i) == (through == FrameThrough.Level)
            )
                foreach (var x in (double[])[MemberWidth, side.Length - MemberWidth])
                    yield return Chain.Line(
                        side.Placement.Apply(new Point(x, 0)),
                        side.Placement.Apply(new Point(x, MemberWidth))
                    );
        }
    }

    /// <summary>Where the mitre comes out of the wood.</summary>
    private Point OuterEndOfMitre(int corner)
    {
        var side = Outline.Sides[corner];
        // From the centre of the corner's arc, the radius lies along the mitre.
        var centre = FrameOutline.PointAt(side, Math.Sign(side.First) * CornerRadius);
        var outwards = Outline.Bisector(corner) + Angle.FromDegrees(side.First > 0 ? 180 : 0);
        return centre.Polar(CornerRadius, outwards);
    }
}
