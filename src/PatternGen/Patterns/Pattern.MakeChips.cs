using PatternGen.Geometry;

namespace PatternGen;

public abstract partial class Pattern
{
    /// <inheritdoc cref="OfChips(IEnumerable{Contour})"/>
    public static Pattern OfChips(params Contour[] outlines) =>
        OfChips((IEnumerable<Contour>)outlines);

    /// <summary>Returns a pattern of chips in one row. Clockwise outlines are turned round.</summary>
    /// <exception cref="ArgumentException">An outline encloses no area.</exception>
    /// <exception cref="PatternException">An outline crosses itself.</exception>
    public static Pattern OfChips(IEnumerable<Contour> outlines) =>
        OfRow(Guard.NotNull(outlines).Select(outline => new ChipShape(ChipOutline(outline))));

    /// <inheritdoc cref="OfChips(IEnumerable{Region})"/>
    public static Pattern OfChips(params Region[] regions) => OfChips((IEnumerable<Region>)regions);

    /// <summary>
    /// Returns a pattern of chips in one row: each part of each region is a chip, and in the part's holes the ground
    /// stays standing.
    /// </summary>
    /// <remarks>
    /// <c>new Region(new Circle(Point.Origin, 20).ToContour(), new Circle(Point.Origin, 12).ToContour())</c> is a ring 8 mm
    /// wide. What is cut out of a hole, up to its edge or not, is a region of its own.
    /// </remarks>
    /// <exception cref="ArgumentException">A ring encloses no area.</exception>
    /// <exception cref="PatternException">A ring crosses itself, or two rings of a region cross or run along each other; they may touch in points.</exception>
    public static Pattern OfChips(IEnumerable<Region> regions) =>
        OfRow(Guard.NotNull(regions).SelectMany(ChipShapes));

    /// <summary>Returns the chips in one row; without any there is no row.</summary>
    private static DrawnPattern OfRow(IEnumerable<ChipShape> chips)
    {
        ChipShape[] row = [.. chips];
        return Of(new MotifNode { ChipRows = row.Length > 0 ? [row] : [] });
    }

    private static Contour ChipOutline(Contour outline)
    {
        Guard.NotNull(outline);
        // Before the area, which the loops of an outline that crosses itself may cancel. Of three straight sides, no two
        // can cross.
        if (outline.Count > 3 || outline.Segments.Any(side => !side.IsLine))
            ThrowIfCrossing(outline);
        var area = outline.SignedArea;
        if (area == 0)
            throw NoArea(outline.Vertices[0].Point);
        return area > 0 ? outline : outline.Reversed();
    }

    private static void ThrowIfCrossing(Contour outline)
    {
        foreach (var contact in outline.SelfIntersections())
            if (contact.Kind == ContactKind.Crossing)
                throw Crossing(contact.Point);
    }

    private static IEnumerable<ChipShape> ChipShapes(Region region)
    {
        foreach (var flaw in Guard.NotNull(region).Validate().Flaws)
            if (Refusal(flaw) is { } refusal)
                throw refusal;
        return region.Parts.Select(part => new ChipShape(part.Outer, [.. part.Holes]));
    }

    /// <summary>What is wrong with a region as chips, if a flaw is; a ring may touch itself, as an outline may.</summary>
    private static Exception? Refusal(Flaw flaw) =>
        flaw.Kind switch
        {
            FlawKind.NoArea => NoArea(flaw.Place),
            FlawKind.SelfCrossing => Crossing(flaw.Place),
            FlawKind.RingsCrossing => new PatternException(
                "Two rings of a region cross, so that it is not clear what to cut out.",
                flaw.Place,
                ["holes inside their outline and apart from each other", "a region for each chip"]
            ),
            FlawKind.RingsOverlapping => new PatternException(
                "Two rings of a region run along each other, so that nothing lies between them there.",
                flaw.Place,
                [
                    "one outline that goes round both, where a hole is open to the outside",
                    "a region for each chip, where neighbours share a side",
                ]
            ),
            _ => null,
        };

    private static ArgumentException NoArea(Point place) =>
        new($"The chip at {place} encloses no area; a chip needs an outline to cut along.");

    private static PatternException Crossing(Point place) =>
        new(
            "The outline of a chip crosses itself, so that it is not clear what to cut out.",
            place,
            [
                "its corners in the order in which a knife goes round the chip",
                "a chip for each of its loops",
            ]
        );
}
