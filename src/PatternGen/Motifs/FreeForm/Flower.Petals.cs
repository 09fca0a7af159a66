using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Flower
{
    /// <summary>Where a separate petal is widest, as a share of its length: towards its end, where there is room.</summary>
    private const double WidestAt = 0.62;

    /// <summary>Width of a petal as a share of its length that still looks like one, where there is more room than it needs.</summary>
    private const double Slender = 0.55;

    /// <summary>How much wider petals are that lie over each other than those that would just touch.</summary>
    private const double Overlap = 1.35;

    /// <summary>A petal to the right of the centre, pointed at both ends, within its own sector.</summary>
    private Contour SeparatePetal()
    {
        var length = Radius - PetalStart;
        var room = 2 * Radius * Math.Tan(Math.Min(HalfAngle, Math.PI / 4));
        var widest = Math.Min(room, Slender * length);
        var largest =
            widest * FreeFormShape.LargestShare(share => LeavesRidge(Pointed(widest * share)));
        if (PetalWidth is not { } width)
            return Pointed(largest);
        if (width > largest && !(width <= length && LeavesRidge(Pointed(width))))
            throw TooWide(width, largest);
        return Pointed(width);
    }

    /// <summary>What is seen of a petal to the right of the centre that lies under the one before it.</summary>
    private Contour OverlappingPetal()
    {
        var usual = Math.Min(
            2 * Overlap * Radius * Math.Sin(HalfAngle) / (1 + Overlap * Math.Sin(HalfAngle)),
            1.2 * (Radius - PetalStart)
        );
        var width = PetalWidth ?? usual;
        if (width > 1.6 * (Radius - PetalStart))
            throw TooWide(width, 1.6 * (Radius - PetalStart));
        var petal = Rounded(width);
        var over = petal.Transformed(Transform.Rotate(Angle.OfTurn(1.0 / Petals)));
        var seen = new Region(petal).Difference(Ridge > 0 ? over.Offset(Ridge) : new Region(over));
        if (seen.IsEmpty)
            throw TooWide(width, usual);
        return seen.Largest();
    }

    private Contour Pointed(double width)
    {
        Segment midrib = new(new(PetalStart, 0), new(Radius, 0));
        return LeafSide.Between(
            LeafSide.Of(midrib, -width / 2, WidestAt),
            LeafSide.Of(midrib, width / 2, WidestAt)
        );
    }

    /// <summary>A petal with a round end, and sides that run smoothly from it to a point near the centre.</summary>
    private Contour Rounded(double width)
    {
        var half = width / 2;
        Point start = new(PetalStart, 0);
        Point right = new(Radius - half, -half);
        Point left = new(Radius - half, half);
        return Contour.Of(
            Biarc.Leaving(right, new(-1, 0), start).Reversed(),
            new Segment(right, left, 1),
            Biarc.Leaving(left, new(-1, 0), start)
        );
    }

    /// <summary>Whether a petal keeps half a ridge away from the line between it and its neighbour, on its own side of it.</summary>
    private bool LeavesRidge(Contour petal)
    {
        var turned = petal.Transformed(Transform.Rotate(Angle.FromRadians(-HalfAngle)));
        var rounding = Tolerance.ForExtent(Radius).Merge;
        return turned.Extents.Max.Y <= rounding - Ridge / 2;
    }

    private PatternException TooWide(double width, double largest) =>
        new(
            $"Petals {Guard.Text(width)} mm wide do not fit into a flower of {Petals} petals and radius {Guard.Text(Radius)} mm.",
            new(0, Radius),
            [
                $"petals at most {Guard.Text(FreeFormShape.Down(largest))} mm wide",
                "fewer petals",
                "a larger flower",
            ]
        );
}
