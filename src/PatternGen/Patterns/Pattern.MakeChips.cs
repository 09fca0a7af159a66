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

    /// <inheritdoc cref="OfChips(IEnumerable{RegionPart})"/>
    public static Pattern OfChips(params RegionPart[] parts) =>
        OfChips((IEnumerable<RegionPart>)parts);

    /// <summary>Returns a pattern of chips in one row, each a part of a region: in its holes the ground stays standing.</summary>
    /// <remarks>
    /// <c>Pattern.OfChips(new Region(rim, island).Parts)</c> with circles of radius 20 and 12 about one point is a ring 8 mm
    /// wide. Parts may share sides, so that one chip may fill another's hole.
    /// </remarks>
    /// <exception cref="ArgumentException">A ring encloses no area.</exception>
    /// <exception cref="PatternException">A ring crosses itself, or two rings of a part cross or run along each other; they may touch in points.</exception>
    public static Pattern OfChips(IEnumerable<RegionPart> parts) =>
        OfRow(Guard.NotNull(parts).Select(part => ChipShapeOf(part)));

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

    private static ChipShape ChipShapeOf(RegionPart part) =>
        ChipShapeOf(Guard.NotNull(part).Outer, part.Holes);

    /// <summary>Returns a chip with ground in its holes; rings that cross are refused.</summary>
    internal static ChipShape ChipShapeOf(Contour outline, IReadOnlyList<Contour> holes)
    {
        if (holes.Count == 0)
            return new(ChipOutline(outline));
        foreach (var flaw in new Region(holes.Prepend(outline)).Validate().Flaws)
            if (Refusal(flaw) is { } refusal)
                throw refusal;
        return new(outline, [.. holes]);
    }

    /// <summary>What is wrong with the rings of a chip, if a flaw is; a ring may touch itself, as an outline may.</summary>
    private static Exception? Refusal(Flaw flaw) =>
        flaw.Kind switch
        {
            FlawKind.NoArea => NoArea(flaw.Place),
            FlawKind.SelfCrossing => Crossing(flaw.Place),
            FlawKind.RingsCrossing => new PatternException(
                "Two rings of a chip cross, so that it is not clear what to cut out.",
                flaw.Place,
                ["holes inside the outline and apart from each other"]
            ),
            FlawKind.RingsOverlapping => new PatternException(
                "Two rings of a chip run along each other, so that nothing lies between them there.",
                flaw.Place,
                [
                    "one outline that goes round both, where ground beside the chip reaches into it",
                    "one hole for two that are neighbours",
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
