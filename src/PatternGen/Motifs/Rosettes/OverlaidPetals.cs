namespace PatternGen;

/// <summary>Draws sets of petals over each other.</summary>
internal sealed class OverlaidPetals(
    RosetteDrafting drafting,
    int sets,
    MarkedPoint[] points,
    DrawnCurve? disc
)
{
    private Pencil Pencil => drafting.Pencil;

    /// <summary>Distance in mm from the centre of the nearest places, other than the centre, where petals cross.</summary>
    /// <remarks>
    /// At the distance ρ a petal's side has turned by asin(ρ/2r) from the line that it touches at the centre. Sides cross
    /// where that is half the angle between neighbouring tips of all sets.
    /// </remarks>
    internal static double NearestCrossing(int sets, int petals, double radius) =>
        radius * Math.Sin(Math.PI / (sets * petals)) / Math.Sin(Math.PI / petals);

    internal void Draw(PetalCrossing crossing)
    {
        if (crossing == PetalCrossing.Whole)
            drafting.DrawPetals(points, disc, sets);
        else
            DrawStopped(drafting.ArcsOf(points, sets));
    }

    /// <summary>The first set whole, or from the disc on; of each later one what the earlier ones leave to be seen.</summary>
    private void DrawStopped(PetalArcs arcs)
    {
        var first = TipsOf(0);
        var behind = disc is null ? arcs.At([.. points.Except(first)]) : arcs;
        List<DrawnCurve> earlier = [];
        if (disc is null)
            earlier.AddRange(arcs.At(first).Draw(Pencil, PencilLine.Drawn));
        var faint = behind.Draw(Pencil, PencilLine.Guide);
        if (disc is not null)
            earlier.AddRange(behind.GoOver(Pencil, faint, first, [disc]));
        for (var set = 1; set < sets; set++)
            earlier.AddRange(behind.GoOver(Pencil, faint, TipsOf(set), [.. earlier]));
    }

    private MarkedPoint[] TipsOf(int set) => [.. points.Where((_, i) => i % sets == set)];
}
