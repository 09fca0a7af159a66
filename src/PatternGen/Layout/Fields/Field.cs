using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An outline to be filled with a lattice of chips: <c>Field.Within(lid).Triangles(side: 8)</c>.</summary>
/// <remarks>
/// Each method returns the filled field, a pattern, which then takes further settings: how cells at the edge are treated,
/// where the lattice lies, which cells are carved. Immutable and safe to share between threads.
/// </remarks>
public sealed class Field
{
    private Field(Region outline) => Outline = outline;

    /// <summary>The outline; what lies in its holes is not carved.</summary>
    public Region Outline { get; }

    /// <inheritdoc cref="Within(Region)"/>
    public static Field Within(Contour outline) => Within(new Region(Guard.NotNull(outline)));

    /// <summary>Returns the field within an outline.</summary>
    /// <param name="outline">Any number of parts, with holes or without, of lines and arcs.</param>
    /// <exception cref="ArgumentException">The outline is empty or encloses no area.</exception>
    /// <exception cref="PatternException">Rings of the outline cross, or run along themselves or each other.</exception>
    public static Field Within(Region outline)
    {
        if (Guard.NotNull(outline).IsEmpty)
            throw new ArgumentException(
                "A field needs an outline, but the region is empty.",
                nameof(outline)
            );
        foreach (var flaw in outline.Validate().Flaws)
            if (flaw.Kind == FlawKind.NoArea)
                throw new ArgumentException(
                    $"A field needs an outline that encloses some area, but at {flaw.Place}, {flaw.Reason}",
                    nameof(outline)
                );
            else if (flaw.Kind is not (FlawKind.SelfTouching or FlawKind.DoubledCorner))
                throw new PatternException(
                    $"It is not clear what lies in the outline of the field: {flaw.Reason}",
                    flaw.Place,
                    ["an outline whose rings neither cross nor run along each other"]
                );
        return new(outline);
    }

    /// <summary>Returns the field filled with equilateral triangles, pointing up and down by turns.</summary>
    /// <param name="side">Length of a side in mm. Triangles of side 8 are 6.928 mm high.</param>
    /// <remarks>
    /// <c>Carve(CellScheme.Checkerboard, 0)</c> carves those that point up only. All carved, the field has three-fold turns about
    /// the centres of the triangles and six-fold turns about their corners.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The side is not positive, or over 1 km.</exception>
    [Pure]
    public CarvedField Triangles(double side) => Filled(FieldLattice.Triangles, side, side);

    /// <summary>Returns the field filled with squares.</summary>
    /// <param name="side">Length of a side in mm.</param>
    /// <remarks>All carved, the field has quarter turns about the centres and the corners of the squares.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The side is not positive, or over 1 km.</exception>
    [Pure]
    public CarvedField Squares(double side) => Filled(FieldLattice.Squares, side, side);

    /// <summary>Returns the field filled with diamonds that stand on their corners.</summary>
    /// <param name="width">Width between the left and right corners, in mm.</param>
    /// <param name="height">Height between the lower and upper corners, in mm. 12 × 20 is a slender diamond.</param>
    /// <remarks>All carved, the field has half turns about the centres, the corners and the middles of the sides.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or over 1 km.</exception>
    [Pure]
    public CarvedField Diamonds(double width, double height) =>
        Filled(FieldLattice.Diamonds, width, height);

    /// <summary>Returns the field filled with regular hexagons, each with a level side below and above.</summary>
    /// <param name="side">Length of a side in mm. Hexagons of side 6 are 12 mm wide and 10.392 high.</param>
    /// <remarks>All carved, the field has six-fold turns about the centres and three-fold turns about the corners.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The side is not positive, or over 1 km.</exception>
    [Pure]
    public CarvedField Hexagons(double side) => Filled(FieldLattice.Hexagons, side, side);

