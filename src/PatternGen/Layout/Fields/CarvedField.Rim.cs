using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class CarvedField
{
    /// <summary>The smallest share of their size that cells are drawn at, unless asked otherwise.</summary>
    private const double SmallestShare = 0.4;

    /// <summary>Returns the field with whole cells only: those that cross the edge stay uncarved. This is the default.</summary>
    [Pure]
    public CarvedField WholeCells() => With(design => design with { Rim = FieldRim.WholeCells });

    /// <summary>Returns the field with cells clipped at the edge, exactly, along its lines and arcs.</summary>
    /// <param name="narrowest">
    /// Clipped chips are dropped if the largest circle in them is narrower than this, in mm, 0 or more; the fit says how many. By
    /// default 2 mm, or half the width of a whole chip if that is less.
    /// </param>
    /// <remarks>Layout lines and line cuts of a motif are drawn in whole cells only. A chip that was to be stabbed is cut with walls all round where it is clipped.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    [Pure]
    public CarvedField ClippedCells(double? narrowest = null)
    {
        if (narrowest is { } width)
            Guard.NotNegative(width, nameof(narrowest));
        return With(design => design with { Rim = FieldRim.ClippedCells, Narrowest = narrowest });
    }

    /// <summary>Returns the field with cells that cross the edge drawn smaller, to lie inside.</summary>
    /// <param name="smallest">Cells that would have to be smaller than this share of their size are left out: 0.01 to 1; 0.4 by default.</param>
    /// <remarks>
    /// A cell shrinks towards its centre, the middle of one of its sides or one of its corners, whichever leaves it largest; it is
    /// the largest that fits there. It stays within its place, so that it keeps off its neighbours.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of range.</exception>
    [Pure]
    public CarvedField ShrunkCells(double smallest = SmallestShare)
    {
        Guard.Within(smallest, 0.01, 1);
        return With(design => design with { Rim = FieldRim.ShrunkCells, Smallest = smallest });
    }

    /// <summary>Returns the field with a border left uncarved along the outline and its holes.</summary>
    /// <param name="width">Distance in mm that chips keep from the outline, 0 or more; 0 by default. The edge that it leaves is drawn as a layout line too.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    [Pure]
    public CarvedField BorderGap(double width)
    {
        Guard.NotNegative(width);
        return With(design => design with { BorderGap = width });
    }

    /// <summary>Returns the field with ridges between the chips.</summary>
    /// <param name="width">Width in mm of the ground left standing between neighbours, 0 or more; 0, the default, gives ridges as sharp as a knife edge.</param>
    /// <remarks>Each chip is drawn half the width inside its outline. Chips of a motif are not changed; the motif must leave half the width all round in its cell.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    [Pure]
    public CarvedField RidgeGap(double width)
    {
        Guard.NotNegative(width);
        return With(design => design with { RidgeGap = width });
    }
}
