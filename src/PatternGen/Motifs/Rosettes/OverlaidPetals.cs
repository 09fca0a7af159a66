using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws sets of petals over each other.</summary>
internal sealed class OverlaidPetals(
    RosetteDrafting drafting,
    int sets,
    MarkedPoint[] points,
    DrawnCurve? disc
)
{
    private readonly List<DrawnCurve> _earlier = [];

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
        for (var set = 0; set < sets; set++)
        {
            MarkedPoint[] tips = [.. points.Where((_, i) => i % sets == set)];
            if (crossing == PetalCrossing.Whole)
                drafting.DrawPetals(tips, disc);
            else
                DrawStopped(tips);
        }
    }

    /// <summary>The first set whole; of each later one what the earlier ones leave to be seen.</summary>
    private void DrawStopped(MarkedPoint[] tips)
    {
        var sides = drafting.SidesOf(tips);
        _earlier.AddRange(
            _earlier.Count > 0 ? FromEarlier(sides) : drafting.DrawFromDisc(sides, disc)
        );
    }

    private IReadOnlyList<DrawnCurve> FromEarlier(PetalSides sides)
    {
        var whole = sides.From(Pencil, drafting.Centre, PencilLine.Guide);
        return sides.From(
            Pencil,
            Pencil.Cross(
                whole,
                whole.Select(StoppedBy),
                CrossingChoice.FarthestFrom(drafting.Centre)
            )
        );
    }

    /// <summary>The earlier side that hides the most of a later one.</summary>
    private DrawnCurve StoppedBy(DrawnCurve side)
    {
        var tolerance = Tolerance.For(side.Curve.Extents);
        return _earlier.MaxBy(earlier =>
            CurveCrossings
                .Between(side.Curve, earlier.Curve, tolerance)
                .Select(drafting.Centre.Point.DistanceTo)
                .DefaultIfEmpty(0)
                .Max()
        )!;
    }
}