    /// <summary>Returns the field filled with the petals between overlapping circles, or with what lies between the petals.</summary>
    /// <param name="radius">Radius that the compass is set to, in mm.</param>
    /// <param name="grid">Where the compass stands; on a triangular grid by default.</param>
    /// <param name="parts">What is carved; the petals by default.</param>
    /// <remarks>
    /// On a triangular grid petals are as long as the radius and 0.268 times as wide: 16 mm and 4.287 mm for a radius of 16;
    /// the field has six-fold turns about the points where petals meet. On a square grid they are 1.414 radii long and 0.586
    /// wide, and the field has quarter turns.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, or over 1 km, or a choice is not defined.</exception>
    [Pure]
    public CarvedField Circles(
        double radius,
        CircleGrid grid = CircleGrid.Triangular,
        CircleParts parts = CircleParts.Petals
    ) =>
        new(
            new(
                Outline,
                new(
                    Guard.Defined(grid) == CircleGrid.Square
                        ? FieldLattice.CirclesOnSquares
                        : FieldLattice.Circles,
                    Guard.Positive(radius),
                    radius,
                    Parts: Guard.Defined(parts)
                )
            )
        );

    /// <summary>Returns the field filled with scales: rows of arcs, each over the two below, round side down.</summary>
    /// <param name="width">Width of a scale in mm.</param>
    /// <param name="height">Height of a row in mm, at most half the width; 0.4 × the width by default, which gives tips of 25 degrees.</param>
    /// <remarks>
    /// A scale is two rows high. At half the width its arc is a half circle, and its tip has no angle at all, which is hard
    /// to cut. The only symmetry is left to right.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, the width is over 1 km, or the height over half the width.</exception>
    [Pure]
    public CarvedField Scales(double width, double? height = null)
    {
        Guard.Positive(width);
        var rows = height ?? 0.4 * width;
        Guard.Positive(rows, nameof(height));
        Guard.Within(rows, 0, width / 2, nameof(height));
        return Filled(FieldLattice.Scales, width, rows);
    }

    /// <summary>Returns the field filled with basket weave: groups of strips, upright and level by turns.</summary>
    /// <param name="strip">Width of a strip in mm.</param>
    /// <param name="strips">Strips in each group, 1 to 100; 3 by default. A strip is as long as its group is wide: 3 strips of 4 mm are 12 mm long.</param>
    /// <remarks>The field has quarter turns about the corners where groups meet, and half turns about the centres of the groups.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive, a group is over 1 km wide, or the number of strips is out of range.</exception>
    [Pure]
    public CarvedField BasketWeave(double strip, int strips = 3)
    {
        Guard.Positive(strip);
        Guard.Within(strips, 1, 100);
        Guard.Positive(strip * strips, nameof(strip));
        return new(new(Outline, new(FieldLattice.BasketWeave, strip, strip, Strips: strips)));
    }

    /// <summary>Returns the field filled with hourglasses: two triangles tip to tip in each cell.</summary>
    /// <param name="width">Width of a cell in mm.</param>
    /// <param name="height">Height of a cell in mm; as the width by default.</param>
    /// <param name="turn">Whether they stand upright and level by turns, the default, or all alike.</param>
    /// <remarks>
    /// The field has half turns about the centres of the cells, and about their corners if all stand alike; by turns, in square
    /// cells, it has quarter turns about the corners.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or over 1 km, or the choice is not defined.</exception>
    [Pure]
    public CarvedField Hourglasses(
        double width,
        double? height = null,
        HourglassTurn turn = HourglassTurn.ByTurns
    ) =>
        new(
            new(
                Outline,
                new(
                    FieldLattice.Hourglasses,
                    Guard.Positive(width),
                    Guard.Positive(height ?? width, nameof(height)),
                    Turn: Guard.Defined(turn)
                )
            )
        );

    private CarvedField Filled(FieldLattice family, double width, double height) =>
        new(new(Outline, new(family, Guard.Positive(width), Guard.Positive(height))));
}
