namespace PatternGen;

internal sealed partial class RosetteDrafting
{
    /// <summary>Sets the compass for the sides of petals, and finds where the needle stands for them.</summary>
    /// <remarks>
    /// A side touches the line half-way to the next tip at the centre, so its needle stands square to that line, and the
    /// chord from the centre to the tip, half the angle between tips off the line, is 2r sin(180°/n): Euclid III.32.
    /// </remarks>
    /// <param name="tips">The tips, evenly spaced round a whole circle.</param>
    internal PetalSides SidesOf(MarkedPoint[] tips)
    {
        var count = tips.Length;
        var reach = Centre.Point.DistanceTo(tips[0].Point);
        Pencil.SetRadius(reach / (2 * Math.Sin(Math.PI / count)));
        // In the walk by the radius each needle stands on the next tip.
        if (count == 6)
            return new(tips, Turned(tips, 1), Turned(tips, -1));
        var left = Needles(tips, LineSide.Left);
        // With an even number the needle left of one tip is that right of another.
        var right = count % 2 == 0 ? Turned(left, 1 - count / 2) : Needles(tips, LineSide.Right);
        return new(tips, left, right);
    }

    /// <summary>Finds where the needle stands, with the compass as it is set, for arcs from the centre to the tips.</summary>
    internal MarkedPoint[] Needles(MarkedPoint[] tips, LineSide side) =>
        [.. Pencil.CrossArcs([Centre], tips, side)];

    /// <summary>Draws a round of petals from the centre, or from the disc on.</summary>
    internal void DrawPetals(MarkedPoint[] tips, DrawnCurve? disc)
    {
        if (disc is null && tips.Length % 2 == 0)
            DrawThroughCentre(tips);
        else
            DrawFromDisc(SidesOf(tips), disc);
    }

    /// <summary>Draws sides from the centre; where there is a disc, first faintly, to find where they leave it.</summary>
    internal IReadOnlyList<DrawnCurve> DrawFromDisc(PetalSides sides, DrawnCurve? disc)
    {
        if (disc is null)
            return sides.From(Pencil, Centre, PencilLine.Drawn);
        var whole = sides.From(Pencil, Centre, PencilLine.Guide);
        return sides.From(Pencil, Pencil.Cross(whole, [disc]));
    }

    /// <summary>An even number of petals: one arc is a side of two of them.</summary>
    private void DrawThroughCentre(MarkedPoint[] tips)
    {
        var sides = SidesOf(tips);
        Pencil.Arcs(sides.Left, Turned(tips, tips.Length / 2 - 1), tips);
    }

    /// <summary>A round counted from so many places further on.</summary>
    internal static MarkedPoint[] Turned(MarkedPoint[] round, int places) =>
        [.. round.Select((_, i) => round[(i + places + round.Length) % round.Length])];
}
