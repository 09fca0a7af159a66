namespace PatternGen;

internal sealed partial class RosetteDrafting
{
    /// <summary>Sets the compass for the sides of petals, and finds where the needle stands for them.</summary>
    /// <remarks>
    /// A side touches the line half-way to the next tip at the centre, so its needle stands square to that line, and the
    /// chord from the centre to the tip, half the angle between tips off the line, is 2r sin(180°/n): Euclid III.32.
    /// </remarks>
    /// <param name="tips">The tips of all sets, evenly spaced round a whole circle.</param>
    /// <param name="sets">Number of sets of petals; the tips are of each in turn.</param>
    internal PetalArcs ArcsOf(MarkedPoint[] tips, int sets = 1)
    {
        var count = tips.Length / sets;
        var reach = Centre.Point.DistanceTo(tips[0].Point);
        Pencil.SetRadius(reach / (2 * Math.Sin(Math.PI / count)));
        // In the walk by the radius each needle stands on the next tip.
        var left = count == 6 ? Turned(tips, sets) : Needles(tips, LineSide.Left);
        // With an even number the needle left of one tip is that right of another, and one arc a side of both petals.
        return count % 2 == 0
            ? new(left, Turned(tips, sets * (count / 2 - 1)), tips)
            : PetalArcs
                .Outward(Centre, left, tips)
                .And(PetalArcs.Inward(Centre, Needles(tips, LineSide.Right), tips));
    }

    /// <summary>Finds where the needle stands, with the compass as it is set, for arcs from the centre to the tips.</summary>
    internal MarkedPoint[] Needles(MarkedPoint[] tips, LineSide side) =>
        [.. Pencil.CrossArcs([Centre], tips, side)];

    /// <summary>Draws a round of petals from the centre, or from the disc on.</summary>
    internal void DrawPetals(MarkedPoint[] tips, DrawnCurve? disc, int sets = 1) =>
        DrawFromDisc(ArcsOf(tips, sets), tips, disc);

    /// <summary>Draws arcs of petals; where there is a disc, first faintly, to see where they leave it.</summary>
    internal DrawnCurve[] DrawFromDisc(PetalArcs arcs, MarkedPoint[] tips, DrawnCurve? disc) =>
        disc is null
            ? arcs.Draw(Pencil, PencilLine.Drawn)
            : arcs.GoOver(Pencil, arcs.Draw(Pencil, PencilLine.Guide), tips, [disc]);

    /// <summary>A round counted from so many places further on.</summary>
    internal static MarkedPoint[] Turned(MarkedPoint[] round, int places) =>
        [.. round.Select((_, i) => round[(i + places + round.Length) % round.Length])];
}
