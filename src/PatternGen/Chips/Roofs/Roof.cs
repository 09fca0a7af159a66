using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The shape of a chip's walls as seen from above: where they meet in the valleys, and how far every point is from the outline.
/// Upside down and with a wall angle it is the chip; see <see cref="ChipSolid"/>.
/// </summary>
/// <remarks>
/// <para>
/// The valleys are the medial axis: the middles of all discs that touch the outline in two or more places. Below a side the
/// wall goes down straight away from it; round a corner that points into the chip it goes as a cone. So the depth of a point is its
/// distance from the outline times the tangent of the wall angle, everywhere: what a conical bit leaves. At corners
/// that point in, a knife may leave a sharper edge and go a little less deep; at all others both agree.
/// </para>
/// <para>
/// Lines and arcs are taken as they are, so that valleys are exact: lines, parabolas, ellipses and hyperbolas. An equilateral chip with sides of
/// 10 mm is 2.886751 mm from its outline at the deepest point, where three valleys meet. Immutable and safe to share between
/// threads.
/// </para>
/// </remarks>
public sealed class Roof
{
    /// <summary>How far the walls together may miss the area of the outline, as a share of it, before the outline is looked at: a valid one misses far less.</summary>
    private const double AreaLimit = 1e-6;

    private readonly Lazy<RoofGraph> _graph;
    private readonly Lazy<double> _moment;

    private Roof(Contour outline, IReadOnlyList<Contour> holes)
    {
        Outline = outline;
        Holes = holes;
        Work = RoofWork.Of(outline, holes);
        if (Work.Open is { } place)
            throw Trouble(place);
        (Deepest, Clearance) = FindDeepest();
        if (TurnsRound(Deepest) != 1)
            throw Trouble(Deepest);
        _graph = new(() => new(this));
        _moment = new(FindMoment);
    }

    /// <summary>The outline, counter-clockwise.</summary>
    public Contour Outline { get; }

    /// <summary>Where the ground stays standing inside, clockwise; empty for nearly all chips.</summary>
    public IReadOnlyList<Contour> Holes { get; }

    /// <summary>Distance in mm of the deepest point from the outline: the radius of the largest disc in the chip. A 3-4-5 triangle has 1.</summary>
    public double Clearance { get; }

    /// <summary>
    /// The deepest point. Where a chip is equally deep along a line, as in the middle of a rectangle, it is the middle of that line, or of
    /// the first of several: see <see cref="DeepestLines"/>.
    /// </summary>
    public Point Deepest { get; }

    /// <summary>The valleys that are as deep as the deepest point all along; empty if the chip has a deepest point only.</summary>
    public IReadOnlyList<Valley> DeepestLines => _graph.Value.DeepestLines;

    /// <summary>The walls: one for each side, and one for each corner that points into the chip, in the order of the outline and the holes.</summary>
    public IReadOnlyList<RoofWall> Walls => _graph.Value.Walls;

    /// <summary>The valleys between the walls, each from one node to another. A triangle of straight sides has three.</summary>
    public IReadOnlyList<Valley> Valleys => _graph.Value.Valleys;

    /// <summary>Where valleys end or meet: the corners that point out, the points where three or more walls meet, and those where a valley changes from one kind of curve to another.</summary>
    public IReadOnlyList<RoofNode> Nodes => _graph.Value.Nodes;

    /// <summary>Area in mm² as seen from above, without the holes.</summary>
    public double Area => Outline.Area - Holes.Sum(hole => hole.Area);

    /// <summary>
    /// The distances from the outline, added up over the area, in mm³: the volume if the walls had 45°. Exact for straight sides, to
    /// 1e-10 of its size for others. A square of side 6 has 36.
    /// </summary>
    public double Moment => _moment.Value;

    internal RoofWork Work { get; }

    /// <summary>Returns the roof over an outline. A clockwise one is turned round.</summary>
    /// <exception cref="ArgumentException">The outline encloses no area.</exception>
    /// <exception cref="PatternException">The outline crosses itself.</exception>
    public static Roof Over(Contour outline)
    {
        var area = Guard.NotNull(outline).SignedArea;
        if (area == 0)
            throw new ArgumentException(
                $"The outline at {outline.Vertices[0].Point} encloses no area; a roof needs one to stand on.",
                nameof(outline)
            );
        return Checked(new(area > 0 ? outline : outline.Reversed(), []));
    }

    /// <summary>Returns the roof over a part of a region, whose holes stay standing.</summary>
    /// <exception cref="PatternException">A ring crosses itself or another.</exception>
    public static Roof Over(RegionPart part) => Checked(new(Guard.NotNull(part).Outer, part.Holes));

    /// <summary>The same for rings that are known to be those of a chip: their area is added up only when it is asked for.</summary>
    internal static Roof Over(Contour outline, IReadOnlyList<Contour> holes) => new(outline, holes);

    /// <summary>Returns the distance in mm of a point from the outline; 0 outside and in the holes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite, or lies beyond 2 km.</exception>
    public double ClearanceAt(Point point)
    {
        Guard.Place(point);
        if (TurnsRound(point) <= 0)
            return 0;
        var distance = Outline.DistanceTo(point);
        foreach (var hole in Holes)
            distance = Math.Min(distance, hole.DistanceTo(point));
        return distance;
    }

    /// <summary>Returns the size and the number of walls, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant(
            $"roof over {Outline.Extents}, {Clearance:0.######} mm clear at {Deepest}"
        );

    /// <summary>How often the outline runs round a point, less the holes: 1 in a chip, 0 elsewhere.</summary>
    private int TurnsRound(Point point)
    {
        var turns = Winding.Of(Outline, point);
        foreach (var hole in Holes)
            turns += Winding.Of(hole, point);
        return turns;
    }

    /// <summary>Adds the walls up, which finds outlines that are none.</summary>
    private static Roof Checked(Roof roof)
    {
        _ = roof.Moment;
        return roof;
    }

    /// <summary>The first deepest place, or the middle of the first stretch that is as deep all along.</summary>
    private (Point Place, double Clearance) FindDeepest()
    {
        var (place, clearance, isLine) = (Outline.Vertices[0].Point, 0.0, false);
        for (var site = 0; site < Work.Sites.Span.Length; site++)
            foreach (var piece in Work.PiecesOf(site))
            {
                var s = Work.FarthestIn(site, piece);
                var radius = Work.RadiusAt(site, piece, s);
                if (radius < clearance * (1 - RoofWork.Rounding))
                    continue;
                var isDeeper = radius > clearance * (1 + RoofWork.Rounding);
                if (!isDeeper && isLine)
                    continue;
                isLine = Work.IsLevel(site, piece, radius);
                if (!isDeeper && !isLine)
                    continue;
                (place, clearance) = (
                    Work.ValleyAt(site, isLine ? piece.Middle : s, radius),
                    isDeeper ? radius : clearance
                );
            }
        return (place, clearance);
    }

    private double FindMoment()
    {
        var (area, moment) = new RoofMeasure(Work).Sum();
        return Math.Abs(area - Area) <= AreaLimit * Area ? moment : throw Trouble(Deepest);
    }

    /// <summary>What is wrong with an outline whose walls do not meet.</summary>
    private PatternException Trouble(Point place)
    {
        var flaw = new Region(Holes.Prepend(Outline)).Validate().Flaws.FirstOrDefault();
        return new(
            flaw is null
                ? "The walls that go down from the outline do not meet everywhere."
                : "The outline crosses or touches itself, so that it is not clear where its walls meet.",
            flaw?.Place ?? place,
            [
                "an outline whose sides meet in its corners only",
                "rings that do not cross each other",
            ]
        );
    }
}
