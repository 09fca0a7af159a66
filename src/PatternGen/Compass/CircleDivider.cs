namespace PatternGen;

/// <summary>Divides a circle by the construction that fits the number of parts.</summary>
/// <remarks>
/// Points get the numbers that they end up with in their order round the circle, so the first walk of a division by
/// twelve marks every second number and the next one those between.
/// </remarks>
internal sealed class CircleDivider(Pencil pencil, DrawnCurve circle, MarkedPoint start, int second)
{
    private readonly MarkedPoint _centre = circle.Needle!;

    internal MarkedPoint[] Divide(int count) => Divide(count, 1);

    /// <param name="count">Number of parts.</param>
    /// <param name="stride">From one point's number to the next one's.</param>
    private MarkedPoint[] Divide(int count, int stride) =>
        count switch
        {
            2 => [start, Opposite(start, Number(stride))],
            3 => WalkByRadius(every: 2, stride),
            4 => Quarters(stride),
            5 or 10 => FifthsOrTenths(count, stride),
            6 => WalkByRadius(every: 1, stride),
            8 or 12 or 16 => Doubled(count, stride),
            _ => Stepped(count, stride),
        };

    /// <summary>Euclid IV.15: the radius steps round in six.</summary>
    private MarkedPoint[] WalkByRadius(int every, int stride)
    {
        pencil.SetRadius(_centre, start);
        return [start, .. pencil.Walk(circle, start, 6, every, Numbers(stride))];
    }

    /// <summary>Euclid IV.6: two diameters square to each other.</summary>
    private MarkedPoint[] Quarters(int stride)
    {
        var opposite = Opposite(start, Number(2 * stride));
        var quarter = pencil.BisectArc(circle, start, opposite, Number(stride));
        return [start, quarter, opposite, Opposite(quarter, Number(3 * stride))];
    }

    /// <summary>Twice as many parts: the middle of the first arc starts a second walk between the points of the first.</summary>
    private MarkedPoint[] Doubled(int count, int stride)
    {
        var half = Divide(count / 2, 2 * stride);
        pencil.SetRadius(half[0], half[1]);
        var between = pencil.BisectArc(circle, half[0], half[1], Number(stride));
        var others = pencil.Walk(
            circle,
            between,
            count / 2,
            1,
            new(Number(3 * stride), 2 * stride)
        );
        return
        [
            .. half.Zip([between, .. others], (a, b) => (MarkedPoint[])[a, b])
                .SelectMany(pair => pair),
        ];
    }

    /// <summary>
    /// The middle of a radius, swung from the start onto the diameter square to it, cuts off the side of the decagon from
    /// the centre, and that of the pentagon from the start: Euclid II.11, IV.11 and XIII.10.
    /// </summary>
    private MarkedPoint[] FifthsOrTenths(int count, int stride)
    {
        var opposite = Opposite(start, count == 10 ? Number(5 * stride) : null);
        var quarter = pencil.BisectArc(circle, start, opposite, null);
        var diameter = pencil.Extend(quarter, _centre, circle, PencilLine.Guide, null);
        var middle = pencil.Bisect(_centre, quarter, PencilLine.Guide).Point;
        pencil.SetRadius(middle, start);
        var golden = pencil.Cut(middle, diameter.Line, CrossingChoice.NearestTo(diameter.Point));
        pencil.SetRadius(count == 5 ? start : _centre, golden);
        return [start, .. pencil.Walk(circle, start, count, 1, Numbers(stride))];
    }

    private MarkedPoint[] Stepped(int count, int stride)
    {
        var division = CircleDivision.Of(count, circle.Curve.Circle.Radius);
        pencil.SetDividers(division.Chord, division);
        return [start, .. pencil.Walk(circle, start, count, 1, Numbers(stride), division)];
    }

    private MarkedPoint Opposite(MarkedPoint point, int? number) =>
        pencil.Extend(point, _centre, circle, PencilLine.Guide, number).Point;

    /// <summary>The number of the point so many places after the start.</summary>
    private int Number(int places) => second - 1 + places;

    private RoundNumbers Numbers(int stride) => new(Number(stride), stride);
}
