using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Refuses what would be carved where rounded corners leave no wood, as corners that bands turn sharply may be.</summary>
/// <remarks>
/// A corner that points out loses wood at the outer edge, one that points in loses it at the opening. Seen from the centre of
/// the arcs, both lie beyond a circle, between the two places where the arc meets the sides.
/// </remarks>
internal static class RoundedWood
{
    /// <summary>Halvings of the search for a radius that works.</summary>
    private const int SearchSteps = 60;

    private static readonly double[] Ends = [0, 1];

    /// <summary>Places on an arc that tell how far it bulges, as shares of it.</summary>
    private static readonly double[] Quarters = [0, 0.25, 0.5, 0.75, 1];

    /// <exception cref="PatternException">A chip or line cut lies beyond the arc of a corner.</exception>
    internal static void RefuseOff(Frame frame, PatternNode carved)
    {
        if (frame.CornerRadius == 0)
            return;
        Point[] places = [.. PlacesOf(carved)];
        if (places.Length == 0)
            return;
        for (var corner = 0; corner < frame.SideCount; corner++)
        {
            var (place, over) = places
                .Select(one => (Place: one, Over: Beyond(frame, corner, frame.CornerRadius, one)))
                .MaxBy(one => one.Over);
            if (over <= Tolerance.ForExtent(frame.Width + frame.Height).Merge)
                continue;
            throw new PatternException(
                $"A corner rounded by {Guard.Text(frame.CornerRadius)} mm leaves no wood for what is carved {Guard.Text(over)} mm beyond its arc.",
                place,
                [
                    $"corners rounded by at most {FitTrouble.Down(Largest(frame, places))} mm",
                    "the band bent round the corners (Bent)",
                ]
            );
        }
    }

    private static IEnumerable<Point> PlacesOf(PatternNode carved) =>
        PatternReader
            .Chips(carved)
            .SelectMany(chip => chip.Outline.Segments)
            .Concat(PatternReader.Read(carved).LineCuts.SelectMany(cut => cut.Path.Segments))
            // Of a line, the ends tell; an arc bulges beyond them.
            .SelectMany(side =>
                (side.IsLine ? Ends : Quarters).Select(share => side.PointAt(share * side.Length))
            );

    /// <summary>By how many mm a place lies beyond the arc of a corner; nothing, or less, on the wood.</summary>
    private static double Beyond(Frame frame, int corner, double radius, Point place)
    {
        var side = frame.Outline.Sides[corner];
        var before = frame.Outline.Sides[(corner + frame.SideCount - 1) % frame.SideCount];
        var pointsOut = side.First > 0;
        if (!pointsOut && !frame.HasOpening)
            return 0;
        // Seen from both sides: x from the corner, y into the wood.
        var one = side.Placement.Inverse().Apply(place);
        var other = before.Placement.Inverse().Then(before.Mirrored).Apply(place);
        var taken = radius * Math.Abs(side.First);
        var isAtCorner =
            Math.Max(one.X, other.X) < taken
            && (
                pointsOut
                    ? Math.Min(one.Y, other.Y) >= 0
                    : Math.Max(one.Y, other.Y) <= frame.MemberWidth
            );
        if (!isAtCorner)
            return 0;
        var centre = FrameOutline.PointAt(side, pointsOut ? radius : -radius);
        return centre.DistanceTo(place) - (pointsOut ? radius : radius + frame.MemberWidth);
    }

    /// <summary>The largest radius that takes none of the places; sharp corners take none.</summary>
    private static double Largest(Frame frame, Point[] places)
    {
        var (works, fails) = (0.0, frame.CornerRadius);
        for (var step = 0; step < SearchSteps; step++)
        {
            var middle = (works + fails) / 2;
            var holdsAll = Enumerable
                .Range(0, frame.SideCount)
                .All(corner =>
                    Array.TrueForAll(places, one => Beyond(frame, corner, middle, one) <= 0)
                );
            (works, fails) = holdsAll ? (middle, fails) : (works, middle);
        }
        return works;
    }
}
